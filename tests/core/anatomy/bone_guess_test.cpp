
#include <gtest/gtest.h>

#include "core/anatomy/marks/scan_guess.h"
#include "core/anatomy/specimen_reasons.h"

namespace zyga::anatomy {
namespace {

std::string idOf(std::string_view file) {
  const auto guess = guessBone(file);
  return guess ? toId(guess->name) : "";
}

TEST(BoneGuess, ReadsNamesAsPeopleWriteThem) {
  const std::vector<std::pair<std::string, std::string>> expected{{"C5.stl", "C5"},
                                                                  {"/scans/2024/left_femur.ply", "femur.L"},
                                                                  {"L_humerus.obj", "humerus.L"},
                                                                  {"cervical_07", "C7"},
                                                                  {"BONE_T3.stl", "D3"},
                                                                  {"BONECa_10.stl", "Ca10"},
                                                                  {"BONEFemoris_R.stl", "femur.R"},
                                                                  {"BONESacrum.stl", "S1"},
                                                                  {"BONEMergedSkull.stl", "skull"},
                                                                  {"BONEhumerus_L.stl", "humerus.L"},
                                                                  {"BONEJaw.stl", "jaw"},
                                                                  {"thoracic10_s.stl", "D10"},
                                                                  {"r_tibia.stl", "tibia.R"},
                                                                  {"metacarpal III right", "metacarpal3.R"},
                                                                  {"Mc2_L", "metacarpal2.L"},
                                                                  {"leftFemur.v2.ply", "femur.L"},
                                                                  {"rib 4 right.obj", "rib.D4.R"},
                                                                  {"chevron-3.stl", "chevron.Ca3"},
                                                                  {"atlas.glb", "C1"},
                                                                  {"axis scan.glb", "C2"},
                                                                  {"dorsals_11.ply", "D11"}};
  for (const auto& [file, id] : expected) EXPECT_EQ(idOf(file), id) << file;
}

TEST(BoneGuess, IsEmptyWhereNothingNamesABone) {
  for (const char* file : {"", "mesh.stl", "scan_0042.ply", "untitled", "BONERibcage.stl", "Ribcage", "....", "C.stl"})
    EXPECT_EQ(idOf(file), "") << file;
}

TEST(BoneGuess, SaysWhatIsNotCertain) {
  const auto side = guessBone("humerus.stl");
  ASSERT_TRUE(side);
  EXPECT_LT(side->confidence, 0.5);
  EXPECT_EQ(side->doubts, std::vector<reason::Reason>{{scan::kNoSide}});
  const auto number = guessBone("cervical.stl");
  ASSERT_TRUE(number);
  EXPECT_EQ(number->name.number, 0);
  EXPECT_EQ(number->doubts, std::vector<reason::Reason>{{scan::kNoNumber}});
  EXPECT_LT(number->confidence, 0.5);
  EXPECT_GT(guessBone("cervical_4.stl")->confidence, guessBone("C4.stl")->confidence);
}

TEST(BoneGuess, CountsLumbarVertebraeOnBehindTheThoracicOnes) {
  RegionCounts counts;
  counts.dorsal = 20;
  const auto alone = guessBones({"L_1.stl", "L_7.stl", "L_femur.stl"}, counts);
  EXPECT_EQ(toId(alone[0]->name), "D14");
  EXPECT_EQ(alone[0]->doubts, (std::vector<reason::Reason>{{scan::kLumbarCounted, {reason::Count{1}}}}));
  EXPECT_EQ(toId(alone[1]->name), "D20");
  EXPECT_EQ(toId(alone[2]->name), "femur.L");
  const auto both = guessBones({"thoracic12.stl", "lumbar1.stl", "lumbar5.stl"}, counts);
  EXPECT_EQ(toId(both[1]->name), "D13");
  EXPECT_EQ(toId(both[2]->name), "D17");
}

TEST(ScanGuess, TakesTheUnitThatMakesABone) {
  EXPECT_EQ(guessUnit(0.05).unit, ScanUnit::Metre);
  EXPECT_EQ(guessUnit(310).unit, ScanUnit::Millimetre);
  EXPECT_EQ(guessUnit(31).unit, ScanUnit::Centimetre);
  EXPECT_TRUE(guessUnit(310).sure);
  // 1800: a thigh bone in mm; half-way between two units nothing is sure.
  EXPECT_EQ(guessUnit(1800, 1.6).unit, ScanUnit::Millimetre);
  EXPECT_FALSE(guessUnit(95).sure);
}

TEST(ScanGuess, GltfHasYUpScannersHaveZ) {
  EXPECT_EQ(guessUp(".GLB"), ScanUp::Y);
  EXPECT_EQ(guessUp(".stl"), ScanUp::Z);
}

TEST(GuessBone, TakesIdsOfTheProgramsOwnExportAsTheyAre) {
  for (const char* id : {"rib.D4.L", "humerus.R", "chevron.Ca4", "metacarpal3.L", "manus1.2.L"})
    for (const std::string& name : {std::string(id), std::string(id) + ".stl", "folder/" + std::string(id) + ".ply"}) {
      const auto guess = guessBone(name);
      ASSERT_TRUE(guess) << name;
      EXPECT_EQ(toId(guess->name), id);
      EXPECT_GT(guess->confidence, 0.9) << name;
      EXPECT_TRUE(guess->doubts.empty()) << name;
    }
}

TEST(GuessBone, TakesTheJointOfTwoLumbarsForNoBone) {
  EXPECT_FALSE(guessBone("facet_L12_l.obj"));
  EXPECT_TRUE(guessBone("L5.obj"));
}

}  // namespace
}  // namespace zyga::anatomy
