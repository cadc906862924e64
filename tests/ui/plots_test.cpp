#include <gtest/gtest.h>

#include <QImage>
#include <QPdfWriter>
#include <QXmlStreamReader>
#include <cmath>

#include "tests/ui/document_sample.h"
#include "ui/plots/plot_axes.h"
#include "ui/plots/plot_file.h"
#include "ui/plots/study_plots.h"

namespace zyga::ui {
namespace {

TEST(PlotAxes, TicksAreRoundAndInside) {
  EXPECT_EQ(ticksOf(0, 10, 5), (std::vector<double>{0, 2, 4, 6, 8, 10}));
  EXPECT_EQ(ticksOf(-1, 1, 4), (std::vector<double>{-1, -0.5, 0, 0.5, 1}));
  for (const auto& [least, most] : {std::pair{0.013, 0.029}, std::pair{-312.0, 5400.0}, std::pair{7.1, 7.9}}) {
    const auto ticks = ticksOf(least, most, 6);
    ASSERT_GE(ticks.size(), 3u);
    EXPECT_LE(ticks.size(), 8u);
    EXPECT_GE(ticks.front(), least);
    EXPECT_LE(ticks.back(), most);
  }
  EXPECT_TRUE(ticksOf(1, 1, 5).empty());
}

TEST(PlotAxes, WordsHaveTheDecimalsTheyNeedAndATrueMinus) {
  EXPECT_EQ(tickWord(0.3, 0.1), "0.3");
  EXPECT_EQ(tickWord(20, 10), "20");
  EXPECT_EQ(tickWord(-2.5, 0.5), QString(QChar(0x2212)) + "2.5");
  EXPECT_EQ(tickWord(1e-17, 0.1), "0.0");
}

TEST(PlotFrame, TrueToScaleHasSquareMetres) {
  const PlotFrame frame = PlotFrame::trueToScale({0, 0, 400, 200}, {0, 3, {}}, {0, 4, {}});
  EXPECT_NEAR(frame.xAt(1) - frame.xAt(0), frame.yAt(0) - frame.yAt(1), 1e-9);
  EXPECT_NEAR(frame.yAt(0), 200, 1e-9) << "the ground stays at the bottom";
  const PlotFrame left = PlotFrame::trueToScale({0, 0, 400, 200}, {0, 3, {}}, {0, 4, {}}, true);
  EXPECT_GT(left.xAt(0), left.xAt(1)) << "ahead is to the left";
}

// Length of the hatching times its spacing is the area, whatever the angle: a triangle and a square with a hole.
TEST(Hatching, CoversTheAreaAndLeavesHolesOpen) {
  const QPolygonF triangle{{0, 0}, {100, 0}, {0, 80}};
  const QPolygonF square{{0, 0}, {90, 0}, {90, 90}, {0, 90}}, hole{{30, 30}, {60, 30}, {60, 60}, {30, 60}};
  for (const double angle : {0.0, 30.0, 45.0, 110.0}) {
    double inTriangle = 0, inRing = 0;
    for (const QLineF& line : hatchingIn({triangle}, 0.5, angle)) inTriangle += 0.5 * line.length();
    for (const QLineF& line : hatchingIn({square, hole}, 0.5, angle)) inRing += 0.5 * line.length();
    EXPECT_NEAR(inTriangle, 4000, 40) << angle;
    EXPECT_NEAR(inRing, 8100 - 900, 90) << angle;
  }
}

class StudyPlots : public testing::Test {
 protected:
  range::Scenario scenario() const { return scenarioOf(project_); }
  std::vector<std::pair<const char*, PlotPainter>> all() {
    study::EnvelopeOptions outline;
    outline.rings = 150;
    outline.space = false;
    study::SpreadOptions few;
    few.draws = 20;
    const auto build = [](const anatomy::MeasurementTable& table) { return files::specimenOf(table, {}); };
    return {{"elevation", drawing(study::elevation(scenario()), paintElevation)},
            {"envelope", drawing(study::envelope(scenario(), outline).value(), paintEnvelope)},
            {"range", drawing(study::rangeChart(scenario()).value(), paintRangeChart)},
            {"spread", drawing(study::spread(scenario(), project_.table, build, few).value(), paintSpread)},
            {"pressure", drawing(study::pressure(scenario()), paintPressure)},
            {"stress", drawing(study::jointStress(scenario()), paintStress)}};
  }
  template <class Study>
  static PlotPainter drawing(const Study& found,
                             void (*paint)(QPainter&, const QRectF&, const Study&, const PlotInk&)) {
    return [found, paint](QPainter& painter, const QRectF& area) { paint(painter, area, found, printInk()); };
  }

