#include "ui/dialogs/export_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QRadioButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include "ui/dialogs/guide_fields.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/words/scan_words.h"

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

ExportDialog::ExportDialog(const ExportFacts& facts, QWidget* parent)
    : QDialog(parent),
      facts_(facts),
      format_(new QComboBox),
      unit_(new QComboBox),
      up_(new QComboBox),
      single_(new QRadioButton(tr("One mesh per bone, named by bone"))),
      joined_(new QRadioButton(tr("All bones joined into one mesh"))),
      watertight_(new QRadioButton(tr("One closed surface, to sculpt on"))),
      voxel_(new UnitSpinBox(tr("mm"))),
      triangles_(new QSpinBox),
      fillJoints_(new QCheckBox(tr("Fill the joints where cartilage was"))),
      bodyGuide_(new QCheckBox(tr("Add a body guide"))),
      guide_(new GuideFields),
      note_(mutedLabel()),
      size_(mutedLabel()) {
  setObjectName("exportDialog");
  setWindowTitle(tr("Export meshes"));
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  QPushButton* go = buttons->addButton(tr("Choose a file…"), QDialogButtonBox::AcceptRole);
  go->setDefault(true);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* sides = new QHBoxLayout;
  sides->setSpacing(2 * kWideGap);
  sides->addWidget(fileSide(), 1);
  sides->addWidget(guideSide(), 1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kWideGap);
  layout->addWidget(mutedLabel(tr("The skeleton is written as it is posed now, in full detail.")));
  layout->addLayout(sides, 1);
  layout->addWidget(buttons);
  setMinimumWidth(scaledWithText(780));
  fitToFormat();
  fitToChoice();
}

QWidget* ExportDialog::fileSide() {
  format_->setObjectName("exportFormat");
  for (const Format& format : kFormats) format_->addItem(tr(format.title), QString(format.ending));
  unit_->addItem(tr("metres"), static_cast<int>(files::LengthUnit::Metre));
  unit_->addItem(tr("centimetres"), static_cast<int>(files::LengthUnit::Centimetre));
  unit_->addItem(tr("millimetres"), static_cast<int>(files::LengthUnit::Millimetre));
  unit_->setObjectName("exportUnit");
  up_->addItem(tr("Z up"), static_cast<int>(files::UpAxis::Z));
  up_->addItem(tr("Y up"), static_cast<int>(files::UpAxis::Y));
  single_->setChecked(true);
  watertight_->setObjectName("exportWatertight");
  auto* side = new QWidget;
  auto* form = new QFormLayout(side);
  form->setContentsMargins(0, 0, 0, 0);
  form->setVerticalSpacing(kGap);
  form->addRow(tr("Format"), format_);
  form->addRow(tr("Bones"), single_);
  form->addRow(QString(), joined_);
  form->addRow(QString(), watertight_);
  addSurfaceRows(*form);
  form->addRow(tr("Unit"), unit_);
  form->addRow(tr("Upward axis"), up_);
  form->addRow(note_);
  size_->setObjectName("exportSize");
  form->addRow(size_);
  form->addRow(mutedLabel(fabricationCaution()));
  connect(format_, &QComboBox::currentIndexChanged, this, &ExportDialog::fitToFormat);
  for (QComboBox* box : {unit_, up_}) connect(box, &QComboBox::currentIndexChanged, this, &ExportDialog::tellSize);
  for (QRadioButton* choice : {single_, joined_, watertight_})
    connect(choice, &QRadioButton::toggled, this, &ExportDialog::fitToChoice);
  return side;
}

void ExportDialog::addSurfaceRows(QFormLayout& form) {
  voxel_->setObjectName("exportVoxel");
  voxel_->setDecimals(1);
  voxel_->setRange(std::max(0.1, facts_.smallestVoxel * 1000), 500);
  voxel_->setValue(facts_.naturalVoxel * 1000);
  voxel_->setToolTip(tr("Smaller keeps thinner parts and takes longer; from %1 mm on it fits in memory")
                         .arg(facts_.smallestVoxel * 1000, 0, 'f', 1));
  triangles_->setObjectName("exportTriangles");
  triangles_->setRange(1000, 20000000);
  triangles_->setSingleStep(50000);
  triangles_->setGroupSeparatorShown(true);
  triangles_->setValue(static_cast<int>(files::SculptingBase().triangles));
  fillJoints_->setObjectName("exportFillJoints");
  form.addRow(tr("Voxel"), voxel_);
  form.addRow(tr("Triangles, about"), triangles_);
  form.addRow(QString(), fillJoints_);
  connect(triangles_, &QSpinBox::valueChanged, this, &ExportDialog::tellSize);
}

QWidget* ExportDialog::guideSide() {
  bodyGuide_->setObjectName("exportBodyGuide");
  guide_->setValue(facts_.guide);
  auto* side = new QWidget;
  auto* layout = new QVBoxLayout(side);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(kGap);
  layout->addWidget(bodyGuide_);
  layout->addWidget(
      mutedLabel(tr("A smooth envelope so thick around the bones of each region. It follows the pose. "
                    "It is a guide, not anatomy, and its mesh is named so.")));
  layout->addWidget(guide_);
  layout->addStretch(1);
  connect(bodyGuide_, &QCheckBox::toggled, this, &ExportDialog::fitToChoice);
  return side;
}

QString ExportDialog::ending() const { return format_->currentData().toString(); }

files::ExportOptions ExportDialog::options() const {
  files::ExportOptions options;
  options.joined = joined_->isChecked();
  options.unit = static_cast<files::LengthUnit>(unit_->currentData().toInt());
  options.up = static_cast<files::UpAxis>(up_->currentData().toInt());
  return options;
}

files::SculptingBase ExportDialog::base() const {
  files::SculptingBase base;
  base.watertight = watertight_->isChecked();
  base.voxel = voxel_->value() / 1000;
  base.triangles = static_cast<std::size_t>(triangles_->value());
  base.fillJoints = fillJoints_->isChecked();
  base.bodyGuide = bodyGuide_->isChecked();
  return base;
}

solid::GuideThickness ExportDialog::guide() const { return guide_->value(); }

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
  tellSize();
}

void ExportDialog::fitToChoice() {
  for (QWidget* widget :
       {static_cast<QWidget*>(voxel_), static_cast<QWidget*>(triangles_), static_cast<QWidget*>(fillJoints_)})
    widget->setEnabled(watertight_->isChecked());
  guide_->setEnabled(bodyGuide_->isChecked());
  tellSize();
}

void ExportDialog::tellSize() {
  const double scale = unit_->currentData().toInt() == static_cast<int>(files::LengthUnit::Metre)        ? 1
                       : unit_->currentData().toInt() == static_cast<int>(files::LengthUnit::Centimetre) ? 100
                                                                                                         : 1000;
  const QLocale locale;
  const auto length = [&](double metres) { return locale.toString(metres * scale, 'f', scale > 1 ? 0 : 2); };
  const QString unit = scale == 1 ? tr("m") : scale == 100 ? tr("cm") : tr("mm");
  const QString mesh = watertight_->isChecked() ? tr("about %1 triangles").arg(locale.toString(triangles_->value()))
                                                : tr("%1 triangles in %2 bones")
                                                      .arg(locale.toString(static_cast<qulonglong>(facts_.triangles)))
                                                      .arg(facts_.bones);
  size_->setText(tr("Size in the file: %1 %4 long, %2 %4 wide, %3 %4 high; %5.")
                     .arg(length(facts_.size.x()), length(facts_.size.y()), length(facts_.size.z()), unit, mesh));
}

}  // namespace zyga::ui
