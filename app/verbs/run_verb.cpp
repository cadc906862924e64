#include "app/verbs/run_verb.h"

#include <algorithm>
#include <exception>
#include <filesystem>
#include <iostream>

#include "app/verbs/verbs.h"
#include "core/files/scan/scan_protocol.h"
#include "core/files/scan/scan_reader.h"

namespace zyga::app {
namespace {

const Verb* findVerb(std::string_view name) {
  const auto& all = verbs();
  const auto found = std::find_if(all.begin(), all.end(), [&](const auto& verb) { return verb.spec.name == name; });
  return found == all.end() ? nullptr : &*found;
}

bool asksForHelp(std::string_view word) { return word == "help" || word == "--help" || word == "-h"; }

std::string verbNames() {
  std::string out;
  for (const auto& verb : verbs()) out += std::string(verb.spec.name) + ", ";
  return out + "help";
}

int unknownVerb(std::string_view name) {
  std::cerr << "zygapose: there is no verb '" << name << "'; there are " << verbNames() << "\n";
  return kBadInput;
}

int help(const std::vector<std::string>& words) {
  if (words.empty()) {
    std::cout << helpText();
    return kDone;
  }
  const auto* verb = findVerb(words.front());
  if (!verb) return unknownVerb(words.front());
  std::cout << helpText(verb->spec);
  return kDone;
}

/// Each line of a message on a line of its own, with who says it.
void complain(std::string_view verb, std::string_view message) {
  while (!message.empty()) {
    const auto end = message.find('\n');
    std::cerr << "zygapose " << verb << ": " << message.substr(0, end) << "\n";
    message.remove_prefix(end == std::string_view::npos ? message.size() : end + 1);
  }
}

int run(std::string_view name, const std::vector<std::string>& words) {
  if (asksForHelp(name)) return help(words);
  if (name == "--version") {
    std::cout << "zygapose " << ZYGAPOSE_VERSION << "\n";
    return kDone;
  }
  const auto* verb = findVerb(name);
  if (!verb) return unknownVerb(name);
  if (std::any_of(words.begin(), words.end(), [](const auto& w) { return w == "--help" || w == "-h"; })) {
    return help({std::string(name)});
  }
  return verb->run(verb->spec, parseArguments(verb->spec, words));
}

}  // namespace

const std::vector<Verb>& verbs() {
  static const std::vector<Verb> all{makeVerb(),  assessVerb(), neutralVerb(),  limitsVerb(),  standVerb(),
                                     reachVerb(), bendVerb(),   exportVerb(),   inspectVerb(), pictureVerb(),
                                     sheetVerb(), scanVerb(),   trackwayVerb(), compareVerb(), reportVerb(),
                                     massVerb(),  studyVerb(),  claimVerb()};
  return all;
}

bool isVerb(std::string_view word) {
  if (word == files::protocol::kVerb || findVerb(word) || asksForHelp(word) || word == "--version") return true;
  const bool plain =
      !word.empty() && std::all_of(word.begin(), word.end(), [](char c) { return c >= 'a' && c <= 'z'; });
  std::error_code ignored;
  return plain && !std::filesystem::exists(word, ignored);
}

int runVerb(int argc, char** argv) {
  const std::string name = argc > 1 ? argv[1] : "help";
  if (name == files::protocol::kVerb) return files::readScanProcess(argc - 1, argv + 1);
  const std::vector<std::string> words(argv + std::min(argc, 2), argv + argc);
  try {
    const int exit = run(name, words);
    std::cout.flush();
    if (std::cout.good()) return exit;
    complain(name, "the output could not be written");
  } catch (const std::exception& error) {
    complain(name, error.what());
  }
  return kBadInput;
}

}  // namespace zyga::app
