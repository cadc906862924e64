#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/study/mass/body_segments.h"
#include "core/study/reach/elevation.h"

/// The method of Preuschoft as Christian & Heinrich put it to a sauropod's neck: what lies ahead of a joint of the neck
/// pulls it down with its weight W and turns about the joint with the moment M; one member over the neural spines (or,
/// where the neck leans back, one under the centra) holds it, and both press the joint:
///   F = |M| / lever + W cos a,   stress = F / area,
/// a the angle of the neck's axis at the joint from the vertical: W cos a is the part of the weight along that axis,
/// below zero where the neck hangs and its weight pulls the joint apart. A posture with about the same stress at every
/// joint is then taken for the habitual one.
/// What it rests on: Christian & Heinrich 1998, Mitt. Mus. Naturkd. Berl. Geowiss. Reihe 1:73, abstract read (forces
/// along the neck against the areas of the discs); Christian 2002, Mitt. Mus. Naturkd. Berl. Geowiss. Reihe 5:271,
/// second hand (the size of the masses cancels, their proportions do not); Christian & Dzemski 2007, Fossil Record
/// 10:38, a catalogue record with part of its abstract seen. The formula itself is from memory: the papers could not be
/// read.
namespace zyga::study {

/// A joint whose bones say nothing of the size of centrum or neural spine; Text: its id.
inline constexpr reason::Id kNoSpineOrCentrum{"study.no-spine-or-centrum", 1};

inline constexpr double kGravity = 9.80665;  ///< m/s2

/// Where the one member that holds the neck from above is taken to run.
struct TensionPlace {
  /// Its height over the axis of the centrum as a share of the neural spine's. 1: along the tips, where a ligament is
  /// inferred (Tsuihiji 2004, J. Vert. Paleontol. 24:165, abstract read). That nothing else holds the neck, and lower,
  /// is a program default without a source.
  double share = 1;
  bool operator==(const TensionPlace&) const = default;
};
inline constexpr double kLeastTension = 0.2, kMostTension = 1.5;  ///< shares that may be asked for

/// Of the cotyle as an ellipse, m2: pi/4 height width (from memory, as the method takes it).
double centrumArea(double height, double width);
/// N; moment N m, lever m, weight N, `cosine` of the angle between the neck's axis and the vertical.
double compressiveForce(double moment, double lever, double weight, double cosine);

/// How even values along the neck are.
struct Evenness {
  double mean = 0;
  /// Standard deviation over all joints (by their number) over the mean; none where the mean is not above zero.
  std::optional<double> variation;
  std::optional<double> peakToMean;  ///< largest over the mean, likewise
  std::size_t peak = 0, lowest = 0;  ///< which is the largest, and which the smallest
};
/// Of at least one value.
Evenness evennessOf(const std::vector<double>& values);

/// What a joint of the neck carries in a posture, under the middle estimate of the masses.
struct JointLoad {
  double mass = 0;      ///< kg, ahead of the joint
  double moment = 0;    ///< N m about the joint's transverse axis; positive: turns down what lies ahead
  double sideways = 0;  ///< N m about the other two axes: the method leaves it out
  double lever = 0;     ///< m; where the moment is below zero that of the member under the centra
  double cosine = 0;    ///< of the angle between the neck's axis at the joint and the vertical
  double force = 0;     ///< N, along the neck's axis; below zero: pulls the joint apart
  double stress = 0;    ///< Pa
};

/// A posture of the neck.
struct NeckLoads {
  NeckCarriage which = NeckCarriage::Neutral;
  double slope = 0;               ///< rad over the horizontal, from the neck's base to its end
  std::vector<JointLoad> joints;  ///< as JointStress::joints
  Evenness evenness;              ///< of the stress
  /// Evenness::variation with head and neck in error by kHullError, one up and the other down and the other way round;
  /// an error that both have in common changes nothing. None where the variation has none.
  std::optional<double> variationLow, variationHigh;
};

/// Every joint of the neck bent by the same share of its own range from neutral.
struct EvenBend {
  double share = 0;  ///< 1 maximum dorsiflexion, -1 maximum ventriflexion
  double slope = 0;  ///< rad, as NeckLoads::slope
  std::optional<double> variation;
};

/// Force and stress at every joint of the neck, posture by posture.
struct JointStress {
  TensionPlace tension;
  Densities densities;
  struct Place {
    kinematics::JointIndex joint;
    std::string id;
    double area = 0;  ///< m2, of the cotyle of the bone ahead
    /// Height and width of that cotyle and both neural spines were measured.
    bool measured = false;
  };
  /// Base of the neck first. The atlas, which has no centrum of its own, counts as weight.
  std::vector<Place> joints;
  MassRange mass;  ///< kg, all that lies ahead of the neck's base
  std::array<NeckLoads, kNeckCarriages.size()> postures;
  std::vector<EvenBend> bends;         ///< from maximum ventriflexion to maximum dorsiflexion
  std::optional<std::size_t> evenest;  ///< the bend with the least variation
  /// Slopes (rad, least and most) of the bends whose variation is no larger than the evenest one's with head and neck
  /// in error, as NeckLoads::variationHigh: they are not told apart from it. Bends between may be less even.
  std::optional<std::array<double, 2>> alike;
  bool contactJudged = false;  ///< of the postures at the ends of ranges

  const NeckLoads& operator[](NeckCarriage which) const { return postures[static_cast<std::size_t>(which)]; }
  std::size_t measured() const;
  /// The posture with the least variation; null where none has one.
  const NeckLoads* evenestPosture() const;
};

/// Stress has the relative error of the masses (kHullError) and of the lever; centrum and spine have the errors of
/// their bones. Masses are those of bodySegments. Throws as elevation does, and reason::Failure (kNoSpineOrCentrum).
JointStress jointStress(const range::Scenario& scenario, const TensionPlace& tension = {},
                        const Densities& densities = {});

}  // namespace zyga::study
