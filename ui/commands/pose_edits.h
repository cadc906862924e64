#pragma once

#include <QString>
#include <vector>

#include "core/files/project/project.h"
#include "core/kinematics/pose.h"
#include "core/study/reach/extremes.h"
#include "ui/document/set_value.h"

namespace zyga::ui {

class Document;

// Poses made from a pose as a whole: neutral parts and the mirror image. Values in, values out.

/// `pose` with these joints at their neutral articulation.
kinematics::Pose atNeutral(const kinematics::Pose& pose, const std::vector<kinematics::JointIndex>& joints);

/// Left and right exchanged: what the left limbs did the right ones do, and what bent left bends right; the root is
/// mirrored in the plane y = 0.
kinematics::Pose mirrored(const anatomy::Specimen& specimen, const kinematics::Pose& pose);

/// Another list of named poses. The functions below make the usual edits; an index outside the list throws
/// std::out_of_range.
class EditNamedPoses : public SetValue<std::vector<files::NamedPose>> {
 public:
  EditNamedPoses(Document& document, std::vector<files::NamedPose> after, const QString& text);
};

/// Keeps the present pose under a name of its own ("Alert", then "Alert 2").
void addNamedPose(Document& document, const QString& name);
/// False, and nothing changes, when the name is blank or taken by another pose.
bool renameNamedPose(Document& document, std::size_t index, const QString& name);
void deleteNamedPose(Document& document, std::size_t index);
/// Puts the present pose in the place of the named one.
void replaceNamedPose(Document& document, std::size_t index);

/// Bends neck or tail to its limit in one undoable step and tells where it ends.
study::Extreme takeExtreme(Document& document, study::Chain chain, range::Direction direction);

/// Keeps neck and tail at their dorsal, ventral, left and right limits as named poses, in one undoable step; poses that
/// have these names already are replaced. The present pose stays.
std::vector<study::Extreme> keepExtremes(Document& document);

/// Locks an unlocked joint and unlocks a locked one, in one undoable step: drags leave a locked joint as it is.
void lockOrUnlock(Document& document, anatomy::JointIndex joint);
/// No step when none is locked.
void unlockAllJoints(Document& document);

}  // namespace zyga::ui
