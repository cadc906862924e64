#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "core/reason/reason.h"

/// The reading process and what it tells the program: lines on its standard output, and its exit code.
namespace zyga::files {

/// What the verb `read-scan IN OUT LARGEST SECONDS PER_MILLION MEMORY` does: reads the mesh IN, and with it no file
/// larger than LARGEST bytes, writes OUT, tells progress and a failure on its standard output. The limits on its time
/// and memory are set by who starts it; by what the head of the file declares it lowers that on its processor time to
/// SECONDS and PER_MILLION for every million triangles, and refuses what would need more than MEMORY bytes. Returns the
/// process's exit code.
int readScanProcess(int argc, char** argv);

namespace protocol {

inline constexpr std::string_view kVerb = "read-scan";
inline constexpr std::string_view kProgress = "progress ";  ///< then percent
inline constexpr std::string_view kAllowed = "allowed ";    ///< then the seconds of processor time it allows itself
inline constexpr std::string_view kCause = "cause ";        ///< then why it failed, see writeCause

enum Exit { kRead = 0, kFailed = 3, kOutOfMemory = 4, kMisused = 5 };

}  // namespace protocol

/// A reason as one line of JSON: {"id": "scan.compressed", "values": ["KHR_draco_mesh_compression"]}. A text is a
/// string, cut where it is very long; a count is a number; a term is {"term": id}; a quantity of bytes is {"bytes":
/// count}; a reason within is an object as the whole. Other values are no part of what the reading process tells.
std::string writeCause(const reason::Reason& cause);
/// What a process that may be broken or hostile has written: only ids that the reading process knows are taken, with as
/// many values as they have; anything else is scan.damaged-answer. Control characters in texts become blanks.
reason::Reason readCause(std::string_view line);

}  // namespace zyga::files
