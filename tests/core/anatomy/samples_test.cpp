#include <gtest/gtest.h>

#include <fstream>
#include <set>
#include <sstream>

#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/summary.h"

namespace zyga::anatomy {
namespace {

MeasurementTable sample(const std::string& file) {
  std::ifstream in(std::string(ZYGAPOSE_SOURCE_DIR) + "/samples/" + file);
  std::stringstream text;
  text << in.rdbuf();
  const TableReading reading = readMeasurementTable(text.str(), file);
  for (const TableMessage& m : reading.messages) ADD_FAILURE() << debugText(m);
  return reading.table;
}

double lengthOf(const Specimen& specimen, std::string_view id) {
  return specimen[*specimen.findBone(id)].measures.value(Measure::Length);
}

// B11 and B12 of the checks: the invented high browser (B11 common practice, no source; B12 invented).
TEST(Samples, HighBrowserHasTheSizeItSays) {
  const MeasurementTable filled = fillBlanks(sample("high_browser.csv"));
  EXPECT_TRUE(proportionWarnings(filled).empty());
  const Specimen s = buildSpecimen(filled);
  const Summary sizes = summarise(s);
  EXPECT_EQ(s.counts, (RegionCounts{13, 11, 5, 52}));
  EXPECT_NEAR(sizes.neck, 4.990, 1e-9);
  EXPECT_NEAR(sizes.trunk, 2.994, 1e-9);
  EXPECT_NEAR(sizes.presacral, 7.984, 1e-9);
  EXPECT_NEAR(sizes.sacrum, 1.170, 1e-9);
  EXPECT_NEAR(sizes.skull, 0.520, 1e-9);
  EXPECT_NEAR(sizes.total, 18, 0.3);
  EXPECT_GT(sizes.neck, sizes.trunk);
  EXPECT_NEAR(lengthOf(s, "metacarpal3.L"), 0.350, 1e-9);
  EXPECT_NEAR(lengthOf(s, "metatarsal3.R"), 0.215, 1e-9);
  EXPECT_NEAR(lengthOf(s, "scapula.L"), 1.270, 1e-9);
  EXPECT_NEAR(sizes.humerusToFemur, 1180.0 / 1500, 1e-9);
}

TEST(Samples, LowBrowserHasAWhip) {
  const MeasurementTable filled = fillBlanks(sample("low_browser.csv"));
  EXPECT_TRUE(proportionWarnings(filled).empty());
  const Specimen s = buildSpecimen(filled);
  EXPECT_EQ(s.counts, (RegionCounts{15, 10, 5, 80}));
  EXPECT_GT(summarise(s).tail, summarise(s).neck + summarise(s).trunk);
  EXPECT_GT(s[*s.findBone("C14")].measures.value(Measure::SpineFork), 0.1) << "split spines at the root of the neck";
}

// Titanosaurs have no finger bones (Wilson 2002, Zool. J. Linn. Soc. 136:217; from memory).
TEST(Samples, WideGaugeHasNoFingerBones) {
  const MeasurementTable filled = fillBlanks(sample("wide_gauge.csv"));
  EXPECT_TRUE(proportionWarnings(filled).empty());
  const Specimen s = buildSpecimen(filled);
  EXPECT_EQ(s.plan, BodyPlan::WideGauge);
  EXPECT_EQ(s.counts, (RegionCounts{13, 10, 6, 40}));
  EXPECT_NEAR(summarise(s).total, 13, 0.3);
  for (const Bone& bone : s.bones) EXPECT_NE(bone.name.kind, BoneKind::ManusPhalanx) << bone.id;
  EXPECT_TRUE(s.findBone("metacarpal5.R").has_value() && s[*s.findBone("metacarpal5.R")].landmarks.contains("sole"));
}

// B11: five metacarpals and one thumb claw, five toes with three claws (common practice, no source).
TEST(Samples, FeetHaveTheirDigits) {
  const Specimen s = buildSpecimen(fillBlanks(sample("high_browser.csv")));
  for (int digit = 1; digit <= 5; ++digit) {
    EXPECT_TRUE(s.findBone("metacarpal" + std::to_string(digit) + ".L"));
    EXPECT_TRUE(s.findBone("metatarsal" + std::to_string(digit) + ".R"));
  }
}

TEST(Samples, AllShowEveryKindOfEvidenceButDeformation) {
  for (const char* file : {"high_browser.csv", "low_browser.csv", "wide_gauge.csv"}) {
    std::set<Evidence> seen;
    for (const TableRow& row : fillBlanks(sample(file)).rows) seen.insert(row.evidence);
    EXPECT_TRUE(seen.contains(Evidence::Found)) << file;
    EXPECT_TRUE(seen.contains(Evidence::Mirrored)) << file;
    EXPECT_TRUE(seen.contains(Evidence::Scaled)) << file;
    EXPECT_TRUE(seen.contains(Evidence::Inferred)) << file;
  }
}

}  // namespace
}  // namespace zyga::anatomy
