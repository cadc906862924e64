#pragma once

#include <QString>

#include "core/anatomy/note.h"
#include "ui/document/set_value.h"

namespace zyga::ui {

class Document;

/// The usual edits of notes, each one undoable step. A number outside the list throws std::out_of_range.

/// Pins a note to a point of a bone (in the bone's frame, m) and chooses it.
void addNote(Document& document, anatomy::BoneIndex bone, const Eigen::Vector3d& p_B);
/// None when nothing changes.
void changeNote(Document& document, std::size_t number, const anatomy::Note& note, const QString& text);
void deleteNote(Document& document, std::size_t number);

}  // namespace zyga::ui
