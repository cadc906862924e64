#include "ui/panels/joint/neutral_words.h"

#include <QCoreApplication>

namespace zyga::ui {
namespace {
QString tr(const char* text) { return QCoreApplication::translate("Neutral", text); }
}  // namespace

QString neutralName(range::NeutralBy by) {
  return by == range::NeutralBy::Facets ? tr("facets centred") : tr("facets centred, centrum faces parallel");
}

QString neutralSources(range::NeutralBy by) {
  const QString facets =
      tr("Neutral is where the facets of both sides are in greatest contact, their centres on each other.\n"
         "Taylor, Wedel & Naish 2009, Acta Palaeontol. Pol. 54:213; Vidal et al. 2020, PLoS ONE 15(1):e0227537");
  const QString both =
      tr("Neutral is where the facets are centred and the faces of the centra are parallel besides; where a centrum is "
         "wedged the two pull against each other.\n"
         "Mallison 2010, Swiss J. Geosci. 103:211; Vidal et al. 2020, PLoS ONE 15(1):e0227537");
  return by == range::NeutralBy::Facets ? facets : both;
}

QString bareBoneCaution() { return tr("A range from bare bone may be off by 5° a joint; flesh may lessen it."); }

QString bareBoneSources() {
  return tr(
      "Ranges that bones alone give were off by up to 5° a joint against the living animal, and soft tissue lessens "
      "them in some (ostrich necks) and not in others.\n"
      "Kuznetsov & Tereschenko 2010; Cobley, Rayfield & Barrett 2013, PLoS ONE 8(8):e72187; Hutson & Hutson 2012");
}

}  // namespace zyga::ui
