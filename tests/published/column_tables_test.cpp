// Published measured columns, typed as tables, all the rest inferred.
#include <gtest/gtest.h>

#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/summary.h"

namespace zyga::anatomy {
namespace {

Specimen build(const std::string& text, std::size_t expectedWarnings = 0) {
  const TableReading reading = readMeasurementTable(text, "published.csv");
  EXPECT_TRUE(reading.usable()) << (reading.messages.empty() ? "" : debugText(reading.messages.front()));
  EXPECT_EQ(reading.messages.size(), expectedWarnings);
  return buildSpecimen(fillBlanks(reading.table));
}

const Bone& bone(const Specimen& s, std::string_view id) { return s[*s.findBone(id)]; }

// B1: Janensch 1950, as tabulated in Taylor's manuscript data (palaeo-archbishop): Giraffatitan brancai MB.R.2180,
// centrum length / cotyle height / cotyle width, cm.
TEST(PublishedColumns, GiraffatitanNeckSumAndElongation) {
  const Specimen s = build(
      "# specimen: MB.R.2180\nbone,centrum length (cm),cotyle height (cm),cotyle width (cm)\n"
      "C2,23.2,10.0,8.2\nC3,30.6,11.6,12.3\nC4,45.7,13.8,13.2\nC5,56.0,15.2,17.8\nC6,69.1,15.0,22.1\n"
      "C7,70.5,22.5,19.8\n",
      1);  // the header does not say whether the condyle is counted
  const double printed[] = {2.55, 2.56, 3.39, 3.39, 3.73, 3.33};
  double sum = 0;
  for (int k = 2; k <= 7; ++k) {
    const Bone& c = bone(s, "C" + std::to_string(k));
    sum += c.measures.value(Measure::Length);
    EXPECT_NEAR(elongation(c), printed[k - 2], 0.005) << c.id;
  }
  EXPECT_NEAR(sum, 2.951, 1e-9);
  EXPECT_EQ(s.counts.cervical, 13);
  for (const Bone& b : s.bones) {
    if (b.id == "C9") {
      EXPECT_EQ(b.evidence, Evidence::Inferred);
      EXPECT_FALSE(b.measures[Measure::Length].rule.empty());
    }
  }
}

// B2: the same source, MB.R.2181: with and without condyle are different fields.
TEST(PublishedColumns, GiraffatitanWithAndWithoutCondyle) {
  const Specimen s = build(
      "# specimen: MB.R.2181\nbone,length (cm),length with condyle (cm)\n"
      "C5,,81\nC6,,90\nC7,,93\nC8,,98\nC9,,98\nC10,,100\nC11,87,\nC12,81,\nC13,67,\nD1,46,\nD2,36,\n");
  for (int k = 5; k <= 10; ++k) {
    const Bone& c = bone(s, "C" + std::to_string(k));
    EXPECT_TRUE(c.measures[Measure::LengthWithCondyle].measured());
    EXPECT_LT(c.measures.value(Measure::Length), c.measures.value(Measure::LengthWithCondyle));
  }
  const double printed[] = {242, 225, 186, 128, 100};
  const char* ids[] = {"C11", "C12", "C13", "D1", "D2"};
  const double shortest = bone(s, "D2").measures.value(Measure::Length);
  for (int i = 0; i < 5; ++i) {
    EXPECT_NEAR(100 * bone(s, ids[i]).measures.value(Measure::Length) / shortest, printed[i], 0.5) << ids[i];
  }
}

// B3: the same source: neck 8.78, trunk 3.92, sacrum 1.07 m; presacral 12.70 m; neck to trunk 2.24.
TEST(PublishedColumns, GiraffatitanRegions) {
  const Summary s = summarise(build("bone,length (m)\nneck,8.78\ntrunk,3.92\nsacrum,1.07\n"));
  EXPECT_NEAR(s.presacral, 12.70, 1e-9);
  EXPECT_NEAR(s.neckToTrunk, 2.24, 0.005);
  EXPECT_NEAR(s.sacrum, 1.07, 1e-9);
}

// B4: Hatcher 1901, as tabulated in Taylor's manuscript data: Diplodocus carnegii CM 84, centrum length with condyle,
// mm.
TEST(PublishedColumns, DiplodocusNeckRootFallsMonotonically) {
  const Specimen s = build(
      "# specimen: CM 84\n# plan: low browser\nbone,length with condyle (mm)\n"
      "C13,638\nC14,642\nC15,595\nD1,510\nD2,416\n");
  const char* ids[] = {"C13", "C14", "C15", "D1", "D2"};
  const double printed[] = {153.4, 154.3, 143.0, 122.6, 100};
  const double shortest = bone(s, "D2").measures.value(Measure::LengthWithCondyle);
  for (int i = 0; i < 5; ++i) {
    EXPECT_NEAR(100 * bone(s, ids[i]).measures.value(Measure::LengthWithCondyle) / shortest, printed[i], 0.06);
  }
  for (int i = 2; i < 5; ++i) {
    EXPECT_LT(bone(s, ids[i]).measures.value(Measure::Length), bone(s, ids[i - 1]).measures.value(Measure::Length));
  }
}

// B5: Lacovara et al. 2014, Sci. Rep. 4:6196: skull 0.88 + neck 11.3 + rest 13.8 = 25.98 m, printed as 26 m. The rest
// (trunk, sacrum and tail) is split here at will; only its sum is published.
TEST(PublishedColumns, DreadnoughtusTotalLength) {
  const Summary s = summarise(build("bone,length (m)\nskull,0.88\nneck,11.3\ntrunk,3.6\nsacrum,1.3\ntail,8.9\n"));
  EXPECT_NEAR(s.total, 25.98, 1e-9);
}

// B6: Taylor's manuscript data: dorsal Q is 32 cm from the front of the condyle, 26 cm from its back; the column's
// length uses the shorter.
TEST(PublishedColumns, ColumnLengthUsesTheLengthWithoutCondyle) {
  const Specimen with = build("bone,length (cm),length with condyle (cm)\nD3,26,32\n");
  EXPECT_NEAR(bone(with, "D3").measures.value(Measure::Length), 0.26, 1e-12);
  double trunk = 0;
  for (const Bone& b : with.bones) {
    if (b.name.kind == BoneKind::Dorsal) trunk += b.measures.value(Measure::Length);
  }
  EXPECT_NEAR(summarise(with).trunk, trunk, 1e-12);
}

}  // namespace
}  // namespace zyga::anatomy
