#include "ui/commands/table_edits.h"

#include <QUndoCommand>
#include <algorithm>
#include <set>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/plan_table.h"
#include "core/anatomy/tables/cell_checks.h"
#include "core/anatomy/tables/csv.h"
#include "core/anatomy/tables/table_reasons.h"
#include "core/files/project/fit_to_scans.h"
#include "core/kinematics/standing.h"
#include "core/range/neutral.h"
#include "ui/commands/scan_edits.h"

namespace zyga::ui {
namespace {

using anatomy::BoneName;
using anatomy::Evidence;
using anatomy::Measure;
using anatomy::MeasurementTable;
using anatomy::Specimen;
using anatomy::TableRow;
using kinematics::Pose;

constexpr reason::Id kMeasuredBoneGoes{"table.measured-bone-goes", 1};  ///< bone
constexpr reason::Id kScannedBoneGoes{"table.scanned-bone-goes", 1};    ///< bone
constexpr reason::Id kClearItFirst{"table.clear-it-first"};
constexpr reason::Id kRemoveScanFirst{"table.remove-scan-first"};

class SetTable : public QUndoCommand {
 public:
  SetTable(Document& document, Skeleton after, const QString& text)
      : QUndoCommand(text), document_(document), before_(present(document)), after_(std::move(after)) {}
  void undo() override { document_.setSkeleton(before_); }
  void redo() override { document_.setSkeleton(after_); }

  static Skeleton present(const Document& document) {
    const files::Project& project = document.project();
    return {project.table, project.scans, project.pose, project.poses, project.notes, project.lockedJoints};
  }

