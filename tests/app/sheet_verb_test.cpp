#include <QImage>
#include <QPolygonF>
#include <QRegularExpression>
#include <QSet>
#include <algorithm>
#include <cmath>

#include "core/files/scan/bone_meshes.h"
#include "core/kinematics/placement.h"
#include "core/range/neutral.h"
#include "tests/app/pdf_paths.h"
#include "tests/app/program.h"

namespace zyga::app {
namespace {

using testing::HasSubstr;

/// Sheets are measured back from the files they are in.
class SheetVerb : public Program {
 protected:
  SheetVerb() { setCache(ZYGAPOSE_TEST_CACHE); }

  void draw(const std::string& out, std::vector<std::string> more = {}) const {
    more.insert(more.begin(), {"sheet", "small.zyga", "--out", out});
    const auto ended = run(more);
    ASSERT_EQ(ended.exit, 0) << ended.err;
  }

  /// Box around all paths of a named group of an SVG, mm.
  QRectF boxOf(const std::string& file, const QString& group) const {
    const QString svg = QString::fromStdString(bytes(file));
    const QRegularExpressionMatch found =
        QRegularExpression("<g id=\"" + QRegularExpression::escape(group) + "\">\\n(.*?)</g>",
                           QRegularExpression::DotMatchesEverythingOption)
            .match(svg);
    EXPECT_TRUE(found.hasMatch()) << group.toStdString();
    double left = 1e9, right = -1e9, top = 1e9, bottom = -1e9;
    auto paths = QRegularExpression(" d=\"([^\"]*)\"").globalMatch(found.captured(1));
    while (paths.hasNext()) {
      auto points = QRegularExpression("(-?[0-9.]+) (-?[0-9.]+)").globalMatch(paths.next().captured(1));
      while (points.hasNext()) {
        const auto point = points.next();
        left = std::min(left, point.captured(1).toDouble());
        right = std::max(right, point.captured(1).toDouble());
        top = std::min(top, point.captured(2).toDouble());
        bottom = std::max(bottom, point.captured(2).toDouble());
      }
    }
    return {left, top, right - left, bottom - top};
  }

