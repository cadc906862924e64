#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "app/verbs/verbs.h"

using namespace zyga;

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
  const std::string name = words.front();
  words.erase(words.begin());
  for (const auto& verb : app::verbs()) {
    if (verb.spec.name != name) continue;
    try {
      const auto arguments = app::parseArguments(verb.spec, words);
      for (const auto& option : arguments.options) app::numberOf(option, -1e3, 1e3, "degrees");
    } catch (const app::BadInput&) {
    }
  }
  return 0;
}
