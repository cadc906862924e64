#include "ui/scans/animal_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "core/anatomy/plan/plan_table.h"
#include "core/files/scan/scan_set.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/say.h"

namespace zyga::ui {

AnimalDialog::AnimalDialog(const QString& startFolder, QWidget* parent)
    : QDialog(parent), startFolder_(startFolder), folder_(new QLineEdit), plan_(calmComboBox()), told_(mutedLabel()) {
  setObjectName("animalDialog");
  setProperty("helpPage", "animals");
  setWindowTitle(tr("New animal from scans"));
  auto* title = new QLabel(tr("Bones scanned in one common frame"));
  title->setFont(titleFont(font()));
  folder_->setObjectName("animalFolder");
  folder_->setPlaceholderText(tr("Folder with a mesh file for each bone"));
  folder_->setMinimumWidth(360);
  auto* choose = new QPushButton(tr("Choose…"));
  choose->setObjectName("chooseAnimalFolder");
  choose->setAutoDefault(false);
  auto* row = new QHBoxLayout;
  row->setSpacing(kGap);
  row->addWidget(folder_, 1);
  row->addWidget(choose);
  plan_->setObjectName("animalPlan");
  for (const auto plan : {anatomy::BodyPlan::Mammal, anatomy::BodyPlan::Bird, anatomy::BodyPlan::HighBrowser,
                          anatomy::BodyPlan::LowBrowser, anatomy::BodyPlan::WideGauge})
    plan_->addItem(capital(planName(plan)), static_cast<int>(plan));
  told_->setObjectName("animalTold");
  auto* form = new QFormLayout;
  form->setVerticalSpacing(kGap);
  form->addRow(tr("Folder"), row);
  form->addRow(tr("Body plan"), plan_);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  go_ = buttons->addButton(tr("Make the animal"), QDialogButtonBox::AcceptRole);
  go_->setObjectName("makeAnimal");
  go_->setDefault(true);
  connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(choose, &QPushButton::clicked, this, &AnimalDialog::chooseFolder);
  connect(folder_, &QLineEdit::textChanged, this, &AnimalDialog::refresh);
  connect(plan_, &QComboBox::currentIndexChanged, this, &AnimalDialog::refresh);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kWideGap);
  layout->addWidget(title);
  layout->addLayout(form);
  layout->addWidget(told_);
  layout->addStretch(1);
  layout->addWidget(buttons);
  setMinimumWidth(520);
  refresh();
}

void AnimalDialog::setFolder(const QString& folder) { folder_->setText(QDir::toNativeSeparators(folder)); }

QString AnimalDialog::folder() const { return QDir::fromNativeSeparators(folder_->text().trimmed()); }

anatomy::BodyPlan AnimalDialog::plan() const { return static_cast<anatomy::BodyPlan>(plan_->currentData().toInt()); }

void AnimalDialog::chooseFolder() {
  auto* chooser = new QFileDialog(this, tr("Folder of bone scans"), folder().isEmpty() ? startFolder_ : folder());
  chooser->setAttribute(Qt::WA_DeleteOnClose);
  chooser->setFileMode(QFileDialog::Directory);
  chooser->setOption(QFileDialog::ShowDirsOnly);
  connect(chooser, &QFileDialog::fileSelected, this, &AnimalDialog::setFolder);
  chooser->open();
}

void AnimalDialog::refresh() {
  const bool isFolder = !folder().isEmpty() && QFileInfo(folder()).isDir();
  const auto meshes = isFolder ? files::meshFilesIn(folder().toStdString()).size() : 0;
  go_->setEnabled(meshes > 0);
  QString told = anatomy::planTable(plan()).limbs
                     ? tr("Head, limbs and what has not been scanned are sculpted after the scans' sizes.")
                     : tr("The column alone, with as many vertebrae as the files' names say; what has not been scanned "
                          "is sculpted after the scans' sizes.");
  told += ' ' + tr("Landmarks and facets are suggested where neighbours lie in articulation.");
  if (isFolder && meshes == 0)
    told = tr("There is no mesh file in this folder.");
  else if (!folder().isEmpty() && !isFolder)
    told = tr("There is no such folder.");
  else if (meshes > 0)
    told = tr("Mesh files in the folder: %1.").arg(meshes) + ' ' + told;
  told_->setText(told);
}

}  // namespace zyga::ui
