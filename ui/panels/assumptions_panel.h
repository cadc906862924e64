#pragma once

#include <QWidget>
#include <functional>

#include "ui/document/document.h"

class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QToolButton;

namespace zyga::ui {

class CartilageField;

/// What is taken for granted: least overlap, cartilage, tolerances and the near margin. Every edit acts at once on the
/// pose's verdict and on the ranges, and can be undone.
class AssumptionsPanel : public QWidget {
  Q_OBJECT
 public:
  explicit AssumptionsPanel(Document& document, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {320, 330}; }

 private:
  void createOverlap(QFormLayout& form);
  void createCartilage(QFormLayout& form);
  void createTolerances(QFormLayout& form);
  QDoubleSpinBox* percentField(const char* name, const QString& label, double most);
  QToolButton* cartilagePresets();
  /// Pushes one step that makes `edit` to the present assumptions; steps of the same key merge.
  void change(int mergeKey, const QString& what, const std::function<void(range::Assumptions&)>& edit);
  void refresh();

  Document& document_;
  QDoubleSpinBox *least_, *contact_, *gap_, *near_;
  QComboBox* by_;
  CartilageField *neck_, *trunk_, *tail_;
};

}  // namespace zyga::ui
