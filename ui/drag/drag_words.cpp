#include "ui/drag/drag_words.h"

#include <QObject>

#include "ui/words/anatomy_words.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

QString side(const anatomy::Bone& bone) {
  switch (bone.name.side) {
    case anatomy::Side::Left:
      return QObject::tr("left ");
    case anatomy::Side::Right:
      return QObject::tr("right ");
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
      return first.name.kind == anatomy::BoneKind::Jaw ? QObject::tr("jaw") : QObject::tr("head");
    case Region::Cervical:
      return QObject::tr("neck");
    case Region::Dorsal:
    case Region::Ribs:
      return QObject::tr("trunk");
    case Region::Caudal:
    case Region::Chevrons:
      return QObject::tr("tail");
    case Region::ShoulderGirdle:
    case Region::Forelimb:
      return side(first) + QObject::tr("forelimb");
    case Region::Manus:
      return side(first) + QObject::tr("forefoot");
    case Region::HipGirdle:
    case Region::Hindlimb:
      return side(first) + QObject::tr("hindlimb");
    case Region::Pes:
      return side(first) + QObject::tr("hindfoot");
    case Region::Sacral:
      break;
  }
  return QObject::tr("column");
}

QString boneLabel(const anatomy::Bone& bone) {
  const QString id = QString::fromStdString(bone.id), title = boneName(bone.name);
  return title.compare(id, Qt::CaseInsensitive) == 0 || title.isEmpty() ? id : id + QStringLiteral(" · ") + title;
}

}  // namespace zyga::ui
