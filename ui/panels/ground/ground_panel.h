#pragma once

#include <QWidget>

#include "ui/ground/ground_state.h"

namespace zyga::ui {

class BalancePanel;
class TrackwayPanel;

/// What the animal stands on: mass and balance, and a trackway under its feet.
class GroundPanel : public QWidget {
  Q_OBJECT
 public:
  explicit GroundPanel(Document& document, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {312, 360}; }

  BalancePanel* balance() const { return balance_; }
  TrackwayPanel* trackway() const { return trackway_; }
  /// Whether this file is a table of footprints that readTable of the trackway would take.
  bool takes(const QString& file) const;
  /// One line for the title while the panel is folded.
  QString inShort() const;
  /// What is to be drawn on the ground: the prints as chosen, the balance only while the panel is in sight.
  GroundShown shown() const;

 signals:
  void shortChanged(const QString& words);
  void shownChanged(const zyga::ui::GroundShown& shown);

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  GroundState ground_;
  BalancePanel* balance_;
  TrackwayPanel* trackway_;
};

}  // namespace zyga::ui
