#include "ui/commands/project_edits.h"

#include <QCoreApplication>
#include <stdexcept>
#include <utility>
#include <vector>

#include "ui/document/document.h"
#include "ui/words/claim_words.h"

namespace zyga::ui {
namespace {

using Claims = std::vector<study::Claim>;
using Notes = std::vector<anatomy::Note>;

QString tr(const char* text) { return QCoreApplication::translate("ProjectEdits", text); }

/// One step from `before` to `after` by a function of the document.
template <class Value, class Set>
void step(Document& document, const Value& before, Value after, Set set, const QString& text, int mergeKey = 0) {
  if (before == after) return;
  const auto take = [&document, set](const Value& value) { (document.*set)(value); };
  document.undoStack().push(new SetValue<Value>(before, std::move(after), take, text, mergeKey));
}

void stepClaims(Document& document, Claims after, const QString& text, int mergeKey = 0) {
  step(document, document.project().claims, std::move(after), &Document::setClaims, text, mergeKey);
}

void stepNotes(Document& document, Notes after, const QString& text) {
  step(document, document.project().notes, std::move(after), &Document::setNotes, text);
}

}  // namespace

void addClaim(Document& document, const study::Claim& claim) {
  Claims claims = document.project().claims;
  claims.push_back(claim);
  stepClaims(document, std::move(claims), tr("Add claim “%1”").arg(claimName(claim)));
}

void changeClaim(Document& document, std::size_t index, const study::Claim& claim, int mergeKey) {
  Claims claims = document.project().claims;
  claims.at(index) = claim;
  stepClaims(document, std::move(claims), tr("Claim “%1”").arg(claimName(claim)), mergeKey);
}

void removeClaim(Document& document, std::size_t index) {
  Claims claims = document.project().claims;
  const QString name = claimName(claims.at(index));
  claims.erase(claims.begin() + static_cast<std::ptrdiff_t>(index));
  stepClaims(document, std::move(claims), tr("Remove claim “%1”").arg(name));
}

void addNote(Document& document, anatomy::BoneIndex bone, const Eigen::Vector3d& p_B) {
  Notes notes = document.project().notes;
  const anatomy::Bone& pinned = document.specimen()[bone];
  anatomy::Note note;
  note.bone = pinned.name;
  note.p_B = p_B;
  notes.push_back(note);
  stepNotes(document, std::move(notes), tr("Pin a note to %1").arg(QString::fromStdString(pinned.id)));
  document.selectNote(document.project().notes.size() - 1);
}

void changeNote(Document& document, std::size_t number, const anatomy::Note& note, const QString& text) {
  Notes notes = document.project().notes;
  if (notes.at(number) == note) return;
  notes[number] = note;
  stepNotes(document, std::move(notes), text);
}

void deleteNote(Document& document, std::size_t number) {
  Notes notes = document.project().notes;
  if (number >= notes.size()) throw std::out_of_range("there is no note of this number");
  notes.erase(notes.begin() + static_cast<std::ptrdiff_t>(number));
  stepNotes(document, std::move(notes), tr("Delete note %1").arg(number + 1));
}

void changeTrackway(Document& document, const study::Trackway& trackway, const QString& text, int mergeKey) {
  step(document, document.project().trackway, trackway, &Document::setTrackway, text, mergeKey);
}

void changeDensities(Document& document, const study::Densities& densities, const QString& text, int mergeKey) {
  step(document, document.project().densities, densities, &Document::setDensities, text, mergeKey);
}

void changeGuideThickness(Document& document, const solid::GuideThickness& thickness) {
  step(document, document.project().guide, thickness, &Document::setGuideThickness,
       Document::tr("thickness of the body guide"));
}

void changeSheet(Document& document, const files::Sheet& sheet, const QString& text, int mergeKey) {
  step(document, document.project().sheet, sheet, &Document::setSheet, text, mergeKey);
}

SetBoneRecord::SetBoneRecord(Document& document, anatomy::BoneIndex bone, BoneRecord after, const QString& text)
    : SetValue(
          {document.specimen()[bone].evidence, document.specimen()[bone].source}, std::move(after),
          [&document, bone](const BoneRecord& record) { document.setBoneRecord(bone, record.evidence, record.source); },
          text) {}

}  // namespace zyga::ui
