#pragma once

#include <QColor>
#include <QObject>
#include <QPalette>

#include "core/anatomy/specimen.h"
#include "core/range/findings.h"

class QPainter;
class QApplication;

namespace zyga::ui {

enum class Scheme { Light, Dark };

/// How a person wants the window to look. A scheme alone is a look at the usual contrast and size.
struct Look {
  static constexpr int kLeastText = 100, kMostText = 200;

  Look() = default;
  Look(Scheme wanted) : scheme(wanted) {}
  bool operator==(const Look&) const = default;

  Scheme scheme = Scheme::Light;
  bool highContrast = false;
  int textPercent = 100;  ///< size of all text
};

/// Colour tokens; the only place where colours are written down.
struct Theme {
  Scheme scheme = Scheme::Light;
  bool highContrast = false;
  int textPercent = 100;
  QColor window, panel, text, muted, line, choice;
  QColor viewportTop, viewportGround;
  QColor boneFound, boneInferred, boneMirrored;
  /// Okabe & Ito 2008 palette, safe for colour-blind eyes.
  QColor supported, near, beyond, contact, notJudged;

  const QColor& verdict(range::Level level) const;
  const QColor& bone(anatomy::Evidence evidence) const;
};

/// The theme in use, and the signal that it has changed.
class ThemeSwitch : public QObject {
  Q_OBJECT
 public:
  static ThemeSwitch& instance();
  const Theme& current() const;
  /// Sets font, palette and style sheet of the application.
  void apply(QApplication& application, const Look& look);
  Look look() const;

 signals:
  void changed();

 private:
  ThemeSwitch();
  Theme theme_;
};

/// Shorthand for the current theme.
const Theme& theme();

/// A length that holds text, given in pixels for text of the usual size.
int scaledWithText(int pixels);
/// Text so large that panels stand behind each other instead of side by side.
bool textIsLarge();

/// The colour `share` of the way from `a` to `b`.
QColor mixed(const QColor& a, const QColor& b, qreal share);
QColor withAlpha(const QColor& colour, qreal alpha);

/// Verdicts carry a shape beside their colour: supported a dot, near a ring, beyond a triangle, not judged hatching.
/// Draws the shape of `size` pixels centred at `centre`.
void paintVerdict(QPainter& painter, const QPointF& centre, qreal size, range::Level level);

/// The cross of a contact between bones.
void paintContact(QPainter& painter, const QPointF& centre, qreal size);

/// Diagonal lines `spacing` pixels apart within `area`: the sign of what is not judged, and of shared facet area.
void paintHatching(QPainter& painter, const QRectF& area, const QColor& colour, qreal spacing = 4);

}  // namespace zyga::ui
