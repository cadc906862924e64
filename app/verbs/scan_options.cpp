#include "app/verbs/scan_options.h"

#include <unistd.h>

#include <QCoreApplication>
#include <iostream>

#include "app/verbs/verb_words.h"
#include "ui/words/numbers.h"

namespace zyga::app {

files::CleanScan readCleanScan(const std::string& file, double expected) {
  files::ScanReader reader;
  const bool shown = isatty(STDERR_FILENO);
  if (shown)
    reader.task = task::Task(nullptr, [&](double share) {
      std::cerr << "\r"
                << said(QT_TRANSLATE_NOOP("words", "reading %1 %2"), {file, ui::percent(std::floor(100 * share) / 100)})
                << std::flush;
    });
  auto scan = files::readCleanScan(file, reader, expected);
  if (shown) std::cerr << "\n";
  return std::move(*scan);  // nothing cancels it here
}

files::ScanSet readScans(const files::ScanSetWish& wish,
                         const std::variant<anatomy::BodyPlan, anatomy::Specimen>& animal) {
  files::ScanReader reader;
  const bool shown = isatty(STDERR_FILENO);
  if (shown)
    reader.task = task::Task(nullptr, [](double share) {
      std::cerr << "\r"
                << said(QT_TRANSLATE_NOOP("words", "reading scans %1"), {ui::percent(std::floor(100 * share) / 100)})
                << std::flush;
    });
  auto set = std::visit([&](const auto& of) { return files::readScanSet(wish, of, reader); }, animal);
  if (shown) std::cerr << "\n";
  return std::move(*set);  // nothing cancels it here
}

double unitOf(const Arguments& arguments, const files::CleanScan& scan) {
  if (!arguments.has("--unit")) return anatomy::metresOf(scan.unitGuess.unit);
  using anatomy::ScanUnit;
  return anatomy::metresOf(choiceOf<ScanUnit>(
      arguments, "--unit", {{"mm", ScanUnit::Millimetre}, {"cm", ScanUnit::Centimetre}, {"m", ScanUnit::Metre}}));
}

files::json::Value thinnedJson(const files::CleanScan& scan, double unit) {
  namespace json = files::json;
  if (!scan.thinned) return {};
  return json::object({{"from", scan.thinned->from},
                       {"to", scan.thinned->to},
                       {"error_mm", json::millionths(scan.thinned->error * unit * 1000)}});
}

}  // namespace zyga::app
