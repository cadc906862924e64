#include "ui/words/assumption_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

QString byWords(const range::Assumptions& a, const char* byLength, const char* byArea) {
  return filled(translated(a.overlapBy == range::OverlapBy::Length ? byLength : byArea), {percent(a.minOverlap)});
}

/// As it was typed: without zeros after the last figure that counts.
QString asTyped(double number) {
  QString figures = plain(number, 2);
  while (figures.endsWith(QLatin1Char('0'))) figures.chop(1);
  if (figures.endsWith(QLatin1Char('.'))) figures.chop(1);
  return figures;
}

int count(const range::Assessment& assessment, range::Level level) {
  return static_cast<int>(std::count_if(assessment.joints.begin(), assessment.joints.end(),
                                        [&](const range::JointVerdict& v) { return v.level == level; }));
}

QString counted(const char* form, int n) { return translated(form, n); }

}  // namespace

QString cartilageWords(const range::Cartilage& cartilage) {
  const QString amount = asTyped(cartilage.amount);
  return cartilage.in == range::Cartilage::In::PercentOfCentrum ? amount + QStringLiteral("\u00A0%")
                                                                : amount + QStringLiteral("\u00A0mm");
}

QString contactToleranceWords(const range::ContactTolerance& tolerance) {
  const QString amount = asTyped(tolerance.amount);
  return tolerance.in == range::ContactTolerance::In::Millimetres
             ? amount + QStringLiteral("\u00A0mm")
             : filled(translated(QT_TRANSLATE_NOOP("words", "%1 of the smaller bone's mean extent")),
                      {amount + QStringLiteral("\u00A0%")});
}

QString bendingRibsWords() {
  return translated(QT_TRANSLATE_NOOP(
      "words",
      "cervical ribs bend: contact of their shafts is not counted unless they were scanned (Klein, Christian & Sander "
      "2012, Biol. Lett. 8:1032)"));
}

QString assumptionsInShort(const range::Assumptions& a) {
  const QString neck = cartilageWords(a.neck), trunk = cartilageWords(a.trunk), tail = cartilageWords(a.tail);
  const QString cartilage = neck == trunk && trunk == tail ? neck : QStringList{neck, trunk, tail}.join(" / ");
  QStringList parts{byWords(a, QT_TRANSLATE_NOOP("words", "at least %1 overlap (by length)"),
                            QT_TRANSLATE_NOOP("words", "at least %1 overlap (by area)")),
                    filled(translated(QT_TRANSLATE_NOOP("words", "%1 cartilage")), {cartilage})};
  // The usual definition goes without saying; which one is in use is told in full in the joint view.
  if (a.neutralBy == range::NeutralBy::FacetsAndCentra)
    parts << translated(QT_TRANSLATE_NOOP("words", "centrum faces parallel"));
  return inOneLine(parts);
}

QString assumptionsInFull(const range::Assumptions& a) {
  const QString overlap = byWords(a, QT_TRANSLATE_NOOP("words", "zygapophyseal overlap of at least %1 (by length)"),
                                  QT_TRANSLATE_NOOP("words", "zygapophyseal overlap of at least %1 (by area)"));
  const QString neck = cartilageWords(a.neck), trunk = cartilageWords(a.trunk), tail = cartilageWords(a.tail);
  const QString cartilage =
      neck == trunk && trunk == tail
          ? filled(translated(QT_TRANSLATE_NOOP("words", "cartilage %1")), {neck})
          : filled(translated(QT_TRANSLATE_NOOP("words", "cartilage neck %1, trunk %2, tail %3")), {neck, trunk, tail});
  const bool settles = a.settling > 0 && std::max({a.neck.amount, a.trunk.amount, a.tail.amount}) > 0;
  const QString discs =
      settles ? filled(translated(QT_TRANSLATE_NOOP("words", "%1, bones settling by up to %2 of its thickness")),
                       {cartilage, percent(a.settling)})
              : cartilage;
  return filled(
      translated(QT_TRANSLATE_NOOP("words", "assuming %1, near limit within %2 of it; %3; neutral articulation: %4")),
      {overlap, percent(a.nearMargin), discs, neutralName(a.neutralBy)});
}

QString neutralName(range::NeutralBy by) {
  return by == range::NeutralBy::Facets
             ? translated(QT_TRANSLATE_NOOP("words", "facets centred"))
             : translated(QT_TRANSLATE_NOOP("words", "facets centred, centrum faces parallel"));
}

QString neutralSources(range::NeutralBy by) {
  if (by == range::NeutralBy::Facets)
    return translated(QT_TRANSLATE_NOOP(
        "words",
        "Neutral is where the facets of both sides are in greatest contact, their centres on each other.\n"
        "Taylor, Wedel & Naish 2009, Acta Palaeontol. Pol. 54:213; Vidal et al. 2020, PLoS ONE 15(1):e0227537"));
  return translated(QT_TRANSLATE_NOOP(
      "words",
      "Neutral is where the facets are centred and the faces of the centra are parallel besides; where a centrum is "
      "wedged the two pull against each other.\n"
      "Mallison 2010, Swiss J. Geosci. 103:211; Vidal et al. 2020, PLoS ONE 15(1):e0227537"));
}

