#pragma once

#include <QString>
#include <cstddef>
#include <string>

#include "core/anatomy/note.h"
#include "core/anatomy/specimen.h"
#include "core/files/project/sheet.h"
#include "core/solid/flesh/guide_thickness.h"
#include "core/study/claims/claim.h"
#include "core/study/ground/trackway.h"
#include "core/study/mass/densities.h"
#include "ui/document/set_value.h"

/// What the project holds beside bones and poses: each function makes one undoable step, or none when nothing changes.
/// Steps with the same non-zero mergeKey that follow each other become one. A number outside a list throws
/// std::out_of_range.
namespace zyga::ui {

class Document;

void addClaim(Document& document, const study::Claim& claim);
void changeClaim(Document& document, std::size_t index, const study::Claim& claim, int mergeKey = 0);
void removeClaim(Document& document, std::size_t index);

/// Pins a note to a point of a bone (in the bone's frame, m) and chooses it.
void addNote(Document& document, anatomy::BoneIndex bone, const Eigen::Vector3d& p_B);
void changeNote(Document& document, std::size_t number, const anatomy::Note& note, const QString& text);
void deleteNote(Document& document, std::size_t number);

void changeTrackway(Document& document, const study::Trackway& trackway, const QString& text, int mergeKey = 0);
void changeDensities(Document& document, const study::Densities& densities, const QString& text, int mergeKey = 0);
void changeGuideThickness(Document& document, const solid::GuideThickness& thickness);
void changeSheet(Document& document, const files::Sheet& sheet, const QString& text, int mergeKey = 0);

/// How a bone is known and where that is written.
struct BoneRecord {
  anatomy::Evidence evidence = anatomy::Evidence::Inferred;
  std::string source;
  bool operator==(const BoneRecord&) const = default;
};

class SetBoneRecord : public SetValue<BoneRecord> {
 public:
  SetBoneRecord(Document& document, anatomy::BoneIndex bone, BoneRecord after, const QString& text);
};

}  // namespace zyga::ui
