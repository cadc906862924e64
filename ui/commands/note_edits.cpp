#include "ui/commands/note_edits.h"

#include <QCoreApplication>
#include <stdexcept>

#include "ui/document/document.h"

namespace zyga::ui {
namespace {

using Notes = std::vector<anatomy::Note>;

QString tr(const char* text) { return QCoreApplication::translate("NoteEdits", text); }

void push(Document& document, Notes after, const QString& text) {
  const auto set = [&document](const Notes& notes) { document.setNotes(notes); };
  document.undoStack().push(new SetValue<Notes>(document.project().notes, std::move(after), set, text));
}

}  // namespace

void addNote(Document& document, anatomy::BoneIndex bone, const Eigen::Vector3d& p_B) {
  Notes notes = document.project().notes;
  const anatomy::Bone& pinned = document.specimen()[bone];
  anatomy::Note note;
  note.bone = pinned.name;
  note.p_B = p_B;
  notes.push_back(note);
  push(document, std::move(notes), tr("Pin a note to %1").arg(QString::fromStdString(pinned.id)));
  document.selectNote(document.project().notes.size() - 1);
}

void changeNote(Document& document, std::size_t number, const anatomy::Note& note, const QString& text) {
  Notes notes = document.project().notes;
  if (notes.at(number) == note) return;
  notes[number] = note;
  push(document, std::move(notes), text);
}

void deleteNote(Document& document, std::size_t number) {
  Notes notes = document.project().notes;
  if (number >= notes.size()) throw std::out_of_range("there is no note of this number");
  notes.erase(notes.begin() + static_cast<std::ptrdiff_t>(number));
  push(document, std::move(notes), tr("Delete note %1").arg(number + 1));
}

}  // namespace zyga::ui
