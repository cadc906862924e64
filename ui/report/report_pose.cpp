#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/range/limits.h"
#include "ui/report/report_sections.h"
#include "ui/words/assumption_words.h"
#include "ui/words/claim_words.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"
#include "ui/words/report_words.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using range::Direction;
using range::Level;

std::array<int, 4> countLevels(const range::Assessment& assessment) {
  std::array<int, 4> counts{};
  for (const auto& joint : assessment.joints) ++counts[static_cast<std::size_t>(joint.level)];
  return counts;
}

QString endOf(const range::JointLimits& limits, Direction direction) {
  if (!limits[direction].supported) return translated(QT_TRANSLATE_NOOP("words", "none"));
  return limits.judged ? bareDegrees(limits[direction].angle) : translated(QT_TRANSLATE_NOOP("words", "not assessed"));
}

QString idOf(const report::ReportData& data, kinematics::JointIndex joint) {
  return QString::fromStdString(data.scenario.specimen()[joint].id);
}

struct Reading {
  const char* words;
  double value;
  bool angle;
};

ReportTable readingsTable(const std::array<Reading, 7>& readings) {
  ReportTable table{
      {},
      {translated(QT_TRANSLATE_NOOP("words", "reading")), translated(QT_TRANSLATE_NOOP("words", "value"))},
      {true, false},
      {}};
  for (const Reading& reading : readings)
    if (std::isfinite(reading.value))
      table.rows.push_back({translated(reading.words), reading.angle ? degrees(reading.value) : metres(reading.value)});
  return table;
}

ReportTable needsTable(const ClaimWords& words, int number) {
  ReportTable table{filled(translated(QT_TRANSLATE_NOOP("words", "Claim %1")), {QString::number(number)}),
                    {translated(QT_TRANSLATE_NOOP("words", "what stands in the way, and what it would take"))},
                    {true},
                    {}};
  for (const auto& stop : words.stops) table.rows.push_back({stop});
  if (!words.needs.isEmpty()) table.rows.push_back({words.needs.join(' ')});
  return table;
}

}  // namespace

QString bareDegrees(double angle) {
  QString words = signedDegrees(angle);
  words.chop(1);
  return words;
}

ReportSection poseSection(const report::ReportData& data) {
  const kinematics::StandReadings& stand = data.stand;
  ReportSection section{translated(QT_TRANSLATE_NOOP("words", "Pose"))};
  section.sentences = {filled(translated(QT_TRANSLATE_NOOP("words", "Pose: %1.")), {poseWord(data.poseName)})};
  section.figure = Figure::Pose;
  section.figureCaption = translated(QT_TRANSLATE_NOOP(
      "words", "Left lateral view. Preserved bones are warm, mirrored and scaled ones darker, inferred ones grey."));
  section.tables = {readingsTable(
      {{{QT_TRANSLATE_NOOP("words", "snout over the ground"), data.snoutHeight.value_or(std::nan("")), false},
        {QT_TRANSLATE_NOOP("words", "hip over the ground"), stand.hipHeight, false},
        {QT_TRANSLATE_NOOP("words", "shoulder over the ground"), stand.shoulderHeight, false},
        {QT_TRANSLATE_NOOP("words", "glenoacetabular distance"), stand.glenoacetabular, false},
        {QT_TRANSLATE_NOOP("words", "trunk, rising forwards"), stand.trunkSlope, true},
        {QT_TRANSLATE_NOOP("words", "neck base, rising forwards"), stand.neckBaseSlope, true},
        {QT_TRANSLATE_NOOP("words", "tail base, rising backwards"), stand.tailBaseSlope, true}}})};
  section.cautions = {
      filled(translated(QT_TRANSLATE_NOOP(
                 "words", "Slope of the neck base: hindmost cervical, by its %1 (Taylor & Wedel 2022).")),
             {horizontalName(data.scenario.assumptions().horizontalBy)})};
  return section;
}

ReportSection findingsSection(const report::ReportData& data) {
  const range::Assessment& assessment = data.scenario.assessment();
  const auto counts = countLevels(assessment);
  const auto count = [&](Level level) { return QString::number(counts[static_cast<std::size_t>(level)]); };
  ReportSection section{translated(QT_TRANSLATE_NOOP("words", "Findings"))};
  section.sentences = {filled(translated(QT_TRANSLATE_NOOP("words",
                                                           "Of %1 joints %2 are out of range, %3 near a limit, %4 "
                                                           "within range and %5 not assessed.")),
                              {QString::number(assessment.joints.size()), count(Level::Beyond), count(Level::Near),
                               count(Level::Supported), count(Level::NotJudged)})};
  const auto findings = worstFirst(assessment);
  if (findings.empty())
    section.sentences << translated(
        QT_TRANSLATE_NOOP("words", "Every joint that can be assessed is within its range."));
  ReportTable table{{},
                    {translated(QT_TRANSLATE_NOOP("words", "joint")), translated(QT_TRANSLATE_NOOP("words", "verdict")),
                     translated(QT_TRANSLATE_NOOP("words", "why"))},
                    {true, true, true},
                    {}};
  for (const auto* verdict : findings)
    table.rows.push_back(
        {idOf(data, verdict->joint), levelWords(verdict->level), reasonWords(data.scenario, *verdict)});
  if (!table.rows.empty()) section.tables.push_back(std::move(table));
  for (const auto& verdict : assessment.joints) {
    const QString note = articulationWords(data.scenario.specimen(), verdict.joint, verdict.articulation);
    if (!note.isEmpty()) section.cautions << note;
  }
  if (!assessment.contactJudged)
    section.cautions << translated(
        QT_TRANSLATE_NOOP("words", "Contact between bones away from their joints is not part of this report."));
  return section;
}

