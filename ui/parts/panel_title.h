#pragma once

#include <QPoint>
#include <QWidget>

class QDockWidget;
class QMainWindow;
class QToolButton;

namespace zyga::ui {

class ElidedLabel;

/// Title of a panel: its name, a word on its contents while it is folded, and buttons to fold and to close it. A click
/// anywhere on the title folds and unfolds.
class PanelTitle : public QWidget {
  Q_OBJECT
 public:
  PanelTitle(QDockWidget& dock, QWidget& content);

  bool folded() const { return folded_; }
  void setFolded(bool folded);
  /// Unfolds it as a person does, with the room it asks for.
  void unfold();
  /// Shown beside the name while the panel is folded.
  void setSummary(const QString& text);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 signals:
  /// The button beside the name wants this page of the help.
  void helpAsked(const QString& page);

 protected:
  void mousePressEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;

 private:
  void toggle();
  void refresh();
  int wantedHeight() const;
  /// Below it the panel is of no use as it stands, px.
  int heightOfUse() const;
  void foldNeighbours(const QMainWindow& window);

  QDockWidget& dock_;
  QWidget& content_;
  ElidedLabel* summary_;
  QToolButton* fold_;
  QString words_;
  QPoint pressedAt_;
  bool folded_ = false;
  int unfoldedAt_ = 0;  ///< the later, the higher
};

}  // namespace zyga::ui
