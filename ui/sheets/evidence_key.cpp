#include "ui/sheets/evidence_key.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>

#include "core/anatomy/summary.h"
#include "ui/palette/palette.h"
#include "ui/words/report_words.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using anatomy::Bone;
using anatomy::Evidence;

// Tints of the Okabe & Ito 2008 palette, so that lines on them stay readable; the first source stays white.
const QColor kSources[] = {QColor(0xFF, 0xFF, 0xFF), QColor(0xBF, 0xDD, 0xF3), QColor(0xF7, 0xDD, 0xA6),
                           QColor(0xB5, 0xE2, 0xD4), QColor(0xF1, 0xC9, 0xDD), QColor(0xF5, 0xF0, 0xB0)};
const QColor kRestored(0xB4, 0xB8, 0xBE), kBorrowed(0xDD, 0xD3, 0xC0);

/// By rank: preserved, mirrored or scaled, restored.
const QColor kInBody[] = {QColor(0xFF, 0xFF, 0xFF), QColor(0xC4, 0xC4, 0xC4), QColor(0x8C, 0x8C, 0x8C)};

bool found(const Bone& bone) { return bone.evidence == Evidence::Found || bone.evidence == Evidence::FoundDeformed; }

QString kindOf(const Bone& bone) {
  if (found(bone)) return translated(QT_TRANSLATE_NOOP("words", "preserved"));
  if (bone.evidence == Evidence::Mirrored || bone.evidence == Evidence::Scaled)
    return translated(QT_TRANSLATE_NOOP("words", "mirrored or scaled"));
  return translated(QT_TRANSLATE_NOOP("words", "restored"));
}

QColor outlineOf(const Bone& bone) {
  if (found(bone)) return kSources[0];
  return bone.evidence == Evidence::Inferred ? kRestored : kBorrowed;
}

int rank(const Bone& bone) { return found(bone) ? 0 : bone.evidence == Evidence::Inferred ? 2 : 1; }

}  // namespace

EvidenceKey::EvidenceKey(const anatomy::Specimen& specimen, bool toned, bool bySource)
    : completeness_(completenessWords(anatomy::completeness(specimen))) {
  if (!toned) return;
  std::set<std::string> sources;
  for (const Bone& bone : specimen.bones)
    if (found(bone)) sources.insert(bone.source);
  const bool split = bySource && sources.size() > 1;
  entryOf_.resize(specimen.bones.size());
  for (int r = 0; r < 3; ++r)
    for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
      const Bone& bone = specimen.bones[i];
      if (rank(bone) != r) continue;
      QString words = kindOf(bone);
      QColor outline = outlineOf(bone), shaded = boneColour(bone.evidence);
      if (split && found(bone)) {
        const auto number = std::distance(sources.begin(), sources.find(bone.source));
        outline = kSources[static_cast<std::size_t>(number) % std::size(kSources)];
        if (number > 0) shaded = outline;
        words += QStringLiteral(": ") + (bone.source.empty() ? translated(QT_TRANSLATE_NOOP("words", "no source given"))
                                                             : QString::fromStdString(bone.source));
      }
      auto entry = std::find_if(entries_.begin(), entries_.end(), [&](const Entry& e) { return e.words == words; });
      if (entry == entries_.end()) entry = entries_.insert(entries_.end(), {words, outline, shaded, kInBody[r], 0});
      ++entry->bones;
      entryOf_[i] = static_cast<std::size_t>(entry - entries_.begin());
    }
}

QColor EvidenceKey::outlineColour(std::size_t bone) const {
  return entries_.empty() ? kSources[0] : entries_[entryOf_[bone]].outline;
}

QColor EvidenceKey::inBodyColour(std::size_t bone) const {
  return entries_.empty() ? kInBody[0] : entries_[entryOf_[bone]].inBody;
}

QColor EvidenceKey::shadedColour(std::size_t bone) const {
  return entries_.empty() ? boneColour(Evidence::Found) : entries_[entryOf_[bone]].shaded;
}

}  // namespace zyga::ui
