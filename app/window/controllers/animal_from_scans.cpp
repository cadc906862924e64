#include "app/window/controllers/animal_from_scans.h"

#include <QDir>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>
#include <algorithm>

#include "app/window/controllers/file_controller.h"
#include "app/window/job_readout.h"
#include "ui/dialogs/sentences_dialog.h"
#include "ui/parts/message_bar.h"
#include "ui/scans/animal_dialog.h"
#include "ui/words/say.h"
#include "ui/words/scan_words.h"

namespace zyga::ui {
namespace {

constexpr char kScansFolderKey[] = "files/scanFolder";

/// All that is to be known of it, a sentence a line.
QStringList saidOf(const files::ScanAnimal& made) {
  QStringList sentences;
  for (const files::ShownCartilage& shown : made.cartilage) sentences << capital(cartilageShownSaid(shown)) + '.';
  for (const solid::FoundJoint& joint : made.found.joints)
    if (!joint.found)
      sentences << capital(say({solid::fault::kAtJoint, {reason::text(joint.id), reason::inner(joint.why)}})) + '.';
  for (const files::LeftOutOfSet& left : made.set.leftOut) sentences << leftOutSaid(left) + '.';
  return sentences;
}

}  // namespace

AnimalFromScans::AnimalFromScans(FileController& files, MessageBar& messages, QWidget& window)
    : QObject(&window), files_(files), messages_(messages), window_(window), readout_(new JobReadout(maker_)) {}

QWidget* AnimalFromScans::readout() const { return readout_; }

void AnimalFromScans::ask(const QString& folder) {
  const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  auto* dialog = new AnimalDialog(QSettings().value(kScansFolderKey, documents).toString(), &window_);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  if (!folder.isEmpty()) dialog->setFolder(folder);
  connect(dialog, &QDialog::accepted, this, [this, dialog] { make(dialog->folder(), dialog->plan()); });
  dialog->open();
}

void AnimalFromScans::make(const QString& folder, anatomy::BodyPlan plan) {
  QSettings().setValue(kScansFolderKey, folder);
  readout_->setTask(tr("Making an animal of scans"));
  const std::string name = QFileInfo(folder).fileName().toStdString();
  const std::filesystem::path path = folder.toStdString();
  maker_.start(
      [this, folder, path, name, plan](const Worker::Control& control) -> Worker::Delivery {
        files::ScanReader reader;
        reader.task = control.task;
        files::ScanSetWish wish;
        wish.paths = {path};
        auto animal = files::animalOfScans(wish, plan, name, reader);
        if (!animal) return {};
        auto made = std::make_shared<files::ScanAnimal>(std::move(*animal));
        return [this, made, folder] { files_.whenSafe([this, made, folder] { adopt(made, folder); }); };
      },
      [this](const QString& cause) { messages_.warn(capital(cause)); });
}

void AnimalFromScans::adopt(const Made& made, const QString& folder) {
  files_.openUnsaved(std::move(made->project));
  const auto bones = made->set.bones.size();
  const auto marked = std::count_if(made->found.joints.begin(), made->found.joints.end(),
                                    [](const solid::FoundJoint& joint) { return joint.found; });
  const QStringList sentences = saidOf(*made);
  std::vector<MessageBar::Answer> answers{{tr("Look at the marks"), [this] { emit marksAsked(); }}};
  if (!sentences.isEmpty()) answers.push_back({tr("Show all"), [this, sentences] { showAll(sentences); }});
  messages_.tell(
      tr("Bones of %1 in the animal: %2. Joints with suggested marks: %3; they come from shape alone: look at "
         "each and accept it, or mark it anew. Files and parts left out: %4.")
          .arg(QDir::toNativeSeparators(folder))
          .arg(bones)
          .arg(marked)
          .arg(made->set.leftOut.size()),
      std::move(answers), MessageBar::Stays::WithProject);
}

void AnimalFromScans::showAll(const QStringList& sentences) {
  auto* dialog = new SentencesDialog(tr("What was found on the scans"), sentences, &window_);
  dialog->setObjectName("scansFound");
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->open();
}

}  // namespace zyga::ui