QString horizontalName(anatomy::HorizontalBy by) {
  switch (by) {
    case anatomy::HorizontalBy::CentrumAxis:
      return translated(QT_TRANSLATE_NOOP("words", "long axis of the centrum"));
    case anatomy::HorizontalBy::CentrumFaces:
      return translated(QT_TRANSLATE_NOOP("words", "faces of the centrum upright"));
    case anatomy::HorizontalBy::CanalFloor:
      break;
    case anatomy::HorizontalBy::Articulation:
      return translated(QT_TRANSLATE_NOOP("words", "similarity in articulation"));
  }
  return translated(QT_TRANSLATE_NOOP("words", "floor of the neural canal"));
}

QString horizontalSources(anatomy::HorizontalBy by) {
  const auto definition = [by] {
    switch (by) {
      case anatomy::HorizontalBy::CentrumAxis:
        return translated(QT_TRANSLATE_NOOP("words",
                                            "A vertebra is horizontal where the line from the middle of its caudal rim "
                                            "to that of its cranial rim is."));
      case anatomy::HorizontalBy::CentrumFaces:
        return translated(QT_TRANSLATE_NOOP(
            "words",
            "A vertebra is horizontal where the faces of its centrum stand upright, on a wedged one their mean. A scan "
            "has the faces of the bone that it replaces."));
      case anatomy::HorizontalBy::CanalFloor:
        break;
      case anatomy::HorizontalBy::Articulation:
        return translated(QT_TRANSLATE_NOOP(
            "words",
            "A vertebra is horizontal where a copy of it, held alike and articulated with it, lies level with it."));
    }
    return translated(QT_TRANSLATE_NOOP(
        "words",
        "A vertebra is horizontal where its neural canal is: the definition that its authors prefer. A scan whose "
        "canal is not marked goes by the rims of its centrum."));
  };
  return definition() + '\n' +
         translated(QT_TRANSLATE_NOOP("words", "Taylor & Wedel 2022, J. Paleontol. Techniques 25:1"));
}

QString presetWords(const range::CartilagePreset& preset) {
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1: %2")),
                {say(preset.animal), cartilageWords(preset.cartilage())});
}

QString presetWords(const range::OverlapPreset& preset) { return say(preset.meaning); }

QString bareBoneCaution() {
  return translated(
      QT_TRANSLATE_NOOP("words", "A range from bare bone may be off by 5° a joint; flesh may lessen it."));
}

QString bareBoneSources() {
  return translated(QT_TRANSLATE_NOOP(
      "words",
      "Ranges that bones alone give were off by up to 5° a joint against the living animal, and soft tissue lessens "
      "them in some (ostrich necks) and not in others.\n"
      "Kuznetsov & Tereschenko 2010; Cobley, Rayfield & Barrett 2013, PLoS ONE 8(8):e72187; Hutson & Hutson 2012"));
}

QString provisionally(const QString& words, bool pending) {
  return pending ? filled(translated(QT_TRANSLATE_NOOP("words", "provisional: %1")), {words}) : words;
}

QString provisionalReason() {
  return translated(QT_TRANSLATE_NOOP(
      "words", "Provisional: the bones are still being sculpted, and their collisions are then assessed too."));
}

QString contactArrivedWords(const range::Assessment& before, const range::Assessment& after) {
  const int more = count(after, range::Level::Beyond) - count(before, range::Level::Beyond);
  const auto deep = std::count_if(after.contacts.begin(), after.contacts.end(), [](const auto& contact) {
    return contact.level == range::Level::Beyond && !contact.joint;
  });
  QStringList parts;
  if (more > 0) parts << counted(QT_TRANSLATE_N_NOOP("words", "%n joints more are out of range"), more);
  if (deep > 0)
    parts << counted(QT_TRANSLATE_N_NOOP("words", "%n pairs of bones collide apart from any one joint"),
                     static_cast<int>(deep));
  if (parts.isEmpty()) return {};
  return filled(translated(QT_TRANSLATE_NOOP("words", "Collisions have been assessed: %1")), {inOneLine(parts)});
}

QString verdictCount(const range::Assessment& assessment) {
  const int beyond = count(assessment, range::Level::Beyond), near = count(assessment, range::Level::Near);
  const int blank = count(assessment, range::Level::NotJudged);
  const int all = static_cast<int>(assessment.joints.size()), contacts = static_cast<int>(assessment.contacts.size());
  const QString joints = counted(QT_TRANSLATE_N_NOOP("words", "%n joints"), all);
  const QString out = QString::number(beyond), close = QString::number(near);
  QStringList parts;
  if (beyond > 0 && near > 0)
    parts << filled(translated(QT_TRANSLATE_NOOP("words", "%1 out of range, %2 near limit of %3")),
                    {out, close, joints});
  else if (beyond > 0)
    parts << filled(translated(QT_TRANSLATE_NOOP("words", "%1 out of range of %2")), {out, joints});
  else if (near > 0)
    parts << filled(translated(QT_TRANSLATE_NOOP("words", "%1 near limit of %2")), {close, joints});
  else if (blank > 0)
    parts << filled(translated(QT_TRANSLATE_NOOP("words", "%1 of %2 within range")),
                    {QString::number(all - blank), joints});
  else
    parts << filled(translated(QT_TRANSLATE_NOOP("words", "all %1 within range")), {joints});
  if (blank > 0) parts << filled(translated(QT_TRANSLATE_NOOP("words", "%1 not assessed")), {QString::number(blank)});
  if (contacts > 0) parts << counted(QT_TRANSLATE_N_NOOP("words", "%n contacts"), contacts);
  return inOneLine(parts);
}

}  // namespace zyga::ui
