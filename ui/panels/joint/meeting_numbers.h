#pragma once

#include <QWidget>

#include "core/range/findings.h"

class QGridLayout;
class QLabel;

namespace zyga::ui {

/// The numbers of both facet pairs in two columns, and the gap between the centra. The overlap that counts under the
/// present assumptions is written in the text colour, the other one muted; the head says its least share.
class MeetingNumbers : public QWidget {
 public:
  explicit MeetingNumbers(QWidget* parent = nullptr);
  void show(const range::JointVerdict& verdict, const range::Assumptions& assumptions);

 private:
  enum Row { Head, ByLength, ByArea, Gap, Centra, Rows };
  void write(Row row, int column, const QString& words, bool muted = false);

  QGridLayout* grid_;
  QLabel* cells_[Rows][3];
};

}  // namespace zyga::ui
