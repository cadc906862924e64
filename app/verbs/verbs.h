#pragma once

#include <vector>

#include "app/arguments/arguments.h"

namespace zyga::app {

/// Exit codes of every verb.
enum Exit { kDone = 0, kBeyond = 1, kBadInput = 2 };

struct Verb {
  VerbSpec spec;
  int (*run)(const VerbSpec& spec, const Arguments& arguments);
};

Verb makeVerb();
Verb assessVerb();
Verb neutralVerb();
Verb bendVerb();
Verb claimVerb();
Verb compareVerb();
Verb limitsVerb();
Verb exportVerb();
Verb inspectVerb();
Verb massVerb();
Verb pictureVerb();
Verb reachVerb();
Verb reportVerb();
Verb scanVerb();
Verb sheetVerb();
Verb standVerb();
Verb studyVerb();
Verb trackwayVerb();

/// All of them in the order of a day's work.
const std::vector<Verb>& verbs();

std::string helpText();
std::string helpText(const VerbSpec& verb);

}  // namespace zyga::app
