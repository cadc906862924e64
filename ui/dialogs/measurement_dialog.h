#pragma once

#include <QDialog>

#include "ui/document/document.h"

class QAbstractButton;
class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QListWidget;
class QSpinBox;

namespace zyga::ui {

class MeasurementFilter;
class MeasurementModel;
class MeasurementView;
struct Obstacle;

/// The measurement table of the project: body plan, counts and totals of the regions above, a row a bone below, and
/// what is remarked on its cells in a list that leads to them. Stays open beside the animal, which follows each edit.
class MeasurementDialog : public QDialog {
  Q_OBJECT
 public:
  explicit MeasurementDialog(Document& document, QWidget* parent = nullptr);
  /// What is being typed is given up.
  ~MeasurementDialog() override;

  /// Shows the rows of the part of the animal that this bone belongs to, and the bone.
  void showBone(const anatomy::BoneName& bone);
  void jumpTo(const anatomy::BoneName& bone, anatomy::Measure measure);
  /// Says why something was not done; empty: takes it away.
  void tell(const QString& why);

 signals:
  void openAsked();
  void saveAsked();
  void blankAsked();

 private:
  /// Fields of one region of the column.
  struct RegionFields {
    QSpinBox* count;
    QLineEdit* total;  ///< none: measured with another region
    QLabel* title;
  };

  QWidget* createSettings();
  QLayout* createTools();
  QLayout* createButtons();
  void addRegion(QGridLayout& grid, int column);
  void refreshSettings();
  void refreshParts();
  void refreshColumns();
  void refreshRemarks();
  void takePlan();
  void takeCount(std::size_t region);
  void takeTotal(std::size_t region);
  void told(const Obstacle& obstacle);

  Document& document_;
  MeasurementModel* model_;
  MeasurementFilter* filter_;
  MeasurementView* view_;
  QLabel* title_;
  QComboBox *plan_, *part_;
  std::vector<RegionFields> regions_;
  QLineEdit* search_;
  QCheckBox* all_;
  QLabel *refusal_, *remarkTitle_;
  QListWidget* remarkList_;
};

}  // namespace zyga::ui
