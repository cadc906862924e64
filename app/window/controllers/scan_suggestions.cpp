#include "app/window/controllers/scan_suggestions.h"

#include <algorithm>

#include "app/window/job_readout.h"
#include "core/anatomy/plan/build_specimen.h"
#include "ui/commands/scan_edits.h"
#include "ui/parts/message_bar.h"
#include "ui/words/say.h"
#include "ui/words/scan_words.h"

namespace zyga::ui {
namespace {

/// Whether nobody has marked the scan anew since.
bool sameMarks(const anatomy::Scan& a, const anatomy::Scan& b) {
  return a.bone == b.bone && a.checksum == b.checksum && a.landmarks == b.landmarks &&
         a.facets.size() == b.facets.size() && a.suggested == b.suggested;
}

/// Scans that a column can be made of, and where each lies among all.
struct Column {
  std::vector<solid::ColumnBone> bones;
  std::vector<std::size_t> places;
};

Column columnOf(const std::vector<files::ProjectScan>& scans) {
  Column column;
  for (std::size_t i = 0; i < scans.size(); ++i) {
    if (!scans[i].mesh || !anatomy::isVertebra(scans[i].scan.bone.kind)) continue;
    column.bones.push_back({scans[i].scan.bone, scans[i].mesh.get()});
    column.places.push_back(i);
  }
  return column;
}

}  // namespace

ScanSuggestions::ScanSuggestions(Document& document, MessageBar& messages, QWidget& window)
    : QObject(&window), document_(document), messages_(messages), readout_(new JobReadout(finder_)) {}

QWidget* ScanSuggestions::readout() const { return readout_; }

void ScanSuggestions::start() {
  if (!document_.hasProject()) return;
  const auto scans = std::make_shared<const Scans>(document_.project().scans);
  if (columnOf(*scans).bones.size() < 2)
    return messages_.tell(
        tr("Facets are found where two scanned vertebrae lie in articulation: import neighbours in one common frame."));
  readout_->setTask(tr("Looking for landmarks and facets"));
  const auto work = [this, scans,
                     table = document_.project().table](const Worker::Control& control) -> Worker::Delivery {
    const anatomy::Specimen sculpted = anatomy::buildSpecimen(table);
    const Column column = columnOf(*scans);
    auto found = std::make_shared<solid::ColumnSuggestion>(solid::suggestColumn(column.bones, sculpted, control.task));
    if (control.task.cancelled()) return {};
    return [this, scans, found] { take(*scans, *found); };
  };
  finder_.start(work, [this](const QString& cause) { messages_.warn(capital(cause)); });
}

void ScanSuggestions::take(const Scans& asked, const solid::ColumnSuggestion& found) {
  if (!document_.hasProject()) return;
  const anatomy::Specimen sculpted = anatomy::buildSpecimen(document_.project().table);
  const Column column = columnOf(asked);
  Scans scans = document_.project().scans;
  std::size_t marks = 0;
  QStringList bones;
  std::optional<anatomy::BoneIndex> first;
  for (std::size_t k = 0; k < column.places.size(); ++k) {
    const anatomy::Scan& was = asked[column.places[k]].scan;
    const auto now = std::find_if(scans.begin(), scans.end(), [&](const auto& scan) {
      return scan.scan.bone == was.bone && scan.scan.checksum == was.checksum;
    });
    const auto bone = sculpted.findBone(toId(was.bone));
    if (now == scans.end() || !bone) continue;  // taken out meanwhile
    const std::size_t before = now->scan.suggested.size();
    takeOver(now->scan, sculpted[*bone], found.marks[k]);
    if (now->scan.suggested.size() == before) continue;
    marks += now->scan.suggested.size() - before;
    bones << QString::fromStdString(toId(was.bone));
    if (!first) first = bone;
  }
  if (marks == 0) return tellNothing(found);
  changeScans(document_, std::move(scans), tr("Suggest landmarks and facets"));
  document_.selectBone(first);
  messages_.tell(
      tr("Marks suggested and put on %1: %2. They come from shape alone: look at each and accept it, or mark "
         "it anew.")
          .arg(inOneLine(bones))
          .arg(marks),
      {{tr("Look at the marks"), [this, first] { emit marksAsked(first); }}}, MessageBar::Stays::WithProject);
}

void ScanSuggestions::carry() {
  if (!document_.hasProject()) return;
  const auto scans = std::make_shared<const Scans>(document_.project().scans);
  readout_->setTask(tr("Carrying marks over"));
  const auto work = [this, scans,
                     table = document_.project().table](const Worker::Control& control) -> Worker::Delivery {
    auto after = std::make_shared<Scans>(*scans);
    auto carried = files::carryMissing(*after, anatomy::buildSpecimen(table), control.task);
    if (control.task.cancelled()) return {};
    return [this, scans, after, carried = std::move(carried)] { takeCarried(*scans, *after, carried); };
  };
  finder_.start(work, [this](const QString& cause) { messages_.warn(capital(cause)); });
}

void ScanSuggestions::takeCarried(const Scans& asked, const Scans& after,
                                  const std::vector<files::CarriedTo>& carried) {
  if (!document_.hasProject()) return;
  Scans scans = document_.project().scans;
  std::size_t marks = 0;
  QStringList sentences;
  std::optional<anatomy::BoneIndex> first;
  for (const files::CarriedTo& to : carried) {
    sentences << carriedSaid(to) + '.';
    if (to.marks == 0) continue;
    const auto i = static_cast<std::size_t>(
        std::find_if(asked.begin(), asked.end(), [&](const auto& scan) { return scan.scan.bone == to.to; }) -
        asked.begin());
    const auto now = std::find_if(scans.begin(), scans.end(), [&](const auto& scan) {
      return i < asked.size() && sameMarks(scan.scan, asked[i].scan);
    });
    if (now == scans.end()) continue;  // taken out or marked meanwhile
    now->scan = after[i].scan;
    marks += to.marks;
    if (!first) first = document_.specimen().findBone(toId(to.to));
  }
  if (marks == 0) {
    return messages_.tell(sentences.isEmpty() ? tr("No vertebra lacks marks that another scanned one has.")
                                              : tr("Nothing was carried over: no other vertebra is enough alike."));
  }
  changeScans(document_, std::move(scans), tr("Carry marks over"));
  document_.selectBone(first);
  messages_.tell(
      tr("Marks carried over: %1. They are suggestions from another bone: look at each and accept it, or mark "
         "it anew.")
              .arg(marks) +
          '\n' + sentences.mid(0, 3).join('\n'),
      {{tr("Look at the marks"), [this, first] { emit marksAsked(first); }}}, MessageBar::Stays::WithProject);
}

void ScanSuggestions::tellNothing(const solid::ColumnSuggestion& found) {
  const auto failed =
      std::find_if(found.joints.begin(), found.joints.end(), [](const auto& joint) { return !joint.found; });
  if (failed != found.joints.end())
    return messages_.tell(
        tr("%1.").arg(capital(say({solid::fault::kAtJoint, {reason::text(failed->id), reason::inner(failed->why)}}))));
  messages_.tell(found.joints.empty()
                     ? tr("Nothing could be suggested: no two of the scanned vertebrae are neighbours.")
                     : tr("Nothing more is suggested: what is sure enough is marked already."));
}

}  // namespace zyga::ui
