#include "app/verbs/mass_report.h"

#include "app/verbs/summary_text.h"
#include "app/verbs/text_table.h"
#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"

namespace zyga::app {
namespace {

using anatomy::BoneKind;
using anatomy::Measure;
using anatomy::Side;
using files::jsonString;
using files::member;

constexpr std::string_view kEstimate = "An estimate, not an engineering document.";

std::string kilograms(double mass) { return fixed(mass, 0) + " kg"; }

std::string rangeText(const study::MassRange& mass) {
  return kilograms(mass.low) + " to " + kilograms(mass.high) + ", middle " + kilograms(mass.mass);
}

std::vector<std::string> rangeMembers(const study::MassRange& mass) {
  return {member("mass_kg", millionths(mass.mass)), member("low_kg", millionths(mass.low)),
          member("high_kg", millionths(mass.high))};
}

/// Circumference of either side's bone, measured before inferred.
const anatomy::Cell* circumferenceOf(const files::Project& project, BoneKind kind) {
  const anatomy::Cell* best = nullptr;
  for (const Side side : {Side::Left, Side::Right}) {
    const auto* row = project.table.find({kind, 0, 0, side});
    if (!row || !row->measures[Measure::Circumference].known()) continue;
    const auto& cell = row->measures[Measure::Circumference];
    if (!best || (cell.measured() && !best->measured())) best = &cell;
  }
  return best;
}

std::string wordOf(const std::string& title) {
  std::string word = title;
  for (char& c : word) c = c == ' ' ? '_' : c;
  return word;
}

std::string partsJson(const MassReport& report) {
  std::vector<std::string> parts;
  for (const auto part : study::kAllBodyParts) {
    parts.push_back(
        files::onOneLine({member("part", jsonString(wordOf(std::string(title(part))))),
                          member("density_kg_m3", millionths(report.densities[part])),
                          member("mass_kg", millionths(report.balance.body.byPart[static_cast<std::size_t>(part)]))}));
  }
  return files::onLines(parts, "  ", '[', ']');
}

std::string balanceJson(const study::Balance& balance, const Eigen::Vector2d& forward) {
  std::vector<std::string> feet;
  for (const auto foot : balance.planted) feet.push_back(jsonString(toText(foot)));
  return files::onOneLine({member("planted", files::list(feet)), member("on_tail", balance.onTail ? "true" : "false"),
                           member("inside", balance.inside() ? "true" : "false"),
                           member("margin_m", balance.margin ? millionths(*balance.margin) : "null"),
                           member("fore_share", balance.foreShare ? millionths(*balance.foreShare) : "null"),
                           member("sentence", jsonString(study::sentence(balance, forward)))});
}

std::string equationMember(const std::optional<Equation>& equation) {
  if (!equation) return "null";
  auto members = rangeMembers(equation->mass);
  members.push_back(member("circumferences", jsonString(equation->measured ? "measured" : "inferred")));
  members.push_back(member("source", jsonString(study::kCircumferenceSource)));
  return files::onOneLine(members);
}

Eigen::Vector2d forwardOf(const MassReport& report) { return report.pose.pose.X_WRoot.linear().col(0).head<2>(); }

}  // namespace

std::optional<Equation> equationOf(const files::Project& project) {
  const auto *humerus = circumferenceOf(project, BoneKind::Humerus), *femur = circumferenceOf(project, BoneKind::Femur);
  if (!humerus || !femur) return {};
  return Equation{study::massFromCircumferences(humerus->value, femur->value),
                  humerus->measured() && femur->measured()};
}

std::string equationText(const study::MassRange& mass) {
  return "mass by circumference: " + rangeText(mass) + "\n  log10 M(g) = 2.749 log10(humerus + femur, mm) - 1.104, " +
         std::string(study::kCircumferenceSource) + "; mean error 25.63 %\n" + std::string(kEstimate) + "\n";
}

std::string equationJson(const study::MassRange& mass) {
  auto members = rangeMembers(mass);
  members.push_back(member("error_percent", millionths(study::kCircumferenceError * 100)));
  members.push_back(member("source", jsonString(study::kCircumferenceSource)));
  members.push_back(member("note", jsonString(kEstimate)));
  return files::onLines(members, "", '{', '}') + "\n";
}

std::string massText(const MassReport& report) {
  const auto& balance = report.balance;
  std::string text = "mass by volume: " + rangeText(balance.body.mass) +
                     "\n  hulls around the bones x 1.21 x density; " + std::string(study::kHullSource) + "\n";
  std::vector<TextRow> rows{{"part", "kg/m3", "kg"}};
  for (const auto part : study::kAllBodyParts) {
    rows.push_back({std::string(title(part)), fixed(report.densities[part], 0),
                    fixed(balance.body.byPart[static_cast<std::size_t>(part)], 0)});
  }
  text += textTable(rows, {true, false, false});
  if (report.equation) {
    text += "mass by circumference: " + rangeText(report.equation->mass) + "\n  from " +
            (report.equation->measured ? "measured" : "inferred") + " circumferences of humerus and femur; " +
            std::string(study::kCircumferenceSource) + "\n";
  }
  const auto& centre = balance.body.p_WCentre;
  text += "balance of the " + report.pose.name + ": centre of mass " + fixed(centre.z(), 2) + " m over the ground\n  " +
          study::sentence(balance, forwardOf(report)) + "\n";
  if (balance.foreShare) text += "  the fore feet carry " + fixed(*balance.foreShare * 100, 0) + " % of the weight\n";
  return text + std::string(kEstimate) + "\n";
}

std::string massJson(const MassReport& report) {
  auto members = rangeMembers(report.balance.body.mass);
  members.push_back(member("source", jsonString(study::kHullSource)));
  members.push_back(member("parts", partsJson(report)));
  members.push_back(member("by_circumference", equationMember(report.equation)));
  members.push_back(member("pose", jsonString(report.pose.name)));
  members.push_back(member("centre_of_mass_m", pointJson(report.balance.body.p_WCentre)));
  members.push_back(member("balance", balanceJson(report.balance, forwardOf(report))));
  members.push_back(member("note", jsonString(kEstimate)));
  return files::onLines(members, "", '{', '}') + "\n";
}

}  // namespace zyga::app
