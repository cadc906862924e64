#include "ui/dialogs/preferences_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"
#include "ui/words/language.h"

namespace zyga::ui {
namespace {

QComboBox* choices(const char* name, const std::vector<std::pair<QString, QVariant>>& rows, const QVariant& now) {
  auto* box = new QComboBox;
  box->setObjectName(name);
  for (const auto& [text, value] : rows) box->addItem(text, value);
  box->setCurrentIndex(std::max(0, box->findData(now)));
  return box;
}

}  // namespace

PreferencesDialog::PreferencesDialog(const Preferences& now, QWidget* parent) : QDialog(parent) {
  setObjectName("preferencesDialog");
  setWindowTitle(tr("Settings"));
  std::vector<std::pair<QString, QVariant>> languages{{tr("That of the desktop"), QString()}};
  for (const Language& language : languagesOffered()) languages.emplace_back(language.ownName, language.code);
  std::vector<std::pair<QString, QVariant>> sizes;
  for (int percent = Look::kLeastText; percent <= Look::kMostText; percent += 25)
    sizes.emplace_back(tr("%1 %").arg(percent), percent);
  language_ = choices("language", languages, now.language);
  text_ = choices("textSize", sizes, now.look.textPercent);
  scheme_ = choices("scheme", {{tr("Light"), false}, {tr("Dark"), true}}, now.look.scheme == Scheme::Dark);
  contrast_ = new QCheckBox(tr("&High contrast"));
  contrast_->setObjectName("contrast");
  contrast_->setChecked(now.look.highContrast);
  hints_ = new QCheckBox(tr("Show the first &steps"));
  hints_->setObjectName("hints");
  hints_->setChecked(now.hints);
  auto* form = new QFormLayout;
  form->setHorizontalSpacing(kWideGap);
  form->setVerticalSpacing(kGap);
  form->setRowWrapPolicy(QFormLayout::WrapLongRows);
  form->addRow(tr("&Language"), language_);
  form->addRow(tr("Size of the &text"), text_);
  form->addRow(tr("&Theme"), scheme_);
  form->addRow(QString(), contrast_);
  form->addRow(QString(), hints_);
  auto* note = mutedLabel(tr("The window is built anew with another language or size of text; your work stays open."));
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
  buttons->button(QDialogButtonBox::Ok)->setText(tr("Apply"));
  buttons->button(QDialogButtonBox::Cancel)->setText(tr("Cancel"));
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kWideGap);
  layout->addLayout(form);
  layout->addWidget(note);
  layout->addStretch(1);
  layout->addWidget(buttons);
  setMinimumWidth(scaledWithText(380));
}

Preferences PreferencesDialog::chosen() const {
  Preferences p;
  p.language = language_->currentData().toString();
  p.look.scheme = scheme_->currentData().toBool() ? Scheme::Dark : Scheme::Light;
  p.look.highContrast = contrast_->isChecked();
  p.look.textPercent = text_->currentData().toInt();
  p.hints = hints_->isChecked();
  return p;
}

}  // namespace zyga::ui
