#pragma once

#include <QFontMetricsF>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QStringList>
#include <cmath>

#include "tests/support/marked_language.h"

/// What a person reads in a picture: a paper of the tests that keeps the words painted on it and nothing else. Widgets
/// are rendered on it (QWidget::render), plots and pages painted.
namespace zyga::test {

class TextEngine : public QPaintEngine {
 public:
  struct Piece {
    QString text;
    QPointF at;        ///< of the base line, in the painter's units
    QTransform place;  ///< of the painter
    QFont font;

    qreal width() const { return QFontMetricsF(font).horizontalAdvance(text); }
    qreal height() const { return QFontMetricsF(font).height(); }
  };

  TextEngine() : QPaintEngine(AllFeatures) {}
  const QList<Piece>& pieces() const { return pieces_; }

  bool begin(QPaintDevice*) override {
    setActive(true);
    return true;
  }
  bool end() override {
    setActive(false);
    return true;
  }
  Type type() const override { return User; }
  void updateState(const QPaintEngineState&) override {}
  void drawTextItem(const QPointF& at, const QTextItem& item) override {
    pieces_ += {item.text(), at, painter()->combinedTransform(), item.font()};
  }
  // All else leaves no trace.
  void drawPath(const QPainterPath&) override {}
  void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
  void drawPolygon(const QPoint*, int, PolygonDrawMode) override {}
  void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
  void drawTiledPixmap(const QRectF&, const QPixmap&, const QPointF&) override {}
  void drawImage(const QRectF&, const QImage&, const QRectF&, Qt::ImageConversionFlags) override {}

 private:
  QList<Piece> pieces_;
};

class PaintedText : public QPaintDevice {
 public:
  explicit PaintedText(const QSize& size) : size_(size) {}
  QPaintEngine* paintEngine() const override { return &engine_; }

  /// Texts in the order they were painted. The engine parts a line where its script changes, and words that are broken
  /// into lines come line by line: what is in one line, or goes on in the next one within a mark, is one text again. A
  /// mark whose end was cut off (words made shorter to fit) ends with its text.
  QStringList texts() const {
    QStringList out;
    const TextEngine::Piece* before = nullptr;
    for (const TextEngine::Piece& piece : engine_.pieces()) {
      if (before && inOneLine(*before, piece))
        out.last() += piece.text;
      else if (before && openMarks(out.last()) > 0 && inTheNextLine(*before, piece))
        out.last() += ' ' + piece.text;
      else
        out += piece.text;
      before = &piece;
    }
    for (QString& text : out)
      for (int missing = openMarks(text); missing > 0; --missing) text += kMarkedEnd;
    return out;
  }

 protected:
  int metric(PaintDeviceMetric metric) const override {
    constexpr double kDots = 96;  // an inch
    switch (metric) {
      case PdmWidth:
        return size_.width();
      case PdmHeight:
        return size_.height();
      case PdmWidthMM:
        return static_cast<int>(size_.width() / kDots * 25.4);
      case PdmHeightMM:
        return static_cast<int>(size_.height() / kDots * 25.4);
      case PdmNumColors:
        return 1 << 24;
      case PdmDepth:
        return 32;
      case PdmDpiX:
      case PdmDpiY:
      case PdmPhysicalDpiX:
      case PdmPhysicalDpiY:
        return static_cast<int>(kDots);
      case PdmDevicePixelRatio:
        return 1;
      case PdmDevicePixelRatioScaled:
        return static_cast<int>(devicePixelRatioFScale());
      default:
        return QPaintDevice::metric(metric);
    }
  }

 private:
  using Piece = TextEngine::Piece;

  static bool inOneLine(const Piece& a, const Piece& b) {
    const QPointF end = a.at + QPointF(a.width(), 0);
    return a.place == b.place && std::abs(b.at.y() - end.y()) < 0.05 * a.height() &&
           std::abs(b.at.x() - end.x()) < 0.1 * a.height();
  }
  static bool inTheNextLine(const Piece& a, const Piece& b) {
    const qreal down = b.at.y() - a.at.y();
    return a.place == b.place && a.font == b.font && down > 0.5 * a.height() && down < 2 * a.height();
  }

  QSize size_;
  mutable TextEngine engine_;
};

/// Everything that a widget and its children paint.
inline QStringList paintedTexts(QWidget& widget) {
  PaintedText paper(widget.size());
  widget.render(&paper);
  return paper.texts();
}

}  // namespace zyga::test
