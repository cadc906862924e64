#pragma once

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <filesystem>
#include <memory>
#include <optional>
#include <vector>

#include "core/files/export/mesh_export.h"
#include "core/files/project/project.h"
#include "core/kinematics/placement.h"
#include "core/range/contact/contact.h"
#include "core/range/findings.h"
#include "core/range/limits.h"
#include "core/range/scenario.h"

namespace zyga::ui {

using anatomy::BoneIndex;
using anatomy::JointIndex;

/// What a Document::changed signal speaks of.
enum class Change {
  Everything = 0xffff,  ///< as when another file is opened
  Pose = 0x01,
  Assumptions = 0x02,
  NamedPoses = 0x04,
  Bones = 0x08,  ///< evidence or source of bones
  Selection = 0x10,
  Hover = 0x20,
  Meshes = 0x40,    ///< sculpted bones have arrived
  Compared = 0x80,  ///< the pose shown as a ghost beside the present one
  Ground = 0x100,   ///< footprints, or the densities that mass and balance rest on
  Notes = 0x200,
  Sheet = 0x400,
  Scans = 0x800,     ///< real bones came, went or were marked: joints and verdicts have followed, shapes will
  Claims = 0x1000,   ///< the list of claims
  Locks = 0x2000,    ///< joints that drags leave as they are
  Contact = 0x4000,  ///< the bones' shapes are ready for contact, or gone: verdicts and ranges may have changed
  Specimen = 0x8000  ///< another animal: throw away all that was derived
};
Q_DECLARE_FLAGS(Changes, Change)

/// What the specimen is made from, and the poses that fit its size.
struct Skeleton {
  anatomy::MeasurementTable table;
  std::vector<files::ProjectScan> scans;
  kinematics::Pose pose;
  std::vector<files::NamedPose> poses;
  // Where the bones or joints are other ones; none: as they are.
  std::optional<std::vector<anatomy::Note>> notes = {};
  std::optional<std::vector<JointIndex>> lockedJoints = {};
};

/// Owns the project, everything derived from it, and the undo stack. Views read from it and listen to `changed`; every
/// lasting change goes through an undoable command (ui/commands), which calls the set... functions here.
class Document : public QObject {
  Q_OBJECT
 public:
  explicit Document(QObject* parent = nullptr);
  ~Document() override;

  /// False before a project has been opened: views show their empty state.
  bool hasProject() const;
  const files::Project& project() const;
  /// What is on screen: the preview of a drag or of a slider, else the project's own. Jobs, studies, claims, sheets and
  /// reports are asked of it; it never changes, so a copy may go to another thread.
  const range::Scenario& scenario() const;
  bool previewing() const;

  // Parts of the scenario.
  const anatomy::Specimen& specimen() const { return project().specimen(); }
  const range::Assumptions& assumptions() const { return scenario().assumptions(); }
  const kinematics::Pose& pose() const { return scenario().pose(); }
  const kinematics::Articulation& articulation() const { return scenario().articulation(); }
  const kinematics::Placement& placement() const { return scenario().placement(); }
  const range::Assessment& assessment() const { return scenario().assessment(); }
  /// The interval of one motion within range at the joint's present other angles.
  const range::MotionRange& motionRange(JointIndex joint, int motion) const {
    return scenario().motionRange(joint, motion);
  }
  /// What tells which bones enter each other; none until their shapes are ready. With it the verdicts hold contacts.
  const range::ContactModel* contact() const { return scenario().contact(); }
  /// Somebody makes the shapes and is not done: verdicts and ranges are provisional.
  bool contactPending() const;

  /// By bone; empty until the bones have been sculpted.
  const files::BoneMeshes& meshes() const;
  /// The same to look at: while the bones are being sculpted, a rough likeness once there is one. Nothing is measured
  /// on it, and it is not exported.
  const files::BoneMeshes& meshesToShow() const;

  QUndoStack& undoStack();
  /// True when there is work that no file holds.
  bool hasUnsavedWork() const;
  /// Where the project was last read or saved; empty for a new one.
  const std::filesystem::path& path() const;
  /// How it is kept there.
  files::ProjectForm form() const;

