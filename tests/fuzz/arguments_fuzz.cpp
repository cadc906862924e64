#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "app/arguments/arguments.h"

using namespace zyga;

/// Verbs of every kind: one file, none, many; switches and options with values.
const std::vector<app::VerbSpec>& specs() {
  static const std::vector<app::OptionSpec> options{{"--out", "FILE.zyga", "where to"},
                                                    {"--overlap", "SHARE", "how much"},
                                                    {"--overlap-by", "length|area", "of what"},
                                                    {"--cartilage-percent", "P", "how thick"},
                                                    {"--joint", "ID", "may be given again"},
                                                    {"--dorsiflexion", "DEG", "how far"},
                                                    {"--torsion", "DEG", "how far"},
                                                    {"--json", "", "for machines"},
                                                    {"--contact", "", "with contact"}};
  static const std::vector<app::VerbSpec> all{{"one", "FILE.zyga", "takes one file", options, ""},
                                              {"rest", "[FILE.zyga]", "takes a file or none", options, ""},
                                              {"many", "FILE...", "takes several files", options, "", true}};
  return all;
}

/// Any words after any verb, one a line, end in arguments or in BadInput.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  std::vector<std::string> words(1);
  for (std::size_t i = 0; i < size; ++i) {
    if (data[i] == '\n') {
      words.emplace_back();
    } else {
      words.back() += static_cast<char>(data[i]);
    }
  }
  words.erase(words.begin());  // the corpus has names of verbs there: each kind reads every line
  for (const auto& spec : specs()) {
    try {
      const auto arguments = app::parseArguments(spec, words);
      for (const auto& option : arguments.options) app::numberOf(option, -1e3, 1e3, "degrees");
    } catch (const app::BadInput&) {
    }
  }
  return 0;
}
