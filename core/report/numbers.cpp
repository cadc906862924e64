#include "core/report/numbers.h"

#include <cmath>

#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"
#include "core/files/json/numeral.h"

namespace zyga::report {

std::string numbersCsv(const Report& report) {
  std::string out = "key,value,unit\n";
  for (const Number& number : report.numbers)
    if (std::isfinite(number.value))
      out += number.key + "," + files::toNumeral(number.value) + "," + number.unit + "\n";
  return out;
}

std::string numbersJson(const Report& report) {
  using files::jsonString;
  using files::member;
  std::vector<std::string> members;
  for (const Number& number : report.numbers) {
    if (!std::isfinite(number.value)) continue;
    std::vector<std::string> parts{member("value", files::toNumeral(number.value))};
    if (!number.unit.empty()) parts.push_back(member("unit", jsonString(number.unit)));
    members.push_back(member(number.key, files::onOneLine(parts)));
  }
  return files::onLines({member("title", jsonString(report.title)), member("subtitle", jsonString(report.subtitle)),
                         member("numbers", files::onLines(members, "  ", '{', '}'))},
                        "", '{', '}') +
         "\n";
}

}  // namespace zyga::report