  /// Replaces everything and clears the undo stack. Starts no sculpting by itself.
  void open(files::Project project, const std::filesystem::path& path);
  void setMeshes(files::BoneMeshes meshes);
  /// What meshesToShow gives until setMeshes.
  void setRoughMeshes(files::BoneMeshes meshes);
  /// Judges the pose anew, contacts included: ranges may shrink.
  void setContact(std::shared_ptr<const range::ContactModel> contact);
  /// Whether setContact will be called; told as a change of contact. Not expected before somebody says so.
  void expectContact(bool expected);
  /// The file lies there already.
  void setSavedAs(const std::filesystem::path& path);

  /// Live drags: shows a pose, or other assumptions, without changing the project. commitPreview pushes one undoable
  /// step (none when nothing moved), cancelPreview goes back.
  void previewPose(const kinematics::Pose& pose);
  void previewAssumptions(const range::Assumptions& assumptions);
  void commitPreview(const QString& text);
  void cancelPreview();

  /// One undoable step from the present pose to `pose`. Steps with the same non-zero mergeKey that follow each other
  /// become one.
  void changePose(const kinematics::Pose& pose, const QString& text, int mergeKey = 0);
  /// The same for assumptions. Where they move the neutral articulation the step's text says what stayed: the
  /// deflections, or the bones in space.
  void changeAssumptions(const range::Assumptions& assumptions, const QString& text, int mergeKey = 0);
  /// What stays when assumptions move the neutral articulation: the deflections, so that the bones turn (false), or the
  /// bones in space, so that the deflections are recomputed. A habit of the person, not of the project.
  bool keepsInSpace() const;
  void setKeepsInSpace(bool keeps);

  std::optional<JointIndex> selectedJoint() const;
  std::optional<BoneIndex> selectedBone() const;
  void selectBone(std::optional<BoneIndex> bone);     ///< also selects the joint that carries it
  void selectJoint(std::optional<JointIndex> joint);  ///< also selects its distal bone
  std::optional<BoneIndex> hoveredBone() const;
  /// Whether drags leave this joint as it is.
  bool isLocked(JointIndex joint) const;
  void hoverBone(std::optional<BoneIndex> bone);
  /// Chains bend from this joint on; none: from the root of the neck, tail or limb.
  std::optional<JointIndex> bendBase() const;
  void setBendBase(std::optional<JointIndex> joint);
  /// Number of the note that is chosen, from 0.
  std::optional<std::size_t> selectedNote() const;
  void selectNote(std::optional<std::size_t> note);
  /// The named pose shown as a ghost; none: no ghost.
  std::optional<std::size_t> comparedPose() const;
  void comparePose(std::optional<std::size_t> index);

  /// For commands only: no undo step is recorded.
  void setPose(const kinematics::Pose& pose);
  void setAssumptions(const range::Assumptions& assumptions, const kinematics::Pose& pose);
  void setNamedPoses(std::vector<files::NamedPose> poses);
  void setTrackway(const study::Trackway& trackway);
  void setDensities(const study::Densities& densities);
  void setNotes(std::vector<anatomy::Note> notes);
  void setSheet(const files::Sheet& sheet);
  void setClaims(std::vector<study::Claim> claims);
  void setGuideThickness(const solid::GuideThickness& thickness);  ///< nothing on screen depends on it
  void setLockedJoints(std::vector<JointIndex> joints);
  void setBoneRecord(BoneIndex bone, anatomy::Evidence evidence, const std::string& source);
  /// Throws std::invalid_argument, and changes nothing, for a scan of a bone the animal has no room for.
  void setScans(std::vector<files::ProjectScan> scans);
  /// Told as a change of everything. What is chosen stays chosen where the bone is still there. Throws as setScans
  /// does.
  void setSkeleton(Skeleton skeleton);

 signals:
  void changed(zyga::ui::Changes what);

 private:
  struct State;
  std::unique_ptr<State> state_;
};

Q_DECLARE_OPERATORS_FOR_FLAGS(Changes)

}  // namespace zyga::ui
