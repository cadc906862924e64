#pragma once

#include <QWidget>

#include "ui/document/document.h"

class QListView;
class QToolButton;

namespace zyga::ui {

class PosesModel;

/// The named poses: keep the present one, take, update, rename, delete, or show one as a ghost beside the present pose.
class PosesPanel : public QWidget {
  Q_OBJECT
 public:
  explicit PosesPanel(Document& document, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {280, 180}; }

 public slots:
  /// Keeps the present pose and lets its name be typed.
  void addPose();

 private:
  QLayout* createButtons();
  std::optional<std::size_t> chosen() const;
  void apply();
  void rename();
  void remove();
  void update();
  void compare(bool shown);
  void refreshButtons();

  Document& document_;
  PosesModel* model_;
  QListView* list_;
  QToolButton *add_, *apply_, *update_, *rename_, *delete_, *compare_;
};

}  // namespace zyga::ui
