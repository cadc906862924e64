#include "tests/app/program.h"

namespace zyga::app {
namespace {

using testing::AllOf;
using testing::HasSubstr;

/// A closed box as OBJ, mm: 300 x 100 x 120, long along x.
constexpr const char* kBox =
    "v 0 0 0\nv 300 0 0\nv 300 100 0\nv 0 100 0\nv 0 0 120\nv 300 0 120\nv 300 100 120\nv 0 100 120\n"
    "f 1 4 3 2\nf 5 6 7 8\nf 1 2 6 5\nf 3 4 8 7\nf 1 5 8 4\nf 2 3 7 6\n";

class ScanVerbs : public Program {};

TEST_F(ScanVerbs, InspectTellsWhatAMeshHolds) {
  write("C5.obj", kBox);
  const auto ended = run({"inspect", "C5.obj", "--json"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  const auto json = ended.json();
  EXPECT_EQ(json["triangles"].toInt(), 12);
  EXPECT_EQ(json["vertices"].toInt(), 8);
  EXPECT_TRUE(json["closed"].toBool());
  EXPECT_EQ(json["unit_guess"].toString(), "mm");
  EXPECT_NEAR(json["volume_m3"].toDouble(), 0.3 * 0.1 * 0.12, 1e-9);
  const auto bounds = json["bounds_m"].toArray();
  EXPECT_NEAR(bounds[1].toArray()[0].toDouble(), 0.3, 1e-6);
  EXPECT_NEAR(std::abs(json["principal_axes"].toArray()[0].toObject()["direction"].toArray()[0].toDouble()), 1, 1e-6);
  EXPECT_EQ(json["bone_guess"].toObject()["bone"].toString(), "C5");
  EXPECT_TRUE(json["repairs"].isArray());
}

TEST_F(ScanVerbs, InspectTakesTheUnitItIsTold) {
  write("C5.obj", kBox);
  const auto ended = run({"inspect", "C5.obj", "--unit", "cm", "--json"});
  EXPECT_NEAR(ended.json()["volume_m3"].toDouble(), 3.0 * 1.0 * 1.2, 1e-6);
  EXPECT_EQ(run({"inspect", "C5.obj", "--unit", "inch"}).exit, 2);
}

TEST_F(ScanVerbs, AnUnreadableFileIsOneMessage) {
  write("broken.ply", "ply\nformat ascii 1.0\nelement vertex 99999999\nproperty float x\nend_header\n");
  const auto ended = run({"inspect", "broken.ply", "--json"});
  EXPECT_EQ(ended.exit, 2);
  EXPECT_EQ(ended.out, "");
  EXPECT_THAT(ended.err, AllOf(HasSubstr("broken.ply"), HasSubstr("99999999 vertices")));
  EXPECT_EQ(std::count(ended.err.begin(), ended.err.end(), '\n'), 1);
  EXPECT_EQ(run({"inspect", "missing.ply"}).exit, 2);
}

TEST_F(ScanVerbs, ScanPutsABoneIntoTheProject) {
  const auto project = smallAnimal();
  write("C3.obj", kBox);
  write("marks.csv",
        "bone,landmark,x (mm),y (mm),z (mm)\n"
        "C3,caudalRim,0,50,30\nC3,cranialRim,300,50,30\nC3,spineTop,150,50,120\nC3,caudal,0,50,30\n");
  const auto ended = run({"scan", "C3.obj", "--landmarks", "marks.csv", "--into", project, "--out", "real.zyga"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  EXPECT_THAT(ended.out, AllOf(HasSubstr("C3.obj is C3"), HasSubstr("taken to be in mm"), HasSubstr("by its landmarks"),
                               HasSubstr("the left postzygapophyseal facet of C3 has not been marked")));
  EXPECT_THAT(bytes("real.zyga"), AllOf(HasSubstr("\"scans\""), HasSubstr("scans/C3-")));
  const auto exported = run({"export", "real.zyga", "--triangles", "200", "--out", "real.stl"});
  EXPECT_EQ(exported.exit, 0) << exported.err;
  const auto assessed = run({"assess", "real.zyga", "--json"});
  EXPECT_NE(assessed.exit, 2) << assessed.err;
}

TEST_F(ScanVerbs, WhatTheMarksMeasureGoesIntoTheTableWhenAsked) {
  const auto project = smallAnimal();
  write("C3.obj", kBox);
  write("marks.csv",
        "bone,landmark,x (mm),y (mm),z (mm)\n"
        "C3,caudalRim,0,50,30\nC3,cranialRim,300,50,30\nC3,spineTop,150,50,120\n");
  const auto ended =
      run({"scan", "C3.obj", "--landmarks", "marks.csv", "--measures", "--into", project, "--out", "real.zyga"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  EXPECT_THAT(ended.out, HasSubstr("C3 measures length 300.0\u00A0mm, spine height 90.0\u00A0mm"));
  EXPECT_THAT(bytes("real.zyga"),
              testing::ContainsRegex("\"spine height .mm.\": .(90|89.99|90.00)[0-9]*, \"measured\""));
}

TEST_F(ScanVerbs, ScanRefusesWhatItCannotPlace) {
  const auto project = smallAnimal();
  write("mystery.obj", kBox);
  const auto nameless = run({"scan", "mystery.obj", "--into", project, "--out", "real.zyga"});
  EXPECT_EQ(nameless.exit, 2);
  EXPECT_THAT(nameless.err, AllOf(HasSubstr("mystery.obj"), HasSubstr("--bone")));
  EXPECT_EQ(run({"scan", "mystery.obj", "--bone", "C77", "--into", project, "--out", "real.zyga"}).exit, 2);
  EXPECT_EQ(run({"scan", "mystery.obj", "--bone", "nonsense", "--into", project, "--out", "real.zyga"}).exit, 2);
  write("broken.stl", "solid nothing");
  const auto broken = run(
      {"scan", "mystery.obj", "broken.stl", "--bone", "C3", "--bone", "C4", "--into", project, "--out", "real.zyga"});
  EXPECT_EQ(broken.exit, 2);
  EXPECT_THAT(broken.err, HasSubstr("broken.stl"));
  EXPECT_FALSE(std::filesystem::exists(path("real.zyga")));
}

}  // namespace
}  // namespace zyga::app
