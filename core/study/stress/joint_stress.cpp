#include "core/study/stress/joint_stress.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace zyga::study {
namespace {

using anatomy::Measure;
using Eigen::Vector2d;
using Eigen::Vector3d;
using kinematics::JointIndex;
using kinematics::Placement;

constexpr int kEvenBends = 41;

/// A piece of head or neck that hangs on a bone.
struct HangingPiece {
  anatomy::BoneIndex bone;
  Vector3d p_BCentre;
  BodyPart part;
  double mass;          ///< kg
  std::size_t carried;  ///< by so many joints of the neck, counted from the base
};

/// Factors on the masses of head and neck.
struct MassErrors {
  double head = 1, neck = 1;
  double of(BodyPart part) const { return part == BodyPart::Head ? head : neck; }
};

reason::Failure unsized(const anatomy::Joint& joint) {
  return reason::Failure(reason::Reason(kNoSpineOrCentrum, {reason::text(joint.id)}));
}

bool isAtlas(const anatomy::Bone& bone) {
  return bone.name.kind == anatomy::BoneKind::Cervical && bone.name.number == 1;
}

JointStress::Place stressPlace(const anatomy::Specimen& specimen, JointIndex index) {
  const anatomy::Joint& joint = specimen[index];
  const auto& ahead = specimen[joint.distal].measures;
  const auto& behind = specimen[joint.proximal].measures;
  const double area = centrumArea(ahead.valueOr(Measure::CotyleHeight, 0), ahead.valueOr(Measure::CotyleWidth, 0));
  if (!(area > 0)) throw unsized(joint);
  const bool measured = ahead[Measure::CotyleHeight].measured() && ahead[Measure::CotyleWidth].measured() &&
                        ahead[Measure::SpineHeight].measured() && behind[Measure::SpineHeight].measured();
  return {index, joint.id, area, measured};
}

/// Where the member over the spines passes a vertebra, (cranial, dorsal) in the bone's mid-plane, m.
Vector3d tensionPoint(const anatomy::Bone& bone, const anatomy::Joint& joint, const TensionPlace& tension) {
  const auto top = bone.landmarks.find("spineTop");
  if (top == bone.landmarks.end()) throw unsized(joint);
  return {top->second.x(), 0, tension.share * top->second.z()};
}

/// Distance of the joint's centre from the straight line between the two neighbours' points, in the mid-plane of the
/// bone behind, m.
double dorsalLever(const anatomy::Specimen& specimen, const anatomy::Joint& joint, const Placement& X_WB,
                   const TensionPlace& tension) {
  const auto& X_WP = X_WB[joint.proximal.value];
  const Vector3d behind = tensionPoint(specimen[joint.proximal], joint, tension);
  const Vector3d ahead =
      X_WP.inverse() * (X_WB[joint.distal.value] * tensionPoint(specimen[joint.distal], joint, tension));
  const auto flat = [](const Vector3d& p) { return Vector2d(p.x(), p.z()); };
  const Vector2d way = flat(ahead) - flat(behind), out = flat(joint.centreProximal) - flat(behind);
  const double lever = (way.y() * out.x() - way.x() * out.y()) / way.norm();
  if (!(lever > 0)) throw unsized(joint);
  return lever;
}

/// Of the member that holds a neck leaning back: along the underside of the centra, half the cotyle's height from the
/// centre. Program default, no source.
double ventralLever(const anatomy::Specimen& specimen, const anatomy::Joint& joint) {
  return 0.5 * specimen[joint.distal].measures.value(Measure::CotyleHeight);
}

class Weighing {
 public:
  Weighing(const range::Scenario& scenario, const TensionPlace& tension, const Densities& densities)
      : scenario_(scenario), tension_(tension) {
    const anatomy::Specimen& specimen = scenario.specimen();
    for (const JointIndex joint : jointsOf(specimen, Chain::Neck))
      if (!isAtlas(specimen[specimen[joint].distal])) places_.push_back(stressPlace(specimen, joint));
    if (places_.empty()) throw reason::Failure(reason::Reason(kNoNeck));
    for (const BodySegment& segment : bodySegments(scenario)) {
      if (segment.part != BodyPart::Head && segment.part != BodyPart::Neck) continue;
      const auto mass = massFromHulls(segment.hullVolume, densities[segment.part],
                                      densities.hullFactors[static_cast<std::size_t>(segment.part)]);
      const std::size_t carried = carriedBy(segment.bone);
      pieces_.push_back({segment.bone, segment.p_BCentre, segment.part, mass.mass, carried});
      if (carried == 0) continue;
      mass_.low += mass.low;
      mass_.mass += mass.mass;
      mass_.high += mass.high;
    }
  }

