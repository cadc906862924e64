#include "app/window/controllers/report_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"

namespace zyga::ui {

ReportDialog::ReportDialog(bool hasClaims, QWidget* parent)
    : QDialog(parent),
      format_(new QComboBox),
      whole_(new QRadioButton(tr("Everything about the present pose"))),
      claims_(new QRadioButton(tr("The claims and what they rest on, one page"))),
      studies_(new QCheckBox(tr("Studies of height, reach, ranges and blood pressure"))),
      numbers_(new QCheckBox(tr("The numbers as a table (CSV) beside it"))) {
  setObjectName("reportDialog");
  setWindowTitle(tr("Report"));
  format_->setObjectName("reportFormat");
  format_->addItem(tr("PDF, A4 pages"), "pdf");
  format_->addItem(tr("HTML, one page"), "html");
  whole_->setChecked(true);
  claims_->setObjectName("reportClaims");
  claims_->setEnabled(hasClaims);
  if (!hasClaims) claims_->setToolTip(tr("The project holds no claims yet"));
  studies_->setChecked(true);
  numbers_->setObjectName("reportNumbers");
  connect(whole_, &QRadioButton::toggled, studies_, &QWidget::setEnabled);
  auto* form = new QFormLayout;
  form->setVerticalSpacing(kGap);
  form->addRow(tr("Format"), format_);
  form->addRow(tr("Contents"), whole_);
  form->addRow(QString(), claims_);
  form->addRow(tr("With"), studies_);
  form->addRow(QString(), numbers_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  QPushButton* go = buttons->addButton(tr("Choose a file…"), QDialogButtonBox::AcceptRole);
  go->setDefault(true);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kWideGap);
  layout->addWidget(
      mutedLabel(tr("What the bones support, with sources and assumptions, so that others can check it. "
                    "There is no date in it: the same project gives the same file.")));
  layout->addLayout(form);
  layout->addStretch(1);
  layout->addWidget(buttons);
  setMinimumWidth(460);
}

ReportChoice ReportDialog::choice() const {
  return {format_->currentData().toString(), claims_->isChecked(), studies_->isChecked(), numbers_->isChecked()};
}

}  // namespace zyga::ui
