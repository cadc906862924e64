#include "ui/words/limit_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <array>
#include <cmath>

#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using anatomy::Side;
using range::FindingKind;
using range::Stop;

QString name(const anatomy::Bone& bone) { return QString::fromStdString(bone.id); }

std::size_t columnOf(Side side) { return side == Side::Left ? 0 : side == Side::Right ? 1 : 2; }

/// What ends a range, of facets: left, right, both, no side, that side, the other side.
const char* stopForm(FindingKind kind, std::size_t column) {
  static constexpr std::array<const char*, 6> kOverlap{
      QT_TRANSLATE_NOOP("words", "left zygapophyseal overlap %1"),
      QT_TRANSLATE_NOOP("words", "right zygapophyseal overlap %1"),
      QT_TRANSLATE_NOOP("words", "zygapophyseal overlap %1 on both sides"),
      QT_TRANSLATE_NOOP("words", "zygapophyseal overlap %1"),
      QT_TRANSLATE_NOOP("words", "zygapophyseal overlap %1 on that side"),
      QT_TRANSLATE_NOOP("words", "zygapophyseal overlap %1 on the other side"),
  };
  static constexpr std::array<const char*, 6> kAcross{
      QT_TRANSLATE_NOOP("words", "left zygapophyseal overlap across the facet %1"),
      QT_TRANSLATE_NOOP("words", "right zygapophyseal overlap across the facet %1"),
      QT_TRANSLATE_NOOP("words", "zygapophyseal overlap across the facet %1 on both sides"),
      QT_TRANSLATE_NOOP("words", "zygapophyseal overlap across the facet %1"),
      QT_TRANSLATE_NOOP("words", "zygapophyseal overlap across the facet %1 on that side"),
      QT_TRANSLATE_NOOP("words", "zygapophyseal overlap across the facet %1 on the other side"),
  };
  static constexpr std::array<const char*, 6> kInterpenetrate{
      QT_TRANSLATE_NOOP("words", "left facets interpenetrate by %1"),
      QT_TRANSLATE_NOOP("words", "right facets interpenetrate by %1"),
      QT_TRANSLATE_NOOP("words", "facets interpenetrate by %1 on both sides"),
      QT_TRANSLATE_NOOP("words", "facets interpenetrate by %1"),
      QT_TRANSLATE_NOOP("words", "facets interpenetrate by %1 on that side"),
      QT_TRANSLATE_NOOP("words", "facets interpenetrate by %1 on the other side"),
  };
  static constexpr std::array<const char*, 6> kSeparate{
      QT_TRANSLATE_NOOP("words", "left facets separate by %1"),
      QT_TRANSLATE_NOOP("words", "right facets separate by %1"),
      QT_TRANSLATE_NOOP("words", "facets separate by %1 on both sides"),
      QT_TRANSLATE_NOOP("words", "facets separate by %1"),
      QT_TRANSLATE_NOOP("words", "facets separate by %1 on that side"),
      QT_TRANSLATE_NOOP("words", "facets separate by %1 on the other side"),
  };
  const auto& forms = kind == FindingKind::Overlap         ? kOverlap
                      : kind == FindingKind::OverlapAcross ? kAcross
                      : kind == FindingKind::FacetContact  ? kInterpenetrate
                                                           : kSeparate;
  return forms[column];
}

QString namedPart(const anatomy::Specimen& specimen, const range::PartOfBone& place) {
  static constexpr std::array<const char*, 7> kForms{
      "%1",
      QT_TRANSLATE_NOOP("words", "spine of %1"),
      QT_TRANSLATE_NOOP("words", "zygapophysis of %1"),
      QT_TRANSLATE_NOOP("words", "transverse process of %1"),
      QT_TRANSLATE_NOOP("words", "rib of %1"),
      QT_TRANSLATE_NOOP("words", "arch of %1"),
      QT_TRANSLATE_NOOP("words", "centrum of %1"),
  };
  const QString bone = name(specimen[place.bone]);
  if (place.part == range::BonePart::Bone) return bone;
  return filled(translated(kForms[static_cast<std::size_t>(place.part)]), {bone});
}

const char* pluralForm(range::BonePart part) {
  static constexpr std::array<const char*, 7> kForms{
      nullptr,
      QT_TRANSLATE_NOOP("words", "spines of %1 and %2"),
      QT_TRANSLATE_NOOP("words", "zygapophyses of %1 and %2"),
      QT_TRANSLATE_NOOP("words", "transverse processes of %1 and %2"),
      QT_TRANSLATE_NOOP("words", "ribs of %1 and %2"),
      QT_TRANSLATE_NOOP("words", "arches of %1 and %2"),
      QT_TRANSLATE_NOOP("words", "centra of %1 and %2"),
  };
  return kForms[static_cast<std::size_t>(part)];
}

