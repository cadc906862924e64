#include "core/files/project/project_notes.h"

#include <cmath>

#include "core/files/json/json_layout.h"
#include "core/files/json/numeral.h"
#include "core/files/project/project_schema.h"

namespace zyga::files {
namespace {

using anatomy::Note;

std::string noteText(const Note& note) {
  std::vector<std::string> point;
  for (const double x : note.p_B) {
    if (!std::isfinite(x)) throw FileError("cannot save: a note's place is not a finite number");
    point.push_back(toNumeral(x, schema::kMillimetres));
  }
  return onOneLine({member("bone", jsonString(toId(note.bone))), member("point_mm", list(point)),
                    member("text", jsonString(note.text)), member("basis", jsonString(toText(note.basis))),
                    member("source", jsonString(note.source))});
}

Note readNote(const JsonPlace& place) {
  place.allowOnly({"bone", "point_mm", "text", "basis", "source"});
  Note note;
  const auto id = place["bone"];
  const auto name = anatomy::parseBoneId(id.string());
  if (!name) id.fail("there is no bone " + jsonString(id.string()));
  note.bone = *name;
  const auto point = place["point_mm"].items(3, "numbers");
  for (int i = 0; i < 3; ++i)
    note.p_B(i) = fromNumeral(point[static_cast<std::size_t>(i)].numeral(), schema::kMillimetres);
  if (!note.p_B.allFinite()) place["point_mm"].fail("a number is too large");
  note.text = place["text"].string();
  const auto basis = place["basis"];
  const auto known = anatomy::noteBasisFromText(basis.string());
  if (!known) basis.fail(jsonString(basis.string()) + " is not among bone, living relatives, conjecture");
  note.basis = *known;
  note.source = place["source"].string();
  return note;
}

}  // namespace

std::vector<std::string> noteMembers(const Project& project) {
  if (project.notes.empty()) return {};
  std::vector<std::string> notes;
  for (const Note& note : project.notes) notes.push_back(noteText(note));
  return {member(kNotesKey, onLines(notes, "  ", '[', ']'))};
}

void readNotes(const JsonPlace& root, Project& project) {
  const auto notes = root.find(kNotesKey);
  if (!notes) return;
  for (const auto& item : notes->items()) project.notes.push_back(readNote(item));
}

}  // namespace zyga::files
