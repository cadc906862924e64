#pragma once

#include <QWidget>
#include <array>

#include "core/picture/passes.h"

class QCheckBox;

namespace zyga::ui {

/// What is written of one view: the finished picture and any passes, with what each is for.
class PassFields : public QWidget {
  Q_OBJECT
 public:
  explicit PassFields(QWidget* parent = nullptr);

  bool finished() const;
  std::vector<picture::Pass> passes() const;
  void setValue(bool finished, const std::vector<picture::Pass>& passes);

 signals:
  void changed();

 private:
  QCheckBox* finished_;
  std::array<QCheckBox*, picture::kAllPasses.size()> passes_;
};

}  // namespace zyga::ui