QString missingFacet(const anatomy::Specimen& specimen, const range::ArticulationNote::MissingFacet& missing) {
  const char* form = nullptr;
  switch (missing.role) {
    case anatomy::FacetRole::PrezygLeft:
      form = QT_TRANSLATE_NOOP("words", "%1 has no left prezygapophyseal facet");
      break;
    case anatomy::FacetRole::PrezygRight:
      form = QT_TRANSLATE_NOOP("words", "%1 has no right prezygapophyseal facet");
      break;
    case anatomy::FacetRole::PostzygLeft:
      form = QT_TRANSLATE_NOOP("words", "%1 has no left postzygapophyseal facet");
      break;
    default:
      form = QT_TRANSLATE_NOOP("words", "%1 has no right postzygapophyseal facet");
  }
  return filled(translated(form), {name(specimen[missing.bone])});
}

}  // namespace

QString motionWords(range::Motion motion) {
  static constexpr std::array<const char*, 16> kMotions{
      QT_TRANSLATE_NOOP("words", "dorsiflexion"),
      QT_TRANSLATE_NOOP("words", "ventriflexion"),
      QT_TRANSLATE_NOOP("words", "left lateral flexion"),
      QT_TRANSLATE_NOOP("words", "right lateral flexion"),
      QT_TRANSLATE_NOOP("words", "axial rotation (left side up)"),
      QT_TRANSLATE_NOOP("words", "axial rotation (right side up)"),
      QT_TRANSLATE_NOOP("words", "closing"),
      QT_TRANSLATE_NOOP("words", "opening"),
      QT_TRANSLATE_NOOP("words", "left swing"),
      QT_TRANSLATE_NOOP("words", "right swing"),
      QT_TRANSLATE_NOOP("words", "flexion"),
      QT_TRANSLATE_NOOP("words", "extension"),
      QT_TRANSLATE_NOOP("words", "abduction"),
      QT_TRANSLATE_NOOP("words", "adduction"),
      QT_TRANSLATE_NOOP("words", "inward rotation"),
      QT_TRANSLATE_NOOP("words", "outward rotation"),
  };
  return translated(kMotions[static_cast<std::size_t>(motion)]);
}

QString directionWords(range::Direction direction) {
  static constexpr std::array<const char*, 6> kDirections{
      QT_TRANSLATE_NOOP("words", "dorsal"),       QT_TRANSLATE_NOOP("words", "ventral"),
      QT_TRANSLATE_NOOP("words", "left"),         QT_TRANSLATE_NOOP("words", "right"),
      QT_TRANSLATE_NOOP("words", "left side up"), QT_TRANSLATE_NOOP("words", "right side up"),
  };
  return translated(kDirections[static_cast<std::size_t>(direction)]);
}

QString limitSourceWords(const std::string& source) {
  if (source == anatomy::kProgramDefault) return translated(QT_TRANSLATE_NOOP("words", "program default, no source"));
  return QString::fromStdString(source);
}

QString partsWords(const anatomy::Specimen& specimen, const range::TouchingParts& parts) {
  const auto& [one, other] = parts;
  if (one.part != other.part || one.part == range::BonePart::Bone)
    return filled(translated(QT_TRANSLATE_NOOP("words", "%1 and %2")),
                  {namedPart(specimen, one), namedPart(specimen, other)});
  // Names order by kind and number, which is along the column.
  const bool inOrder = specimen[one.bone].name < specimen[other.bone].name;
  const QString first = name(specimen[(inOrder ? one : other).bone]);
  return filled(translated(pluralForm(one.part)), {first, name(specimen[(inOrder ? other : one).bone])});
}

