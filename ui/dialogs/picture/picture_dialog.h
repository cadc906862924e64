#pragma once

#include <QDialog>

#include "ui/dialogs/picture/picture_scene.h"

class QLabel;
class QPushButton;

namespace zyga::ui {

class PassFields;
class PictureFields;
class PicturePreview;
class VerdictMark;

/// What picture is to be traced, with a preview that follows. What was chosen comes back at the next opening.
class PictureDialog : public QDialog {
  Q_OBJECT
 public:
  explicit PictureDialog(std::shared_ptr<const PictureScene> scene, QWidget* parent = nullptr);

  PictureChoice choice() const;
  void accept() override;

 private:
  QWidget* createContent();
  QWidget* createWords();
  void follow();
  QString told(const PictureChoice& choice, const Framing& framing) const;
  QString warning(const PictureChoice& choice, const Framing& framing) const;

  std::shared_ptr<const PictureScene> scene_;
  PictureFields* fields_;
  PassFields* passes_;
  PicturePreview* preview_;
  QLabel *told_, *warning_;
  VerdictMark* mark_;
  QPushButton* go_;
};

}  // namespace zyga::ui
