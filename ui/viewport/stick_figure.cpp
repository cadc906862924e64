#include "ui/viewport/stick_figure.h"

#include <initializer_list>
#include <string_view>

namespace zyga::ui {
namespace {

using anatomy::Bone;
using anatomy::BoneKind;

// Joins the landmarks that the bone has, in this order; "" is the origin.
void join(Sticks& sticks, const Bone& bone, std::initializer_list<std::string_view> names) {
  std::vector<Eigen::Vector3d> points;
  for (const auto name : names) {
    const auto found = bone.landmarks.find(name);
    if (name.empty())
      points.push_back(Eigen::Vector3d::Zero());
    else if (found != bone.landmarks.end())
      points.push_back(found->second);
  }
  for (std::size_t i = 1; i < points.size(); ++i) sticks.emplace_back(points[i - 1], points[i]);
}

}  // namespace

Sticks sticksOf(const Bone& bone) {
  Sticks sticks;
  if (anatomy::isVertebra(bone.name.kind)) {
    join(sticks, bone, {"caudalRim", "condyleTip"});
    join(sticks, bone, {"canal", "spineTop"});
    join(sticks, bone, {"diapophysis.L", "canal", "diapophysis.R"});
    join(sticks, bone, {"parapophysis.L", "ribTip.L"});
    join(sticks, bone, {"parapophysis.R", "ribTip.R"});
  } else if (bone.name.kind == BoneKind::Skull) {
    join(sticks, bone, {"", "snout", "jawHinge", ""});
  } else if (bone.name.kind == BoneKind::Jaw) {
    join(sticks, bone, {"", "chin"});
  } else if (bone.name.kind == BoneKind::DorsalRib) {
    join(sticks, bone, {"", "tuberculum", "middle", "tip"});
  } else if (bone.name.kind == BoneKind::Chevron) {
    join(sticks, bone, {"", "tip"});
  } else {
    join(sticks, bone, {"proximal", "distal"});
  }
  // Girdle bones and whatever else has only marks of its own: a star from their middle.
  if (sticks.empty() && bone.landmarks.size() > 1) {
    Eigen::Vector3d middle = Eigen::Vector3d::Zero();
    for (const auto& [name, point] : bone.landmarks) middle += point / static_cast<double>(bone.landmarks.size());
    for (const auto& [name, point] : bone.landmarks) sticks.emplace_back(middle, point);
  }
  return sticks;
}

}  // namespace zyga::ui
