#pragma once

#include <QImage>
#include <QWidget>

#include "ui/dialogs/picture/picture_scene.h"
#include "ui/document/worker.h"

namespace zyga::ui {

/// A picture as it will be, small, traced beside the window: coarse at once, then finer.
class PicturePreview : public QWidget {
  Q_OBJECT
 public:
  explicit PicturePreview(std::shared_ptr<const PictureScene> scene, QWidget* parent = nullptr);

  void setChoice(const PictureChoice& choice);
  /// What is seen is up to date and in full quality.
  bool rests() const { return !picture_.isNull() && !worker_.busy(); }
  const QImage& picture() const { return picture_; }
  QSize sizeHint() const override { return {480, 320}; }

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void retrace(bool fine);
  QRect place() const;

  std::shared_ptr<const PictureScene> scene_;
  PictureChoice choice_;
  Framing framing_;
  QImage picture_;
  QString fault_;  ///< why there is none
  Worker worker_;
};

}  // namespace zyga::ui
