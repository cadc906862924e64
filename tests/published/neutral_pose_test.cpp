#include <gtest/gtest.h>

#include <algorithm>

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/placement.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "tests/support/two_vertebrae.h"

/// Published definitions and values about the neutral pose. Each test names the row's source beside it.
namespace zyga::range {
namespace {

using anatomy::BoneKind;
using anatomy::Measure;
using anatomy::MeasurementTable;
using test::kDegree;
using test::kOnlyJoint;

MeasurementTable table() { return anatomy::fillBlanks(MeasurementTable{}); }

anatomy::Cell& cell(MeasurementTable& table, BoneKind kind, int number, Measure measure) {
  return table.find({kind, number, 0, anatomy::Side::Midline})->measures[measure];
}

Assumptions assuming(NeutralBy by, double cartilagePercent = 0) {
  Assumptions assumptions;
  assumptions.neutralBy = by;
  assumptions.neck.amount = assumptions.trunk.amount = assumptions.tail.amount = cartilagePercent;
  return assumptions;
}

/// Dorsal slope of a bone against another in the neutral pose, degrees.
double slope(const MeasurementTable& table, const Assumptions& assumptions, const char* of, const char* against) {
  const anatomy::Specimen s = anatomy::buildSpecimen(table);
  const auto X = kinematics::forwardKinematics(s, articulate(s, assumptions), kinematics::Pose::neutral(s));
  const Eigen::Matrix3d R = X[s.findBone(against)->value].linear().transpose() * X[s.findBone(of)->value].linear();
  return std::atan2(R(2, 0), R(0, 0)) / kDegree;
}

// A5, F8. Taylor & Wedel 2013, PLoS ONE 8(10):e78214, abstract: cartilage as a share of centrum length. No single value
// is right, so all are offered, each with its source.
TEST(PublishedNeutral, cartilagePresetsAreThePublishedShares) {
  const auto percentOf = [](const std::string& animal) {
    const auto found = std::find_if(kCartilagePresets.begin(), kCartilagePresets.end(),
                                    [&](const CartilagePreset& p) { return p.animal.id == "cartilage." + animal; });
    return found == kCartilagePresets.end() ? -1 : found->percent;
  };
  EXPECT_EQ(percentOf("rhea"), 2.59);
  EXPECT_EQ(percentOf("turkey"), 4.56);
  EXPECT_EQ(percentOf("sauroposeidon"), 4.5);
  EXPECT_EQ(percentOf("juvenile-apatosaurus-low"), 15);
  EXPECT_EQ(percentOf("juvenile-apatosaurus-high"), 20);
  EXPECT_EQ(percentOf("juvenile-giraffe"), 24);
  // F8, marked second hand.
  EXPECT_EQ(percentOf("ostrich"), 6.3);
  EXPECT_EQ(percentOf("horse"), 6.9);
  EXPECT_EQ(percentOf("alligator"), 14.9);
  for (const CartilagePreset& preset : kCartilagePresets) {
    const std::string animal(preset.animal.id);
    const bool secondHand =
        animal == "cartilage.ostrich" || animal == "cartilage.horse" || animal == "cartilage.alligator";
    EXPECT_EQ(preset.source.id, secondHand ? "source.taylor-wedel-2013-second-hand" : "source.taylor-wedel-2013")
        << animal;
    const anatomy::Specimen bones = test::twoVertebrae({.centrumLength = 1});
    EXPECT_NEAR(preset.cartilage().thickness(bones.joints[0]), preset.percent / 100, 1e-12);
  }
}

// A6. Facets in greatest contact, and a second definition that also asks for parallel centrum faces (Taylor, Wedel &
// Naish 2009, Acta Palaeontol. Pol. 54:213; Mallison 2010, Swiss J. Geosci. 103:211): the same on vertebrae without
// wedges. Zero of all angles is the neutral pose, dorsiflexion positive (Vidal et al. 2020, PLoS ONE 15(1):e0227537).
TEST(PublishedNeutral, bothDefinitionsAgreeWithoutWedges) {
  MeasurementTable level = table();
  for (anatomy::TableRow& row : level.rows) {
    row.measures[Measure::Wedge].value = row.measures[Measure::FacetTurn].value = 0;
  }
  const anatomy::Specimen specimen = anatomy::buildSpecimen(level);
  const auto byFacets = articulate(specimen, assuming(NeutralBy::Facets));
  const auto byBoth = articulate(specimen, assuming(NeutralBy::FacetsAndCentra));
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const Eigen::Matrix3d between = byFacets.rests[j].rotation.transpose() * byBoth.rests[j].rotation;
    EXPECT_LT(Eigen::AngleAxisd(between).angle(), 1e-6) << specimen.joints[j].id;
  }
}

// The same sources: on a wedged vertebra whose facets do not follow the wedge the two differ. The facets leave
// everything as it was; parallel faces would raise what lies beyond by the whole wedge; both together by half of it.
TEST(PublishedNeutral, theDefinitionsDifferOnAWedgedVertebra) {
  const double wedge = 10;
  MeasurementTable wedged = table();
  cell(wedged, BoneKind::Dorsal, 5, Measure::Wedge).value += wedge * kDegree;
  for (const int caudalOfJoint : {5, 6}) {
    cell(wedged, BoneKind::Dorsal, caudalOfJoint, Measure::FacetTurn).value -= 0.5 * wedge * kDegree;
  }
  const auto raised = [&](NeutralBy by) {
    return slope(wedged, assuming(by), "D1", "D8") - slope(table(), assuming(by), "D1", "D8");
  };
  EXPECT_NEAR(raised(NeutralBy::Facets), 0, 1e-6);
  EXPECT_NEAR(raised(NeutralBy::FacetsAndCentra), 0.5 * wedge, 0.1);
}

TEST(PublishedNeutral, zeroIsNeutralAndDorsiflexionRaises) {
  const anatomy::Specimen s = anatomy::buildSpecimen(table());
  const auto articulation = articulate(s, assuming(NeutralBy::Facets, 4.5));
  const auto slopeAt = [&](double dorsiflexion) {
    kinematics::Pose pose = kinematics::Pose::neutral(s);
    pose[*s.findJoint("C6-C7")][0] = dorsiflexion;
    const auto X = kinematics::forwardKinematics(s, articulation, pose);
    const Eigen::Matrix3d R = X[s.findBone("C7")->value].linear().transpose() * X[s.findBone("C2")->value].linear();
    return std::atan2(R(2, 0), R(0, 0)) / kDegree;
  };
  const Assessment neutral = assess(s, articulation, assuming(NeutralBy::Facets, 4.5), kinematics::Pose::neutral(s));
  for (const JointVerdict& verdict : neutral.joints) {
    if (!verdict.left) continue;
    EXPECT_GT(verdict.left->overlapLength, 0.95) << s[verdict.joint].id;
  }
  EXPECT_NEAR(slopeAt(5 * kDegree) - slopeAt(0), 5, 1e-9);
  EXPECT_NEAR(slopeAt(-5 * kDegree) - slopeAt(0), -5, 1e-9);
}

// A7. Least overlap of 50 % of facet length is the published rule (Stevens & Parrish 1999, Science 284:798, quoted
// second hand; tested on ostriches by Cobley, Rayfield & Barrett 2013, PLoS ONE 8(8):e72187, abstract read). Living
// turkeys slide almost to disarticulation (Kambic, Biewener & Pierce 2017, Front. Zool. 14:37, abstract read). The step
// between has no source. Each preset carries a joint of equal facets to about (1 - s) L / R, as in A8.
TEST(PublishedNeutral, overlapPresetsAreThePublishedRules) {
  const test::TwoVertebrae spec;
  const anatomy::Specimen specimen = test::twoVertebrae(spec);
  const double shares[] = {0.50, 0.25, 0.00};
  const char* sources[] = {"source.stevens-parrish-1999", "source.program-default", "source.kambic-2017"};
  for (std::size_t i = 0; i < kOverlapPresets.size(); ++i) {
    EXPECT_EQ(kOverlapPresets[i].share, shares[i]);
    EXPECT_EQ(kOverlapPresets[i].source.id, sources[i]);
    Assumptions assumptions;
    assumptions.minOverlap = kOverlapPresets[i].share;
    assumptions.facetContactTolerated = assumptions.facetGapTolerated = 1;
    const MotionRange dorsal =
        motionRange(specimen, articulate(specimen, assumptions), assumptions, kOnlyJoint, {0, 0, 0}, 0);
    // Flat facets leave the arc a little earlier: 2 atan of half of (1 - s) L / R.
    EXPECT_NEAR(dorsal.max, 2 * std::atan(0.5 * (1 - shares[i]) * spec.prezygLength / spec.height), 2e-5) << shares[i];
  }
  EXPECT_EQ(Assumptions().minOverlap, kOverlapPresets[0].share) << "the published rule is the default";
  EXPECT_EQ(Assumptions().overlapBy, OverlapBy::Length) << "and it is by length";
}

// A12 and B7. Vidal et al. 2020, Sci. Rep. 10:6638: the sacrum is wedged, by over 10 degrees in all eusauropods and 20
// in one animal. The turn itself is geometry: a wedge turns everything beyond it by exactly its own angle, through the
// articulation of the whole animal.
TEST(PublishedNeutral, aWedgeTurnsEverythingBeyondIt) {
  for (const double wedge : {10.0, 20.0}) {
    for (const auto& [kind, number] : {std::pair{BoneKind::Sacral, 3}, std::pair{BoneKind::Dorsal, 5}}) {
      MeasurementTable wedged = table();
      cell(wedged, kind, number, Measure::Wedge).value += wedge * kDegree;
      const auto raised = [&](const Assumptions& assumptions, const char* beyond) {
        return std::remainder(slope(wedged, assumptions, beyond, "Ca5") - slope(table(), assumptions, beyond, "Ca5"),
                              360);
      };
      for (const NeutralBy by : {NeutralBy::Facets, NeutralBy::FacetsAndCentra}) {
        const Assumptions bare = assuming(by);
        for (const char* beyond : {"D2", "C10", "C3", "skull"}) {
          EXPECT_NEAR(raised(bare, beyond), wedge, 0.02) << beyond;
        }
        EXPECT_NEAR(slope(wedged, bare, "Ca20", "Ca2"), slope(table(), bare, "Ca20", "Ca2"), 1e-6);
      }
      const Assumptions padded = assuming(NeutralBy::Facets, 10);
      EXPECT_NEAR(raised(padded, "C3"), wedge, 0.2);
    }
  }
}

}  // namespace
}  // namespace zyga::range