  const std::vector<JointStress::Place>& places() const { return places_; }
  const MassRange& mass() const { return mass_; }

  std::vector<JointLoad> loads(const Placement& X_WB, const MassErrors& errors = {}) const {
    std::vector<JointLoad> all;
    for (std::size_t i = 0; i < places_.size(); ++i) all.push_back(load(i, X_WB, errors));
    return all;
  }

 private:
  std::size_t carriedBy(anatomy::BoneIndex bone) const {
    const auto chain = scenario_.specimen().chainTo(bone);
    return static_cast<std::size_t>(std::count_if(places_.begin(), places_.end(), [&](const JointStress::Place& place) {
      return std::find(chain.begin(), chain.end(), place.joint) != chain.end();
    }));
  }

  JointLoad load(std::size_t i, const Placement& X_WB, const MassErrors& errors) const {
    const anatomy::Specimen& specimen = scenario_.specimen();
    const anatomy::Joint& joint = specimen[places_[i].joint];
    const Eigen::Matrix3d &R_WP = X_WB[joint.proximal.value].linear(), &R_WD = X_WB[joint.distal.value].linear();
    const Vector3d p_WJoint = X_WB[joint.proximal.value] * joint.centreProximal;
    JointLoad load;
    Vector3d turning = Vector3d::Zero();
    for (const HangingPiece& piece : pieces_) {
      if (piece.carried <= i) continue;
      const double mass = errors.of(piece.part) * piece.mass;
      const Vector3d arm = X_WB[piece.bone.value] * piece.p_BCentre - p_WJoint;
      load.mass += mass;
      turning += arm.cross(Vector3d(0, 0, -mass * kGravity));
    }
    // Axis 0 stands for dorsiflexion and is fixed to the bone behind.
    load.moment = -turning.dot(R_WP * joint.axes[0]);
    load.sideways = std::sqrt(std::max(0.0, turning.squaredNorm() - load.moment * load.moment));
    load.cosine = (R_WP * joint.longAxisProximal + R_WD * joint.longAxisDistal).normalized().z();
    load.lever = load.moment < 0 ? ventralLever(specimen, joint) : dorsalLever(specimen, joint, X_WB, tension_);
    load.force = compressiveForce(load.moment, load.lever, load.mass * kGravity, load.cosine);
    load.stress = load.force / places_[i].area;
    return load;
  }

  const range::Scenario& scenario_;
  TensionPlace tension_;
  std::vector<JointStress::Place> places_;
  std::vector<HangingPiece> pieces_;
  MassRange mass_;
};

Evenness evennessOfStress(const std::vector<JointLoad>& loads) {
  std::vector<double> stresses;
  for (const JointLoad& load : loads) stresses.push_back(load.stress);
  return evennessOf(stresses);
}

NeckLoads loadsOf(const Weighing& weighing, const Placement& X_WB) {
  NeckLoads made;
  made.joints = weighing.loads(X_WB);
  made.evenness = evennessOfStress(made.joints);
  if (!made.evenness.variation) return made;
  made.variationLow = made.variationHigh = made.evenness.variation;
  for (const MassErrors& errors :
       {MassErrors{1 + kHullError, 1 - kHullError}, MassErrors{1 - kHullError, 1 + kHullError}}) {
    const auto variation = evennessOfStress(weighing.loads(X_WB, errors)).variation;
    if (!variation) continue;
    made.variationLow = std::min(*made.variationLow, *variation);
    made.variationHigh = std::max(*made.variationHigh, *variation);
  }
  return made;
}

double chordSlope(const anatomy::Specimen& specimen, const Placement& X_WB, const SagittalPlane& plane) {
  const Line line = neckLine(specimen, X_WB, plane);
  const Vector2d chord = line[line.size() - (specimen.findBone("skull") ? 2 : 1)] - line.front();
  return std::atan2(chord.y(), chord.x());
}

/// Angles of the neck's joints between neutral and the end on that side; the head keeps its present ones.
kinematics::Pose evenlyBent(const range::Scenario& scenario, const Elevation& elevation, double share) {
  kinematics::Pose pose = scenario.pose();
  const auto& end = elevation[share < 0 ? NeckCarriage::Ventral : NeckCarriage::Dorsal].pose;
  for (const JointIndex joint : jointsOf(scenario.specimen(), Chain::Neck)) pose[joint] = std::abs(share) * end[joint];
  return pose;
}

}  // namespace

