#include <cstdlib>

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
  EXPECT_TRUE(json.contains("thinned"));
  EXPECT_TRUE(json["thinned"].isNull()) << "it has few triangles";
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

TEST_F(ScanVerbs, InspectTellsWhatIsMissingOfTheSurface) {
  std::string open = kBox;
  open.erase(open.find("f 5 6 7 8\n"), 10);  // the box without its lid: 300 x 100 of 156000 mm2 in all
  write("C5.obj", open.c_str());
  const auto ended = run({"inspect", "C5.obj", "--json"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  const auto missing = ended.json()["missing"].toObject();
  EXPECT_EQ(missing["borders"].toInt(), 1);
  EXPECT_NEAR(missing["border_length_mm"].toDouble(), 800, 1e-3);
  EXPECT_NEAR(missing["share"].toDouble(), 30.0 / 156, 1e-5);
  EXPECT_THAT(run({"inspect", "C5.obj"}).out,
              HasSubstr("incomplete scan: open borders: 1, at least 19\u00A0% of the closed surface is missing"));
  write("C5.obj", kBox);
  EXPECT_EQ(run({"inspect", "C5.obj", "--json"}).json()["missing"].toObject()["said"].toArray().size(), 0);
}

TEST_F(ScanVerbs, AMarkThatCannotBeRightIsToldWithItsNumbersAndItsJoint) {
  const auto project = smallAnimal();
  write("C3.obj", kBox);
  const auto marked = [&](const char* canal) {
    write("marks.csv",
          (std::string("bone,landmark,x (mm),y (mm),z (mm)\n"
                       "C3,caudalRim,0,50,30\nC3,cranialRim,300,50,30\nC3,spineTop,150,50,120\n"
                       "C3,canalCaudal,60,50,90\nC3,diapophysis.L,150,100,60\nC3,diapophysis.R,150,0,60\n") +
           canal)
              .c_str());
    return run({"scan", "C3.obj", "--landmarks", "marks.csv", "--into", project, "--out", "real.zyga", "--json"});
  };
  const auto good = marked("C3,canalCranial,240,50,90\n");
  ASSERT_EQ(good.exit, 0) << good.err;
  EXPECT_EQ(good.json()["bones"].toArray()[0].toObject()["doubts"].toArray().size(), 0) << good.out;
  const auto bad = marked("C3,canalCranial,240,95,90\n");
  ASSERT_EQ(bad.exit, 0) << bad.err;
  const auto told = bad.json()["bones"].toArray()[0].toObject();
  ASSERT_EQ(told["doubts"].toArray().size(), 1) << bad.out;
  const auto doubt = told["doubts"].toArray()[0].toObject();
  EXPECT_EQ(doubt["mark"].toString(), "canalCranial");
  EXPECT_EQ(doubt["id"].toString(), "doubt.off-mid-plane");
  EXPECT_THAT(doubt["why"].toString().toStdString(), HasSubstr("lies 45.0\u00A0mm off the mid-plane"));
  EXPECT_TRUE(told["missing"].isObject());
  EXPECT_EQ(told["missing"].toObject()["share"].toDouble(), 0);
  const auto people = run({"scan", "C3.obj", "--landmarks", "marks.csv", "--into", project, "--out", "again.zyga"});
  EXPECT_THAT(people.out, AllOf(HasSubstr("in doubt: Cranial opening of the neural canal lies 45.0"),
                                HasSubstr("; in doubt: cranial opening of the neural canal of C3")));
}

QJsonObject boneOf(const QJsonObject& json, const QString& id) {
  for (const auto& bone : json["bones"].toArray())
    if (bone.toObject()["bone"] == id) return bone.toObject();
  return {};
}

// The program's own export comes back: many bones in one file, each its own scan, marks suggested where they meet; and
// the marks that came of it come back by their tables.
TEST_F(ScanVerbs, AFileOfManyBonesIsBroughtInWithSuggestionsAndComesBackByItsTables) {
  const auto project = smallAnimal();
  ASSERT_EQ(run({"export", project, "--triangles", "3000", "--out", "all.glb"}).exit, 0);
  const auto ended = run({"scan", "all.glb", "--suggest", "--json", "--landmarks-out", "marks.csv", "--facets-out",
                          "facets.csv", "--into", project, "--out", "real.zyga"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  const auto json = ended.json();
  EXPECT_EQ(json["file"].toString(), "real.zyga");
  EXPECT_EQ(json["unit"].toString(), "m");
  EXPECT_TRUE(json["unit_sure"].toBool());
  EXPECT_NEAR(json["size_factor"].toDouble(), 1, 0.5);
  EXPECT_TRUE(json["warnings"].toArray().isEmpty());
  const auto bone = boneOf(json, "C4");
  EXPECT_EQ(bone["file"].toString(), "all.glb");
  EXPECT_EQ(bone["part"].toString(), "C4");
  EXPECT_EQ(bone["unit_by"].toString(), "format");
  EXPECT_TRUE(bone["placed"].toBool());
  EXPECT_GT(bone["neural_canal"].toObject()["radius_mm"].toDouble(), 5);
  EXPECT_EQ(bone["facets"].toArray().size(), 4);
  for (const auto& each : bone["facets"].toArray()) {
    const auto facet = each.toObject();
    EXPECT_EQ(facet["set_by"].toString(), "suggestion");
    EXPECT_TRUE(facet["taken"].toBool());
    EXPECT_GT(facet["confidence"].toDouble(), 0.7);
    EXPECT_GT(facet["area_mm2"].toDouble(), 500);
    EXPECT_GT(facet["length_mm"].toDouble(), facet["residual_mm"].toDouble());
    EXPECT_EQ(facet["centre_mm"].toArray().size(), 3);
    EXPECT_EQ(facet["normal"].toArray().size(), 3);
  }
  for (const char* joint : {"C3-C4", "C4-C5"}) {
    EXPECT_TRUE(jointOf(json, joint)["found"].toBool()) << joint;
    EXPECT_GT(jointOf(json, joint)["confidence"].toDouble(), 0.7) << joint;
  }
  const auto assessed = run({"assess", "real.zyga", "--json"}).json();
  for (const char* joint : {"C3-C4", "C4-C5"}) EXPECT_NE(levelOf(assessed, joint), "not judged") << joint;

  const auto again = run({"scan", "all.glb", "--landmarks", "marks.csv", "--facets", "facets.csv", "--landmarks-out",
                          "marks2.csv", "--facets-out", "facets2.csv", "--json", "--into", project, "--out", "b.zyga"});
  ASSERT_EQ(again.exit, 0) << again.err;
  EXPECT_EQ(bytes("marks2.csv"), bytes("marks.csv"));
  EXPECT_EQ(bytes("facets2.csv"), bytes("facets.csv"));
  EXPECT_EQ(boneOf(again.json(), "C4")["facets"].toArray()[0].toObject()["set_by"].toString(), "table");
}

TEST_F(ScanVerbs, AFolderTellsWhatItLeavesOutAndATenfoldMismatchIsAWarning) {
  const auto project = smallAnimal();
  std::filesystem::create_directory(path("bones"));
  for (const char* name : {"bones/C3.obj", "bones/C4.obj", "bones/mystery.obj"}) write(name, kBox);
  const auto ended = run({"scan", "bones", "--unit", "cm", "--into", project, "--out", "real.zyga"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  EXPECT_THAT(ended.out, AllOf(HasSubstr("bones/C3.obj is C3"), HasSubstr("bones/C4.obj is C4"),
                               HasSubstr("bones/mystery.obj is left out: its name does not tell")));
  EXPECT_THAT(ended.err, testing::ContainsRegex("warning: these bones are about 4\\.[0-9] times as large"));
  const auto right = run({"scan", "bones", "--into", project, "--out", "real.zyga"});
  EXPECT_THAT(right.out, HasSubstr("unit of all guessed mm"));
  EXPECT_EQ(right.err, "");
  // In a row of files --bone counts; in a folder it cannot.
  EXPECT_EQ(run({"scan", "bones", "--bone", "C5", "--into", project, "--out", "no.zyga"}).exit, 2);
  std::filesystem::create_directory(path("nothing"));
  const auto empty = run({"scan", "nothing", "--into", project, "--out", "no.zyga"});
  EXPECT_EQ(empty.exit, 2);
  EXPECT_THAT(empty.err, HasSubstr("there is no mesh file in this folder"));
  // The same bone twice, said by hand.
  const auto twice = run(
      {"scan", "bones/C3.obj", "bones/C4.obj", "--bone", "C3", "--bone", "C3", "--into", project, "--out", "no.zyga"});
  EXPECT_EQ(twice.exit, 2);
  EXPECT_THAT(twice.err, HasSubstr("it would be C3, which bones/C3.obj is already"));
  EXPECT_FALSE(std::filesystem::exists(path("no.zyga")));
}

// A table in metres under a head that says mm made a neck of 365 m.
TEST_F(ScanVerbs, TablesInAnotherUnitThanTheMeshAreRefusedWithTheFactorThatFits) {
  const auto project = smallAnimal();
  write("C3.obj", kBox);
  const std::string rows = "C3,caudalRim,0,50,30\nC3,cranialRim,300,50,30\nC3,spineTop,150,50,120\n";
  for (const auto& [unit, factor] : {std::pair("m", "0.001"), std::pair("cm", "0.1")}) {
    const std::string u(unit);
    write("marks.csv", "bone,landmark,x (" + u + "),y (" + u + "),z (" + u + ")\n" + rows);
    const auto ended = run({"scan", "C3.obj", "--landmarks", "marks.csv", "--into", project, "--out", "no.zyga"});
    EXPECT_EQ(ended.exit, 2) << unit;
    EXPECT_THAT(ended.err, AllOf(HasSubstr("cranialRim of C3"), HasSubstr(std::string("multiplied by ") + factor)));
  }
  write("marks.csv",
        "bone,landmark,x (mm),y (mm),z (mm)\nC3,caudalRim,0,0.05,0.03\nC3,cranialRim,0.3,0.05,0.03\n"
        "C3,spineTop,0.15,0.05,0.12\n");
  const auto spot = run({"scan", "C3.obj", "--landmarks", "marks.csv", "--into", project, "--out", "no.zyga"});
  EXPECT_EQ(spot.exit, 2);
  EXPECT_THAT(spot.err, AllOf(HasSubstr("in one spot"), HasSubstr("multiplied by 1000")));
  EXPECT_FALSE(std::filesystem::exists(path("no.zyga")));
}

TEST_F(ScanVerbs, FaultsOfBothTablesComeAtOnce) {
  const auto project = smallAnimal();
  write("C3.obj", kBox);
  write("marks.csv", "bone,landmark,x (mm),y (mm),z (mm)\nQ3,caudalRim,0,50,30\n");
  write("facets.csv",
        "bone,facet,centre x (mm),centre y (mm),centre z (mm),normal x,normal y,normal z,length (mm),width (mm)\n"
        "C3,prezyg,0,50,abc,0,0,0,10,10\n");
  const auto ended = run(
      {"scan", "C3.obj", "--landmarks", "marks.csv", "--facets", "facets.csv", "--into", project, "--out", "no.zyga"});
  EXPECT_EQ(ended.exit, 2);
  EXPECT_THAT(ended.err, AllOf(HasSubstr("marks.csv:2, column 1"), HasSubstr("facets.csv:2, column 2"),
                               HasSubstr("facets.csv:2, column 5"), HasSubstr("facets.csv:2, column 6")));
  EXPECT_THAT(ended.err, HasSubstr("'prezyg' is no facet; write prezyg.L"));
}

// From the dog's folder to joints that are judged, by one verb.
TEST_F(ScanVerbs, TheNeckOfARealDogIsAssessed) {
  const char* given = std::getenv("ZYGAPOSE_DATA");
  const std::filesystem::path data = (given ? given : ZYGAPOSE_SHARED_DATA) + std::string("/dog");
  if (!std::filesystem::exists(data)) GTEST_SKIP() << "the open bone data are not at " << data;
  std::filesystem::create_directory(path("neck"));
  for (int i = 3; i <= 7; ++i) {
    const std::string name = "BONEC_" + std::to_string(i) + ".stl";
    std::filesystem::copy_file(data / name, path("neck/" + name));
  }
  write("animal.csv",
        "# specimen: Small invented animal\n# plan: high browser\n# cervicals: 7\n# dorsals: 14\n# sacrals: 4\n"
        "# caudals: 21\nbone,length (mm),evidence,source\nC5,36,found,invented\n");
  ASSERT_EQ(run({"make", "animal.csv", "--out", "animal.zyga"}).exit, 0);
  const auto ended = run({"scan", "neck", "--suggest", "--measures", "--into", "animal.zyga", "--out", "dog.zyga"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  EXPECT_THAT(ended.out, AllOf(HasSubstr("unit of all guessed m,"), HasSubstr("C4-C5: facets and flat ends"),
                               HasSubstr("C5 measures length 3")));
  const auto assessed = run({"assess", "dog.zyga", "--json"}).json();
  for (const char* joint : {"C3-C4", "C4-C5", "C5-C6", "C6-C7"}) {
    const auto verdict = jointOf(assessed, joint);
    EXPECT_NE(verdict["level"].toString(), "not judged") << joint;
    EXPECT_EQ(verdict["evidence"].toString(), "measured") << joint;
    EXPECT_GT(verdict["left"].toObject()["overlap_length"].toDouble(), 0.8) << joint;
    EXPECT_GT(verdict["right"].toObject()["overlap_length"].toDouble(), 0.8) << joint;
  }
  EXPECT_EQ(levelOf(assessed, "C2-C3"), "not judged") << "C3 has no neighbour before it";
}

}  // namespace
}  // namespace zyga::app
