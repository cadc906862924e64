#pragma once

#include <QImage>
#include <QString>

namespace zyga::ui {

/// The page as HTML in the language that is spoken, in English where it has not been translated; empty when there is no
/// such page.
QString helpHtml(const QString& page);
/// What stands in the page's first heading.
QString helpTitle(const QString& page);
/// The words of the page without markup, to search in.
QString helpWords(const QString& page);
/// A figure ("overlap.svg") or the sign of a verdict ("dot", "ring", "triangle", "cross", "hatching") in the colours of
/// the theme and the size of the text, `pixelRatio` pixels to one of the screen; null when there is none.
QImage helpFigure(const QString& name, qreal pixelRatio);
/// The look of the pages in the theme.
QString helpStyle();

}  // namespace zyga::ui
