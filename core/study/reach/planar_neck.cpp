#include "core/study/reach/planar_neck.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/kinematics/bend.h"
#include "core/range/contact/contact.h"
#include "core/range/limits.h"
#include "core/study/reach/extremes.h"

namespace zyga::study {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using kinematics::JointIndex;

constexpr double kSlopeStep = std::numbers::pi / 360;  // rad, of the first search
constexpr int kMostRounds = 200;
constexpr double kSettled = 1e-12;  // rad

double turnOf(const Vector2d& v) { return std::atan2(v.y(), v.x()); }

/// A value for each slope that the links before a joint may add up to, evenly spaced.
class BySlope {
 public:
  BySlope(double least, double most)
      : least_(least), values_(static_cast<std::size_t>(std::ceil((most - least) / kSlopeStep)) + 1) {}
  int size() const { return static_cast<int>(values_.size()); }
  double slope(int i) const { return least_ + i * kSlopeStep; }
  double& operator[](int i) { return values_[static_cast<std::size_t>(i)]; }
  double at(double slope) const {
    const double place = std::clamp((slope - least_) / kSlopeStep, 0.0, static_cast<double>(values_.size() - 1));
    const auto below = static_cast<std::size_t>(place);
    const std::size_t above = std::min(below + 1, values_.size() - 1);
    return std::lerp(values_[below], values_[above], place - static_cast<double>(below));
  }

 private:
  double least_;
  std::vector<double> values_;
};

/// Looks for the best angle of one joint in steps; `gain` tells what a slope behind it brings.
template <class Gain>
double bestAngle(const PlanarJoint& joint, double slopeBefore, const Gain& gain) {
  const int steps = std::max(1, static_cast<int>(std::ceil((joint.max - joint.min) / kSlopeStep)));
  double best = joint.min, most = gain(slopeBefore + joint.min);
  for (int i = 1; i <= steps; ++i) {
    const double angle = std::lerp(joint.min, joint.max, static_cast<double>(i) / steps);
    const double value = gain(slopeBefore + angle);
    if (value > most) best = angle, most = value;
  }
  return best;
}

/// One joint after the other to where it does best, the others as they are: the tip runs on a circle about it.
void settle(const std::vector<PlanarJoint>& chain, const std::vector<Vector2d>& links, double towards,
            std::vector<double>& angles) {
  for (int round = 0; round < kMostRounds; ++round) {
    double moved = 0;
    for (std::size_t k = 0; k < chain.size(); ++k) {
      double slope = 0;
      for (std::size_t i = 0; i < k; ++i) slope += angles[i];
      // From this joint to the tip as it is with the joint's own angle at zero.
      Vector2d lever = Vector2d::Zero();
      double behind = slope;
      for (std::size_t i = k; i < chain.size(); ++i) {
        if (i > k) behind += angles[i];
        lever += Eigen::Rotation2Dd(behind) * links[i];
      }
      const double wanted = std::remainder(towards - turnOf(lever), 2 * std::numbers::pi);
      const double angle = std::clamp(wanted, chain[k].min, chain[k].max);
      moved = std::max(moved, std::abs(angle - angles[k]));
      angles[k] = angle;
    }
    if (moved < kSettled) return;
  }
}

double outOfPlane(const anatomy::Specimen& specimen, const PlanarNeck& neck, const kinematics::Placement& X_WB) {
  const Vector3d left = neck.plane.up_W.cross(neck.plane.ahead_W);
  double most = 0;
  for (const JointIndex joint : neck.joints) {
    const anatomy::Joint& j = specimen[joint];
    const Vector3d p_W = X_WB[j.proximal.value] * j.centreProximal;
    most = std::max(most, std::abs((p_W - neck.plane.p_WOrigin).dot(left)));
  }
  return most;
}

}  // namespace

PlanarNeck planarNeck(const range::Scenario& scenario) {
  const anatomy::Specimen& specimen = scenario.specimen();
  PlanarNeck neck;
  neck.plane = neckPlane(specimen, scenario.placement());
  neck.joints = neckJoints(specimen);
  neck.neutral = scenario.pose();
  for (const JointIndex joint : neck.joints) neck.neutral[joint] = Vector3d::Zero();
  const auto X_WB = kinematics::forwardKinematics(specimen, scenario.articulation(), neck.neutral);
  const Line line = neckLine(specimen, X_WB, neck.plane);
  neck.tip = line.back();
  neck.outOfPlane = outOfPlane(specimen, neck, X_WB);
  for (std::size_t i = 0; i < neck.joints.size(); ++i) {
    const JointIndex joint = neck.joints[i];
    const range::MotionRange band = range::motionRange(specimen, scenario.articulation(), scenario.assumptions(), joint,
                                                       Vector3d::Zero(), 0, scenario.contact());
    const bool moves = band.judged && !band.empty;
    if (!band.judged) neck.unjudged.push_back(specimen[joint].id);
    neck.chain.push_back({line[i], moves ? band.min : 0, moves ? band.max : 0});
  }
  return neck;
}

std::vector<double> farthestAngles(const std::vector<PlanarJoint>& chain, const Vector2d& tip,
                                   const Vector2d& direction) {
  const double towards = turnOf(direction);
  std::vector<Vector2d> links;
  for (std::size_t k = 0; k < chain.size(); ++k) {
    links.push_back((k + 1 == chain.size() ? tip : chain[k + 1].centre) - chain[k].centre);
  }
  // What a link and all behind it bring when it comes to a slope.
  std::vector<BySlope> best;
  double least = 0, most = 0;
  for (const PlanarJoint& joint : chain) {
    best.emplace_back(least, most);
    least += joint.min;
    most += joint.max;
  }
  const auto gain = [&](std::size_t k, double slope) {
    const double own = links[k].norm() * std::cos(slope + turnOf(links[k]) - towards);
    return own + (k + 1 < chain.size() ? best[k + 1].at(slope) : 0);
  };
  for (std::size_t k = chain.size(); k-- > 1;) {
    for (int i = 0; i < best[k].size(); ++i) {
      const auto mine = [&](double slope) { return gain(k, slope); };
      const double before = best[k].slope(i);
      best[k][i] = mine(before + bestAngle(chain[k], before, mine));
    }
  }
  std::vector<double> angles;
  double slope = 0;
  for (std::size_t k = 0; k < chain.size(); ++k) {
    angles.push_back(bestAngle(chain[k], slope, [&](double s) { return gain(k, s); }));
    slope += angles.back();
  }
  settle(chain, links, towards, angles);
  return angles;
}

Vector2d tipAt(const std::vector<PlanarJoint>& chain, Vector2d tip, const std::vector<double>& angles) {
  for (std::size_t k = chain.size(); k-- > 0;) {
    tip = chain[k].centre + Eigen::Rotation2Dd(angles[k]) * (tip - chain[k].centre);
  }
  return tip;
}

}  // namespace zyga::study
