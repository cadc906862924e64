#include "core/anatomy/note.h"

#include <array>
#include <utility>

namespace zyga::anatomy {
namespace {

struct Words {
  NoteBasis basis;
  std::string_view text;
  reason::Term term;
};

constexpr std::array<Words, 3> kWords{{{NoteBasis::Bone, "bone", {"note.bone-shows-it"}},
                                       {NoteBasis::LivingRelatives, "living relatives", {"note.living-relatives"}},
                                       {NoteBasis::Conjecture, "conjecture", {"note.conjecture"}}}};

}  // namespace

reason::Term termOf(NoteBasis basis) { return kWords[static_cast<std::size_t>(basis)].term; }

std::string_view toText(NoteBasis basis) { return kWords[static_cast<std::size_t>(basis)].text; }

std::optional<NoteBasis> noteBasisFromText(std::string_view text) {
  for (const auto& words : kWords)
    if (words.text == text) return words.basis;
  return std::nullopt;
}

std::optional<BoneIndex> boneOf(const Note& note, const Specimen& specimen) {
  return specimen.findBone(toId(note.bone));
}

Eigen::Vector3d usualPin(const Bone& bone) {
  for (const std::string_view name : {"spineTop", "snout", "chin", "middle", "tip"}) {
    const auto found = bone.landmarks.find(name);
    if (found != bone.landmarks.end()) return found->second;
  }
  const auto top = bone.landmarks.find("top"), bottom = bone.landmarks.find("bottom");
  if (top != bone.landmarks.end() && bottom != bone.landmarks.end()) return (top->second + bottom->second) / 2;
  return Eigen::Vector3d::Zero();
}

}  // namespace zyga::anatomy
