#include "core/anatomy/marks/scan_measures.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/anatomy/plan/build_specimen.h"

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;

constexpr double kScale = 1.25;

const Specimen& sculpted() {
  static const Specimen specimen = buildSpecimen(fillBlanks(MeasurementTable{}));
  return specimen;
}

const Bone& bone(const Specimen& specimen, std::string_view id) { return specimen[*specimen.findBone(id)]; }

/// A bone of the specimen as if it had been scanned at another size, lying somewhere in space, and marked exactly.
Scan scanOf(const Bone& original) {
  Eigen::Isometry3d X_ScanBone = Eigen::Isometry3d::Identity();
  X_ScanBone.linear() = Eigen::AngleAxisd(0.7, Vector3d(1, -1, 2).normalized()).toRotationMatrix();
  X_ScanBone.translation() = Vector3d(0.4, 2, -1);
  Scan scan;
  scan.bone = original.name;
  scan.source = "an invented collection";
  scan.scale = kScale;
  for (const auto& [name, p] : original.landmarks) scan.landmarks[name] = X_ScanBone * p;
  if (const auto canal = original.landmarks.find("canal"); canal != original.landmarks.end()) {
    scan.landmarks[std::string(kCanalCranial)] = X_ScanBone * (canal->second + Vector3d(0.1, 0, 0));
    scan.landmarks[std::string(kCanalCaudal)] = X_ScanBone * (canal->second - Vector3d(0.1, 0, 0));
  }
  for (const Facet& facet : original.facets)
    scan.facets.push_back({mapped(facet, Eigen::Affine3d(X_ScanBone)), 0.0002});
  placeByLandmarks(scan, original);
  return scan;
}

std::optional<double> valueOf(const std::vector<MarkedMeasure>& measures, Measure wanted) {
  for (const auto& [measure, value] : measures)
    if (measure == wanted) return value;
  return std::nullopt;
}

// The sculpted bones are built from the table, so that what is measured between their landmarks must be what the table
// says, times the scan's scale. A facet's outline is a polygon of the ellipse's area, 0.3 % longer than it; the ends of
// an ulna lie as much off its axis.
TEST(ScanMeasures, AreThoseTheBoneWasBuiltFrom) {
  int compared = 0;
  for (const Bone& original : sculpted().bones) {
    if (original.fusedInto) continue;
    for (const auto& [measure, value] : measuresOf(scanOf(original))) {
      const Cell& built = original.measures[measure];
      if (!built.known() || (measure == Measure::LengthWithCondyle && value == 0)) continue;
      EXPECT_NEAR(value, (isAngle(measure) ? 1 : kScale) * built.value, 0.004 * std::abs(built.value) + 1e-9)
          << original.id << " " << toText(measure);
      ++compared;
    }
  }
  EXPECT_GT(compared, 600);
}

TEST(ScanMeasures, OfAVertebraThatLies) {
  const auto measures = measuresOf(scanOf(bone(sculpted(), "C7")));
  for (const Measure wanted :
       {Measure::Length, Measure::LengthWithCondyle, Measure::SpineHeight, Measure::DiapophysisWidth,
        Measure::FacetLength, Measure::FacetWidth, Measure::FacetHeight, Measure::FacetSpread, Measure::FacetTilt,
        Measure::PostzygLength, Measure::FacetOffset, Measure::FacetPitch, Measure::PostzygWidth,
        Measure::PostzygHeight, Measure::PostzygSpread, Measure::PostzygTilt, Measure::PostzygOffset,
        Measure::PostzygPitch})
    EXPECT_TRUE(valueOf(measures, wanted)) << toText(wanted);
  EXPECT_FALSE(valueOf(measures, Measure::FacetRadius)) << "flat facets say nothing of a curvature";
}

// Both ends of a bone whose facets differ in everything, and lie off the arc on which they slide.
TEST(ScanMeasures, OfFacetsOfTheirOwn) {
  MeasurementTable table;
  TableRow& row = table.rows.emplace_back(TableRow{*parseBoneId("C7"), {}, Evidence::Found, {}});
  const std::vector<std::pair<Measure, double>> given{
      {Measure::FacetLength, 0.080},    {Measure::FacetWidth, 0.058},   {Measure::FacetHeight, 0.190},
      {Measure::FacetSpread, 0.081},    {Measure::FacetTilt, 0.71},     {Measure::FacetOffset, -0.025},
      {Measure::FacetPitch, 0.31},      {Measure::FacetRadius, 0.240},  {Measure::PostzygLength, 0.066},
      {Measure::PostzygWidth, 0.048},   {Measure::PostzygHeight, 0.21}, {Measure::PostzygSpread, 0.077},
      {Measure::PostzygTilt, 0.62},     {Measure::PostzygOffset, 0.02}, {Measure::PostzygPitch, -0.12},
      {Measure::PostzygRadius, -0.300},
  };
  for (const auto& [measure, value] : given) row.measures[measure] = {value, CellOrigin::Measured, {}};
  const Specimen built = buildSpecimen(fillBlanks(table));
  const auto measures = measuresOf(scanOf(bone(built, "C7")));
  for (const auto& [measure, value] : given) {
    const auto found = valueOf(measures, measure);
    ASSERT_TRUE(found) << toText(measure);
    EXPECT_NEAR(*found, (isAngle(measure) ? 1 : kScale) * value, 0.004 * std::abs(value)) << toText(measure);
  }
}

