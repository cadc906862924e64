#pragma once

#include <QDialog>
#include <optional>

#include "core/study/stances/compare_poses.h"
#include "ui/document/document.h"

class QComboBox;
class QLabel;
class QTableWidget;

namespace zyga::ui {

/// The present pose against a named one, or against the same pose under the usual assumptions: a table of differences
/// that follows the window. While it is open the named pose stands as a ghost beside the animal.
class CompareDialog : public QDialog {
  Q_OBJECT
 public:
  explicit CompareDialog(Document& document, QWidget* parent = nullptr);
  ~CompareDialog() override;

 private:
  void fillChoices();
  void choose();
  void refresh();
  void fill(const study::Comparison& comparison);
  std::optional<std::size_t> chosenPose() const;

  Document& document_;
  QComboBox* other_;
  QLabel* empty_;
  QTableWidget *readings_, *joints_;
};

}  // namespace zyga::ui
