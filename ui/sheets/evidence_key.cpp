#include "ui/sheets/evidence_key.h"

#include <QObject>
#include <algorithm>
#include <set>

#include "core/files/export/bone_tone.h"

namespace zyga::ui {
namespace {

using anatomy::Bone;
using anatomy::Evidence;

// Tints of the Okabe & Ito 2008 palette, so that lines on them stay readable; the first source stays white.
const QColor kSources[] = {QColor(0xFF, 0xFF, 0xFF), QColor(0xBF, 0xDD, 0xF3), QColor(0xF7, 0xDD, 0xA6),
                           QColor(0xB5, 0xE2, 0xD4), QColor(0xF1, 0xC9, 0xDD), QColor(0xF5, 0xF0, 0xB0)};
const QColor kRestored(0xB4, 0xB8, 0xBE), kBorrowed(0xDD, 0xD3, 0xC0);

bool found(const Bone& bone) { return bone.evidence == Evidence::Found || bone.evidence == Evidence::FoundDeformed; }

QColor shadedOf(Evidence evidence) {
  const auto tone = files::boneTone(evidence);
  return QColor::fromRgbF(tone[0], tone[1], tone[2]);
}

QString kindOf(const Bone& bone) {
  if (found(bone)) return QObject::tr("found");
  if (bone.evidence == Evidence::Mirrored || bone.evidence == Evidence::Scaled)
    return QObject::tr("mirrored or scaled");
  return QObject::tr("restored");
}

QColor outlineOf(const Bone& bone) {
  if (found(bone)) return kSources[0];
  return bone.evidence == Evidence::Inferred ? kRestored : kBorrowed;
}

int rank(const Bone& bone) { return found(bone) ? 0 : bone.evidence == Evidence::Inferred ? 2 : 1; }

QString completenessOf(const anatomy::Specimen& specimen) {
  std::set<anatomy::BoneName> present, mirrored;
  for (const Bone& bone : specimen.bones) {
    if (!found(bone)) continue;
    present.insert(bone.name);
    mirrored.insert(bone.name);
    mirrored.insert(anatomy::mirrored(bone.name));
  }
  const double all = static_cast<double>(std::max<std::size_t>(1, specimen.bones.size()));
  const auto percent = [all](std::size_t n) { return QString::number(100 * static_cast<double>(n) / all, 'f', 1); };
  return QObject::tr("%1 of %2 bones found, %3 %; %4 % if each stands for its fellow too")
      .arg(present.size())
      .arg(specimen.bones.size())
      .arg(percent(present.size()), percent(mirrored.size()));
}

}  // namespace

EvidenceKey::EvidenceKey(const anatomy::Specimen& specimen, bool toned, bool bySource)
    : completeness_(completenessOf(specimen)) {
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
      QColor outline = outlineOf(bone), shaded = shadedOf(bone.evidence);
      if (split && found(bone)) {
        const auto number = std::distance(sources.begin(), sources.find(bone.source));
        outline = kSources[static_cast<std::size_t>(number) % std::size(kSources)];
        if (number > 0) shaded = outline;
        words += ": " + (bone.source.empty() ? QObject::tr("no source given") : QString::fromStdString(bone.source));
      }
      auto entry = std::find_if(entries_.begin(), entries_.end(), [&](const Entry& e) { return e.words == words; });
      if (entry == entries_.end()) entry = entries_.insert(entries_.end(), {words, outline, shaded, 0});
      ++entry->bones;
      entryOf_[i] = static_cast<std::size_t>(entry - entries_.begin());
    }
}

QColor EvidenceKey::outlineColour(std::size_t bone) const {
  return entries_.empty() ? kSources[0] : entries_[entryOf_[bone]].outline;
}

QColor EvidenceKey::shadedColour(std::size_t bone) const {
  return entries_.empty() ? shadedOf(Evidence::Found) : entries_[entryOf_[bone]].shaded;
}

}  // namespace zyga::ui
