#include "ui/panels/ground/ground_panel.h"

#include <QFrame>
#include <QScrollArea>
#include <QVBoxLayout>

#include "core/files/disk/atomic_file.h"
#include "core/study/ground/trackway_table.h"
#include "ui/panels/ground/balance_panel.h"
#include "ui/panels/ground/trackway_panel.h"
#include "ui/parts/panel_parts.h"
#include "ui/words/ground_words.h"

namespace zyga::ui {

GroundPanel::GroundPanel(Document& document, QWidget* parent)
    : QWidget(parent), ground_(document), balance_(new BalancePanel(ground_)), trackway_(new TrackwayPanel(ground_)) {
  auto* content = new QWidget;
  auto* column = new QVBoxLayout(content);
  setPanelMargins(*column);
  auto* hairline = new QFrame;
  hairline->setProperty("role", "hairline");
  hairline->setFixedHeight(1);
  column->addWidget(balance_);
  column->addWidget(hairline);
  column->addWidget(trackway_);
  column->addStretch(1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(scrolling(content));
  connect(balance_, &BalancePanel::drawnChanged, this, [this] { emit shownChanged(shown()); });
  connect(trackway_, &TrackwayPanel::drawnChanged, this, [this] { emit shownChanged(shown()); });
  connect(&document, &Document::changed, this, [this](Changes what) {
    if (what & (Changes(Change::Pose) | Change::Assumptions | Change::Ground)) emit shortChanged(inShort());
  });
}

bool GroundPanel::takes(const QString& file) const {
  if (!ground_.document().hasProject() || !file.endsWith(".csv", Qt::CaseInsensitive)) return false;
  try {
    return study::isTrackwayTable(files::readWhole(file.toStdString()));
  } catch (const files::FileError&) {
    return false;  // whoever opens it will tell why
  }
}

GroundShown GroundPanel::shown() const {
  return {.trackway = trackway_->drawn(), .balance = balance_->drawn() && isVisible()};
}

void GroundPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  emit shownChanged(shown());
}

void GroundPanel::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  emit shownChanged(shown());
}

QString GroundPanel::inShort() const {
  return ground_.document().hasProject() ? balanceInShort(ground_.balance()) : QString();
}

}  // namespace zyga::ui
