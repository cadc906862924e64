#include "app/window/controllers/scan_controller.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMimeData>
#include <QSettings>
#include <QStandardPaths>
#include <QUrl>
#include <cmath>

#include "app/window/controllers/menu_action.h"
#include "app/window/controllers/scan_suggestions.h"
#include "core/files/project/fit_to_scans.h"
#include "core/files/scan/scan_set.h"
#include "ui/commands/scan_edits.h"
#include "ui/commands/table_edits.h"
#include "ui/parts/message_bar.h"
#include "ui/scans/bring_in_dialog.h"
#include "ui/scans/landmark_editor.h"
#include "ui/scans/scale_dialog.h"
#include "ui/scans/scan_choices.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/say.h"
#include "ui/words/scan_size_words.h"

namespace zyga::ui {
namespace {

constexpr char kFolderKey[] = "files/scanFolder";

/// "(*.ply *.obj)"
QString meshFilter() {
  QStringList patterns;
  for (const std::string_view ending : files::meshEndings())
    patterns << '*' + QString::fromUtf8(ending.data(), static_cast<qsizetype>(ending.size()));
  return '(' + patterns.join(' ') + ')';
}

QString startFolder() {
  return QSettings().value(kFolderKey, QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)).toString();
}

}  // namespace

ScanController::ScanController(Document& document, MessageBar& messages, QWidget& window)
    : QObject(&window),
      document_(document),
      messages_(messages),
      window_(window),
      suggestions_(new ScanSuggestions(document, messages, window)) {
  connect(suggestions_, &ScanSuggestions::marksAsked, this, &ScanController::openLandmarks);
}

QWidget* ScanController::readout() const { return suggestions_->readout(); }

QAction* ScanController::addTo(QMenu& menu) {
  QAction* bring =
      addMenuAction(menu, this, tr("&Import bone scans…"), QKeySequence("Ctrl+B"), [this] { bringIn({}); });
  bring->setObjectName("bringInBones");
  addMenuAction(menu, this, tr("&Place landmarks…"), QKeySequence("Ctrl+Shift+B"), [this] {
    openLandmarks(document_.hasProject() ? document_.selectedBone() : std::nullopt);
  })->setObjectName("openLandmarks");
  addMenuAction(menu, this, tr("Su&ggest landmarks and facets"), QKeySequence("Ctrl+Alt+B"), [this] {
    suggestions_->start();
  })->setObjectName("suggestMarks");
  addMenuAction(menu, this, tr("&Carry marks over from a neighbour"), QKeySequence("Ctrl+Alt+C"), [this] {
    suggestions_->carry();
  })->setObjectName("carryMarks");
  menu.addSeparator();
  addMenuAction(menu, this, tr("Mi&rror to the other side"), {}, [this] {
    onChosen([this](auto b) { mirror(b); });
  })->setObjectName("mirrorBone");
  addMenuAction(menu, this, tr("&Scale this bone…"), {}, [this] {
    onChosen([this](auto b) { scale(b); });
  })->setObjectName("scaleBone");
  addMenuAction(menu, this, tr("&Remove scan"), {}, [this] {
    onChosen([this](auto b) { takeOut(b); });
  })->setObjectName("takeScanOut");
  menu.addSeparator();
  addMenuAction(menu, this, tr("Scale the &animal…"), {}, [this] { scaleAnimal(); })->setObjectName("scaleAnimal");
  addMenuAction(menu, this, tr("&Fit the animal to its scans"), {}, [this] {
    fitAnimal();
  })->setObjectName("fitAnimalToScans");
  return bring;
}

void ScanController::addFor(QMenu& menu, BoneIndex bone) {
  const anatomy::Bone& what = document_.specimen()[bone];
  if (!scanOf(document_, what.name)) return;
  if (!menu.isEmpty()) menu.addSeparator();
  menu.addAction(tr("Place landmarks…"), this, [this, bone] { openLandmarks(bone); });
  if (mirrored(what.name) != what.name)
    menu.addAction(tr("Mirror to the other side"), this, [this, bone] { mirror(bone); });
  menu.addAction(tr("Remove scan"), this, [this, bone] { takeOut(bone); });
}

