#pragma once

#include <QString>
#include <QStringList>

#include "core/files/export/study_json.h"
#include "core/study/run.h"

/// Studies said in the language chosen: what they are called and what they have found.
namespace zyga::ui {

QString title(study::StudyKind kind);
/// One sentence on what it tells.
QString tells(study::StudyKind kind);

/// "maximum dorsiflexion"
QString carriageWord(study::NeckCarriage which);
/// "highest snout height"
QString quantityWord(study::SpreadOf what);

/// What was found, a complete sentence each.
QStringList sentences(const study::Elevation& elevation);
QStringList sentences(const study::Envelope& envelope);
QStringList sentences(const study::RangeChart& chart);
QStringList sentences(const study::SpreadStudy& spread);
QStringList sentences(const study::Pressure& pressure);
QStringList sentences(const study::JointStress& stress);
QStringList sentences(const study::StudyResult& result);
/// What always goes with a result: views and cautions, in full sentences.
QStringList cautions(const study::StudyResult& result);

/// Whether bones that collide ended the ranges it rests on.
QString contactCaution(bool judged);

/// All of it, for files of numbers.
files::StudyTold toldOf(const study::StudyResult& result);

/// Both views of what a column of blood asks of the heart, with their sources; and that neither is settled.
QStringList pressureViews();
QString pressureCaution();
/// Why an even stress is taken for a habitual posture, and what speaks against it, with sources; and what the numbers
/// rest on.
QStringList stressViews();
QString stressCaution();

}  // namespace zyga::ui
