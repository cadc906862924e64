#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <map>

#include "ui/report/report_sections.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/assumption_words.h"
#include "ui/words/ground_words.h"
#include "ui/words/numbers.h"
#include "ui/words/report_words.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using anatomy::Evidence;

ReportTable lengthsTable(const anatomy::Summary& s) {
  const std::array<std::pair<const char*, double>, 8> lengths{
      {{QT_TRANSLATE_NOOP("words", "snout to tail tip along the column"), s.total},
       {QT_TRANSLATE_NOOP("words", "skull"), s.skull},
       {QT_TRANSLATE_NOOP("words", "neck"), s.neck},
       {QT_TRANSLATE_NOOP("words", "trunk"), s.trunk},
       {QT_TRANSLATE_NOOP("words", "sacrum"), s.sacrum},
       {QT_TRANSLATE_NOOP("words", "tail"), s.tail},
       {QT_TRANSLATE_NOOP("words", "humerus"), s.humerus},
       {QT_TRANSLATE_NOOP("words", "femur"), s.femur}}};
  ReportTable table{
      translated(QT_TRANSLATE_NOOP("words", "Lengths of the column are sums of functional lengths, without condyles.")),
      {translated(QT_TRANSLATE_NOOP("words", "length")), translated(QT_TRANSLATE_NOOP("words", "m"))},
      {true, false},
      {}};
  for (const auto& [words, value] : lengths) table.rows.push_back({translated(words), plain(value, 3)});
  return table;
}

std::size_t evidenceColumn(Evidence evidence) {
  switch (evidence) {
    case Evidence::Found:
    case Evidence::FoundDeformed:
      return 0;
    case Evidence::Mirrored:
      return 1;
    case Evidence::Scaled:
      return 2;
    case Evidence::Inferred:
      break;
  }
  return 3;
}

ReportTable regionsTable(const anatomy::Specimen& specimen) {
  std::map<anatomy::Region, std::array<int, 4>> regions;
  for (const anatomy::Bone& bone : specimen.bones) ++regions[regionOf(bone.name)][evidenceColumn(bone.evidence)];
  ReportTable table{
      {},
      {translated(QT_TRANSLATE_NOOP("words", "region")), translated(QT_TRANSLATE_NOOP("words", "preserved")),
       translated(QT_TRANSLATE_NOOP("words", "mirrored")), translated(QT_TRANSLATE_NOOP("words", "scaled")),
       translated(QT_TRANSLATE_NOOP("words", "inferred"))},
      {true, false, false, false, false},
      {}};
  for (const auto& [region, counts] : regions) {
    table.rows.push_back({regionName(region)});
    for (const int count : counts) table.rows.back() << (count > 0 ? QString::number(count) : QString());
  }
  return table;
}

/// Sources of bones that are not inferred, as they are written, with how many bones each gives.
ReportTable sourcesTable(const anatomy::Specimen& specimen) {
  std::map<std::string, int> sources;
  for (const anatomy::Bone& bone : specimen.bones)
    if (bone.evidence != Evidence::Inferred) ++sources[bone.source];
  ReportTable table{{},
                    {translated(QT_TRANSLATE_NOOP("words", "source")), translated(QT_TRANSLATE_NOOP("words", "bones"))},
                    {true, false},
                    {}};
  for (const auto& [source, count] : sources)
    table.rows.push_back(
        {source.empty() ? translated(QT_TRANSLATE_NOOP("words", "no source given")) : QString::fromStdString(source),
         QString::number(count)});
  return table;
}

}  // namespace

ReportSection specimenSection(const report::ReportData& data) {
  const anatomy::RegionCounts& counts = data.scenario.specimen().counts;
  ReportSection section{translated(QT_TRANSLATE_NOOP("words", "Specimen"))};
  section.sentences = {filled(
      translated(QT_TRANSLATE_NOOP("words",
                                   "%1: %2 cervical, %3 dorsal, %4 sacral and %5 caudal vertebrae; limbs and skull on "
                                   "the plan of a %6.")),
      {QString::fromStdString(data.name), QString::number(counts.cervical), QString::number(counts.dorsal),
       QString::number(counts.sacral), QString::number(counts.caudal), planName(data.plan)})};
  section.tables = {lengthsTable(data.lengths)};
  return section;
}

ReportSection evidenceSection(const report::ReportData& data) {
  ReportSection section{translated(QT_TRANSLATE_NOOP("words", "Evidence"))};
  section.sentences = {completenessWords(data.completeness) + '.'};
  section.tables = {regionsTable(data.scenario.specimen())};
  if (ReportTable sources = sourcesTable(data.scenario.specimen()); !sources.rows.empty())
    section.tables.push_back(std::move(sources));
  section.cautions = {translated(QT_TRANSLATE_NOOP("words", "Counted as in Lacovara et al. 2014, Sci. Rep. 4:6196."))};
  return section;
}

