#pragma once

#include <QFont>
#include <QPainter>
#include <QString>
#include <functional>

class QPdfWriter;

namespace zyga::ui {

/// Sets text, tables and figures one below the other on A4 pages, with a running foot. Units are points.
class PageFlow {
 public:
  /// The writer's pages must be A4 without margins. `foot` stands at the bottom left of every page.
  PageFlow(QPdfWriter& writer, const QString& foot);
  ~PageFlow();

  enum class Style { Title, Subtitle, Heading, Body, Small };
  /// A paragraph; breaks over pages between lines.
  void text(const QString& words, Style style, qreal indent = 0);
  void space(qreal height);
  /// A line across the page.
  void rule(qreal width);
  /// A figure over the full width; moves to the next page where it does not fit.
  void figure(qreal height, const std::function<void(QPainter&, const QRectF&)>& paint);
  /// Starts a new page where less than this is left.
  void keepTogether(qreal height);

  struct Column {
    QString head;
    bool words = true;
    qreal width = 0;
  };
  /// The head is repeated on every page. Cells of words wrap.
  void table(std::vector<Column> columns, const std::vector<QStringList>& rows);

  /// Of what must stay together of a table: all of it, or of a long one its first rows.
  qreal tableHeight(std::vector<Column> columns, const std::vector<QStringList>& rows) const;

  qreal width() const;
  /// Height of a paragraph in a column so wide.
  qreal heightOf(const QString& words, Style style, qreal width) const;
  int pages() const { return page_; }

 private:
  void newPage();
  void paintFoot();
  qreal left() const;
  qreal bottom() const;
  QFont fontOf(Style style) const;
  QColor inkOf(Style style) const;
  void row(const std::vector<Column>& columns, const QStringList& cells, bool head);
  qreal rowHeight(const std::vector<Column>& columns, const QStringList& cells, bool head) const;
  qreal heightToKeep(const std::vector<Column>& columns, const std::vector<QStringList>& rows) const;
  void shareWidths(std::vector<Column>& columns, const std::vector<QStringList>& rows) const;

  QPdfWriter& writer_;
  QPainter painter_;
  QString foot_;
  qreal y_ = 0;
  int page_ = 1;
};

}  // namespace zyga::ui