ReportSection claimsSection(const report::ReportData& data) {
  const range::Scenario& scenario = data.scenario;
  ReportSection section{translated(QT_TRANSLATE_NOOP("words", "Claims"))};
  if (data.claims.empty()) {
    section.sentences = {translated(
        QT_TRANSLATE_NOOP("words", "No claims were put to this animal. They are typed into the Claims panel."))};
    return section;
  }
  int number = 0;
  const study::ClaimProbability* sampled = nullptr;
  for (const auto& [claim, answer, probability] : data.claims) {
    const ClaimWords words = claimWords(scenario, claim, *answer);
    const QString verdict = probability ? filled(translated(QT_TRANSLATE_NOOP("words", "%1 %2")),
                                                 {probabilityWords(*probability), words.verdict})
                                        : words.verdict;
    const QStringList parts{QString::number(++number), words.claim, verdict, QString::fromStdString(claim.source)};
    section.sentences << filled(claim.source.empty() ? translated(QT_TRANSLATE_NOOP("words", "%1. %2. %3"))
                                                     : translated(QT_TRANSLATE_NOOP("words", "%1. %2 (%4). %3")),
                                parts);
    QStringList rest = words.notes + words.beside;
    if (!words.tally.isEmpty()) rest.prepend(words.tally);
    if (probability) {
      sampled = probability.get();
      rest << probabilityNotes(*probability);
    }
    if (!rest.isEmpty()) section.sentences << rest.join(' ');
    if (ReportTable table = needsTable(words, number); !table.rows.empty()) section.tables.push_back(std::move(table));
  }
  QStringList basis{claimBasis()};
  // A page of claims has room for the postures, not for what speaks against each.
  if (!data.claimsOnly && std::any_of(data.claims.begin(), data.claims.end(),
                                      [](const auto& one) { return one.answer->habit.has_value(); }))
    basis << habitBasis();
  if (sampled) basis << probabilityBasis(*sampled);
  section.cautions = data.claimsOnly ? QStringList{basis.join(' ')} : basis;
  return section;
}

ReportSection neckLimitsSection(const report::ReportData& data) {
  ReportSection section{translated(QT_TRANSLATE_NOOP("words", "Limits of the neck"))};
  ReportTable table{
      translated(
          QT_TRANSLATE_NOOP("words", "Degrees from neutral, one motion at a time, the joint's other angles at zero.")),
      {translated(QT_TRANSLATE_NOOP("words", "joint")), translated(QT_TRANSLATE_NOOP("words", "dorsiflexion")),
       translated(QT_TRANSLATE_NOOP("words", "ventriflexion")), translated(QT_TRANSLATE_NOOP("words", "left")),
       translated(QT_TRANSLATE_NOOP("words", "right")),
       translated(QT_TRANSLATE_NOOP("words", "what ends dorsiflexion"))},
      {true, false, false, false, false, true},
      {}};
  for (const range::JointLimits& limits : data.neckLimits)
    table.rows.push_back({idOf(data, limits.joint), endOf(limits, Direction::Dorsal), endOf(limits, Direction::Ventral),
                          endOf(limits, Direction::Left), endOf(limits, Direction::Right),
                          sourcedStopWords(data.scenario.specimen(), limits.joint, limits[Direction::Dorsal].stop)});
  section.tables = {std::move(table)};
  section.cautions = {translated(QT_TRANSLATE_NOOP(
      "words",
      "Ranges are of bare bones. They may be off by 5 degrees a joint (Kuznetsov & Tereschenko 2010), and soft tissue "
      "may lessen them or not (Cobley, Rayfield & Barrett 2013; Hutson & Hutson 2012)."))};
  return section;
}

ReportSection anglesSection(const report::ReportData& data) {
  ReportSection section{translated(QT_TRANSLATE_NOOP("words", "Angles of every joint"))};
  section.sentences = {translated(QT_TRANSLATE_NOOP(
      "words",
      "Degrees from the neutral articulation: dorsiflexion, left and left side up are positive in the column; flexion, "
      "abduction and long-axis rotation in the limbs. Joints at zero that are within range are left out."))};
  ReportTable table{
      {},
      {translated(QT_TRANSLATE_NOOP("words", "joint")),
       translated(QT_TRANSLATE_NOOP("words", "dorsiflexion or flexion")),
       translated(QT_TRANSLATE_NOOP("words", "left or abduction")),
       translated(QT_TRANSLATE_NOOP("words", "axial rotation")), translated(QT_TRANSLATE_NOOP("words", "verdict"))},
      {true, false, false, false, true},
      {}};
  for (const range::JointVerdict& verdict : data.scenario.assessment().joints) {
    const Eigen::Vector3d& angles = data.scenario.pose()[verdict.joint];
    if (verdict.level == Level::Supported && angles.cwiseAbs().maxCoeff() < 1e-4) continue;
    table.rows.push_back({idOf(data, verdict.joint), bareDegrees(angles[0]), bareDegrees(angles[1]),
                          bareDegrees(angles[2]), levelWords(verdict.level)});
  }
  section.tables = {std::move(table)};
  return section;
}

}  // namespace zyga::ui
