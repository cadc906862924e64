#include "core/anatomy/tables/facet_table.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>

#include "core/anatomy/tables/table_reasons.h"

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;
using testing::AllOf;
using testing::HasSubstr;

constexpr const char* kHeader =
    "bone,facet,centre x (mm),centre y (cm),centre z (m),normal x,normal y,normal z,length (mm),width (mm)\n";

const BoneName kC5{BoneKind::Cervical, 5};

TEST(FacetTable, ReadsUnitsFromTheHeaderAndMakesDirectionsUnit) {
  const auto reading = readFacetTable(
      "# by hand\n"
      "remark,bone,facet,centre x (mm),centre y (cm),centre z (m),normal x,normal y,normal z,slide x,slide y,slide z,"
      "length (mm),width (mm),residual (mm),confidence\n"
      "a,C5,prezyg.L,10,-2.5,0.3,0,0,2,1,0,1,40,30,0.5,0.8\n",
      "facets.csv");
  ASSERT_TRUE(reading.usable());
  const TabledFacet& tabled = reading.table.facets.at(kC5).at(FacetRole::PrezygLeft);
  EXPECT_TRUE(tabled.facet.centre.isApprox(Vector3d(0.01, -0.025, 0.3)));
  EXPECT_EQ(tabled.facet.normal, Vector3d::UnitZ());
  EXPECT_TRUE(tabled.facet.slide.isApprox(Vector3d::UnitX())) << "taken into the plane";
  EXPECT_TRUE(tabled.slideGiven);
  EXPECT_NEAR(tabled.facet.length(), 0.04, 1e-4);
  EXPECT_NEAR(tabled.facet.width(), 0.03, 1e-4);
  EXPECT_DOUBLE_EQ(tabled.residual, 0.0005);
  EXPECT_EQ(tabled.confidence, 0.8);
}

TEST(FacetTable, WithoutASlideAnyInThePlaneWillDo) {
  const auto reading = readFacetTable(std::string(kHeader) + "C5,postzyg.R,1,2,3,0.6,0,0.8,40,30\n", "facets.csv");
  ASSERT_TRUE(reading.usable());
  const TabledFacet& tabled = reading.table.facets.at(kC5).at(FacetRole::PostzygRight);
  EXPECT_FALSE(tabled.slideGiven);
  EXPECT_NEAR(tabled.facet.slide.dot(tabled.facet.normal), 0, 1e-12);
  EXPECT_FALSE(tabled.confidence);
}

TEST(FacetTable, ComesBackAsWritten) {
  FacetTable table;
  for (const auto& [id, role] : {std::pair("C5", FacetRole::PrezygLeft), std::pair("C5", FacetRole::PostzygRight),
                                 std::pair("Ca3", FacetRole::PrezygRight)}) {
    TabledFacet tabled;
    tabled.facet.role = role;
    tabled.facet.centre = Vector3d(0.0123456, -1.5, 0.25);
    tabled.facet.normal = Vector3d(0.3, -0.5, 0.7).normalized();
    tabled.facet.slide = tabled.facet.normal.unitOrthogonal();
    tabled.facet.radius = -0.06;
    tabled.residual = 0.00021;
    tabled.confidence = 0.734;
    tabled.facet.outline = {{-0.02, -0.01}, {0.015, -0.012}, {0.021, 0.004}, {-0.008, 0.013}};
    table.facets[*parseBoneId(id)][role] = tabled;
  }
  table.facets[kC5][FacetRole::PostzygRight].slideGiven = false;
  table.facets[kC5][FacetRole::PostzygRight].confidence.reset();
  const std::string written = writeFacetTable(table);
  const auto reading = readFacetTable(written, "again.csv");
  for (const TableMessage& message : reading.messages) ADD_FAILURE() << debugText(message);
  EXPECT_EQ(writeFacetTable(reading.table), written);
  ASSERT_EQ(reading.table.facets.size(), table.facets.size());
  for (const auto& [bone, facets] : table.facets)
    for (const auto& [role, before] : facets) {
      const TabledFacet& after = reading.table.facets.at(bone).at(role);
      EXPECT_LT((after.facet.centre - before.facet.centre).norm(), 1e-9);
      EXPECT_LT((after.facet.normal - before.facet.normal).norm(), 1e-8);
      EXPECT_EQ(after.slideGiven, before.slideGiven);
      if (before.slideGiven) {
        EXPECT_LT((after.facet.slide - before.facet.slide).norm(), 1e-8);
      }
      EXPECT_EQ(after.facet.role, role);
      EXPECT_NEAR(after.facet.radius, before.facet.radius, 1e-9);
      EXPECT_NEAR(after.residual, before.residual, 1e-9);
      EXPECT_EQ(after.confidence, before.confidence);
      ASSERT_EQ(after.facet.outline.size(), before.facet.outline.size());
      for (std::size_t i = 0; i < before.facet.outline.size(); ++i)
        EXPECT_LT((after.facet.outline[i] - before.facet.outline[i]).norm(), 1e-9);
    }
}

