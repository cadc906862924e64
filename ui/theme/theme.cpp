#include "ui/theme/theme.h"

#include <QApplication>

#include "ui/palette/palette.h"
#include "ui/theme/calm_style.h"
#include "ui/theme/style_sheet.h"
#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

void setVerdicts(Theme& t) {
  t.supported = verdictColour(range::Level::Supported);
  t.near = verdictColour(range::Level::Near);
  t.beyond = verdictColour(range::Level::Beyond);
  t.contact = contactColour();
}

Theme paper() {
  Theme t;
  t.scheme = Scheme::Light;
  t.window = QColor(0xF6, 0xF3, 0xEC);
  t.panel = QColor(0xFB, 0xFA, 0xF6);
  t.text = QColor(0x22, 0x20, 0x1C);
  t.muted = QColor(0x6B, 0x65, 0x5B);
  t.line = QColor(0xD9, 0xD3, 0xC7);
  t.choice = QColor(0x2F, 0x6F, 0x8F);
  t.viewportTop = QColor(0xEE, 0xE9, 0xDF);
  t.viewportGround = QColor(0xD9, 0xD3, 0xC6);
  t.boneFound = boneColour(anatomy::Evidence::Found);
  t.boneInferred = boneColour(anatomy::Evidence::Inferred);
  t.boneMirrored = boneColour(anatomy::Evidence::Mirrored);
  t.notJudged = verdictColour(range::Level::NotJudged);
  setVerdicts(t);
  return t;
}

Theme slate() {
  Theme t = paper();
  t.scheme = Scheme::Dark;
  t.window = QColor(0x1E, 0x21, 0x24);
  t.panel = QColor(0x26, 0x29, 0x2D);
  t.text = QColor(0xE7, 0xE4, 0xDD);
  t.muted = QColor(0x9A, 0xA0, 0xA6);
  t.line = QColor(0x3A, 0x3F, 0x45);
  t.choice = QColor(0x6F, 0xB3, 0xD2);
  t.viewportTop = QColor(0x30, 0x35, 0x3A);
  t.viewportGround = QColor(0x1B, 0x1E, 0x21);
  constexpr int kShadeDarker = 112;
  for (QColor* bone : {&t.boneFound, &t.boneInferred, &t.boneMirrored}) *bone = bone->darker(kShadeDarker);
  t.notJudged = QColor(0x74, 0x7A, 0x81);
  return t;
}

/// Text at 7:1 and all that carries meaning at 3:1 or more (WCAG 2.1, success criteria 1.4.6 and 1.4.11).
void strengthen(Theme& t) {
  t.highContrast = true;
  const bool light = t.scheme == Scheme::Light;
  t.window = t.panel = light ? QColor(Qt::white) : QColor(Qt::black);
  t.text = light ? QColor(Qt::black) : QColor(Qt::white);
  t.muted = light ? QColor(0x38, 0x38, 0x38) : QColor(0xD2, 0xD2, 0xD2);
  t.line = light ? QColor(0x6E, 0x6E, 0x6E) : QColor(0x96, 0x96, 0x96);
  t.choice = light ? QColor(0x00, 0x4A, 0x75) : QColor(0x8A, 0xD4, 0xFF);
  t.viewportTop = light ? QColor(Qt::white) : QColor(0x10, 0x12, 0x14);
  t.viewportGround = light ? QColor(0xE4, 0xE4, 0xE4) : QColor(Qt::black);
  // The hues of the usual verdicts, darker on white and lighter on black.
  t.supported = light ? QColor(0x00, 0x6B, 0x4E) : QColor(0x2F, 0xD6, 0xA6);
  t.near = light ? QColor(0x8F, 0x5F, 0x00) : QColor(0xFF, 0xC8, 0x45);
  t.beyond = light ? QColor(0xA8, 0x43, 0x00) : QColor(0xFF, 0x8A, 0x3D);
  t.contact = light ? QColor(0x96, 0x3B, 0x6F) : QColor(0xF0, 0xA6, 0xCF);
  t.notJudged = light ? QColor(0x55, 0x55, 0x55) : QColor(0xB4, 0xB4, 0xB4);
}

