#include "ui/theme/theme.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QImage>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/theme/icons.h"
#include "ui/theme/style_sheet.h"
#include "ui/theme/typography.h"
#include "ui/words/numbers.h"

namespace zyga::ui {
namespace {

/// Relative luminance and contrast ratio of the Web Content Accessibility Guidelines (WCAG) 2.1, W3C 2018, section
/// "relative luminance" and "contrast ratio".
double luminance(const QColor& c) {
  const auto linear = [](double v) { return v <= 0.03928 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
  return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

double contrast(const QColor& a, const QColor& b) {
  const auto [dark, light] = std::minmax({luminance(a), luminance(b)});
  return (light + 0.05) / (dark + 0.05);
}

class ThemeTest : public testing::TestWithParam<Scheme> {
 protected:
  void SetUp() override { ThemeSwitch::instance().apply(*qApp, GetParam()); }
};

TEST(Contrast, FormulaGivesTheStandardsOwnExtremes) {
  EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9);
  EXPECT_NEAR(contrast(Qt::white, Qt::white), 1.0, 1e-9);
}

// WCAG 2.1 success criterion 1.4.3 asks 4.5:1 of text, 1.4.11 asks 3:1 of what is needed to see a control.
TEST_P(ThemeTest, TextIsReadableOnEverySurface) {
  for (const QColor& ground : {theme().window, theme().panel}) {
    EXPECT_GE(contrast(theme().text, ground), 4.5);
    EXPECT_GE(contrast(theme().muted, ground), 4.5);
    EXPECT_GE(contrast(theme().choice, ground), 3.0);
  }
}

// WCAG 2.1, success criteria 1.4.6 (7:1 for text) and 1.4.11 (3:1 for what carries meaning).
TEST_P(ThemeTest, HighContrastIsHigh) {
  Look strong(GetParam());
  strong.highContrast = true;
  ThemeSwitch::instance().apply(*qApp, strong);
  EXPECT_EQ(ThemeSwitch::instance().look(), strong);
  const Theme& t = theme();
  for (const QColor& ground : {t.window, t.panel, mixed(t.panel, t.choice, 0.20), mixed(t.panel, t.text, 0.14)})
    for (const QColor& words : {t.text, t.muted})
      EXPECT_GE(contrast(words, ground), 7.0) << words.name().toStdString() << " on " << ground.name().toStdString();
  for (const QColor& mark : {t.line, t.choice, t.supported, t.near, t.beyond, t.contact, t.notJudged})
    for (const QColor& ground : {t.panel, t.viewportTop, t.viewportGround})
      EXPECT_GE(contrast(mark, ground), 3.0) << mark.name().toStdString() << " on " << ground.name().toStdString();
}

TEST_P(ThemeTest, TextGrowsAndComesBack) {
  const qreal usual = qApp->font().pointSizeF();
  Look large(GetParam());
  large.textPercent = 200;
  ThemeSwitch::instance().apply(*qApp, large);
  EXPECT_DOUBLE_EQ(qApp->font().pointSizeF(), 2 * usual);
  EXPECT_EQ(scaledWithText(52), 104);
  EXPECT_TRUE(textIsLarge());
  ThemeSwitch::instance().apply(*qApp, GetParam());
  EXPECT_DOUBLE_EQ(qApp->font().pointSizeF(), usual);
}

TEST_P(ThemeTest, PaletteAndSheetFollowTheScheme) {
  EXPECT_EQ(theme().scheme, GetParam());
  EXPECT_EQ(qApp->palette().color(QPalette::Window), theme().window);
  EXPECT_EQ(qApp->palette().color(QPalette::Text), theme().text);
  EXPECT_TRUE(qApp->styleSheet().contains(theme().choice.name()));
}

TEST_P(ThemeTest, SheetLeavesNoWordUnfilled) { EXPECT_FALSE(styleSheet(theme()).contains('@')); }

TEST_P(ThemeTest, VerdictsHaveTheOkabeItoColours) {
  // Okabe & Ito 2008, Color Universal Design (jfly.uni-koeln.de/color): bluish green, orange, vermillion.
  EXPECT_EQ(theme().verdict(range::Level::Supported), QColor(0, 158, 115));
  EXPECT_EQ(theme().verdict(range::Level::Near), QColor(230, 159, 0));
  EXPECT_EQ(theme().verdict(range::Level::Beyond), QColor(213, 94, 0));
}

int inkedPixels(const QImage& image) {
  int inked = 0;
  for (int y = 0; y < image.height(); ++y)
    for (int x = 0; x < image.width(); ++x) inked += image.pixelColor(x, y).alpha() > 127;
  return inked;
}

QImage verdictImage(range::Level level) {
  QImage image(41, 41, QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::transparent);
  QPainter painter(&image);
  paintVerdict(painter, QPointF(20.5, 20.5), 30, level);
  return image;
}

TEST_P(ThemeTest, VerdictShapesDifferWithoutColour) {
  const QImage dot = verdictImage(range::Level::Supported);
  const QImage ring = verdictImage(range::Level::Near);
  const QImage triangle = verdictImage(range::Level::Beyond);
  const QImage hatched = verdictImage(range::Level::NotJudged);
  EXPECT_NEAR(inkedPixels(dot), M_PI * 15 * 15, 30) << "area of a disc of diameter 30";
  EXPECT_EQ(ring.pixelColor(20, 20).alpha(), 0) << "a ring is open in the middle";
  EXPECT_GT(ring.pixelColor(20, 8).alpha(), 200);
  EXPECT_GT(triangle.pixelColor(20, 20).alpha(), 200);
  EXPECT_EQ(triangle.pixelColor(9, 9).alpha(), 0) << "a triangle has no upper corners";
  EXPECT_GT(triangle.pixelColor(7, 28).alpha(), 200) << "but lower ones";
  EXPECT_EQ(dot.pixelColor(7, 29).alpha(), 0);
  EXPECT_GT(inkedPixels(hatched), 0);
  EXPECT_LT(inkedPixels(hatched), 0.6 * inkedPixels(dot));
}

TEST_P(ThemeTest, EveryIconIsDrawnInTheThemesInk) {
  const char* const names[] = {"open",    "save",   "undo",    "redo",   "neutral",       "stand",        "left",
                               "right",   "dorsal", "cranial", "caudal", "three-quarter", "orthographic", "perspective",
                               "frame",   "light",  "dark",    "export", "picture",       "add-pose",     "delete",
                               "compare", "close",  "search",  "reach"};
  for (const char* name : names) {
    const QImage image = icon(name).pixmap(40, 40).toImage();
    ASSERT_FALSE(image.isNull()) << name;
    EXPECT_GT(inkedPixels(image), 60) << name;
    bool textInk = false;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x) textInk |= image.pixelColor(x, y) == theme().text;
    EXPECT_TRUE(textInk) << name;
  }
  EXPECT_TRUE(icon("no such icon").isNull());
}

INSTANTIATE_TEST_SUITE_P(Schemes, ThemeTest, testing::Values(Scheme::Light, Scheme::Dark));

TEST(Theme, SwitchTellsItsListeners) {
  ThemeSwitch::instance().apply(*qApp, Scheme::Light);
  int told = 0;
  QObject context;
  QObject::connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, &context, [&told] { ++told; });
  ThemeSwitch::instance().apply(*qApp, Scheme::Dark);
  EXPECT_EQ(told, 1);
  EXPECT_EQ(theme().scheme, Scheme::Dark);
}

TEST(Theme, FiguresStandStill) { EXPECT_TRUE(hasTabularFigures(figureFont(QApplication::font()))); }

TEST(Figures, AnglesAndLengthsHaveUnitsAndTrueSigns) {
  EXPECT_EQ(signedDegrees(0.1), QString::fromUtf8("+5.7°"));
  EXPECT_EQ(signedDegrees(-0.1), QString::fromUtf8("−5.7°"));
  EXPECT_EQ(signedDegrees(-1e-9), QString::fromUtf8("0.0°"));
  EXPECT_EQ(signedDegrees(1e-9), QString::fromUtf8("0.0°"));
  EXPECT_EQ(degrees(M_PI), QString::fromUtf8("180.0°"));
  EXPECT_EQ(millimetres(0.0123), QString::fromUtf8("12.3\u00A0mm"));
  EXPECT_EQ(millimetres(-0.0123, 0), QString::fromUtf8("−12\u00A0mm"));
}

}  // namespace
}  // namespace zyga::ui