TEST(FacetTable, TellsEveryFaultWithItsPlace) {
  const auto reading = readFacetTable(
      "bone,facet,centre x (mm),centre y (mm),centre z (furlong),normal x,normal y,normal z,slide x,slide y,slide z,"
      "length (mm),width (mm),confidence,outline (mm)\n"
      "C5,prezyg.L,1,2,3,0,0,1,,,,4,3,,\n"
      "Q5,prezyg,1,two,3,0,0,0,,,,0,-3,7,\n"
      "C6,prezyg.L,1,2,3,0,0,1,0,0,1,4,3,,0 0 / 1 0\n"
      "C5,prezyg.L,1,2,3,0,0,1,,,,4,3,,\n"
      "C7,prezyg.R,2000000,2,3,0,0,1,,,,4,3,,0 0 / 9 9 / 9 0 / 0 9\n"
      "C7,prezyg.L,1,2,3,0,0,1,,,,40000,3,,0 0 / x 9\n",
      "f.csv");
  EXPECT_FALSE(reading.usable());
  std::vector<std::string> texts;
  for (const auto& message : reading.messages) texts.push_back(debugText(message));
  const auto at = [](const char* where, const char* what) { return AllOf(HasSubstr(where), HasSubstr(what)); };
  EXPECT_THAT(texts, testing::IsSupersetOf<testing::Matcher<std::string>>(
                         {at("f.csv:1, column 5", "table.no-unit(centre z (furlong))"),
                          at("f.csv:3, column 1", "landmark.unknown-bone(Q5)"),
                          at("f.csv:3, column 2", "facet-table.unknown-facet(prezyg)"),
                          at("f.csv:3, column 4", "table.not-a-number(two)"),
                          at("f.csv:3, column 6", "facet-table.no-direction(normal)"),
                          at("f.csv:3, column 12", "table.not-a-length(0, mm)"),
                          at("f.csv:3, column 13", "table.not-a-length(-3, mm)"),
                          at("f.csv:3, column 14", "facet-table.not-a-share(7)"),
                          at("f.csv:4, column 9", "facet-table.slide-along-normal"),
                          at("f.csv:4, column 15", "facet-table.not-convex"),
                          at("f.csv:5, column 2", "facet-table.twice(C5, prezyg.L)"),
                          at("f.csv:6, column 3", "landmark.too-far(2000000)"),
                          at("f.csv:6, column 15", "facet-table.not-convex"),
                          at("f.csv:7, column 12", "table.too-long(40000, mm)"),
                          at("f.csv:7, column 15", "facet-table.bad-corner(x 9)")}));
  EXPECT_FALSE(readFacetTable("", "empty.csv").usable());
  const auto bare = readFacetTable("bone,facet\nC5,prezyg.L\n", "bare.csv");
  EXPECT_EQ(bare.messages.size(), 8u) << "each column that is missing, once";
  EXPECT_TRUE(bare.table.facets.empty());
}

TEST(FacetTable, AnyOutlineThatIsReadIsConvexAndCounterClockwise) {
  const auto reading = readFacetTable(
      "bone,facet,centre x (mm),centre y (mm),centre z (mm),normal x,normal y,normal z,length (mm),width "
      "(mm),outline (mm)\nC5,prezyg.L,1,2,3,0,0,1,4,3,-8 5 / 8 5 / 8 -5 / -8 -5\n",
      "turned.csv");
  ASSERT_TRUE(reading.usable());
  const Facet& facet = reading.table.facets.at(kC5).at(FacetRole::PrezygLeft).facet;
  double area = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    const auto &p = facet.outline[i], &q = facet.outline[(i + 1) % 4];
    area += 0.5 * (p.x() * q.y() - p.y() * q.x());
  }
  EXPECT_NEAR(area, 16e-3 * 10e-3, 1e-12);
}

}  // namespace
}  // namespace zyga::anatomy
