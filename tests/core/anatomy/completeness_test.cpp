#include <gtest/gtest.h>

#include "core/anatomy/summary.h"

namespace zyga::anatomy {
namespace {

/// A skeleton of `bones` bones, `found` of them found.
Specimen skeleton(std::size_t bones, std::size_t found) {
  Specimen specimen;
  for (std::size_t i = 0; i < bones; ++i) {
    Bone bone;
    bone.name = {BoneKind::Caudal, static_cast<int>(i + 1), 0, Side::Midline};
    bone.id = toId(bone.name);
    bone.evidence = i < found ? Evidence::Found : Evidence::Inferred;
    specimen.bones.push_back(bone);
  }
  return specimen;
}

// Bones present of 256 in six titanosaurs: 116, 39, 20, 13, 6, 4 are 45.3, 15.2, 7.8, 5.1, 2.3, 1.6 % (Lacovara et al.
// 2014, Sci. Rep. 4:6196).
TEST(Completeness, AgreesWithPublishedCounts) {
  const std::pair<std::size_t, double> published[] = {{116, 45.3}, {39, 15.2}, {20, 7.8},
                                                      {13, 5.1},   {6, 2.3},   {4, 1.6}};
  for (const auto& [found, percent] : published) {
    const Completeness known = completeness(skeleton(256, found));
    EXPECT_EQ(known.found, found);
    EXPECT_EQ(known.bones, 256U);
    EXPECT_NEAR(100 * known.share(), percent, 0.05001);
  }
}

// "Mirrored" completeness of the same paper: a left bone counts for its right.
TEST(Completeness, ALeftBoneCountsForItsRightBesideThePlainCount) {
  Specimen specimen;
  const auto add = [&](BoneKind kind, Side side, Evidence evidence) {
    Bone bone;
    bone.name = {kind, 0, 0, side};
    bone.id = toId(bone.name);
    bone.evidence = evidence;
    specimen.bones.push_back(bone);
  };
  add(BoneKind::Femur, Side::Left, Evidence::FoundDeformed);
  add(BoneKind::Femur, Side::Right, Evidence::Mirrored);
  add(BoneKind::Humerus, Side::Left, Evidence::Found);
  add(BoneKind::Humerus, Side::Right, Evidence::Found);
  add(BoneKind::Tibia, Side::Right, Evidence::Scaled);
  add(BoneKind::Skull, Side::Midline, Evidence::Inferred);
  const Completeness known = completeness(specimen);
  EXPECT_EQ(known.found, 3U);
  EXPECT_EQ(known.withMirrored, 4U);
  EXPECT_DOUBLE_EQ(known.share(), 0.5);
  EXPECT_EQ(completeness({}).share(), 0);
}

}  // namespace
}  // namespace zyga::anatomy
