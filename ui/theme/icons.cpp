#include "ui/theme/icons.h"

#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QSvgRenderer>

#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {

/// Paints one drawing; `black` in the file stands for the theme's text colour, `gray` for its muted colour.
class DrawingEngine : public QIconEngine {
 public:
  explicit DrawingEngine(QByteArray drawing) : drawing_(std::move(drawing)) {}

  void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
    QSvgRenderer(recoloured(mode)).render(painter, squareWithin(rect));
  }

  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap pixmap(size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    paint(&painter, QRect(QPoint(0, 0), size), mode, state);
    return pixmap;
  }

  QIconEngine* clone() const override { return new DrawingEngine(drawing_); }

 private:
  QByteArray recoloured(QIcon::Mode mode) const {
    const Theme& t = theme();
    const bool faded = mode == QIcon::Disabled;
    const QColor strong = faded ? mixed(t.panel, t.muted, 0.5) : t.text;
    const QColor soft = faded ? mixed(t.panel, t.muted, 0.35) : t.muted;
    QByteArray drawing = drawing_;
    return drawing.replace("black", strong.name().toLatin1()).replace("gray", soft.name().toLatin1());
  }

  static QRectF squareWithin(const QRect& rect) {
    const qreal side = std::min(rect.width(), rect.height());
    return QRectF(rect.x() + (rect.width() - side) / 2, rect.y() + (rect.height() - side) / 2, side, side);
  }

  QByteArray drawing_;
};

}  // namespace
}  // namespace zyga::ui

// Q_INIT_RESOURCE must stand outside any namespace.
static void loadIconResource() { Q_INIT_RESOURCE(icons); }

QIcon zyga::ui::icon(const QString& name) {
  // The resource sits in a static library, whose initialiser the linker would drop.
  loadIconResource();
  QFile file(QStringLiteral(":/icons/%1.svg").arg(name));
  if (!file.open(QIODevice::ReadOnly)) return {};
  return QIcon(new DrawingEngine(file.readAll()));
}