ReportSection assumptionsSection(const report::ReportData& data) {
  const range::Assumptions& a = data.scenario.assumptions();
  const auto ofLength = [](double share) {
    return filled(translated(QT_TRANSLATE_NOOP("words", "%1 of their length")), {percent(share)});
  };
  ReportSection section{translated(QT_TRANSLATE_NOOP("words", "Assumptions"))};
  section.tables = {
      {{},
       {translated(QT_TRANSLATE_NOOP("words", "what is taken for granted")),
        translated(QT_TRANSLATE_NOOP("words", "value"))},
       {true, true},
       {{a.overlapBy == range::OverlapBy::Length
             ? translated(QT_TRANSLATE_NOOP("words", "minimum zygapophyseal overlap, by length"))
             : translated(QT_TRANSLATE_NOOP("words", "minimum zygapophyseal overlap, by area")),
         percent(a.minOverlap)},
        {translated(QT_TRANSLATE_NOOP("words", "neutral articulation")), neutralName(a.neutralBy)},
        {translated(QT_TRANSLATE_NOOP("words", "slope of a vertebra, measured by")), horizontalName(a.horizontalBy)},
        {translated(QT_TRANSLATE_NOOP("words", "facets may interpenetrate by")), ofLength(a.facetContactTolerated)},
        {translated(QT_TRANSLATE_NOOP("words", "facets may separate by")), ofLength(a.facetGapTolerated)},
        {translated(QT_TRANSLATE_NOOP("words", "bones may interpenetrate by")),
         contactToleranceWords(a.contactTolerated)},
        {translated(QT_TRANSLATE_NOOP("words", "near-limit margin")), percent(a.nearMargin)}}}};
  std::vector<QStringList>& rows = section.tables.front().rows;
  std::vector<QStringList> soft{
      {translated(QT_TRANSLATE_NOOP("words", "cartilage in neck, trunk and tail")), cartilageInFull(a.neck)}};
  if (a.neck != a.trunk || a.trunk != a.tail)
    soft = {{translated(QT_TRANSLATE_NOOP("words", "cartilage in the neck")), cartilageInFull(a.neck)},
            {translated(QT_TRANSLATE_NOOP("words", "cartilage in the trunk")), cartilageInFull(a.trunk)},
            {translated(QT_TRANSLATE_NOOP("words", "cartilage in the tail")), cartilageInFull(a.tail)}};
  if (a.settling > 0)
    soft.push_back(
        {translated(QT_TRANSLATE_NOOP("words", "bones settle when they turn, share of the cartilage's thickness")),
         percent(a.settling)});
  rows.insert(rows.begin() + 1, soft.begin(), soft.end());
  section.cautions = {translated(QT_TRANSLATE_NOOP(
      "words",
      "At least half of the facet's length covered is the common published rule (Stevens & Parrish 1999, Science "
      "284:798); tested on ostriches it does not convey their flexibility (Cobley, Rayfield & Barrett 2013, PLoS "
      "ONE "
      "8(8):e72187), and facets of living turkeys slide almost to disarticulation (Kambic, Biewener & Pierce 2017, "
      "Front. Zool. 14:37). No amount of cartilage is known to be right."))};
  const auto& bones = data.scenario.specimen().bones;
  if (std::any_of(bones.begin(), bones.end(), [](const anatomy::Bone& bone) { return bone.scanned; }))
    rows.push_back({translated(QT_TRANSLATE_NOOP("words", "a scan beside inferred facets")),
                    a.inferredNeighbours
                        ? translated(QT_TRANSLATE_NOOP("words", "assessed against an inferred neighbour"))
                        : translated(QT_TRANSLATE_NOOP("words", "not assessed"))});
  if (data.scenario.contact()) section.cautions << capital(bendingRibsWords()) + '.';
  return section;
}

ReportSection massSection(const report::ReportData& data) {
  const study::Balance& balance = data.balance;
  ReportSection section{translated(QT_TRANSLATE_NOOP("words", "Mass and balance"))};
  section.sentences = {
      filled(translated(QT_TRANSLATE_NOOP("words", "By volume: %1.")), {massAndMiddle(balance.body.mass)})};
  if (data.massByCircumference)
    section.sentences << filled(
        translated(QT_TRANSLATE_NOOP("words", "By the circumferences of humerus and femur: %1.")),
        {massAndMiddle(data.massByCircumference->mass)});
  if (data.massByCircumference) {
    const reason::Reason apart = study::disagreement(balance.body.mass, data.massByCircumference->mass);
    if (!apart.empty()) section.sentences << say(apart);
  }
  const Eigen::Vector2d forward = data.scenario.pose().X_WRoot.linear().col(0).head<2>();
  section.sentences << balanceWords(balance, forward);
  if (const QString tail = tailLoadWords(balance); !tail.isEmpty()) section.sentences << tail;
  if (balance.foreShare)
    section.sentences << filled(translated(QT_TRANSLATE_NOOP("words", "The fore feet carry %1 of the weight.")),
                                {percent(*balance.foreShare)});
  if (const QString flesh = tailFleshWords(balance.body, forward); !flesh.isEmpty()) section.sentences << flesh;
  section.cautions = {
      filled(translated(QT_TRANSLATE_NOOP("words", "Volume: hulls around the bones x %1 x density; %2.")),
             {hullFactorWords(balance.body.densities), say(study::kHullSource)}),
      filled(translated(QT_TRANSLATE_NOOP("words", "Circumference: %1, %2.")),
             {say(study::kCircumferenceSource), circumferenceErrorWords()}),
      partErrorsWords(), translated(QT_TRANSLATE_NOOP("words", "Both are estimates."))};
  return section;
}

}  // namespace zyga::ui
