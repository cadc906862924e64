#include "ui/document/document.h"

#include <algorithm>

#include "core/kinematics/keep_in_space.h"
#include "core/range/neutral.h"
#include "ui/document/set_assumptions.h"
#include "ui/document/set_pose.h"

namespace zyga::ui {

using kinematics::Pose;

struct Document::State {
  std::optional<files::Project> project;
  std::filesystem::path path;
  files::ProjectForm form = files::ProjectForm::Beside;
  bool keepsInSpace = false;
  bool expectsContact = false;

  range::Scenario scenario;                      ///< what is on screen
  std::optional<range::Scenario> beforeAssumed;  ///< the project's own, while other assumptions are previewed
  bool posePreviewed = false;                    ///< the scenario's pose is not the project's
  files::BoneMeshes meshes, roughMeshes;
  QUndoStack undoStack;

  std::optional<JointIndex> selectedJoint, bendBase;
  std::optional<BoneIndex> selectedBone, hoveredBone;
  std::optional<std::size_t> comparedPose, selectedNote;

  /// Another specimen: nothing is kept but what the project holds.
  void beginAnew() {
    scenario = files::scenarioOf(*project);
    endPreview();
  }
  void endPreview() {
    beforeAssumed.reset();
    posePreviewed = false;
  }
  /// What was chosen among the bones and joints of `before` is sought by its name.
  void followSelection(const anatomy::Specimen& before);
  const range::Scenario& settled() const { return beforeAssumed ? *beforeAssumed : scenario; }
  Pose carriedTo(const kinematics::Articulation& next) const;
};

void Document::State::followSelection(const anatomy::Specimen& before) {
  const anatomy::Specimen& now = project->specimen();
  if (selectedBone) selectedBone = now.findBone(before[*selectedBone].id);
  if (hoveredBone) hoveredBone = now.findBone(before[*hoveredBone].id);
  if (selectedJoint) selectedJoint = now.findJoint(before[*selectedJoint].id);
  if (bendBase) bendBase = now.findJoint(before[*bendBase].id);
}

/// The project's pose as it is under another articulation.
Pose Document::State::carriedTo(const kinematics::Articulation& next) const {
  if (!keepsInSpace) return project->pose;
  return kinematics::keepInSpace(project->specimen(), settled().articulation(), next, project->pose);
}

Document::Document(QObject* parent) : QObject(parent), state_(std::make_unique<State>()) {}
Document::~Document() = default;

bool Document::hasProject() const { return state_->project.has_value(); }
const files::Project& Document::project() const { return state_->project.value(); }
const range::Scenario& Document::scenario() const { return state_->scenario; }
bool Document::previewing() const { return state_->posePreviewed || state_->beforeAssumed; }
bool Document::keepsInSpace() const { return state_->keepsInSpace; }
void Document::setKeepsInSpace(bool keeps) { state_->keepsInSpace = keeps; }
const files::BoneMeshes& Document::meshes() const { return state_->meshes; }
const files::BoneMeshes& Document::meshesToShow() const {
  return state_->meshes.empty() ? state_->roughMeshes : state_->meshes;
}
QUndoStack& Document::undoStack() { return state_->undoStack; }
bool Document::hasUnsavedWork() const { return hasProject() && !state_->undoStack.isClean(); }
const std::filesystem::path& Document::path() const { return state_->path; }
files::ProjectForm Document::form() const { return state_->form; }

void Document::open(files::Project project, const std::filesystem::path& path) {
  State& s = *state_;
  if (project.pose.angles.size() != project.specimen().joints.size()) project.pose = Pose::neutral(project.specimen());
  s.project = std::move(project);
  s.path = path;
  s.form = files::formFor(path);
  s.meshes.clear();
  s.roughMeshes.clear();
  s.selectedJoint = s.bendBase = std::nullopt;
  s.selectedBone = s.hoveredBone = std::nullopt;
  s.comparedPose.reset();
  s.selectedNote.reset();
  s.beginAnew();
  s.undoStack.clear();
  emit changed(Change::Everything);
}

void Document::setMeshes(files::BoneMeshes meshes) {
  state_->meshes = std::move(meshes);
  state_->roughMeshes.clear();
  emit changed(Change::Meshes);
}

void Document::setRoughMeshes(files::BoneMeshes meshes) {
  state_->roughMeshes = std::move(meshes);
  emit changed(Change::Meshes);
}

void Document::setContact(std::shared_ptr<const range::ContactModel> contact) {
  State& s = *state_;
  if (s.beforeAssumed) s.beforeAssumed = s.beforeAssumed->withContact(contact);
  s.scenario = s.scenario.withContact(std::move(contact));
  emit changed(Change::Contact);
}

void Document::expectContact(bool expected) {
  const bool before = contactPending();
  state_->expectsContact = expected;
  if (contactPending() != before) emit changed(Change::Contact);
}

bool Document::contactPending() const { return state_->expectsContact && hasProject() && !contact(); }

void Document::setSavedAs(const std::filesystem::path& path) {
  state_->path = path;
  state_->form = files::formFor(path);
  state_->undoStack.setClean();
}

void Document::previewPose(const Pose& pose) {
  state_->scenario = state_->scenario.withPose(pose);
  state_->posePreviewed = true;
  emit changed(Change::Pose);
}

void Document::previewAssumptions(const range::Assumptions& assumptions) {
  State& s = *state_;
  const range::Scenario before = s.settled();
  const range::Scenario turned = s.scenario.withAssumptions(assumptions, project().pose);
  s.beforeAssumed = before;
  s.posePreviewed = s.keepsInSpace;
  s.scenario = s.keepsInSpace ? turned.withPose(s.carriedTo(turned.articulation())) : turned;
  emit changed(Changes(Change::Assumptions) | Change::Pose);
}

void Document::commitPreview(const QString& text) {
  if (state_->beforeAssumed) return changeAssumptions(range::Assumptions(assumptions()), text);
  if (!state_->posePreviewed) return;
  const Pose reached = pose();
  if (reached == project().pose) return cancelPreview();
  changePose(reached, text);
}

void Document::cancelPreview() {
  State& s = *state_;
  if (s.beforeAssumed) return setAssumptions(range::Assumptions(project().assumptions), Pose(project().pose));
  if (s.posePreviewed) setPose(project().pose);
}

void Document::changePose(const Pose& pose, const QString& text, int mergeKey) {
  if (pose == project().pose) return cancelPreview();
  state_->undoStack.push(new SetPose(*this, pose, text, mergeKey));
}

void Document::changeAssumptions(const range::Assumptions& assumptions, const QString& text, int mergeKey) {
  const range::Assumptions& settled = project().assumptions;
  if (assumptions == settled) return cancelPreview();
  AssumedPose after{assumptions, project().pose};
  QString said = text;
  if (range::movesNeutral(settled, assumptions)) {
    after.pose = state_->carriedTo(range::articulate(specimen(), assumptions));
    said = keepsInSpace() ? tr("%1, bones kept in space").arg(text) : tr("%1, deflections kept").arg(text);
  }
  state_->undoStack.push(new SetAssumptions(*this, std::move(after), said, mergeKey));
}

void Document::setPose(const Pose& pose) {
  State& s = *state_;
  s.project->pose = pose;
  s.scenario = s.settled().withPose(pose);
  s.endPreview();
  emit changed(Change::Pose);
}

void Document::setAssumptions(const range::Assumptions& assumptions, const Pose& pose) {
  State& s = *state_;
  s.project->assumptions = assumptions;
  s.project->pose = pose;
  s.scenario = s.scenario.withAssumptions(assumptions, pose);
  s.endPreview();
  emit changed(Changes(Change::Assumptions) | Change::Pose);
}

namespace {

/// Where the pose that was number `index` is among `after`: under its name, or, renamed, at its old place.
std::optional<std::size_t> follow(std::size_t index, const std::vector<files::NamedPose>& before,
                                  const std::vector<files::NamedPose>& after) {
  for (std::size_t i = 0; i < after.size(); ++i)
    if (after[i].name == before[index].name) return i;
  if (after.size() == before.size()) return index;
  return std::nullopt;
}

}  // namespace

void Document::setNamedPoses(std::vector<files::NamedPose> poses) {
  State& s = *state_;
  Changes what = Change::NamedPoses;
  if (s.comparedPose) {
    s.comparedPose = follow(*s.comparedPose, s.project->poses, poses);
    what |= Change::Compared;
  }
  s.project->poses = std::move(poses);
  emit changed(what);
}

void Document::setTrackway(const study::Trackway& trackway) {
  state_->project->trackway = trackway;
  emit changed(Change::Ground);
}

void Document::setDensities(const study::Densities& densities) {
  state_->project->densities = densities;
  emit changed(Change::Ground);
}

void Document::setNotes(std::vector<anatomy::Note> notes) {
  State& s = *state_;
  if (s.selectedNote && *s.selectedNote >= notes.size()) s.selectedNote.reset();
  s.project->notes = std::move(notes);
  emit changed(Change::Notes);
}

void Document::setSheet(const files::Sheet& sheet) {
  state_->project->sheet = sheet;
  emit changed(Change::Sheet);
}

void Document::setClaims(std::vector<study::Claim> claims) {
  state_->project->claims = std::move(claims);
  emit changed(Change::Claims);
}

void Document::setGuideThickness(const solid::GuideThickness& thickness) { state_->project->guide = thickness; }

void Document::setLockedJoints(std::vector<JointIndex> joints) {
  state_->project->lockedJoints = std::move(joints);
  emit changed(Change::Locks);
}

void Document::setBoneRecord(BoneIndex bone, anatomy::Evidence evidence, const std::string& source) {
  State& s = *state_;
  anatomy::Specimen recorded = specimen();
  anatomy::Bone& kept = recorded.bones.at(bone.value);
  kept.evidence = evidence;
  kept.source = source;
  if (anatomy::TableRow* row = s.project->table.find(kept.name)) {
    row->evidence = evidence;
    row->source = source;
  }
  for (files::ProjectScan& scan : s.project->scans) {
    // What is said of a stand-in is not said of the scan that it stands in for.
    if (scan.scan.bone != kept.name || !scan.trouble.empty()) continue;
    scan.scan.evidence = evidence;
    scan.scan.source = source;
  }
  s.project->setSpecimen(std::move(recorded));
  s.scenario = s.scenario.withRecords(s.project->sharedSpecimen);
  if (s.beforeAssumed) s.beforeAssumed = s.beforeAssumed->withRecords(s.project->sharedSpecimen);
  emit changed(Change::Bones);
}

void Document::setScans(std::vector<files::ProjectScan> scans) {
  State& s = *state_;
  s.project->setSpecimen(files::specimenOf(s.project->table, scans));
  s.project->scans = std::move(scans);
  s.beginAnew();  // without the shapes of the bones as they were
  emit changed(Changes(Change::Scans) | Change::Bones | Change::Assumptions | Change::Pose);
}

void Document::setSkeleton(Skeleton skeleton) {
  State& s = *state_;
  const auto before = s.project->sharedSpecimen;
  s.project->setSpecimen(files::specimenOf(skeleton.table, skeleton.scans));
  s.followSelection(*before);
  if (skeleton.notes) s.project->notes = std::move(*skeleton.notes);
  if (s.selectedNote && *s.selectedNote >= s.project->notes.size()) s.selectedNote.reset();
  if (skeleton.lockedJoints) s.project->lockedJoints = std::move(*skeleton.lockedJoints);
  s.project->table = std::move(skeleton.table);
  s.project->scans = std::move(skeleton.scans);
  s.project->pose = std::move(skeleton.pose);
  s.project->poses = std::move(skeleton.poses);
  std::erase_if(s.project->lockedJoints, [&s](JointIndex j) { return j.value >= s.project->specimen().joints.size(); });
  s.meshes.clear();
  s.roughMeshes.clear();
  s.beginAnew();
  emit changed(Change::Everything);
}

bool Document::isLocked(JointIndex joint) const {
  const auto& locked = project().lockedJoints;
  return std::binary_search(locked.begin(), locked.end(), joint);
}

std::optional<JointIndex> Document::selectedJoint() const { return state_->selectedJoint; }
std::optional<BoneIndex> Document::selectedBone() const { return state_->selectedBone; }
std::optional<BoneIndex> Document::hoveredBone() const { return state_->hoveredBone; }
std::optional<JointIndex> Document::bendBase() const { return state_->bendBase; }
std::optional<std::size_t> Document::selectedNote() const { return state_->selectedNote; }
std::optional<std::size_t> Document::comparedPose() const { return state_->comparedPose; }

void Document::selectBone(std::optional<BoneIndex> bone) {
  const auto joint = bone ? specimen().jointAbove(*bone) : std::nullopt;
  if (bone == state_->selectedBone && joint == state_->selectedJoint) return;
  state_->selectedBone = bone;
  state_->selectedJoint = joint;
  emit changed(Change::Selection);
}

void Document::selectJoint(std::optional<JointIndex> joint) {
  const auto bone = joint ? std::optional(specimen()[*joint].distal) : std::nullopt;
  if (bone == state_->selectedBone && joint == state_->selectedJoint) return;
  state_->selectedBone = bone;
  state_->selectedJoint = joint;
  emit changed(Change::Selection);
}

void Document::hoverBone(std::optional<BoneIndex> bone) {
  if (bone == state_->hoveredBone) return;
  state_->hoveredBone = bone;
  emit changed(Change::Hover);
}

void Document::setBendBase(std::optional<JointIndex> joint) {
  if (joint == state_->bendBase) return;
  state_->bendBase = joint;
  emit changed(Change::Selection);
}

void Document::selectNote(std::optional<std::size_t> note) {
  if (note && *note >= project().notes.size()) note.reset();
  if (note == state_->selectedNote) return;
  state_->selectedNote = note;
  emit changed(Change::Notes);
}

void Document::comparePose(std::optional<std::size_t> index) {
  if (index && *index >= project().poses.size()) index.reset();
  if (index == state_->comparedPose) return;
  state_->comparedPose = index;
  emit changed(Change::Compared);
}

}  // namespace zyga::ui
