#include "app/verbs/verbs.h"

namespace zyga::app {
namespace {

std::string padded(std::string text, std::size_t width) {
  text.resize(std::max(width, text.size() + 2), ' ');
  return text;
}

std::string usage(const OptionSpec& option) {
  return std::string(option.name) + (option.value.empty() ? "" : " " + std::string(option.value));
}

}  // namespace

std::string helpText() {
  std::string out =
      "zygapose [FILE]         opens the window, on a project (.zyga) or a measurement table (.csv)\n"
      "zygapose VERB ...       works in batch, without a display\n\n";
  for (const auto& verb : verbs())
    out += "  " + padded(std::string(verb.spec.name), 10) + std::string(verb.spec.does) + "\n";
  out += "  " + padded("help", 10) + "help VERB tells a verb's options\n\n";
  return out +
         "Exit 0: done, and for assess supported; 1: assess finds something beyond range; 2: bad input, told on "
         "stderr.\n";
}

std::string helpText(const VerbSpec& verb) {
  std::string out = "zygapose " + std::string(verb.name) + " " + std::string(verb.file) + " [options]\n" +
                    std::string(verb.does) + "\n\n";
  std::size_t width = 24;
  for (const auto& option : verb.options) width = std::max(width, usage(option).size() + 2);
  for (const auto& option : verb.options)
    out += "  " + padded(usage(option), width) + std::string(option.meaning) + "\n";
  if (!verb.notes.empty()) out += "\n" + std::string(verb.notes);
  return out;
}

}  // namespace zyga::app
