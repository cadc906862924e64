#include "ui/strip/motion_choice.h"

#include <QToolButton>
#include <QVBoxLayout>

#include "ui/strip/strip_words.h"
#include "ui/theme/figures.h"

namespace zyga::ui {

MotionChoice::MotionChoice(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kGridStep / 2);
  for (int motion = 0; motion < 3; ++motion) {
    auto* button = new QToolButton(this);
    button->setText(motionTitle(motion));
    button->setCheckable(true);
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    button->setToolTip(tr("Show and bend this motion of every joint (%1)").arg(motion + 1));
    group_.addButton(button, motion);
    column->addWidget(button);
  }
  column->addStretch();
  setMotion(0);
  setAccessibleName(tr("Motion shown by the range strip"));
  connect(&group_, &QButtonGroup::idToggled, this, [this](int id, bool on) {
    if (on) emit chosen(id);
  });
}

void MotionChoice::setMotion(int motion) { group_.button(motion)->setChecked(true); }

}  // namespace zyga::ui
