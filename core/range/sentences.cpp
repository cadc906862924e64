#include "core/range/sentences.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "core/range/band_search.h"
#include "core/range/range_end.h"
#include "core/range/wording.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;

/// Angles that would read 0.0° are not worth a word.
constexpr double kShown = 0.05 * std::numbers::pi / 180;

std::string join(const std::vector<std::string>& parts) {
  std::string text;
  for (const std::string& part : parts) {
    if (!text.empty()) text += ", ";
    text += part;
  }
  return text;
}

std::string limitWords(const JointJudge& judge, FindingKind kind, const std::string& limit) {
  if (kind != FindingKind::Overlap) return " (tolerated " + limit + ")";
  const bool byArea = judge.assumptions().overlapBy == OverlapBy::Area;
  return (byArea ? " of area (least " : " (least ") + limit + ")";
}

/// "share 38 %", "press 4.2 mm into each other", "gape 12 mm"; `amount` may name both sides.
std::string facetDeed(FindingKind kind, const std::string& amount) {
  switch (kind) {
    case FindingKind::Overlap:
      return "share " + amount;
    case FindingKind::FacetContact:
      return "press " + amount + " into each other";
    default:
      return "gape " + amount;
  }
}

std::string typedText(const JointJudge& judge, int motion, double angle, double end) {
  const bool sameWay = angle * end > 0;
  const TextPair text = degreesApart(std::abs(angle), sameWay ? std::abs(end) : end);
  return motionName(judge.joint(), motion, angle) + " " + text.measured + " of " + text.limit + " (" +
         judge.joint().typed->source + ")";
}

/// The same criterion on left and right in one phrase: "facets share 38 % left, 37 % right (least 50 %)".
std::string describeBoth(const JointJudge& judge, const Criterion& left, const Criterion& right) {
  const TextPair l = textApart(left);
  const TextPair r = textApart(right);
  if (l.limit != r.limit) return describe(judge, left) + ", " + describe(judge, right);
  const std::string amount = l.measured + " left, " + r.measured + " right";
  return "facets " + facetDeed(left.kind, amount) + limitWords(judge, left.kind, l.limit);
}

/// The criteria of one level, worst first, left and right of a kind together.
std::vector<std::string> criteriaParts(const JointJudge& judge, const Criteria& criteria, Level level) {
  std::vector<const Criterion*> chosen;
  for (const Criterion& c : criteria) {
    if (c.level == level) chosen.push_back(&c);
  }
  std::stable_sort(chosen.begin(), chosen.end(), [](const auto* a, const auto* b) { return a->excess > b->excess; });
  std::vector<std::string> parts;
  std::vector<const Criterion*> told;
  for (const Criterion* c : chosen) {
    if (std::find(told.begin(), told.end(), c) != told.end()) continue;
    const auto other = std::find_if(chosen.begin(), chosen.end(), [c](const Criterion* o) {
      return o != c && o->kind == c->kind && c->kind != FindingKind::TypedLimit;
    });
    if (other == chosen.end()) {
      parts.push_back(describe(judge, *c));
      continue;
    }
    told.push_back(*other);
    const bool leftFirst = c->side == anatomy::Side::Left;
    parts.push_back(leftFirst ? describeBoth(judge, *c, **other) : describeBoth(judge, **other, *c));
  }
  return parts;
}

std::string plainAngle(const JointJudge& judge, int motion, double angle) {
  return motionName(judge.joint(), motion, angle) + " " + degreesText(std::abs(angle));
}

std::string angleOf(const JointJudge& judge, int motion, double angle, double end) {
  const TextPair text = degreesApart(std::abs(angle), std::abs(end));
  return motionName(judge.joint(), motion, angle) + " " + text.measured + " of " + text.limit;
}

std::vector<int> motionsShown(const Vector3d& angles) {
  std::vector<int> motions;
  for (int k = 0; k < 3; ++k) {
    if (std::abs(angles[k]) >= kShown) motions.push_back(k);
  }
  return motions;
}

bool typedAtFault(const Criteria& criteria, int motion) {
  return std::any_of(criteria.begin(), criteria.end(), [motion](const Criterion& c) {
    return c.kind == FindingKind::TypedLimit && c.motion == motion && c.level == Level::Beyond;
  });
}

/// How far an angle has left the range that leads out from zero; empty where it has not, or zero is not supported.
std::string pastItsEnd(const JointJudge& judge, const Vector3d& angles, int motion) {
  const RangeEnd end(judge, angles, motion);
  const Tried zero = end.at(0);
  if (!zero.holds) return "";
  const Tried present = end.at(angles[motion]);
  return present.holds ? "" : angleOf(judge, motion, present.value, end.between(zero, present));
}

/// The same where the range leaves zero out. A search, so it is asked last.
std::string outsideItsRange(const JointJudge& judge, const Vector3d& angles, int motion) {
  const RangeEnd search(judge, angles, motion);
  const std::optional<Tried> seed = search.supported();
  if (!seed) return "";
  const double angle = angles[motion];
  const double end = search.between(*seed, search.at(angle));
  if (angle * end > 0 && std::abs(angle) > std::abs(end)) return angleOf(judge, motion, angle, end);
  return plainAngle(judge, motion, angle) + " where " + plainAngle(judge, motion, end) + " is the least";
}

using Telling = std::string (*)(const JointJudge&, const Vector3d&, int);

std::vector<std::string> tell(const JointJudge& judge, const Vector3d& angles, const std::vector<int>& motions,
                              Telling telling) {
  std::vector<std::string> parts;
  for (const int k : motions) {
    std::string text = telling(judge, angles, k);
    if (!text.empty()) parts.push_back(std::move(text));
  }
  return parts;
}

