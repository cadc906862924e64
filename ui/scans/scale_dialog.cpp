#include "ui/scans/scale_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>

#include "core/anatomy/summary.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/words/numbers.h"

namespace zyga::ui {
namespace {

constexpr double kLeast = 1, kMost = 100'000;  // mm

}  // namespace

ScaleDialog::ScaleDialog(const QString& what, std::vector<KnownSize> sizes, QWidget* parent)
    : QDialog(parent),
      sizes_(std::move(sizes)),
      by_(calmComboBox()),
      length_(new UnitSpinBox(QStringLiteral("mm"))),
      told_(mutedLabel()) {
  setObjectName("scaleDialog");
  setWindowTitle(tr("Scale"));
  by_->setObjectName("scaleBy");
  for (const KnownSize& size : sizes_) by_->addItem(size.name);
  by_->setEnabled(sizes_.size() > 1);
  length_->setObjectName("scaleLength");
  length_->setRange(kLeast, kMost);
  length_->setKeyboardTracking(true);
  auto* title = new QLabel(what);
  title->setFont(titleFont(font()));
  auto* form = new QFormLayout;
  form->setVerticalSpacing(kGap);
  form->addRow(tr("By"), by_);
  form->addRow(tr("New size"), length_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  go_ = buttons->addButton(tr("Scale"), QDialogButtonBox::AcceptRole);
  go_->setDefault(true);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(by_, &QComboBox::currentIndexChanged, this, &ScaleDialog::takeSize);
  connect(length_, &QDoubleSpinBox::valueChanged, this, &ScaleDialog::refresh);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kWideGap);
  layout->addWidget(title);
  layout->addLayout(form);
  layout->addWidget(told_);
  layout->addStretch(1);
  layout->addWidget(buttons);
  setMinimumWidth(400);
  takeSize();
}

double ScaleDialog::factor() const {
  return length_->value() / 1000 / sizes_[static_cast<std::size_t>(by_->currentIndex())].length;
}

QString ScaleDialog::said() const {
  return tr("%1 to %2").arg(by_->currentText(), millimetres(length_->value() / 1000, 0));
}

void ScaleDialog::takeSize() {
  length_->setValue(1000 * sizes_[static_cast<std::size_t>(by_->currentIndex())].length);
  refresh();
}

void ScaleDialog::refresh() {
  const bool changes = std::abs(factor() - 1) > 1e-6;
  go_->setEnabled(changes);
  told_->setText(changes ? tr("Every length becomes %1 times what it is. What is preserved is then marked as scaled "
                              "from another specimen.")
                               .arg(factor(), 0, 'g', 4)
                         : tr("Type the new length."));
}

std::vector<KnownSize> animalSizes(const anatomy::Specimen& specimen) {
  const anatomy::Summary sizes = anatomy::summarise(specimen);
  std::vector<KnownSize> out;
  const auto add = [&out](const QString& name, double length) {
    if (length > 0) out.push_back({name, length});
  };
  add(QObject::tr("femur"), sizes.femur);
  add(QObject::tr("humerus"), sizes.humerus);
  add(QObject::tr("neck"), sizes.neck);
  add(QObject::tr("total length along the column"), sizes.total);
  return out;
}

double extentOf(const files::ProjectScan& scan) {
  Eigen::AlignedBox3d box;
  const Eigen::Affine3d map = anatomy::boneFromScan(scan.scan);
  if (scan.mesh)
    for (const auto& p : scan.mesh->positions) box.extend(map * p.cast<double>());
  return box.isEmpty() ? anatomy::kUsualExtent : box.sizes().maxCoeff();
}

}  // namespace zyga::ui
