#include "app/verbs/run_verb.h"

#include <QCoreApplication>
#include <algorithm>
#include <exception>
#include <filesystem>
#include <iostream>

#include "app/verbs/offscreen.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/scan/scan_process.h"
#include "core/task/memory.h"
#include "ui/words/language.h"
#include "ui/words/say.h"

namespace zyga::app {
namespace {

/// In the language chosen. The views of a spec are of literals, which end in a null character.
std::string inLanguage(std::string_view literal) { return literal.empty() ? std::string() : said(literal.data()); }

std::string padded(std::string text, std::size_t width) {
  text.resize(std::max(width, text.size() + 2), ' ');
  return text;
}

std::string usage(const OptionSpec& option) {
  return std::string(option.name) + (option.value.empty() ? "" : " " + std::string(option.value));
}

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
  std::cerr << "zygapose: "
            << said(QT_TRANSLATE_NOOP("words", "there is no verb '%1'; there are %2"), {name, verbNames()}) << "\n";
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

bool drawsFigures(const VerbSpec& verb, const std::vector<std::string>& words) {
  const auto asks = [&verb](const std::string& word) { return word.starts_with(verb.drawsWith); };
  return !verb.drawsWith.empty() && std::any_of(words.begin(), words.end(), asks);
}

/// Takes `--language CODE` out of the words of any verb. English where it is not given: scripts read what verbs say.
QString takeLanguage(std::vector<std::string>& words) {
  const auto found = std::find(words.begin(), words.end(), "--language");
  if (found == words.end()) return "en";
  if (found + 1 == words.end())
    throw BadInput({fault::kNeedsValue, {reason::text("--language"), reason::text("CODE")}});
  const std::string typed = *(found + 1);
  words.erase(found, found + 2);
  std::vector<std::string> codes;
  for (const ui::Language& language : ui::languagesOffered()) codes.push_back(language.code.toStdString());
  if (std::find(codes.begin(), codes.end(), typed) == codes.end())
    refuseChoice("--language", typed, {codes.begin(), codes.end()});
  return QString::fromStdString(typed);
}

}  // namespace

std::string helpText() {
  std::string out = said(QT_TRANSLATE_NOOP(
                        "words",
                        "zygapose [FILE]         opens the window, on a project (.zyga) or a measurement table (.csv)\n"
                        "zygapose VERB ...       works in batch, without a display\n")) +
                    "\n";
  for (const auto& verb : verbs())
    out += "  " + padded(std::string(verb.spec.name), 10) + inLanguage(verb.spec.does) + "\n";
  out += "  " + padded("help", 10) + said(QT_TRANSLATE_NOOP("words", "help VERB tells a verb's options")) + "\n\n" +
         said(QT_TRANSLATE_NOOP("words", "Every verb takes --language CODE: en or zh_CN.")) + "\n";
  out += said(QT_TRANSLATE_NOOP("words",
                                "A project written as FILE.zygazip is one file with its scans inside: a zip "
                                "container.\nEvery verb reads both kinds.")) +
         "\n";
  return out + said(QT_TRANSLATE_NOOP("words",
                                      "Exit 0: done, and for assess within range; 1: assess finds something out of "
                                      "range; 2: bad input, told on stderr.\n"));
}

std::string helpText(const VerbSpec& verb) {
  std::string out = "zygapose " + std::string(verb.name) + " " + std::string(verb.file) + " " +
                    said(QT_TRANSLATE_NOOP("words", "[options]")) + "\n" + inLanguage(verb.does) + "\n\n";
  std::size_t width = 24;
  for (const auto& option : verb.options) width = std::max(width, usage(option).size() + 2);
  for (const auto& option : verb.options)
    out += "  " + padded(usage(option), width) + inLanguage(option.meaning) + "\n";
  if (!verb.notes.empty()) out += "\n" + inLanguage(verb.notes);
  return out;
}

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
  task::keepFreedMemory();
  const std::string name = argc > 1 ? argv[1] : "help";
  if (name == files::protocol::kVerb) return files::readScanProcess(argc - 1, argv + 1);
  std::vector<std::string> words(argv + std::min(argc, 2), argv + argc);
  const Verb* verb = findVerb(name);
  const Offscreen application(verb && drawsFigures(verb->spec, words));
  ui::speak("en");
  try {
    ui::speak(takeLanguage(words));
    const int exit = run(name, words);
    std::cout.flush();
    if (std::cout.good()) return exit;
    complain(name, said(QT_TRANSLATE_NOOP("words", "the output could not be written")));
  } catch (const std::exception& error) {
    complain(name, ui::sayFailure(error).toStdString());
  }
  return kBadInput;
}

}  // namespace zyga::app
