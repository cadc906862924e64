#pragma once

#include <QWidget>
#include <functional>
#include <vector>

#include "ui/document/document.h"

class QComboBox;
class QGridLayout;
class QToolButton;

namespace zyga::ui {

class LiveAmount;

/// What is taken for granted: least overlap, cartilage, tolerances, the near margin and what neutral means. While a
/// slider moves the animal, its verdicts and its ranges answer; letting go makes one undoable step, Escape goes back.
class AssumptionsPanel : public QWidget {
  Q_OBJECT
 public:
  explicit AssumptionsPanel(Document& document, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {320, 420}; }

 signals:
  /// What a slider that moves does, or what a step has done.
  void hint(const QString& text);

 private:
  using Edit = std::function<void(range::Assumptions&)>;
  struct AmountRow;

  QWidget* makeContent();
  void addOverlap(QGridLayout& grid);
  void addCartilage(QGridLayout& grid);
  void addTolerances(QGridLayout& grid);
  void addContact(QGridLayout& grid);
  void addNeighbours(QGridLayout& grid);
  void addNeutral(QGridLayout& grid);
  void addHorizontal(QGridLayout& grid);
  QWidget* overlapPresets();
  QToolButton* cartilagePresets();
  LiveAmount* addAmount(QGridLayout& grid, const AmountRow& row);

  /// The project's assumptions with `edit` made to them.
  range::Assumptions edited(const Edit& edit) const;
  void preview(const QString& step, const Edit& edit);
  void release(const QString& step);
  /// One step; steps of the same key that follow each other merge.
  void change(int mergeKey, const QString& step, const Edit& edit);
  void tellStep();
  void keepInSpace(bool keeps);
  void refresh();

  Document& document_;
  QComboBox *by_ = nullptr, *neutral_ = nullptr, *stays_ = nullptr, *horizontal_ = nullptr;
  /// Shows the present value of one control each.
  std::vector<std::function<void(const range::Assumptions&)>> showers_;
};

}  // namespace zyga::ui
