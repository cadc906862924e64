#include "core/picture/outline.h"

#include <algorithm>
#include <cmath>

#include "core/picture/colour.h"

namespace zyga::picture {

namespace {

constexpr float kAgainstPaper = 0.80f;
constexpr float kBoneOnBone = 0.38f;  // where bones touch; a step in depth adds to it
constexpr float kBoneOnBoneStep = 0.40f;
constexpr float kFold = 0.62f;
constexpr float kCrease = 0.30f;

/// How far `to` lies behind or before the plane of `from`, measured along the view, in sample widths.
float step(const SeenPoint& from, const SeenPoint& to) {
  const float slope = std::max(std::abs(from.face_W.dot(from.back_W)), 0.12f);
  return std::abs(from.face_W.dot(to.p_W - from.p_W)) / (slope * from.footprint);
}

/// A curved surface leaves the plane of one sample but not of both by much; a real step leaves both.
float depthStep(const SeenPoint& a, const SeenPoint& b) { return std::min(step(a, b), step(b, a)); }

float between(const SeenPoint& a, const SeenPoint& b, float spacing) {
  if (!a.bone() && !b.bone()) return 0;
  if (!a.bone() || !b.bone()) return kAgainstPaper;
  const float jump = depthStep(a, b) / spacing;
  if (a.instance != b.instance) return kBoneOnBone + kBoneOnBoneStep * smoothStep(2, 14, jump);
  return kFold * smoothStep(3, 11, jump);
}

/// An edge: the surface turns sharply ahead though it is calm behind.
float crease(const SeenPoint& here, const SeenPoint& ahead, const SeenPoint& behind) {
  if (here.instance != ahead.instance || here.instance != behind.instance || !here.bone()) return 0;
  const float turnAhead = 1 - here.normal_W.dot(ahead.normal_W);
  const float turnBehind = 1 - here.normal_W.dot(behind.normal_W);
  return kCrease * smoothStep(0.05f, 0.30f, turnAhead - 2.5f * turnBehind);
}

}  // namespace

Outliner::Outliner(double radius) : border_(static_cast<int>(std::ceil(radius))) {
  const double reach = std::max(radius, 1.0) + 0.75;  // the edge of the line is softened over a sample
  for (int y = -border_; y <= border_; ++y)
    for (int x = -border_; x <= border_; ++x) {
      const double weight = std::clamp(reach - std::hypot(x, y), 0.0, 1.0);
      if (weight > 0.05 && (x != 0 || y != 0)) offsets_.push_back({x, y, static_cast<float>(weight)});
    }
}

float Outliner::strength(const SeenBlock& block, int x, int y) const {
  const SeenPoint& here = block.at(x, y);
  float strongest = 0;
  for (const Offset& o : offsets_) {
    const SeenPoint& ahead = block.at(x + o.x, y + o.y);
    const float spacing = std::hypot(static_cast<float>(o.x), static_cast<float>(o.y));
    float line = between(here, ahead, spacing);
    if (line < kCrease) line = std::max(line, crease(here, ahead, block.at(x - o.x, y - o.y)));
    strongest = std::max(strongest, o.weight * line);
  }
  return strongest;
}

}  // namespace zyga::picture
