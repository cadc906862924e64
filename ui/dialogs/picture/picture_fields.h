#pragma once

#include <QWidget>

#include "ui/dialogs/picture/picture_scene.h"

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;

namespace zyga::ui {

class UnitSpinBox;

/// From where, through what and how large: the fields of a picture.
class PictureFields : public QWidget {
  Q_OBJECT
 public:
  /// `screenTurn`: of the view on screen, rad; taken over by who chooses a lens for it.
  explicit PictureFields(double screenTurn, QWidget* parent = nullptr);

  /// What is written of it (finished picture, passes) stays with `choice`.
  void setValue(const PictureChoice& choice);
  void addTo(PictureChoice& choice) const;
  /// Shows what followed from the choice: distance, size, whether there is a horizon.
  void showFraming(const Framing& framing);

 signals:
  void changed();

 private:
  void addLensRows(QFormLayout& form);
  void addSizeRows(QFormLayout& form);
  void chooseView();
  void chooseProjection(int index);
  void turn();
  void select(std::optional<picture::StandardView> view);
  void fit();
  bool onScreen() const;
  bool throughLens() const;

  static constexpr int kViewOnScreen = -1;  ///< among the views

  double screenTurn_;
  bool leftScreen_ = false;  ///< a projection took the place of the one on screen, its side is still meant
  bool lensWanted_ = false;
  picture::StandardView side_ = picture::StandardView::ThreeQuarter;  ///< the last standard one
  QComboBox *view_, *projection_;
  UnitSpinBox *lens_, *eye_, *turn_, *distance_, *width_;
  QCheckBox *nearest_, *horizon_, *transparent_, *grid_;
  QLabel* size_;
};

}  // namespace zyga::ui
