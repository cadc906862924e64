#include "core/files/project/project_notes.h"

#include "core/files/project/project_schema.h"

namespace zyga::files {
namespace {

using anatomy::Note;

json::Value noteJson(const Note& note) {
  json::Value point = json::array({});
  for (const double x : note.p_B)
    point.push(schema::numeral(x, schema::kMillimetres, reason::Term{"project.note-place"}));
  return json::object({{"bone", toId(note.bone)},
                       {"point_mm", point},
                       {"text", note.text},
                       {"basis", toText(note.basis)},
                       {"source", note.source}});
}

std::vector<std::string_view> noteBases() {
  std::vector<std::string_view> words;
  using anatomy::NoteBasis;
  for (const NoteBasis basis : {NoteBasis::Bone, NoteBasis::LivingRelatives, NoteBasis::Conjecture})
    words.push_back(toText(basis));
  return words;
}

Note readNote(const JsonPlace& place) {
  place.allowOnly({"bone", "point_mm", "text", "basis", "source"});
  Note note;
  const auto id = place["bone"];
  const auto name = anatomy::parseBoneId(id.string());
  if (!name) id.fail({fault::kNoBone, {shown(id.string())}});
  note.bone = *name;
  const auto point = place["point_mm"].items(3, kNumbers);
  for (int i = 0; i < 3; ++i)
    note.p_B(i) = fromNumeral(point[static_cast<std::size_t>(i)].numeral(), schema::kMillimetres);
  if (!note.p_B.allFinite()) place["point_mm"].fail(fault::kNumberTooLarge);
  note.text = place["text"].string();
  const auto basis = place["basis"];
  const auto known = anatomy::noteBasisFromText(basis.string());
  if (!known) basis.fail({fault::kNotAmong, {shown(basis.string()), shown(noteBases())}});
  note.basis = *known;
  note.source = place["source"].string();
  return note;
}

}  // namespace

void addNotes(const Project& project, json::Value& root) {
  if (project.notes.empty()) return;
  json::Value notes = json::Value::array(json::Layout::OnLines);
  for (const Note& note : project.notes) notes.push(noteJson(note));
  root.add(kNotesKey, std::move(notes));
}

void readNotes(const JsonPlace& root, Project& project) {
  const auto notes = root.find(kNotesKey);
  if (!notes) return;
  for (const auto& item : notes->items()) project.notes.push_back(readNote(item));
}

}  // namespace zyga::files
