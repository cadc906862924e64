#pragma once

#include <QDockWidget>

namespace zyga::ui {

class PanelTitle;

/// A panel in its place beside the view, under a title of our own that folds and closes it.
class PanelDock : public QDockWidget {
  Q_OBJECT
 public:
  /// Named `name`, by which its place is kept between sessions; `content` is the panel.
  PanelDock(const QString& name, const QString& title, QWidget* content, Qt::DockWidgetArea side);

  QWidget& content() const { return *content_; }
  /// Where it stands until the person moves it.
  Qt::DockWidgetArea side() const { return side_; }
  /// Null for the strip, which has no title.
  PanelTitle* title() const;
  void setFolded(bool folded);
  bool folded() const;
  /// Brings it to the front, unfolded: a command has opened it.
  void reveal();
  /// Its title says this while it is folded.
  void setSummary(const QString& words);

 signals:
  void helpAsked(const QString& page);

 private:
  QWidget* content_;
  Qt::DockWidgetArea side_;
};

}  // namespace zyga::ui
