#include <algorithm>
#include <array>
#include <numbers>
#include <vector>

#include "app/verbs/assess_report.h"
#include "app/verbs/summary_text.h"

namespace zyga::app {
namespace {

using Row = std::vector<std::string>;

std::string percent(double share) { return fixed(share * 100, 0) + " %"; }

std::string cartilageText(const range::Cartilage& cartilage) {
  const bool inMillimetres = cartilage.in == range::Cartilage::In::Millimetres;
  return millionths(cartilage.amount) + (inMillimetres ? " mm" : " % of the centrum");
}

std::string cartilagesText(const range::Assumptions& a) {
  if (a.neck == a.trunk && a.trunk == a.tail) return cartilageText(a.neck);
  return "neck " + cartilageText(a.neck) + ", trunk " + cartilageText(a.trunk) + ", tail " + cartilageText(a.tail);
}

std::string assumptionsText(const range::Assumptions& a) {
  const char* by = a.overlapBy == range::OverlapBy::Length ? "length" : "area";
  return "  assuming: facets share at least " + percent(a.leastOverlap) + " by " + by + ", near within " +
         percent(a.nearMargin) + " of a limit; cartilage " + cartilagesText(a) + "\n";
}

/// The joints with something to tell, worst first, otherwise in joint order.
std::vector<const range::JointVerdict*> worstFirst(const range::Assessment& assessment) {
  std::vector<const range::JointVerdict*> out;
  for (const auto& joint : assessment.joints) {
    if (joint.level == range::Level::Near || joint.level == range::Level::Beyond) out.push_back(&joint);
  }
  std::stable_sort(out.begin(), out.end(), [](const auto* a, const auto* b) { return a->level > b->level; });
  return out;
}

std::string degrees(double angle) { return fixed(angle * 180 / std::numbers::pi, 1); }

std::string overlap(const std::optional<range::FacetMeeting>& meeting, range::OverlapBy by) {
  if (!meeting) return "-";
  return percent(by == range::OverlapBy::Length ? meeting->overlapLength : meeting->overlapArea);
}

std::string reasons(const range::JointVerdict& verdict) {
  std::string out;
  for (const auto& finding : verdict.findings) out += (out.empty() ? "" : "; ") + finding.text;
  return out;
}

Row row(const Report& report, const range::JointVerdict& verdict) {
  const auto& angles = report.pose[verdict.joint];
  const auto by = report.project.assumptions.overlapBy;
  return {report.project.specimen[verdict.joint].id,
          std::string(toText(verdict.level)),
          degrees(angles(0)),
          degrees(angles(1)),
          degrees(angles(2)),
          overlap(verdict.left, by),
          overlap(verdict.right, by),
          reasons(verdict)};
}

/// Columns of words to the left, of numbers to the right; the last one runs on.
std::string table(const std::vector<Row>& rows) {
  static constexpr std::array<bool, 8> kWords{true, true, false, false, false, false, false, true};
  std::array<std::size_t, 8> widths{};
  for (const auto& row : rows) {
    for (std::size_t i = 0; i + 1 < row.size(); ++i) widths[i] = std::max(widths[i], row[i].size());
  }
  std::string out;
  for (const auto& row : rows) {
    out += " ";
    for (std::size_t i = 0; i < row.size(); ++i) {
      const std::string blank(widths[i] > row[i].size() ? widths[i] - row[i].size() : 0, ' ');
      out += " " + (kWords[i] ? row[i] + (i + 1 < row.size() ? blank : "") : blank + row[i]) +
             (i + 1 < row.size() ? " " : "");
    }
    out += "\n";
  }
  return out;
}

std::string findingsText(const Report& report) {
  const auto findings = worstFirst(report.assessment);
  if (findings.empty()) return "  every joint that can be judged is inside its range\n";
  std::vector<Row> rows{{"joint", "level", "flexion", "lateral", "torsion", "left", "right", "why"}};
  for (const auto* verdict : findings) rows.push_back(row(report, *verdict));
  return table(rows);
}

std::string countsText(const range::Assessment& assessment) {
  std::array<std::size_t, 4> counts{};
  for (const auto& joint : assessment.joints) ++counts[static_cast<std::size_t>(joint.level)];
  const auto count = [&](range::Level level) { return std::to_string(counts[static_cast<std::size_t>(level)]); };
  return "  " + std::to_string(assessment.joints.size()) + " joints: " + count(range::Level::Beyond) + " beyond, " +
         count(range::Level::Near) + " near the edge, " + count(range::Level::Supported) + " supported, " +
         count(range::Level::NotJudged) + " not judged\n";
}

}  // namespace

std::string reportText(const Report& report) {
  return report.project.table.name + ", " + report.poseName + ": " +
         std::string(toText(overallLevel(report.assessment))) + "\n" +
         summaryText(anatomy::summarise(report.project.specimen)) + assumptionsText(report.project.assumptions) + "\n" +
         findingsText(report) + "\n" + countsText(report.assessment) + "  " + kCaution +
         "\n  angles in degrees from neutral, dorsiflexion, left and rising left side positive; left and right: facet "
         "share\n";
}

}  // namespace zyga::app
