#include "ui/drag/drag_words.h"

namespace zyga::ui {
namespace {

QString side(const anatomy::Bone& bone) {
  switch (bone.name.side) {
    case anatomy::Side::Left:
      return QStringLiteral("left ");
    case anatomy::Side::Right:
      return QStringLiteral("right ");
    case anatomy::Side::Midline:
      break;
  }
  return {};
}

}  // namespace

QString partName(const anatomy::Specimen& specimen, const std::vector<JointIndex>& chain) {
  using anatomy::Region;
  if (chain.empty()) return {};
  const anatomy::Bone& first = specimen[specimen[chain.front()].distal];
  switch (anatomy::regionOf(first.name)) {
    case Region::Skull:
      return first.name.kind == anatomy::BoneKind::Jaw ? "jaw" : "head";
    case Region::Cervical:
      return "neck";
    case Region::Dorsal:
    case Region::Ribs:
      return "trunk";
    case Region::Caudal:
    case Region::Chevrons:
      return "tail";
    case Region::ShoulderGirdle:
    case Region::Forelimb:
      return side(first) + "forelimb";
    case Region::Manus:
      return side(first) + "forefoot";
    case Region::HipGirdle:
    case Region::Hindlimb:
      return side(first) + "hindlimb";
    case Region::Pes:
      return side(first) + "hindfoot";
    case Region::Sacral:
      break;
  }
  return "column";
}

QString boneLabel(const anatomy::Bone& bone) {
  const QString id = QString::fromStdString(bone.id), title = QString::fromStdString(anatomy::title(bone.name));
  return title.compare(id, Qt::CaseInsensitive) == 0 || title.isEmpty() ? id : id + QStringLiteral(" · ") + title;
}

}  // namespace zyga::ui
