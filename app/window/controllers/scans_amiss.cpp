#include "app/window/controllers/scans_amiss.h"

#include <QFileDialog>
#include <QFileInfo>

#include "ui/commands/scan_edits.h"
#include "ui/dialogs/sentences_dialog.h"
#include "ui/parts/message_bar.h"
#include "ui/words/say.h"
#include "ui/words/scan_words.h"

namespace zyga::ui {
namespace {

constexpr qsizetype kMostShown = 3;  ///< sentences in a message; all of them in a dialog

QString toQString(const std::filesystem::path& path) { return QString::fromStdString(path.string()); }

bool lacksMesh(const files::ProjectScan& scan) { return !scan.mesh; }

}  // namespace

ScansAmiss::ScansAmiss(Document& document, MessageBar& messages, QWidget& window)
    : QObject(&window), document_(document), messages_(messages), window_(window) {}

void ScansAmiss::tell() {
  const auto& scans = document_.project().scans;
  const QStringList sentences = scansAmissSaid(scans);
  if (sentences.isEmpty()) return;
  QStringList shown;
  for (const QString& sentence : sentences.mid(0, kMostShown)) shown << capital(sentence);
  std::vector<MessageBar::Answer> answers;
  if (std::any_of(scans.begin(), scans.end(), lacksMesh))
    answers.push_back({tr("Look in a folder…"), [this] { chooseFolder(); }});
  if (sentences.size() > kMostShown) {
    shown << tr("Further scans: %1").arg(sentences.size() - kMostShown);
    answers.push_back({tr("Show all"), [this] { showAll(); }});
  }
  messages_.warn(shown.join('\n'), std::move(answers), MessageBar::Stays::WithProject);
}

void ScansAmiss::showAll() {
  QStringList lines;
  for (const QString& sentence : scansAmissSaid(document_.project().scans)) lines << capital(sentence);
  auto* dialog = new SentencesDialog(tr("Scans that are not in their place"), lines, &window_);
  dialog->setObjectName("scansAmiss");
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::finished, this, &ScansAmiss::tell);  // the message went when it was answered
  dialog->open();
}

void ScansAmiss::chooseFolder() {
  auto* chooser =
      new QFileDialog(&window_, tr("Look for scans in a folder"), toQString(document_.path().parent_path()));
  chooser->setAttribute(Qt::WA_DeleteOnClose);
  chooser->setFileMode(QFileDialog::Directory);
  chooser->setOption(QFileDialog::ShowDirsOnly);
  connect(chooser, &QFileDialog::fileSelected, this, &ScansAmiss::lookIn);
  connect(chooser, &QFileDialog::rejected, this, &ScansAmiss::tell);
  chooser->open();
}

void ScansAmiss::lookIn(const QString& folder) {
  const auto wanted = std::make_shared<std::vector<files::ProjectScan>>(document_.project().scans);
  searcher_.start([this, wanted, folder](const Worker::Control&) -> Worker::Delivery {
    files::findScanMeshes(*wanted, folder.toStdString());
    return [this, wanted, folder] { take(*wanted, folder); };
  });
}

void ScansAmiss::take(const std::vector<files::ProjectScan>& found, const QString& folder) {
  if (!document_.hasProject()) return;
  std::vector<files::ProjectScan> scans = document_.project().scans;
  int taken = 0;
  for (files::ProjectScan& scan : scans) {
    if (scan.mesh) continue;
    for (const files::ProjectScan& other : found) {
      if (!other.mesh || other.scan.checksum != scan.scan.checksum) continue;
      scan.mesh = other.mesh;
      scan.trouble = {};
      scan.moved = other.moved;
      ++taken;
      break;
    }
  }
  if (taken == 0) {
    messages_.tell(tr("None of the missing scans is in %1 or the folders in it.").arg(folder), {},
                   MessageBar::Stays::WithProject);
    return tell();
  }
  changeScans(document_, std::move(scans), tr("Find scans again"));
  messages_.tell(tr("Scans found again: %1. Save the project to keep them with it.").arg(taken), {},
                 MessageBar::Stays::WithProject);
  const auto& now = document_.project().scans;
  if (std::any_of(now.begin(), now.end(), lacksMesh)) tell();
}

}  // namespace zyga::ui
