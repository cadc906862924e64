#include "ui/report/report_text.h"

#include <QCoreApplication>

#include "ui/report/report_sections.h"
#include "ui/words/assumption_words.h"
#include "ui/words/numbers.h"
#include "ui/words/report_words.h"
#include "ui/words/say.h"
#include "ui/words/study_words.h"

namespace zyga::ui {
namespace {

Figure figureOf(study::StudyKind kind) {
  switch (kind) {
    case study::StudyKind::Elevation:
      return Figure::Elevation;
    case study::StudyKind::Envelope:
      return Figure::Envelope;
    case study::StudyKind::Range:
      return Figure::RangeChart;
    case study::StudyKind::Pressure:
      return Figure::Pressure;
    case study::StudyKind::Stress:
      return Figure::Stress;
    case study::StudyKind::Spread:
      break;
  }
  return Figure::None;
}

/// What each joint carries in the present pose.
ReportTable stressTable(const study::JointStress& stress) {
  ReportTable table{
      translated(QT_TRANSLATE_NOOP("words", "Present pose: what each joint of the neck carries.")),
      {translated(QT_TRANSLATE_NOOP("words", "joint")), translated(QT_TRANSLATE_NOOP("words", "moment")),
       translated(QT_TRANSLATE_NOOP("words", "lever")), translated(QT_TRANSLATE_NOOP("words", "force on the joint")),
       translated(QT_TRANSLATE_NOOP("words", "stress")), translated(QT_TRANSLATE_NOOP("words", "centrum and spines"))},
      {true, false, false, false, false, true},
      {}};
  const auto& loads = stress[study::NeckCarriage::Present].joints;
  for (std::size_t i = 0; i < loads.size(); ++i)
    table.rows.push_back({QString::fromStdString(stress.joints[i].id), kilonewtonMetres(loads[i].moment),
                          millimetres(loads[i].lever, 0), kilonewtons(loads[i].force), megapascals(loads[i].stress),
                          stress.joints[i].measured ? translated(QT_TRANSLATE_NOOP("words", "measured"))
                                                    : translated(QT_TRANSLATE_NOOP("words", "inferred"))});
  return table;
}

/// A study that gave nothing says why.
ReportSection studySection(const report::StudyOfKind& study) {
  ReportSection section{title(study.kind)};
  if (!study.outcome.result) {
    section.sentences = {filled(translated(QT_TRANSLATE_NOOP("words", "This could not be worked out: %1")),
                                {say(study.outcome.failure)})};
    return section;
  }
  section.sentences = sentences(*study.outcome.result);
  section.figure = figureOf(study.kind);
  if (study.kind == study::StudyKind::Envelope)
    section.figureCaption = translated(QT_TRANSLATE_NOOP(
        "words", "Side view to scale: what the snout reaches with every joint of neck and head inside its range."));
  if (study.kind == study::StudyKind::Pressure) section.cautions = pressureViews() << pressureCaution();
  if (const auto* stress = std::get_if<study::JointStress>(study.outcome.result.get())) {
    section.figureCaption = translated(
        QT_TRANSLATE_NOOP("words", "Stress of the joints of the neck in each posture, the neck’s base to the right."));
    section.tables = {stressTable(*stress)};
    section.cautions = stressViews() << stressCaution();
  }
  return section;
}

ReportSection cautionsSection(const report::ReportData& data) {
  ReportSection section{translated(QT_TRANSLATE_NOOP("words", "Cautions"))};
  section.sentences = {
      translated(QT_TRANSLATE_NOOP(
          "words", "Bones permit a pose or they do not; that an animal took a pose is another matter.")),
      translated(
          QT_TRANSLATE_NOOP("words", "Everything above holds under the assumptions stated, and changes with them."))};
  // The page of claims says the one beside them and the other at its foot.
  if (!data.claimsOnly) section.sentences << bareBoneCaution() << notEngineering();
  if (data.onTracks)
    section.sentences << translated(QT_TRANSLATE_NOOP(
        "words", "Speeds from tracks on soft ground are too high (Prescott et al. 2025, Biol. Lett. 21:20250191)."));
  return section;
}

}  // namespace

QString subtitleOf(const report::ReportData& data) {
  return filled(translated(data.claimsOnly ? QT_TRANSLATE_NOOP("words", "Claims put to the bones; pose: %1")
                                           : QT_TRANSLATE_NOOP("words", "What the bones support; pose: %1")),
                {poseWord(data.poseName)});
}

ReportText reportText(const report::ReportData& data) {
  ReportText text{QString::fromStdString(data.name), subtitleOf(data), {}};
  auto& sections = text.sections;
  if (data.claimsOnly) {
    sections = {claimsSection(data), assumptionsSection(data), cautionsSection(data)};
    return text;
  }
  sections = {poseSection(data),     findingsSection(data),    claimsSection(data),    specimenSection(data),
              evidenceSection(data), assumptionsSection(data), neckLimitsSection(data)};
  for (const report::StudyOfKind& study : data.studies) sections.push_back(studySection(study));
  sections.push_back(massSection(data));
  sections.push_back(cautionsSection(data));
  sections.push_back(anglesSection(data));
  return text;
}

}  // namespace zyga::ui