double centrumArea(double height, double width) { return std::numbers::pi / 4 * height * width; }

double compressiveForce(double moment, double lever, double weight, double cosine) {
  return std::abs(moment) / lever + weight * cosine;
}

Evenness evennessOf(const std::vector<double>& values) {
  Evenness found;
  const auto count = static_cast<double>(values.size());
  for (const double value : values) found.mean += value / count;
  const auto [least, most] = std::minmax_element(values.begin(), values.end());
  found.lowest = static_cast<std::size_t>(least - values.begin());
  found.peak = static_cast<std::size_t>(most - values.begin());
  if (!(found.mean > 0)) return found;
  double square = 0;
  for (const double value : values) square += (value - found.mean) * (value - found.mean) / count;
  found.variation = std::sqrt(square) / found.mean;
  found.peakToMean = *most / found.mean;
  return found;
}

std::size_t JointStress::measured() const {
  return static_cast<std::size_t>(
      std::count_if(joints.begin(), joints.end(), [](const Place& place) { return place.measured; }));
}

const NeckLoads* JointStress::evenestPosture() const {
  const NeckLoads* evenest = nullptr;
  for (const NeckLoads& posture : postures) {
    const auto& variation = posture.evenness.variation;
    if (variation && (!evenest || *variation < *evenest->evenness.variation)) evenest = &posture;
  }
  return evenest;
}

JointStress jointStress(const range::Scenario& scenario, const TensionPlace& tension, const Densities& densities) {
  const Elevation elevated = elevation(scenario);
  const Weighing weighing(scenario, tension, densities);
  JointStress made;
  made.tension = tension;
  made.densities = densities;
  made.contactJudged = elevated.contactJudged;
  made.joints = weighing.places();
  made.mass = weighing.mass();
  for (const ElevationCase& one : elevated.cases) {
    NeckLoads& posture = made.postures[static_cast<std::size_t>(one.which)];
    posture = loadsOf(weighing, scenario.withPose(one.pose).placement());
    posture.which = one.which;
    posture.slope = one.slope;
  }
  for (int i = 0; i < kEvenBends; ++i) {
    EvenBend bend;
    bend.share = -1 + 2.0 * i / (kEvenBends - 1);
    const range::Scenario posed = scenario.withPose(evenlyBent(scenario, elevated, bend.share));
    bend.slope = chordSlope(scenario.specimen(), posed.placement(), elevated.plane);
    bend.variation = evennessOfStress(weighing.loads(posed.placement())).variation;
    const bool evener = bend.variation && (!made.evenest || *bend.variation < *made.bends[*made.evenest].variation);
    if (evener) made.evenest = made.bends.size();
    made.bends.push_back(bend);
  }
  if (!made.evenest) return made;
  const double share = made.bends[*made.evenest].share;
  const range::Scenario evenest = scenario.withPose(evenlyBent(scenario, elevated, share));
  const double within = loadsOf(weighing, evenest.placement()).variationHigh.value();
  for (const EvenBend& bend : made.bends) {
    if (!bend.variation || *bend.variation > within) continue;
    if (!made.alike) made.alike = {bend.slope, bend.slope};
    made.alike->front() = std::min(made.alike->front(), bend.slope);
    made.alike->back() = std::max(made.alike->back(), bend.slope);
  }
  return made;
}

}  // namespace zyga::study
