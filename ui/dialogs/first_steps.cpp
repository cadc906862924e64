#include "ui/dialogs/first_steps.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QToolButton>
#include <array>

#include "ui/parts/panel_parts.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

constexpr std::array kSteps{QT_TRANSLATE_NOOP("zyga::ui::FirstSteps",
                                              "Drag a bone of the neck: the neck bends from its root, and the bones' "
                                              "ranges hold it. Ctrl+Z takes it back."),
                            QT_TRANSLATE_NOOP("zyga::ui::FirstSteps",
                                              "The strip below shows the whole column. Its band is what the bones "
                                              "support, its dot is where the joint is now; drag the dot."),
                            QT_TRANSLATE_NOOP("zyga::ui::FirstSteps",
                                              "The verdict is at the lower right. Findings on the right side say which "
                                              "joint is beyond its range, and why."),
                            QT_TRANSLATE_NOOP("zyga::ui::FirstSteps",
                                              "The right mouse button turns the view, the wheel magnifies. F1 lists "
                                              "all keys and gestures.")};

}  // namespace

FirstSteps::FirstSteps(QWidget* parent)
    : QWidget(parent), count_(mutedLabel()), words_(new QLabel), next_(new QPushButton) {
  setObjectName("firstSteps");
  setAccessibleName(tr("First steps"));
  count_->setWordWrap(false);
  words_->setObjectName("firstStepsText");
  words_->setWordWrap(true);
  next_->setObjectName("firstStepsNext");
  auto* away = iconButton("close", tr("Send the first steps away; the settings bring them back"));
  away->setObjectName("firstStepsAway");
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(kWideGap, kGap, kGap, kGap);
  row->setSpacing(kGap);
  row->addWidget(count_);
  row->addWidget(words_, 1);
  row->addWidget(next_);
  row->addWidget(away);
  connect(next_, &QPushButton::clicked, this, [this] {
    if (step_ + 1 == static_cast<int>(kSteps.size())) return emit sentAway();
    show(step_ + 1);
  });
  connect(away, &QAbstractButton::clicked, this, &FirstSteps::sentAway);
  show(0);
}

void FirstSteps::show(int step) {
  step_ = step;
  const int all = static_cast<int>(kSteps.size());
  count_->setText(tr("%1 of %2").arg(step + 1).arg(all));
  words_->setText(tr(kSteps[static_cast<std::size_t>(step)]));
  next_->setText(step + 1 < all ? tr("Next") : tr("Done"));
}

void FirstSteps::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), theme().panel);
  painter.fillRect(QRect(0, 0, width(), 1), theme().line);
  painter.fillRect(QRect(0, 0, kGridStep, height()), theme().choice);
}

}  // namespace zyga::ui