 private:
  Document& document_;
  Skeleton before_, after_;
};

/// The same angles at the joints of the same names, of an animal `size` times as large; joints that are new are
/// straight.
Pose carriedTo(const Specimen& before, const Specimen& after, const Pose& pose, double size) {
  Pose out = Pose::neutral(after);
  out.X_WRoot = pose.X_WRoot;
  out.X_WRoot.translation() *= size;
  for (std::size_t j = 0; j < after.joints.size(); ++j) {
    const auto old = before.findJoint(after.joints[j].id);
    if (!old || old->value >= pose.angles.size()) continue;
    out.angles[j] = pose[*old];
    if (pose.isAxialTyped(*old)) out.setAxialTyped({j}, true);
  }
  return out;
}

/// A pose whose feet are on the ground.
bool stands(const Specimen& specimen, const kinematics::Articulation& articulation, const Pose& pose) {
  if (kinematics::solePoints(specimen).empty()) return false;
  const Pose stood = kinematics::stand(specimen, articulation, pose);
  constexpr double kOnTheGround = 1e-3;  // m, and as much of a direction
  return (stood.X_WRoot.matrix() - pose.X_WRoot.matrix()).cwiseAbs().maxCoeff() < kOnTheGround;
}

/// Poses, locks and notes of the document for the bones of another table and these scans, which make the animal `size`
/// times as large.
Skeleton carried(const Document& document, MeasurementTable table, std::vector<files::ProjectScan> scans,
                 double size = 1) {
  const files::Project& project = document.project();
  const Specimen& before = project.specimen();
  const Specimen after = files::specimenOf(table, scans);
  const auto articulationBefore = range::articulate(before, project.assumptions);
  const auto articulation = range::articulate(after, project.assumptions);
  const auto follow = [&](const Pose& pose) {
    const Pose same = carriedTo(before, after, pose, size);
    const bool stood = stands(before, articulationBefore, pose) && !kinematics::solePoints(after).empty();
    return stood ? kinematics::stand(after, articulation, same) : same;
  };
  Skeleton out{std::move(table), std::move(scans), follow(project.pose),
               project.poses,    project.notes,    std::vector<JointIndex>()};
  for (files::NamedPose& named : out.poses) named.pose = follow(named.pose);
  std::erase_if(*out.notes, [&](const anatomy::Note& note) { return !anatomy::boneOf(note, after); });
  for (const JointIndex locked : project.lockedJoints)
    if (const auto joint = after.findJoint(before[locked].id)) out.lockedJoints->push_back(*joint);
  std::sort(out.lockedJoints->begin(), out.lockedJoints->end());
  return out;
}

/// What was mirrored from a bone that is measured no more is inferred again.
void forgetMirrored(MeasurementTable& table) {
  for (TableRow& row : table.rows) {
    if (row.evidence != Evidence::Mirrored || row.measures.anyMeasured()) continue;
    const TableRow* twin = table.find(mirrored(row.name));
    if (!twin || !twin->measures.anyMeasured()) row.evidence = Evidence::Inferred;
  }
}

void push(Document& document, MeasurementTable after, const QString& text) {
  forgetMirrored(after);
  after = files::filledAnew(std::move(after));
  if (after == document.project().table) return;
  document.undoStack().push(
      new SetTable(document, carried(document, std::move(after), document.project().scans), text));
}

std::set<BoneName> bonesOf(const MeasurementTable& table) {
  const std::vector<BoneName> all = anatomy::allBones(table.plan, table.counts);
  return {all.begin(), all.end()};
}

Obstacle scansIn(const Document& document, const MeasurementTable& after) {
  const std::set<BoneName> bones = bonesOf(after);
  for (const files::ProjectScan& kept : document.project().scans)
    if (!bones.contains(kept.scan.bone))
      return {{kScannedBoneGoes, {reason::text(toId(kept.scan.bone))}}, {kRemoveScanFirst}};
  return {};
}

/// Another plan or other counts with the cells that are measured.
Obstacle pushOtherBones(Document& document, MeasurementTable after, const QString& text) {
  const std::set<BoneName> bones = bonesOf(after);
  for (const TableRow& row : after.rows)
    if (row.measures.anyMeasured() && !bones.contains(row.name))
      return {{kMeasuredBoneGoes, {reason::text(toId(row.name))}}, {kClearItFirst}};
  Obstacle scans = scansIn(document, after);
  if (!scans.any()) push(document, std::move(after), text);
  return scans;
}

/// A fault of the row that it did not have before.
Obstacle newFault(const TableRow& before, const TableRow& after) {
  const auto old = anatomy::rowFaults(before);
  for (const anatomy::CellFault& fault : anatomy::rowFaults(after)) {
    const bool known =
        std::any_of(old.begin(), old.end(), [&](const anatomy::CellFault& o) { return o.cause.id == fault.cause.id; });
    if (!known) return {fault.cause, fault.mend};
  }
  return {};
}

void settleEvidence(const Document& document, TableRow& row, bool wasMeasured) {
  const bool measured = row.measures.anyMeasured();
  if (measured == wasMeasured || scanOf(document, row.name)) return;
  const bool unknown = row.evidence == Evidence::Inferred || row.evidence == Evidence::Mirrored;
  if (measured && unknown) row.evidence = Evidence::Found;
  if (!measured && !unknown) row.evidence = Evidence::Inferred;
}

struct UnitWord {
  const char* word;
  double toSi;
  bool angle;
};

/// Longest first.
constexpr UnitWord kUnitWords[] = {{"mm", 1e-3, false},
                                   {"cm", 1e-2, false},
                                   {"deg", 0.017453292519943295, true},
                                   {"°", 0.017453292519943295, true},
                                   {"m", 1, false}};

}  // namespace

TypedValue readTyped(Measure measure, const QString& text) {
  QString number = text.simplified();
  number.replace(QChar(0x2212), '-').remove(QChar(0x00a0));
  const bool angle = anatomy::isAngle(measure);
  const char* unit = angle ? "deg" : "mm";
  double toSi = angle ? kUnitWords[2].toSi : 1e-3;
  for (const UnitWord& known : kUnitWords) {
    const QString word = QString::fromUtf8(known.word);
    if (known.angle != angle || !number.endsWith(word, Qt::CaseInsensitive)) continue;
    number = number.chopped(word.size()).trimmed();
    unit = known.word;
    toSi = known.toSi;
    break;
  }
  const std::string typed = number.toStdString();
  TypedValue out;
  if (!anatomy::parseNumber(typed, out.value)) {
    out.cause = {anatomy::table::kNotANumber, {reason::text(text.trimmed().toStdString())}};
    out.mend = {anatomy::table::kWriteNumber, {reason::text(unit)}};
    return out;
  }
  out.value *= toSi;
  if (const auto fault = anatomy::valueFault(measure, out.value, typed, unit)) {
    out.cause = fault->cause;
    out.mend = fault->mend;
  }
  return out;
}

Obstacle obstacleTo(const Document& document, const CellEdit& edit) {
  const TableRow* row = document.project().table.find(edit.bone);
  if (!row || !edit.value) return {};
  TableRow after = *row;
  after.measures[edit.measure] = {*edit.value, anatomy::CellOrigin::Measured, {}};
  return newFault(*row, after);
}

Obstacle changeCells(Document& document, const std::vector<CellEdit>& edits, const QString& text) {
  MeasurementTable after = document.project().table;
  for (const CellEdit& edit : edits) {
    TableRow* row = after.find(edit.bone);
    if (!row) continue;
    const TableRow before = *row;
    row->measures[edit.measure] =
        edit.value ? anatomy::Cell{*edit.value, anatomy::CellOrigin::Measured, {}} : anatomy::Cell{};
    settleEvidence(document, *row, before.measures.anyMeasured());
    if (edit.value)
      if (Obstacle fault = newFault(before, *row); fault.any()) return fault;
  }
  push(document, std::move(after), text);
  return {};
}

Obstacle changeCounts(Document& document, const anatomy::RegionCounts& counts, const QString& text) {
  MeasurementTable after = document.project().table;
  after.counts = counts;
  return pushOtherBones(document, std::move(after), text);
}

Obstacle changePlan(Document& document, anatomy::BodyPlan plan, const QString& text) {
  MeasurementTable after = document.project().table;
  after.plan = plan;
  const anatomy::PlanTable& table = anatomy::planTable(plan);
  for (const auto& [kind, count, bounds] : anatomy::kCountedRegions) {
    const anatomy::CountBounds possible = table.*bounds;
    if (after.counts.*count < possible.least || after.counts.*count > possible.most)
      after.counts.*count = table.counts.*count;
  }
  return pushOtherBones(document, std::move(after), text);
}

void changeTotal(Document& document, const std::string& region, std::optional<double> total, const QString& text) {
  MeasurementTable after = document.project().table;
  if (total)
    after.regionTotals[region] = *total;
  else
    after.regionTotals.erase(region);
  push(document, std::move(after), text);
}

bool fitToScans(Document& document, std::vector<files::ProjectScan> scans, double factor, const QString& text) {
  const files::Project& project = document.project();
  files::FittedAnimal fitted = files::fittedToScans(project.table, std::move(scans), factor);
  const bool newScans = std::any_of(fitted.scans.begin(), fitted.scans.end(), [&](const files::ProjectScan& kept) {
    const files::ProjectScan* old = scanOf(document, kept.scan.bone);
    return !old || old->mesh != kept.mesh;
  });
  if (!newScans && fitted.table == project.table) return false;
  Skeleton after = carried(document, std::move(fitted.table), std::move(fitted.scans), factor);
  for (anatomy::Note& note : *after.notes)
    if (!scanOf(document, note.bone)) note.p_B *= factor;
  document.undoStack().push(new SetTable(document, std::move(after), text));
  return true;
}

Obstacle replaceTable(Document& document, const MeasurementTable& table, const QString& text) {
  Obstacle scans = scansIn(document, table);
  if (!scans.any()) push(document, table, text);
  return scans;
}

}  // namespace zyga::ui
