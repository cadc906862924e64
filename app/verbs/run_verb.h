#pragma once

#include <string_view>

namespace zyga::app {

/// Whether the first word on the command line asks for batch work rather than for the window: a verb, help or the
/// version, or a plain word that names no file and so can only be a mistyped verb.
bool isVerb(std::string_view word);

/// Runs `argv[1]` without a display. Returns 0 when it is done and, for assess, within range; 1 when assess finds
/// something out of range; 2 on bad input, with a message on stderr. Never throws.
int runVerb(int argc, char** argv);

}  // namespace zyga::app
