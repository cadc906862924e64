#include "ui/help/help_pages.h"

#include <QFile>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgRenderer>
#include <QTextDocumentFragment>

#include "ui/theme/theme.h"
#include "ui/words/language.h"

namespace zyga::ui {
namespace {

QString contentOf(const QString& file) {
  QFile source(file);
  return source.open(QIODevice::ReadOnly) ? QString::fromUtf8(source.readAll()) : QString();
}

/// Colours stand in figures and style as @text, @muted and so on.
QString coloured(QString text) {
  const Theme& t = theme();
  const std::pair<const char*, QColor> words[] = {
      {"@text", t.text},           {"@muted", t.muted},   {"@panel", t.panel},    {"@choice", t.choice},
      {"@bone", t.boneFound},      {"@line", t.line},     {"@near", t.near},      {"@beyond", t.beyond},
      {"@supported", t.supported}, {"@window", t.window}, {"@contact", t.contact}};
  for (const auto& [word, colour] : words) text.replace(QLatin1String(word), colour.name());
  return text;
}

QImage blank(const QSizeF& size, qreal pixelRatio) {
  QImage image((size * pixelRatio).toSize(), QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(pixelRatio);
  image.fill(Qt::transparent);
  return image;
}

QImage sign(const QString& name, qreal pixelRatio) {
  constexpr int kSize = 18;
  const qreal size = scaledWithText(kSize);
  QImage image = blank({size, size}, pixelRatio);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  const QPointF centre(size / 2, size / 2);
  const qreal shape = size * 0.66;
  if (name == "dot")
    paintVerdict(painter, centre, shape, range::Level::Supported);
  else if (name == "ring")
    paintVerdict(painter, centre, shape, range::Level::Near);
  else if (name == "triangle")
    paintVerdict(painter, centre, shape, range::Level::Beyond);
  else if (name == "hatching")
    paintVerdict(painter, centre, shape, range::Level::NotJudged);
  else if (name == "cross")
    paintContact(painter, centre, shape);
  else
    return {};
  return image;
}

}  // namespace

QString helpHtml(const QString& page) {
  const QString own = contentOf(QString(":/help/%1/%2.html").arg(languageSpoken(), page));
  return own.isEmpty() ? contentOf(QString(":/help/en/%1.html").arg(page)) : own;
}

QString helpTitle(const QString& page) {
  static const QRegularExpression heading("<h1>(.*?)</h1>");
  return QTextDocumentFragment::fromHtml(heading.match(helpHtml(page)).captured(1)).toPlainText();
}

QString helpWords(const QString& page) { return QTextDocumentFragment::fromHtml(helpHtml(page)).toPlainText(); }

QImage helpFigure(const QString& name, qreal pixelRatio) {
  if (!name.endsWith(".svg")) return sign(name, pixelRatio);
  QSvgRenderer figure(coloured(contentOf(":/help/figures/" + name)).toUtf8());
  if (!figure.isValid()) return {};
  QImage image = blank(QSizeF(figure.defaultSize()) * theme().textPercent / 100.0, pixelRatio);
  QPainter painter(&image);
  figure.render(&painter, QRectF(QPointF(0, 0), QSizeF(image.size()) / pixelRatio));
  return image;
}

QString helpStyle() {
  return coloured(R"(
body { color: @text; }
h1 { font-size: x-large; font-weight: 600; }
h2 { font-size: large; font-weight: 600; margin-top: 16px; }
p, li { margin-top: 6px; margin-bottom: 6px; }
p.caption, p.source { color: @muted; }
p.formula { margin-left: 24px; }
p.caution { background-color: @window; }
a { color: @choice; text-decoration: none; }
)");
}

}  // namespace zyga::ui
