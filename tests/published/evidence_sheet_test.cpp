// E3. How evidence is shown: known bones white on the outline, restored ones toned, left lateral view, 1 m bar
// (Lacovara et al. 2014, Sci. Rep. 4:6196, read); each contributing specimen its own colour with a legend (captions of
// composite skeletons, read).
#include <gtest/gtest.h>

#include <QGuiApplication>
#include <algorithm>
#include <set>

#include "core/anatomy/plan/build_specimen.h"
#include "ui/sheets/sheet.h"

namespace zyga::ui {
namespace {

using anatomy::Evidence;

/// A block as large as the bone's landmarks tell, closed and facing outwards.
std::shared_ptr<const solid::BoneMesh> blockOf(const anatomy::Bone& bone) {
  Eigen::AlignedBox3f box;
  for (const auto& [name, p] : bone.landmarks) box.extend(p.cast<float>());
  if (box.isEmpty()) box.extend(Eigen::Vector3f::Zero());
  box.extend(Eigen::Vector3f(box.min() - Eigen::Vector3f::Constant(0.02F)));
  box.extend(Eigen::Vector3f(box.max() + Eigen::Vector3f::Constant(0.02F)));
  solid::TriangleMesh mesh;
  for (int i = 0; i < 8; ++i) mesh.positions.push_back(box.corner(static_cast<Eigen::AlignedBox3f::CornerType>(i)));
  mesh.triangles = {{0, 2, 1}, {1, 2, 3}, {4, 5, 6}, {5, 7, 6}, {0, 1, 4}, {1, 5, 4},
                    {2, 6, 3}, {3, 6, 7}, {0, 4, 2}, {2, 4, 6}, {1, 3, 5}, {3, 7, 5}};
  solid::computeNormals(mesh);
  return std::make_shared<solid::BoneMesh>(solid::BoneMesh{{std::move(mesh)}});
}

/// Skull and C5 from one quarry, C6 from another, D5 from a third; all else restored.
SheetScene scene() {
  anatomy::Specimen specimen = anatomy::buildSpecimen(anatomy::fillBlanks({}));
  for (anatomy::Bone& bone : specimen.bones) bone.evidence = Evidence::Inferred;
  constexpr std::array<std::pair<const char*, const char*>, 4> kKnown{
      {{"skull", "quarry 1"}, {"C5", "quarry 1"}, {"C6", "quarry 2"}, {"D5", "quarry 3"}}};
  for (const auto& [id, source] : kKnown) {
    anatomy::Bone& bone = specimen.bones[specimen.findBone(id)->value];
    bone.evidence = Evidence::Found;
    bone.source = source;
  }
  SheetScene made;
  for (const anatomy::Bone& bone : specimen.bones) made.meshes.push_back(bone.fusedInto ? nullptr : blockOf(bone));
  const kinematics::Pose pose = kinematics::Pose::neutral(specimen);
  made.scenario = range::Scenario(std::make_shared<const anatomy::Specimen>(std::move(specimen)), {}, pose);
  return made;
}

/// The marks between the beginning of a group and its end.
std::vector<PageMark> groupOf(const Page& page, const QString& name) {
  std::vector<PageMark> marks;
  int depth = 0;
  for (const PageMark& mark : page.marks) {
    const auto* begins = std::get_if<PageGroup>(&mark);
    if (depth == 0 && begins && begins->name == name) {
      depth = 1;
    } else if (depth > 0) {
      depth += begins ? 1 : std::holds_alternative<PageGroupEnd>(mark) ? -1 : 0;
      if (depth > 0) marks.push_back(mark);
    }
  }
  return marks;
}

class PublishedEvidence : public testing::Test {
 protected:
  static void SetUpTestSuite() {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    static int argc = 1;
    static char name[] = "published_sheet_test";
    static char* argv[] = {name, nullptr};
    static const QGuiApplication application(argc, argv);
    files::Sheet sheet;
    sheet.layout = files::SheetLayout::Evidence;
    // What the layout is for does not hang on what was chosen for others.
    sheet.bones = files::SheetBones::Shaded;
    sheet.evidenceTones = false;
    page_ = new Page(*drawSheet(scene(), sheet, {}));
  }
  static void TearDownTestSuite() { delete page_; }

