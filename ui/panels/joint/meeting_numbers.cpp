#include "ui/panels/joint/meeting_numbers.h"

#include <QGridLayout>
#include <QLabel>
#include <QStyle>

#include "ui/theme/figures.h"
#include "ui/words/numbers.h"

namespace zyga::ui {
namespace {

QString share(double value) { return QString::number(value * 100, 'f', 0) + QStringLiteral(" %"); }

/// In mm without the unit, which stands beside the row.
QString figures(double length) { return millimetres(length).chopped(3); }

}  // namespace

MeetingNumbers::MeetingNumbers(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setHorizontalSpacing(kWideGap);
  grid_->setVerticalSpacing(0);
  grid_->setColumnStretch(0, 1);
  for (int row = 0; row < Rows; ++row)
    for (int column = 0; column < 3; ++column) {
      auto* cell = cells_[row][column] = new QLabel(this);
      cell->setFont(smallFont(font()));
      grid_->addWidget(cell, row, column, column == 0 ? Qt::AlignLeft : Qt::AlignRight);
    }
  write(Head, 1, tr("left"), true);
  write(Head, 2, tr("right"), true);
  write(Gap, 0, tr("Facet gap, mm"));
  write(Centra, 0, tr("Gap between centra, mm"));
}

void MeetingNumbers::write(Row row, int column, const QString& words, bool muted) {
  QLabel* cell = cells_[row][column];
  cell->setText(words);
  const QString role = muted ? QStringLiteral("muted") : QString();
  if (cell->property("role").toString() == role) return;
  cell->setProperty("role", role);
  cell->style()->unpolish(cell);
  cell->style()->polish(cell);
}

void MeetingNumbers::show(const range::JointVerdict& verdict, const range::Assumptions& assumptions) {
  const bool byArea = assumptions.overlapBy == range::OverlapBy::Area;
  const QString rule = byArea ? tr("least %1 of area") : tr("least %1 of length");
  write(Head, 0, rule.arg(share(assumptions.leastOverlap)), true);
  write(ByLength, 0, tr("Length shared"), byArea);
  write(ByArea, 0, tr("Area shared"), !byArea);
  const std::optional<range::FacetMeeting>* const sides[] = {&verdict.left, &verdict.right};
  for (int side = 0; side < 2; ++side) {
    const auto& meeting = *sides[side];
    const QString unknown = QStringLiteral("\u2013");
    write(ByLength, side + 1, meeting ? share(meeting->overlapLength) : unknown, byArea);
    write(ByArea, side + 1, meeting ? share(meeting->overlapArea) : unknown, !byArea);
    const bool together = meeting && !meeting->shared.empty();
    write(Gap, side + 1,
          together ? tr("%1 to %2").arg(figures(meeting->gapLeast), figures(meeting->gapMost)) : unknown);
  }
  write(Centra, 2, figures(verdict.centrumGap));
  cells_[Centra][2]->setObjectName(QStringLiteral("centrumGap"));
  cells_[ByLength][1]->setObjectName(QStringLiteral("overlapLengthLeft"));
  cells_[ByLength][2]->setObjectName(QStringLiteral("overlapLengthRight"));
}

}  // namespace zyga::ui
