#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QMouseEvent>
#include <QSignalSpy>
#include <QTest>
#include <QtMath>

#include "tests/ui/document_sample.h"
#include "tests/ui/patience.h"
#include "ui/strip/range_strip.h"
#include "ui/theme/theme.h"

namespace zyga::ui {

/// A shown strip over the sample animal, and a person's hands on it.
class StripTest : public testing::Test {
 protected:
  void SetUp() override {
    ThemeSwitch::instance().apply(*qApp, Scheme::Light);
    open(sampleProject());
  }

  void open(files::Project project) {
    document_.open(std::move(project), {});
    strip_.resize(1280, 200);
    strip_.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&strip_));
    settle();
  }
  void settle() {
    ASSERT_TRUE(QTest::qWaitFor([this] { return strip_.settled(); }, kPatience));
  }

  JointIndex joint(const char* id) const { return document_.specimen().findJoint(id).value(); }
  std::size_t column(const char* id) const { return strip_.columns().columnOf(joint(id)).value(); }
  double angle(const char* id, int motion = 0) const { return document_.pose()[joint(id)][motion]; }
  range::Level level(const char* id) const { return document_.assessment().find(joint(id))->level; }
  QPointF mark(const char* id) const { return strip_.markPlace(column(id)); }
  QPointF laneAt(const char* id, double angle) const {
    return {strip_.stripLayout().xOfColumn(column(id)), strip_.stripLayout().yOf(angle)};
  }
  /// On the lane and well away from its mark at neutral.
  QPointF emptyLane(const char* id) const {
    const StripLayout& l = strip_.stripLayout();
    return {l.xOfColumn(column(id)), l.plot().bottom() - 12};
  }
  void setAngle(const char* id, double value, int motion = 0) {
    kinematics::Pose pose = document_.pose();
    pose[joint(id)][motion] = value;
    document_.changePose(pose, "set");
    settle();
  }

  void press(const QPointF& at) { QTest::mousePress(&strip_, Qt::LeftButton, {}, at.toPoint()); }
  void moveTo(const QPointF& at, Qt::MouseButtons buttons = Qt::LeftButton) {
    QMouseEvent event(QEvent::MouseMove, at, strip_.mapToGlobal(at), Qt::NoButton, buttons, Qt::NoModifier);
    QApplication::sendEvent(&strip_, &event);
  }
  void release(const QPointF& at) { QTest::mouseRelease(&strip_, Qt::LeftButton, {}, at.toPoint()); }
  void drag(const QPointF& from, const QPointF& to) {
    press(from);
    for (double share : {0.3, 0.7, 1.0}) moveTo(from + (to - from) * share);
    release(to);
  }
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(&strip_, key, modifiers); }

  QImage picture() { return strip_.grab().toImage(); }
  /// How many pixels of `area` have this colour, give or take what smoothing at edges does.
  static int pixelsOf(const QImage& image, const QRectF& area, const QColor& colour) {
    int count = 0;
    const QRect inside = area.toAlignedRect() & image.rect();
    for (int y = inside.top(); y <= inside.bottom(); ++y)
      for (int x = inside.left(); x <= inside.right(); ++x) {
        const QColor c = image.pixelColor(x, y);
        const int far = std::max({std::abs(c.red() - colour.red()), std::abs(c.green() - colour.green()),
                                  std::abs(c.blue() - colour.blue())});
        count += far <= 12;
      }
    return count;
  }
  static QRectF around(const QPointF& centre, qreal half) {
    return QRectF(centre.x() - half, centre.y() - half, 2 * half, 2 * half);
  }

  Document document_;
  RangeStrip strip_{document_};
};

}  // namespace zyga::ui