  /// Height of the left thigh bone as it is posed, m, from its mesh and nothing of the sheet's.
  double femurHeight() const {
    const auto project = files::readProject(path("small.zyga"));
    const auto articulation = range::articulate(project.specimen(), project.assumptions);
    const auto X_WB = kinematics::forwardKinematics(project.specimen(), articulation, project.pose);
    solid::SculptOptions options;
    options.cacheFolder = std::filesystem::path(ZYGAPOSE_TEST_CACHE) / "zygapose";
    const auto meshes = files::boneMeshes(project, options);
    const auto femur = project.specimen().findBone("femur.L")->value;
    double least = 1e9, most = -1e9;
    for (const auto& p : meshes[femur]->levels.front().positions) {
      const double z = (X_WB[femur] * p.cast<double>()).z();
      least = std::min(least, z);
      most = std::max(most, z);
    }
    return most - least;
  }
};

TEST_F(SheetVerb, AKnownBoneIsAsLongAsTheScaleBarSays) {
  smallAnimal();
  draw("a.svg", {"--bones", "outline", "--layout", "evidence", "--paper", "a1"});
  const QRectF bar = boxOf("a.svg", "scale-bar"), femur = boxOf("a.svg", "femur.L");
  // The bar of the evidence layout shows 1 m.
  EXPECT_NEAR(femur.height() / bar.width(), femurHeight(), 0.005 * femurHeight());
  // And the page says its scale: the bar is 1000 mm / N long.
  const QRegularExpressionMatch scale =
      QRegularExpression(">1:([0-9.]+) ").match(QString::fromStdString(bytes("a.svg")));
  ASSERT_TRUE(scale.hasMatch());
  EXPECT_NEAR(bar.width(), 1000 / scale.captured(1).toDouble(), 0.002);
}

TEST_F(SheetVerb, ThePdfHasTheSameLinesInPoints) {
  smallAnimal();
  draw("a.svg", {"--bones", "outline", "--layout", "evidence"});
  draw("a.pdf", {"--bones", "outline", "--layout", "evidence"});
  const auto boxes = test::pathBoxes(QByteArray::fromStdString(bytes("a.pdf")));
  ASSERT_GT(boxes.size(), 100U);
  // A page of A3, from its upper left, in points of 1/72 inch.
  for (const char* group : {"scale-bar", "femur.L"}) {
    const QRectF mm = boxOf("a.svg", group);
    const auto same = [&](const QRectF& points) {
      const QRectF in(points.x() / 72 * 25.4, 297 - (points.y() + points.height()) / 72 * 25.4,
                      points.width() / 72 * 25.4, points.height() / 72 * 25.4);
      return std::abs(in.x() - mm.x()) < 0.05 && std::abs(in.y() - mm.y()) < 0.05 &&
             std::abs(in.width() - mm.width()) < 0.005 * mm.width() &&
             std::abs(in.height() - mm.height()) < 0.02 * mm.height();
    };
    EXPECT_TRUE(std::any_of(boxes.begin(), boxes.end(), same)) << group;
  }
}

TEST_F(SheetVerb, EveryLayoutIsTheSameBytesEveryTime) {
  smallAnimal();
  for (const std::string layout : {"side", "three-views", "evidence", "neck"})
    for (const std::string ending : {"pdf", "svg", "png"}) {
      if (ending != "pdf" && layout != "side") continue;
      std::vector<std::string> options{"--layout", layout, "--bones", "outline", "--joint-marks", "on"};
      if (ending == "png") options.insert(options.end(), {"--width", "600"});
      draw("a." + ending, options);
      draw("b." + ending, options);
      EXPECT_FALSE(bytes("a." + ending).empty());
      EXPECT_EQ(bytes("a." + ending), bytes("b." + ending)) << layout << " " << ending;
    }
}

TEST_F(SheetVerb, ThreeViewsAreInLineAndToOneScale) {
  smallAnimal();
  draw("a.svg", {"--bones", "outline", "--layout", "three-views", "--evidence-tones", "off"});
  const QString svg = QString::fromStdString(bytes("a.svg"));
  // The skull is drawn three times: from the side, from before, from above.
  std::vector<QRectF> skulls;
  auto groups = QRegularExpression("<g id=\"skull\">\\n<path d=\"([^\"]*)\"").globalMatch(svg);
  while (groups.hasNext()) {
    QRectF box;
    auto points = QRegularExpression("(-?[0-9.]+) (-?[0-9.]+)").globalMatch(groups.next().captured(1));
    while (points.hasNext()) {
      const auto point = points.next();
      const QPointF at(point.captured(1).toDouble(), point.captured(2).toDouble());
      box = box.isNull() ? QRectF(at, QSizeF(1e-6, 1e-6)) : box.united(QRectF(at, QSizeF(1e-6, 1e-6)));
    }
    skulls.push_back(box);
  }
  ASSERT_EQ(skulls.size(), 3U);
  EXPECT_NEAR(skulls[0].left(), skulls[2].left(), 0.2);    // under each other
  EXPECT_NEAR(skulls[0].width(), skulls[2].width(), 0.3);  // and equally long
  EXPECT_NEAR(skulls[0].top(), skulls[1].top(), 0.2);      // beside each other
  EXPECT_GT(skulls[1].left(), skulls[0].right());
  EXPECT_GT(skulls[2].top(), skulls[0].bottom());
}

TEST_F(SheetVerb, PngMayBeTransparentAndAsWideAsAsked) {
  smallAnimal();
  draw("a.png", {"--width", "900", "--transparent", "--bones", "silhouette"});
  const QImage image(QString::fromStdString(path("a.png").string()));
  EXPECT_EQ(image.width(), 900);
  EXPECT_EQ(image.height(), 636);  // 297 / 420
  EXPECT_EQ(qAlpha(image.pixel(3, 3)), 0);
  int dark = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) dark += qAlpha(image.pixel(x, y)) == 255 && qGray(image.pixel(x, y)) < 60;
  EXPECT_GT(dark, 2000);
}

TEST_F(SheetVerb, TellsBadOptionsBeforeAnyWork) {
  smallAnimal();
  EXPECT_THAT(run({"sheet", "small.zyga", "--out", "a.jpg"}).err, HasSubstr("must end in .pdf, .svg or .png"));
  EXPECT_THAT(run({"sheet", "small.zyga", "--out", "a.pdf", "--width", "900"}).err,
              HasSubstr("only a .png has pixels"));
  EXPECT_THAT(run({"sheet", "small.zyga", "--out", "a.pdf", "--layout", "poster"}).err, HasSubstr("three-views"));
  EXPECT_THAT(run({"sheet", "small.zyga", "--out", "a.pdf", "--person-m", "9"}).err, HasSubstr("0.5 to 2.5"));
  const auto tooLarge = run({"sheet", "small.zyga", "--out", "a.pdf", "--scale", "1:5"});
  EXPECT_EQ(tooLarge.exit, 2);
  EXPECT_THAT(tooLarge.err, HasSubstr("does not fit on this paper"));
}

TEST_F(SheetVerb, PassesComeAsPicturesOfOneSize) {
  smallAnimal();
  const auto ended =
      run({"picture", "small.zyga", "--view", "three-quarter", "--out", "p.png", "--width", "240", "--lens-mm", "50",
           "--eye-m", "1.6", "--horizon", "--passes", "shaded,outline,depth,direction,bones,evidence"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  EXPECT_THAT(ended.out, HasSubstr("eye at 1.60\u00A0m"));
  QImage shaded(QString::fromStdString(path("p-shaded.png").string()));
  for (const char* pass : {"outline", "depth", "direction", "bones", "evidence", "horizon"}) {
    const QImage image(QString::fromStdString(path(std::string("p-") + pass + ".png").string()));
    EXPECT_EQ(image.size(), QSize(240, 160)) << pass;
    if (std::string(pass) == "outline" || std::string(pass) == "horizon") continue;
    for (int y = 0; y < 160; ++y)
      for (int x = 0; x < 240; ++x) ASSERT_EQ(qAlpha(image.pixel(x, y)), qAlpha(shaded.pixel(x, y))) << pass;
  }
  EXPECT_THAT(bytes("p-bones.csv"), HasSubstr("skull,#"));
  EXPECT_THAT(run({"picture", "small.zyga", "--view", "left", "--out", "p.png", "--passes", "shaded,glow"}).err,
              HasSubstr("'glow' is not among"));
}

TEST_F(SheetVerb, PassesAreWrittenAllOrNone) {
  smallAnimal();
  std::filesystem::create_directory(path("q-depth.png"));
  const auto ended =
      run({"picture", "small.zyga", "--view", "left", "--out", "q.png", "--width", "120", "--passes", "outline,depth"});
  EXPECT_EQ(ended.exit, 2);
  EXPECT_THAT(ended.err, HasSubstr("q-depth.png: this is the name of a folder"));
  EXPECT_FALSE(std::filesystem::exists(path("q-outline.png")));
}

TEST_F(SheetVerb, APlateShowsABoneFiveTimesInItsOwnAxes) {
  smallAnimal();
  draw("p.svg", {"--plate", "C5", "--bones", "outline"});
  const QString svg = QString::fromStdString(bytes("p.svg"));
  EXPECT_EQ(svg.count("<g id=\"C5\">"), 5);
  EXPECT_EQ(svg.count("<g id=\"C4\">"), 0);
  for (const char* view : {"left lateral", "cranial", "caudal", "dorsal", "ventral"})
    EXPECT_TRUE(svg.contains(QString(">%1<").arg(view))) << view;
  EXPECT_FALSE(svg.contains("joints within range")) << "nothing is assessed for a plate";
  // As wide from in front as across its transverse processes, to the scale that is stated.
  const auto project = files::readProject(path("small.zyga"));
  const auto& bone = project.specimen()[*project.specimen().findBone("C5")];
  const double scale = QRegularExpression(">1:([0-9.]+) ").match(svg).captured(1).toDouble();
  ASSERT_GT(scale, 0);
  std::vector<QRectF> boxes;
  auto groups = QRegularExpression("<g id=\"C5\">\\n<path d=\"([^\"]*)\"").globalMatch(svg);
  while (groups.hasNext()) {
    QPolygonF corners;
    auto points = QRegularExpression("(-?[0-9.]+) (-?[0-9.]+)").globalMatch(groups.next().captured(1));
    while (points.hasNext()) {
      const auto point = points.next();
      corners << QPointF(point.captured(1).toDouble(), point.captured(2).toDouble());
    }
    boxes.push_back(corners.boundingRect());
  }
  ASSERT_EQ(boxes.size(), 5U);  // left, cranial, caudal, dorsal, ventral
  const double across = 2000 * bone.landmark("diapophysis.L").y() / scale;
  EXPECT_GT(boxes[1].width(), across);
  EXPECT_LT(boxes[1].width(), 1.5 * across);
  EXPECT_NEAR(boxes[1].width(), boxes[2].width(), 0.3);
  EXPECT_NEAR(boxes[0].width(), boxes[3].width(), 0.3);
  EXPECT_NEAR(boxes[0].height(), boxes[1].height(), 0.3);
  EXPECT_NEAR(boxes[3].height(), boxes[1].width(), 0.3);
  EXPECT_EQ(run({"sheet", "small.zyga", "--out", "p.svg", "--plate", "C55"}).exit, 2);
  EXPECT_EQ(run({"sheet", "small.zyga", "--out", "p.svg", "--layout", "plate"}).exit, 2);
}

TEST_F(SheetVerb, WhiteBonesLieInADarkBody) {
  smallAnimal();
  draw("b.svg", {"--bones", "in-body", "--person-m", "none"});
  const QRectF body = boxOf("b.svg", "body");
  for (const char* bone : {"skull", "femur.L", "C5", "D5"})
    EXPECT_TRUE(body.adjusted(-0.3, -0.3, 0.3, 0.3).contains(boxOf("b.svg", bone))) << bone;
}

TEST_F(SheetVerb, APictureOfSomeBonesOrOneThatLooksAtThem) {
  smallAnimal();
  const auto coverOf = [&](std::vector<std::string> more) {
    more.insert(more.begin(),
                {"picture", "small.zyga", "--view", "left", "--out", "c.png", "--width", "200", "--passes", "bones"});
    const auto ended = run(more);
    EXPECT_EQ(ended.exit, 0) << ended.err;
    QSet<QRgb> colours;
    const QImage image(QString::fromStdString(path("c-bones.png").string()));
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x)
        if (qAlpha(image.pixel(x, y)) == 255) colours.insert(image.pixel(x, y));
    return colours.size();
  };
  EXPECT_EQ(coverOf({"--bones", "C5"}), 1);
  EXPECT_EQ(coverOf({"--bones", "humerus.L,ulna.L"}), 2);
  EXPECT_GT(coverOf({"--look-at", "C5"}), 2) << "its neighbours stay in sight";
  EXPECT_THAT(run({"picture", "small.zyga", "--view", "left", "--out", "c.png", "--bones", "wing"}).err,
              HasSubstr("'wing' is no bone"));
  EXPECT_THAT(
      run({"picture", "small.zyga", "--view", "left", "--out", "c.png", "--bones", "C5", "--look-at", "C6"}).err,
      HasSubstr("is not drawn"));
  EXPECT_THAT(
      run({"picture", "small.zyga", "--view", "left", "--out", "c.png", "--distance-m", "0.5", "--eye-m", "90"}).err,
      HasSubstr("--look-at"));
}

}  // namespace
}  // namespace zyga::app