/// Folders stand for the mesh files in them.
QStringList ScanController::withoutFolders(const QStringList& paths) {
  QStringList files;
  for (const QString& path : paths) {
    if (!QFileInfo(path).isDir()) {
      files << path;
      continue;
    }
    for (const auto& inside : files::meshFilesIn(path.toStdString())) files << QString::fromStdString(inside.string());
  }
  return files;
}

QStringList ScanController::meshFiles(const QMimeData& data) {
  QStringList files;
  for (const QUrl& url : data.urls()) {
    const QString ending = QFileInfo(url.toLocalFile()).suffix().toLower();
    if (url.isLocalFile() && ending != "zyga" && ending != "zygazip" && ending != "csv") files += url.toLocalFile();
  }
  return files;
}

/// A folder, or none yet, is asked for at once; of files it is only offered.
void ScanController::askForAnimal(const QStringList& paths) {
  if (paths.isEmpty()) return emit animalAsked({});
  const QFileInfo first(paths.first());
  if (paths.size() == 1 && first.isDir()) return emit animalAsked(paths.first());
  const QString folder = first.isDir() ? paths.first() : first.absolutePath();
  messages_.tell(tr("Open a sample, a table or a project first: real bones take their places in an animal."),
                 {{tr("New animal from scans"), [this, folder] { emit animalAsked(folder); }}});
}

void ScanController::bringIn(const QStringList& paths) {
  if (!document_.hasProject()) return askForAnimal(paths);
  const QStringList files = withoutFolders(paths);
  if (files.isEmpty() && !paths.isEmpty())
    return messages_.tell(tr("There are no mesh files in %1.").arg(QDir::toNativeSeparators(paths.first())));
  if (!bringing_) {
    bringing_ = new BringInDialog(document_, &window_);
    bringing_->setAttribute(Qt::WA_DeleteOnClose);
    BringInDialog* dialog = bringing_;
    connect(dialog, &BringInDialog::filesAsked, this, [this, dialog] { chooseFiles(*dialog); });
    connect(dialog, &BringInDialog::landmarksAsked, this, [this, dialog] { chooseLandmarks(*dialog); });
    connect(dialog, &QDialog::accepted, this, [this, dialog] { putInPlace(*dialog); });
    dialog->open();
  }
  if (files.isEmpty()) return chooseFiles(*bringing_);
  QSettings().setValue(kFolderKey, QFileInfo(files.first()).absolutePath());
  bringing_->addFiles(files);
}

void ScanController::chooseFiles(BringInDialog& dialog) {
  auto* chooser = new QFileDialog(&dialog, tr("Mesh files of bones"), startFolder());
  chooser->setAttribute(Qt::WA_DeleteOnClose);
  chooser->setFileMode(QFileDialog::ExistingFiles);
  chooser->setNameFilters({tr("Meshes %1").arg(meshFilter()), tr("All files (*)")});
  connect(chooser, &QFileDialog::filesSelected, this, [this](const QStringList& files) { bringIn(files); });
  chooser->open();
}

void ScanController::chooseLandmarks(BringInDialog& dialog) {
  auto* chooser = new QFileDialog(&dialog, tr("Landmarks"), startFolder(), tr("Landmark tables (*.csv)"));
  chooser->setAttribute(Qt::WA_DeleteOnClose);
  connect(chooser, &QFileDialog::fileSelected, &dialog, [&dialog](const QString& file) {
    if (const QString fault = dialog.takeLandmarks(file); !fault.isEmpty()) tellFault(dialog, fault);
  });
  chooser->open();
}

void ScanController::putInPlace(const BringInDialog& dialog) {
  auto scans = dialog.scans();
  const int count = static_cast<int>(scans.size());
  if (count == 0) return;
  const auto first = document_.specimen().findBone(toId(scans.front().scan.bone));
  const QString id = QString::fromStdString(toId(scans.front().scan.bone));
  const auto factor = dialog.fitFactor();
  const QString step = factor && count == 1 ? tr("Import %1 and fit the animal to it").arg(id)
                       : factor             ? tr("Import %1 bones and fit the animal to them").arg(count)
                       : count == 1         ? tr("Import %1").arg(id)
                                            : tr("Import %1 bones").arg(count);
  try {
    if (factor)
      fitToScans(document_, withScans(document_, std::move(scans)), *factor, step);
    else
      putScans(document_, std::move(scans), step);
  } catch (const std::exception& error) {
    return messages_.warn(sayFailure(error));
  }
  document_.selectBone(first);
  if (factor) emit resized();
  std::vector<MessageBar::Answer> answers;
  if (count > 1) answers.push_back({tr("Suggest landmarks and facets"), [this] { suggestions_->start(); }});
  answers.push_back({tr("Place landmarks"), [this, first] { openLandmarks(first); }});
  QString told =
      count == 1 ? tr("%1 is in the skeleton. Its landmarks decide how it lies and what its joints allow.").arg(id)
                 : tr("%1 bones are in the skeleton. Their landmarks decide how they lie and what their joints allow.")
                       .arg(count);
  if (factor) told += ' ' + tr("The animal is %1 times as large as it was.").arg(sizeFactorText(*factor));
  messages_.tell(told, std::move(answers));
}