  static QColor fillOf(const QString& bone) {
    for (const PageMark& mark : groupOf(*page_, bone))
      if (const auto* shape = std::get_if<PageShape>(&mark); shape && shape->ink.fill.isValid()) return shape->ink.fill;
    return {};
  }
  static QRectF placeOf(const QString& bone) {
    QRectF box;
    for (const PageMark& mark : groupOf(*page_, bone))
      if (const auto* shape = std::get_if<PageShape>(&mark)) box |= shape->path.boundingRect();
    return box;
  }

  static inline const Page* page_ = nullptr;
};

TEST_F(PublishedEvidence, KnownBonesAreWhiteOnTheOutlineAndRestoredOnesToned) {
  EXPECT_EQ(fillOf("skull"), QColor(Qt::white));
  EXPECT_EQ(fillOf("C5"), QColor(Qt::white)) << "of the same specimen";
  const QColor restored = fillOf("C9");
  ASSERT_TRUE(restored.isValid());
  EXPECT_LT(restored.lightness(), 200);
  for (const char* other : {"D2", "Ca10", "femur.L"}) EXPECT_EQ(fillOf(other), restored) << other;
  for (const PageMark& mark : groupOf(*page_, "C9"))
    if (const auto* shape = std::get_if<PageShape>(&mark)) {
      EXPECT_TRUE(shape->ink.line.isValid()) << "outlined";
    }
}

TEST_F(PublishedEvidence, EachSpecimenHasItsColourAndTheLegendNamesIt) {
  const std::set<QRgb> colours{fillOf("skull").rgb(), fillOf("C6").rgb(), fillOf("D5").rgb(), fillOf("C9").rgb()};
  EXPECT_EQ(colours.size(), 4u);
  QStringList words;
  std::set<QRgb> swatches;
  for (const PageMark& mark : groupOf(*page_, "legend")) {
    if (const auto* line = std::get_if<PageWords>(&mark)) words << line->words;
    if (const auto* shape = std::get_if<PageShape>(&mark); shape && shape->ink.fill.isValid())
      swatches.insert(shape->ink.fill.rgb());
  }
  for (const char* source : {"quarry 1", "quarry 2", "quarry 3", "restored"})
    EXPECT_TRUE(words.join('\n').contains(source)) << words.join('\n').toStdString();
  EXPECT_EQ(swatches, colours);
}

TEST_F(PublishedEvidence, TheViewIsLeftLateralWithABarOfOneMetre) {
  EXPECT_LT(placeOf("skull").center().x(), placeOf("D5").center().x()) << "the head is at the left";
  EXPECT_LT(placeOf("D5").center().x(), placeOf("Ca20").center().x());
  EXPECT_LT(placeOf("D5").center().y(), placeOf("femur.L").center().y()) << "the back is up";
  double bar = 0;
  for (const PageMark& mark : groupOf(*page_, "scale-bar"))
    if (const auto* shape = std::get_if<PageShape>(&mark)) bar = std::max(bar, shape->path.boundingRect().width());
  ASSERT_GT(bar, 0);
  // The bones tell how long a metre is on this page.
  const SheetScene drawn = scene();
  const anatomy::Specimen& s = drawn.scenario.specimen();
  const auto middle = [&](const char* id) {
    Eigen::AlignedBox3d box;
    const anatomy::BoneIndex bone = *s.findBone(id);
    for (const Eigen::Vector3f& p : drawn.meshes[bone.value]->levels.front().positions)
      box.extend(drawn.scenario.placement()[bone.value] * p.cast<double>());
    return box.center().x();
  };
  const double onPage = placeOf("Ca20").center().x() - placeOf("skull").center().x();
  EXPECT_NEAR(bar, onPage / (middle("skull") - middle("Ca20")), 0.02 * bar);
  bool named = false;
  for (const PageMark& mark : groupOf(*page_, "scale"))
    if (const auto* line = std::get_if<PageWords>(&mark)) named = named || line->words.startsWith(QStringLiteral("1"));
  EXPECT_TRUE(named);
}

}  // namespace
}  // namespace zyga::ui