TEST(ScanMeasures, OnlyDistancesCountBeforeItLies) {
  Scan scan = scanOf(bone(sculpted(), "C7"));
  scan.placed = false;
  scan.landmarks.erase("diapophysis.R");
  const auto measures = measuresOf(scan);
  EXPECT_TRUE(valueOf(measures, Measure::Length));
  for (const Measure open :
       {Measure::SpineHeight, Measure::DiapophysisWidth, Measure::FacetHeight, Measure::FacetSpread, Measure::FacetTilt,
        Measure::FacetOffset, Measure::FacetPitch, Measure::PostzygHeight, Measure::PostzygPitch})
    EXPECT_FALSE(valueOf(measures, open)) << toText(open);
}

// Half a vertebra had its spine taken for the rim: the project that held −12 mm could not be opened again.
TEST(ScanMeasures, NoLengthIsBelowZero) {
  Scan scan = scanOf(bone(sculpted(), "C6"));
  const Vector3d middle = (scan.landmarks["cranialRim"] + scan.landmarks["caudalRim"]) / 2;
  ASSERT_TRUE(valueOf(measuresOf(scan), Measure::SpineHeight));
  scan.landmarks["spineTop"] = 2 * middle - scan.landmarks["spineTop"];
  for (const auto& [measure, value] : measuresOf(scan))
    EXPECT_TRUE(isSigned(measure) || value >= 0) << toText(measure) << " " << value;
  EXPECT_FALSE(valueOf(measuresOf(scan), Measure::SpineHeight));
}

TEST(ScanMeasures, OneSideTellsTheWidthOfBoth) {
  const Bone& original = bone(sculpted(), "C7");
  Scan scan = scanOf(original);
  scan.landmarks.erase("diapophysis.R");
  EXPECT_NEAR(valueOf(measuresOf(scan), Measure::DiapophysisWidth).value(),
              kScale * original.measures.value(Measure::DiapophysisWidth), 1e-9);
}

TEST(ScanMeasures, NothingMarkedMeasuresNothing) {
  Scan scan;
  for (const char* id : {"C7", "femur.L", "skull"}) {
    scan.bone = bone(sculpted(), id).name;
    EXPECT_TRUE(measuresOf(scan).empty()) << id;
  }
}

TEST(ScanMeasures, InTheTableMissingBonesFollowThem) {
  MeasurementTable table;
  for (const char* id : {"C5", "C8"}) {
    const Scan scan = scanOf(bone(sculpted(), id));
    table = withMeasures(table, scan, measuresOf(scan));
  }
  const Specimen grown = buildSpecimen(fillBlanks(table));
  for (const char* id : {"C6", "C7"}) {
    const Cell& length = bone(grown, id).measures[Measure::Length];
    EXPECT_EQ(length.origin, CellOrigin::BetweenNeighbours) << id;
    EXPECT_NEAR(length.value, kScale * bone(sculpted(), id).measures.value(Measure::Length), 1e-6) << id;
    EXPECT_NEAR(bone(grown, id).facets[0].length(), kScale * bone(sculpted(), id).facets[0].length(), 1e-6) << id;
  }
  EXPECT_EQ(bone(grown, "C5").evidence, Evidence::Found);
  EXPECT_EQ(bone(grown, "C5").source, "an invented collection");
  EXPECT_EQ(bone(grown, "C6").evidence, Evidence::Inferred);
}

// As in a project, whose table has been filled: what was inferred from the old values must not stay.
TEST(ScanMeasures, AFilledTableIsFilledAnew) {
  MeasurementTable table = fillBlanks(MeasurementTable{});
  for (const char* id : {"C5", "C8"}) {
    const Scan scan = scanOf(bone(sculpted(), id));
    table = withMeasures(table, scan, measuresOf(scan));
  }
  const Specimen grown = buildSpecimen(fillAnew(table));
  EXPECT_NEAR(bone(grown, "C6").measures.value(Measure::Length),
              kScale * bone(sculpted(), "C6").measures.value(Measure::Length), 1e-6);
  EXPECT_EQ(bone(grown, "C6").measures[Measure::Length].origin, CellOrigin::BetweenNeighbours);
}

TEST(ScanMeasures, WhatWasMeasuredOtherwiseKeepsItsSource) {
  const Scan scan = scanOf(bone(sculpted(), "C5"));
  MeasurementTable table;
  TableRow& row = table.rows.emplace_back(TableRow{scan.bone, {}, Evidence::FoundDeformed, "a field book"});
  row.measures[Measure::CotyleHeight] = {0.11, CellOrigin::Measured, {}};
  row.measures[Measure::Length] = {0.3, CellOrigin::Measured, {}};
  const std::vector<MarkedMeasure> only{{Measure::Length, 0.42}};
  const MeasurementTable after = withMeasures(table, scan, only);
  EXPECT_EQ(after.rows.size(), 1u);
  EXPECT_EQ(after.rows[0].evidence, Evidence::FoundDeformed);
  EXPECT_EQ(after.rows[0].source, "a field book");
  EXPECT_EQ(after.rows[0].measures[Measure::Length].value, 0.42);
  EXPECT_EQ(after.rows[0].measures[Measure::CotyleHeight].value, 0.11);
}

}  // namespace
}  // namespace zyga::anatomy