std::string byItself(const JointJudge& judge, const Vector3d& angles, int motion) {
  const std::string text = pastItsEnd(judge, withMotion(Vector3d::Zero(), motion, angles[motion]), motion);
  return text.empty() ? "" : text + " by itself";
}

std::vector<std::string> onlyTogether(const JointJudge& judge, const Vector3d& angles,
                                      const std::vector<int>& motions) {
  std::vector<std::string> parts;
  for (const int k : motions) parts.push_back(plainAngle(judge, k, angles[k]));
  if (judge.beyond(Vector3d::Zero())) {
    parts.back() += ", and the neutral pose is beyond as well";
  } else if (motions.size() > 1) {
    parts.back() += ", each supported by itself but not together";
  }
  return parts;
}

/// The motions that have left their range; where several have to answer together, that.
std::vector<std::string> motionsAtFault(const JointJudge& judge, const Criteria& criteria, const Vector3d& angles) {
  std::vector<int> motions = motionsShown(angles);
  if (motions.empty()) return {"in the neutral pose"};
  const std::size_t shown = motions.size();
  std::erase_if(motions, [&](int k) { return typedAtFault(criteria, k); });  // their criterion names them
  for (const Telling telling : {pastItsEnd, byItself, outsideItsRange}) {
    std::vector<std::string> parts = tell(judge, angles, motions, telling);
    if (!parts.empty() || motions.size() < shown) return parts;
  }
  return onlyTogether(judge, angles, motions);
}

/// The motion that has used most of its range.
std::vector<std::string> motionNearest(const JointJudge& judge, const Vector3d& angles) {
  double most = -1;
  std::string text = "in the neutral pose";
  for (const int k : motionsShown(angles)) {
    const RangeEnd search(judge, angles, k);
    const double end = search.beyond(search.at(angles[k]), angles[k]);
    const double used = std::abs(angles[k]) / std::max(std::abs(end), kShown);
    if (used <= most) continue;
    most = used;
    text = angleOf(judge, k, angles[k], end);
  }
  return {text};
}

std::vector<std::string> supportedParts(const JointJudge& judge, const Criteria& criteria, const Vector3d& angles) {
  std::vector<std::string> parts;
  if (judge.hasFacets()) {
    std::string shares;
    for (const Criterion& c : criteria) {
      if (c.kind != FindingKind::Overlap) continue;
      shares += shares.empty() ? "" : ", ";
      shares += percentText(c.measured).append(" ").append(sideWord(c.side));
    }
    const bool byArea = judge.assumptions().overlapBy == OverlapBy::Area;
    parts.push_back((byArea ? "facets share of area " : "facets share ") + shares);
  }
  for (const int k : motionsShown(angles)) {
    const double end = judge.hasFacets() || !judge.joint().typed ? 0 : endTowards(judge, angles, k, 0, angles[k]);
    const bool typed = end * angles[k] > 0;
    parts.push_back(typed ? typedText(judge, k, angles[k], end) : plainAngle(judge, k, angles[k]));
  }
  if (parts.empty()) parts.push_back("all angles zero");
  return parts;
}

std::vector<std::string> notJudgedParts(const JointJudge& judge, const Criteria& criteria) {
  if (!judge.hasFacets()) return {"no facets and no typed limits"};
  bool left = false;
  for (const Criterion& c : criteria) left = left || c.side == anatomy::Side::Left;
  return {left ? "the right facets are not known" : "the left facets are not known"};
}

std::vector<std::string> offendingParts(const JointJudge& judge, const Criteria& criteria, const Vector3d& angles,
                                        Level level) {
  std::vector<std::string> parts = criteriaParts(judge, criteria, level);
  if (!judge.hasFacets()) return parts;
  const auto motions = level == Level::Beyond ? motionsAtFault(judge, criteria, angles) : motionNearest(judge, angles);
  parts.insert(parts.end(), motions.begin(), motions.end());
  return parts;
}

}  // namespace

std::string describe(const JointJudge& judge, const Criterion& criterion) {
  if (criterion.kind == FindingKind::TypedLimit) {
    return typedText(judge, criterion.motion, criterion.measured, criterion.limit);
  }
  const TextPair text = textApart(criterion);
  return std::string(sideWord(criterion.side)) + " facets " + facetDeed(criterion.kind, text.measured) +
         limitWords(judge, criterion.kind, text.limit);
}

std::string sentence(const JointJudge& judge, const Criteria& criteria, const Vector3d& angles) {
  const Level level = criteria.level();
  const std::string start = judge.joint().id + " ";
  switch (level) {
    case Level::Supported:
      return start + "supported: " + join(supportedParts(judge, criteria, angles));
    case Level::NotJudged:
      return start + "not judged: " + join(notJudgedParts(judge, criteria));
    case Level::Near:
      return start + "near the edge: " + join(offendingParts(judge, criteria, angles, level));
    default:
      return start + "beyond: " + join(offendingParts(judge, criteria, angles, level));
  }
}

std::string stopText(const JointJudge& judge, const Criteria& justOutside) {
  const auto [worst, both] = stopping(justOutside);
  if (!worst) return "nothing stops it within " + degreesText(kSearchedFar);
  if (worst->kind == FindingKind::TypedLimit) {
    return "limit " + degreesText(worst->limit) + " (" + judge.joint().typed->source + ")";
  }
  const std::string amount =
      worst->kind == FindingKind::Overlap ? percentText(worst->limit) : millimetresText(worst->limit);
  return (both ? "both" : std::string(sideWord(worst->side))) + " facets " + facetDeed(worst->kind, amount);
}

}  // namespace zyga::range
