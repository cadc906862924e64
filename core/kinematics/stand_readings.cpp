#include "core/kinematics/stand_readings.h"

#include <cmath>
#include <limits>

#include "core/kinematics/shoulder_blade.h"

namespace zyga::kinematics {
namespace {

using anatomy::Specimen;
using Eigen::Vector3d;

constexpr double kUnknown = std::numeric_limits<double>::quiet_NaN();

double rise(const Vector3d& along) { return std::atan2(along.z(), along.head<2>().norm()); }

std::optional<Vector3d> point(const Specimen& specimen, const Placement& X_WB, const std::string& bone,
                              std::string_view landmark) {
  const auto index = specimen.findBone(bone);
  if (!index) return std::nullopt;
  const auto& landmarks = specimen[*index].landmarks;
  const auto found = landmarks.find(landmark);
  if (found == landmarks.end()) return std::nullopt;
  return X_WB[index->value] * found->second;
}

double slopeBetween(const std::optional<Vector3d>& from, const std::optional<Vector3d>& to) {
  return from && to ? rise(*to - *from) : kUnknown;
}

double meanHeight(const std::optional<Vector3d>& left, const std::optional<Vector3d>& right) {
  return left && right ? (left->z() + right->z()) / 2 : kUnknown;
}

double slopeOfBlade(const Specimen& specimen, const Placement& X_WB, const std::string& bone) {
  const auto blade = specimen.findBone(bone);
  if (!blade || X_WB.empty()) return kUnknown;
  return bladeSlope(X_WB[blade->value].linear(), X_WB.front().linear());
}

double glenoacetabular(const std::optional<Vector3d>& shoulderLeft, const std::optional<Vector3d>& hipLeft,
                       const std::optional<Vector3d>& shoulderRight, const std::optional<Vector3d>& hipRight) {
  if (!shoulderLeft || !hipLeft || !shoulderRight || !hipRight) return kUnknown;
  return ((*shoulderLeft - *hipLeft).norm() + (*shoulderRight - *hipRight).norm()) / 2;
}

}  // namespace

std::optional<double> snoutHeight(const Specimen& specimen, const Placement& X_WB) {
  const auto skull = specimen.findBone("skull");
  if (!skull) return std::nullopt;
  return point(specimen, X_WB, "skull", "snout").value_or(X_WB[skull->value].translation()).z();
}

StandReadings readStand(const Specimen& specimen, const Placement& X_WB, anatomy::HorizontalBy horizontalBy) {
  const auto at = [&](const std::string& bone, std::string_view landmark) {
    return point(specimen, X_WB, bone, landmark);
  };
  StandReadings r;
  r.trunkSlope = slopeBetween(at(toId(lastOfTrunk(specimen.counts)), "caudalRim"), at("D1", "cranialRim"));
  const Vector3d left_W = X_WB.empty() ? Vector3d::UnitY() : Vector3d(X_WB.front().linear().col(1));
  r.roll = rise(left_W);
  const auto hipLeft = at("femur.L", "proximal"), hipRight = at("femur.R", "proximal");
  const auto shoulderLeft = at("humerus.L", "proximal"), shoulderRight = at("humerus.R", "proximal");
  r.hipHeight = meanHeight(hipLeft, hipRight);
  r.shoulderHeight = meanHeight(shoulderLeft, shoulderRight);
  r.glenoacetabular = glenoacetabular(shoulderLeft, hipLeft, shoulderRight, hipRight);
  const auto neck = specimen.findBone("C" + std::to_string(specimen.counts.cervical));
  const auto along = neck ? anatomy::cranialDirection(specimen, *neck, horizontalBy) : std::nullopt;
  r.neckBaseSlope = along ? rise(X_WB[neck->value].linear() * *along) : kUnknown;
  r.tailBaseSlope = slopeBetween(at("Ca1", "cranialRim"), at("Ca5", "caudalRim"));
  r.bladeSlope = {slopeOfBlade(specimen, X_WB, "scapula.L"), slopeOfBlade(specimen, X_WB, "scapula.R")};
  r.feet = footPlaces(specimen, X_WB);
  return r;
}

double straightHindlimb(double femur, double tibia, double metatarsal, double cartilage) {
  return (femur + tibia + metatarsal) * (1 + cartilage);
}

}  // namespace zyga::kinematics
