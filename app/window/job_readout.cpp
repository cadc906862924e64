#include "app/window/job_readout.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QToolButton>

#include "ui/document/worker.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"

namespace zyga::ui {

JobReadout::JobReadout(Worker& worker, QWidget* parent) : QWidget(parent), text_(new QLabel), bar_(new QProgressBar) {
  bar_->setFixedWidth(96);
  bar_->setTextVisible(false);
  QToolButton* stop = iconButton("close", tr("Stop"));
  stop->setIconSize({16, 16});
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kGap);
  row->addWidget(text_);
  row->addWidget(bar_);
  row->addWidget(stop);
  hide();
  connect(stop, &QToolButton::clicked, &worker, &Worker::cancel);
  connect(&worker, &Worker::busyChanged, this, &QWidget::setVisible);
  connect(&worker, &Worker::progress, this, [this](double share) {
    bar_->setRange(0, 1000);
    bar_->setValue(static_cast<int>(1000 * share));
  });
}

void JobReadout::setTask(const QString& text) {
  text_->setText(text);
  bar_->setRange(0, 0);
}

}  // namespace zyga::ui