  files::Project project_ = sampleProject();
};

/// Ink on paper, all of it inside the frame it was given, and black on white alone.
TEST_F(StudyPlots, DrawInsideTheirAreaInGreys) {
  for (const auto& [name, paint] : all()) {
    QImage image(700, 560, QImage::Format_RGB32);
    const QColor outside(255, 250, 200);
    image.fill(outside);
    QPainter painter(&image);
    paint(painter, QRectF(50, 40, 600, 480));
    painter.end();
    int ink = 0;
    for (int y = 0; y < image.height(); ++y) {
      for (int x = 0; x < image.width(); ++x) {
        const QColor colour = image.pixelColor(x, y);
        if (QRect(50, 40, 600, 480).contains(x, y)) {
          EXPECT_LE(colour.hsvSaturation(), 3) << name << " at " << x << ", " << y;
          if (colour.value() < 128) ++ink;
        } else {
          ASSERT_EQ(colour, outside) << name << " leaves its area at " << x << ", " << y;
        }
      }
    }
    EXPECT_GT(ink, 1500) << name;
  }
}

TEST_F(StudyPlots, AreVectorsInSvgAndReadAgain) {
  for (const auto& [name, paint] : all()) {
    const QByteArray svg = plotBytes("svg", {480, 360}, paint);
    QXmlStreamReader reader(svg);
    int strokes = 0, words = 0, pictures = 0;
    while (!reader.atEnd()) {
      reader.readNext();
      if (!reader.isStartElement()) continue;
      const auto element = reader.name();
      if (element == QLatin1String("path") || element == QLatin1String("polyline") ||
          element == QLatin1String("polygon")) {
        ++strokes;
      }
      if (element == QLatin1String("text")) ++words;
      if (element == QLatin1String("image")) ++pictures;
    }
    EXPECT_FALSE(reader.hasError()) << name << ": " << reader.errorString().toStdString();
    EXPECT_GT(strokes, 20) << name;
    EXPECT_GT(words, 5) << name;
    EXPECT_EQ(pictures, 0) << name;
    EXPECT_EQ(svg, plotBytes("svg", {480, 360}, paint)) << name << " is the same every time";
  }
}

TEST_F(StudyPlots, FitSmallPaperWithoutHarm) {
  for (const auto& [name, paint] : all()) {
    QImage image(240, 180, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paint(painter, QRectF(0, 0, 240, 180));
    EXPECT_TRUE(painter.isActive()) << name;
  }
}

TEST(PlotFile, KnowsItsEndings) {
  const PlotPainter stroke = [](QPainter& painter, const QRectF& area) {
    painter.drawLine(area.topLeft(), area.center());
  };
  EXPECT_TRUE(plotBytes("pdf", {100, 80}, stroke).startsWith("%PDF"));
  const QImage png = QImage::fromData(plotBytes("png", {100, 80}, stroke));
  EXPECT_EQ(png.size(), QSize(400, 320));
  EXPECT_TRUE(plotBytes("bmp", {100, 80}, stroke).isEmpty());
}

}  // namespace
}  // namespace zyga::ui
