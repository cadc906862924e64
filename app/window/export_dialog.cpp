#include "app/window/export_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>

#include "ui/panels/panel_parts.h"
#include "ui/theme/figures.h"
#include "ui/theme/theme.h"

namespace zyga::ui {
namespace {

struct Format {
  const char* ending;
  const char* title;
};
constexpr Format kFormats[] = {{"glb", "glTF 2.0, one file (.glb)"},
                               {"gltf", "glTF 2.0, text (.gltf)"},
                               {"obj", "Wavefront OBJ (.obj)"},
                               {"ply", "PLY (.ply)"},
                               {"stl", "STL (.stl)"},
                               {"dae", "COLLADA (.dae)"}};

bool isGltf(const QString& ending) { return ending == "glb" || ending == "gltf"; }

}  // namespace

ExportDialog::ExportDialog(QWidget* parent)
    : QDialog(parent),
      format_(new QComboBox),
      unit_(new QComboBox),
      up_(new QComboBox),
      single_(new QRadioButton(tr("One mesh per bone, named by bone"))),
      joined_(new QRadioButton(tr("All bones joined into one mesh"))),
      note_(mutedLabel()) {
  setObjectName("exportDialog");
  setWindowTitle(tr("Export meshes"));
  format_->setObjectName("exportFormat");
  for (const Format& format : kFormats) format_->addItem(tr(format.title), QString(format.ending));
  unit_->addItem(tr("metres"), static_cast<int>(files::LengthUnit::Metre));
  unit_->addItem(tr("centimetres"), static_cast<int>(files::LengthUnit::Centimetre));
  unit_->addItem(tr("millimetres"), static_cast<int>(files::LengthUnit::Millimetre));
  up_->addItem(tr("Z up"), static_cast<int>(files::UpAxis::Z));
  up_->addItem(tr("Y up"), static_cast<int>(files::UpAxis::Y));
  single_->setChecked(true);
  auto* form = new QFormLayout;
  form->setVerticalSpacing(kGap);
  form->addRow(tr("Format"), format_);
  form->addRow(tr("Bones"), single_);
  form->addRow(QString(), joined_);
  form->addRow(tr("Unit"), unit_);
  form->addRow(tr("Upward axis"), up_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  QPushButton* go = buttons->addButton(tr("Choose a file…"), QDialogButtonBox::AcceptRole);
  go->setDefault(true);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(format_, &QComboBox::currentIndexChanged, this, &ExportDialog::fitToFormat);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kWideGap);
  layout->addWidget(mutedLabel(tr("The skeleton is written as it is posed now, in full detail.")));
  layout->addLayout(form);
  layout->addWidget(note_);
  layout->addStretch(1);
  layout->addWidget(buttons);
  setMinimumWidth(scaledWithText(420));
  fitToFormat();
}

QString ExportDialog::ending() const { return format_->currentData().toString(); }

files::ExportOptions ExportDialog::options() const {
  files::ExportOptions options;
  options.joined = joined_->isChecked();
  options.unit = static_cast<files::LengthUnit>(unit_->currentData().toInt());
  options.up = static_cast<files::UpAxis>(up_->currentData().toInt());
  return options;
}

void ExportDialog::fitToFormat() {
  const bool fixed = isGltf(ending());
  unit_->setEnabled(!fixed);
  up_->setEnabled(!fixed);
  if (fixed) {
    unit_->setCurrentIndex(unit_->findData(static_cast<int>(files::LengthUnit::Metre)));
    up_->setCurrentIndex(up_->findData(static_cast<int>(files::UpAxis::Y)));
  }
  note_->setText(fixed ? tr("glTF is always in metres with Y up; its nodes follow the joints.")
                       : tr("The file itself does not say its unit: choose what the other program expects."));
}

}  // namespace zyga::ui