Theme themeOf(const Look& look) {
  Theme t = look.scheme == Scheme::Light ? paper() : slate();
  if (look.highContrast) strengthen(t);
  t.textPercent = look.textPercent;
  return t;
}

QPalette paletteOf(const Theme& t) {
  QPalette p;
  p.setColor(QPalette::Window, t.window);
  p.setColor(QPalette::WindowText, t.text);
  p.setColor(QPalette::Base, t.panel);
  p.setColor(QPalette::AlternateBase, t.window);
  p.setColor(QPalette::Text, t.text);
  p.setColor(QPalette::PlaceholderText, t.muted);
  p.setColor(QPalette::Button, t.panel);
  p.setColor(QPalette::ButtonText, t.text);
  p.setColor(QPalette::BrightText, t.beyond);
  p.setColor(QPalette::ToolTipBase, t.panel);
  p.setColor(QPalette::ToolTipText, t.text);
  p.setColor(QPalette::Highlight, t.choice);
  p.setColor(QPalette::HighlightedText, t.panel);
  p.setColor(QPalette::Link, t.choice);
  p.setColor(QPalette::LinkVisited, t.choice);
  p.setColor(QPalette::Light, t.panel);
  p.setColor(QPalette::Midlight, t.window);
  p.setColor(QPalette::Mid, t.line);
  p.setColor(QPalette::Dark, mixed(t.line, t.muted, 0.5));
  p.setColor(QPalette::Shadow, t.muted);
  const QColor faded = mixed(t.panel, t.muted, 0.6);
  for (auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    p.setColor(QPalette::Disabled, role, faded);
  return p;
}

}  // namespace

const QColor& Theme::verdict(range::Level level) const {
  switch (level) {
    case range::Level::Supported:
      return supported;
    case range::Level::Near:
      return near;
    case range::Level::Beyond:
      return beyond;
    case range::Level::NotJudged:
      break;
  }
  return notJudged;
}

const QColor& Theme::bone(anatomy::Evidence evidence) const {
  switch (evidence) {
    case anatomy::Evidence::Found:
    case anatomy::Evidence::FoundDeformed:
      return boneFound;
    case anatomy::Evidence::Mirrored:
    case anatomy::Evidence::Scaled:
      return boneMirrored;
    case anatomy::Evidence::Inferred:
      break;
  }
  return boneInferred;
}

ThemeSwitch::ThemeSwitch() : theme_(paper()) {}

ThemeSwitch& ThemeSwitch::instance() {
  static ThemeSwitch only;
  return only;
}

const Theme& ThemeSwitch::current() const { return theme_; }

Look ThemeSwitch::look() const {
  Look look(theme_.scheme);
  look.highContrast = theme_.highContrast;
  look.textPercent = theme_.textPercent;
  return look;
}

void ThemeSwitch::apply(QApplication& application, const Look& look) {
  theme_ = themeOf(look);
  // One style on every desktop, so that the sheet below changes what it expects to change.
  if (!application.property("zygaStyled").toBool()) {
    application.setStyle(new CalmStyle);
    application.setFont(figureFont(application.font()));
    application.setProperty("zygaStyled", true);
    application.setProperty("zygaTextSize", application.font().pointSizeF());
  }
  QFont font = application.font();
  font.setPointSizeF(application.property("zygaTextSize").toDouble() * look.textPercent / 100);
  application.setFont(font);
  application.setPalette(paletteOf(theme_));
  application.setStyleSheet(styleSheet(theme_));
  emit changed();
}

const Theme& theme() { return ThemeSwitch::instance().current(); }

int scaledWithText(int pixels) { return pixels * theme().textPercent / 100; }

bool textIsLarge() {
  constexpr int kLarge = 150;
  return theme().textPercent >= kLarge;
}

QColor mixed(const QColor& a, const QColor& b, qreal share) {
  const auto between = [share](qreal from, qreal to) { return from + (to - from) * share; };
  return QColor::fromRgbF(between(a.redF(), b.redF()), between(a.greenF(), b.greenF()), between(a.blueF(), b.blueF()));
}

QColor withAlpha(const QColor& colour, qreal alpha) {
  QColor c = colour;
  c.setAlphaF(alpha);
  return c;
}

}  // namespace zyga::ui