QString stopWords(const anatomy::Specimen& specimen, kinematics::JointIndex joint, const Stop& stop, StopSide side) {
  switch (stop.why) {
    case Stop::Why::Fixed:
      return translated(QT_TRANSLATE_NOOP("words", "these bones do not move against each other"));
    case Stop::Why::NoCriteria:
      return translated(QT_TRANSLATE_NOOP("words", "no facets and no typed limits"));
    case Stop::Why::Nothing:
      return translated(QT_TRANSLATE_NOOP("words", "nothing stops it within a right angle"));
    case Stop::Why::Criterion:
      break;
  }
  const QString amount = quantity(stop.limit, unitOf(*stop.kind));
  if (stop.kind == FindingKind::TypedLimit)
    return filled(translated(QT_TRANSLATE_NOOP("words", "limit %1 (%2)")),
                  {amount, limitSourceWords(specimen[joint].typed->source)});
  if (stop.kind == FindingKind::BoneContact)
    return filled(translated(QT_TRANSLATE_NOOP("words", "bones collide: %1, %2")),
                  {partsWords(specimen, *stop.parts), amount});
  const std::size_t column = side == StopSide::Own      ? columnOf(stop.side)
                             : side == StopSide::Unsaid ? 3
                             : side == StopSide::Same   ? 4
                                                        : 5;
  return filled(translated(stopForm(*stop.kind, column)), {amount});
}

QString stopWords(const anatomy::Specimen& specimen, kinematics::JointIndex joint, const Stop& stop) {
  return stopWords(specimen, joint, stop, StopSide::Own);
}

QString stopWords(const anatomy::Specimen& specimen, const range::JointStop& stop) {
  const anatomy::Joint& joint = specimen[stop.joint];
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1 %2 %3: %4")),
                {QString::fromStdString(joint.id), motionWords(range::motionName(joint, stop.motion, stop.sign)),
                 degrees(stop.turned), stopWords(specimen, stop.joint, stop.stop)});
}

QString sourcedStopWords(const anatomy::Specimen& specimen, kinematics::JointIndex joint, const range::Stop& stop) {
  const QString words = stopWords(specimen, joint, stop);
  // Typed limits tell their source already.
  if (stop.kind == FindingKind::TypedLimit || !range::byDefault(specimen[joint], stop)) return words;
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1 (%2)")), {words, limitSourceWords(anatomy::kProgramDefault)});
}

QString alongWords(const anatomy::Joint& joint, double axial) {
  if (degrees(std::abs(axial)) == degrees(0)) return {};
  return filled(translated(QT_TRANSLATE_NOOP("words", "with %1 %2")),
                {motionWords(range::motionName(joint, 2, axial)), degrees(std::abs(axial))});
}

QString articulationWords(const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                          const range::ArticulationNote& note) {
  using Outcome = range::ArticulationNote::Outcome;
  const QString id = QString::fromStdString(specimen[joint].id);
  const QString cranial = name(specimen[specimen.cranialBone(joint)]);
  const QString caudal = name(specimen[specimen.caudalBone(joint)]);
  QStringList missing;
  if (note.inferredNeighbour && note.outcome != Outcome::NoFacets) {
    const bool cranialInferred = *note.inferredNeighbour == specimen.cranialBone(joint);
    return filled(
        translated(QT_TRANSLATE_NOOP("words",
                                     "%1: %2 is a scan, the facets of %3 are inferred; a verdict on the joint "
                                     "is one against an inferred neighbour")),
        {id, cranialInferred ? caudal : cranial, cranialInferred ? cranial : caudal});
  }
  switch (note.outcome) {
    case Outcome::Good:
      if (note.misfitGranted == 0) return {};
      return filled(translated(QT_TRANSLATE_NOOP("words",
                                                 "%1: the scans' facets lie up to %2 off each other in neutral; "
                                                 "that much is granted in every pose")),
                    {id, millimetres(note.misfitGranted)});
    case Outcome::Poor:
      if (note.misfitGranted > 0)
        return filled(translated(QT_TRANSLATE_NOOP("words",
                                                   "%1: poor articulation, facet centres %2 apart; the scans' facets "
                                                   "lie up to %3 off each other, which is granted in every pose")),
                      {id, millimetres(note.residual), millimetres(note.misfitGranted)});
      return filled(translated(QT_TRANSLATE_NOOP("words", "%1: poor articulation, facet centres %2 apart")),
                    {id, millimetres(note.residual)});
    case Outcome::NoFacets:
      for (const auto& facet : note.missing) missing << missingFacet(specimen, facet);
      return filled(translated(QT_TRANSLATE_NOOP("words", "%1 cannot be articulated: %2")), {id, inOneLine(missing)});
    case Outcome::SameWay:
      return filled(
          translated(QT_TRANSLATE_NOOP("words", "%1 cannot be articulated: the facets of %2 and %3 face the same way")),
          {id, cranial, caudal});
    case Outcome::NoPosition:
      break;
  }
  return filled(translated(QT_TRANSLATE_NOOP("words",
                                             "%1 cannot be articulated: no position within a right angle brings the "
                                             "facets of %2 and %3 together")),
                {id, cranial, caudal});
}

}  // namespace zyga::ui