bool ScanController::hasScans() {
  if (document_.hasProject() && !document_.project().scans.empty()) return true;
  messages_.tell(tr("No real bone has been brought in yet. Drop mesh files on the window, or choose them here."),
                 {{tr("Import bone scans"), [this] { bringIn({}); }}});
  return false;
}

void ScanController::openLandmarks(std::optional<BoneIndex> bone) {
  if (!hasScans()) return;
  if (!editor_) {
    editor_ = new LandmarkEditor(document_, &window_);
    editor_->setAttribute(Qt::WA_DeleteOnClose);
    connect(editor_, &LandmarkEditor::helpAsked, this, &ScanController::helpAsked);
  }
  const auto* scan = bone ? scanOf(document_, document_.specimen()[*bone].name) : nullptr;
  editor_->showBone(scan ? scan->scan.bone : document_.project().scans.front().scan.bone);
  editor_->show();
  editor_->raise();
  editor_->activateWindow();
}

std::optional<BoneIndex> ScanController::chosenScan() {
  const auto bone = document_.hasProject() ? document_.selectedBone() : std::nullopt;
  if (bone && scanOf(document_, document_.specimen()[*bone].name)) return bone;
  messages_.tell(tr("Choose a bone that was brought in from a scan first; sculpted bones follow the table."));
  return std::nullopt;
}

void ScanController::onChosen(const std::function<void(BoneIndex)>& act) {
  if (const auto bone = chosenScan()) act(*bone);
}

void ScanController::mirror(BoneIndex bone) {
  const anatomy::BoneName name = document_.specimen()[bone].name;
  if (!mirrorScan(document_, name))
    messages_.tell(tr("%1 lies in the midline and has no other side.").arg(boneNameAndId(name)));
}

void ScanController::scale(BoneIndex bone) {
  const anatomy::BoneName name = document_.specimen()[bone].name;
  auto* dialog =
      new ScaleDialog(boneNameAndId(name), {{tr("its greatest extent"), extentOf(*scanOf(document_, name))}}, &window_);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, name, dialog] { scaleScan(document_, name, dialog->factor()); });
  dialog->open();
}

void ScanController::scaleAnimal() {
  if (!document_.hasProject()) return messages_.tell(tr("Open an animal first."));
  auto* dialog =
      new ScaleDialog(QString::fromStdString(document_.specimen().name), animalSizes(document_.specimen()), &window_);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog] {
    ui::scaleAnimal(document_, dialog->factor(), tr("Scale the animal by %1").arg(dialog->said()));
  });
  dialog->open();
}

void ScanController::fitAnimal() {
  if (!hasScans()) return;
  const files::Project& project = document_.project();
  const double factor = files::sizeOfScans(project.table, project.scans);
  try {
    if (!fitToScans(document_, project.scans, factor, tr("Fit the animal to its scans")))
      return messages_.tell(tr("The animal has the size of its scans already."));
  } catch (const std::exception& error) {
    return messages_.warn(sayFailure(error));
  }
  emit resized();
  if (std::abs(factor - 1) < files::kSameSize)
    return messages_.tell(tr("The animal has the size of its scans; what they measure is in its table now."));
  messages_.tell(tr("The animal is %1 times as large as it was. What its scans measure is kept; every other length "
                    "was scaled.")
                     .arg(sizeFactorText(factor)));
}

void ScanController::takeOut(BoneIndex bone) { removeScan(document_, document_.specimen()[bone].name); }

}  // namespace zyga::ui
