#include "ui/commands/scan_edits.h"

#include <QUndoCommand>
#include <algorithm>

#include "core/anatomy/plan/build_specimen.h"

namespace zyga::ui {
namespace {

using Scans = std::vector<files::ProjectScan>;

QString idOf(const anatomy::BoneName& bone) { return QString::fromStdString(toId(bone)); }

class SetScans : public QUndoCommand {
 public:
  SetScans(Document& document, Scans after, const QString& text)
      : QUndoCommand(text), document_(document), before_(document.project().scans), after_(std::move(after)) {}
  void undo() override { document_.setScans(before_); }
  void redo() override { document_.setScans(after_); }

 private:
  Document& document_;
  Scans before_, after_;
};

class SetSkeleton : public QUndoCommand {
 public:
  SetSkeleton(Document& document, Skeleton after, const QString& text)
      : QUndoCommand(text),
        document_(document),
        before_{document.project().table, document.project().scans, document.project().pose, document.project().poses},
        after_(std::move(after)) {}
  void undo() override { document_.setSkeleton(before_); }
  void redo() override { document_.setSkeleton(after_); }

 private:
  Document& document_;
  Skeleton before_, after_;
};

}  // namespace

const files::ProjectScan* scanOf(const Document& document, const anatomy::BoneName& bone) {
  if (!document.hasProject()) return nullptr;
  const Scans& scans = document.project().scans;
  const auto found = std::find_if(scans.begin(), scans.end(), [&](const auto& s) { return s.scan.bone == bone; });
  return found == scans.end() ? nullptr : &*found;
}

void changeScans(Document& document, Scans after, const QString& text) {
  document.undoStack().push(new SetScans(document, std::move(after), text));
}

Scans withScans(const Document& document, Scans fresh) {
  Scans after = document.project().scans;
  for (files::ProjectScan& scan : fresh) {
    std::erase_if(after, [&](const auto& old) { return old.scan.bone == scan.scan.bone; });
    after.push_back(std::move(scan));
  }
  return after;
}

void putScans(Document& document, Scans fresh, const QString& text) {
  changeScans(document, withScans(document, std::move(fresh)), text);
}

void changeScan(Document& document, const anatomy::Scan& after, const QString& text) {
  Scans scans = document.project().scans;
  for (files::ProjectScan& kept : scans) {
    if (kept.scan.bone != after.bone) continue;
    kept.scan = after;
    return changeScans(document, std::move(scans), text);
  }
}

void removeScan(Document& document, const anatomy::BoneName& bone) {
  Scans after = document.project().scans;
  if (std::erase_if(after, [&](const auto& kept) { return kept.scan.bone == bone; }) == 0) return;
  changeScans(document, std::move(after), Document::tr("Remove the scan of %1").arg(idOf(bone)));
}

bool mirrorScan(Document& document, const anatomy::BoneName& bone) {
  const files::ProjectScan* original = scanOf(document, bone);
  if (!original || mirrored(bone) == bone) return false;
  files::ProjectScan other = *original;
  other.scan = anatomy::mirroredScan(original->scan);
  putScans(document, {other}, Document::tr("Mirror %1 to %2").arg(idOf(bone), idOf(other.scan.bone)));
  return true;
}

void scaleScan(Document& document, const anatomy::BoneName& bone, double factor) {
  if (const auto* scan = scanOf(document, bone))
    changeScan(document, anatomy::scaledScan(scan->scan, factor),
               Document::tr("Scale %1 to %2 %").arg(idOf(bone)).arg(100 * factor, 0, 'f', 1));
}

void enterMeasures(Document& document, const anatomy::BoneName& bone, std::span<const anatomy::MarkedMeasure> measures,
                   const QString& text) {
  const files::Project& project = document.project();
  const auto* scan = scanOf(document, bone);
  if (!scan || measures.empty()) return;
  Skeleton after{anatomy::fillAnew(anatomy::withMeasures(project.table, scan->scan, measures)), project.scans,
                 project.pose, project.poses};
  document.undoStack().push(new SetSkeleton(document, std::move(after), text));
}

void scaleAnimal(Document& document, double factor, const QString& text) {
  const files::Project& project = document.project();
  Skeleton after{anatomy::scaledTable(project.table, factor), project.scans, project.pose, project.poses};
  for (auto& kept : after.scans) kept.scan = anatomy::scaledScan(kept.scan, factor);
  after.pose.X_WRoot.translation() *= factor;
  for (auto& named : after.poses) named.pose.X_WRoot.translation() *= factor;
  document.undoStack().push(new SetSkeleton(document, std::move(after), text));
}

}  // namespace zyga::ui
