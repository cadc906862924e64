#pragma once

#include <Eigen/Core>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/anatomy/specimen.h"

namespace zyga::anatomy {

/// What a note rests on.
enum class NoteBasis { Bone, LivingRelatives, Conjecture };

/// "note.conjecture"; ui/words says it.
reason::Term termOf(NoteBasis basis);
/// The words of files: "bone", "living relatives", "conjecture".
std::string_view toText(NoteBasis basis);
std::optional<NoteBasis> noteBasisFromText(std::string_view text);

/// A remark pinned to a point of a bone; it moves with the bone. Notes are numbered from 1 in their order.
struct Note {
  BoneName bone;
  Eigen::Vector3d p_B = Eigen::Vector3d::Zero();  ///< in the bone's frame, m
  std::string text;
  NoteBasis basis = NoteBasis::Bone;
  std::string source;
  bool operator==(const Note&) const = default;
};

/// The bone a note is pinned to; none where the specimen lacks it (another number of vertebrae).
std::optional<BoneIndex> boneOf(const Note& note, const Specimen& specimen);

/// A point of the bone worth pointing at when nobody has clicked one: the top of a spine, the snout, the middle of a
/// shaft; the origin where it has no such landmark. Bone's frame, m.
Eigen::Vector3d usualPin(const Bone& bone);

}  // namespace zyga::anatomy
