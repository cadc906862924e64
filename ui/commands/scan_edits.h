#pragma once

#include <QString>
#include <optional>
#include <span>

#include "core/anatomy/marks/scan_measures.h"
#include "core/files/project/project_scan.h"
#include "ui/document/document.h"

namespace zyga::ui {

/// One undoable step to other scans; all bones must be ones the animal has (Document::setScans).
void changeScans(Document& document, std::vector<files::ProjectScan> after, const QString& text);
/// The document's scans with these among them, each in the place of an earlier one of the same bone.
std::vector<files::ProjectScan> withScans(const Document& document, std::vector<files::ProjectScan> fresh);
/// Puts scans in as withScans has them.
void putScans(Document& document, std::vector<files::ProjectScan> fresh, const QString& text);
/// Another record for a scan that is there: its marks, scale, straightening. Nothing happens when it is not.
void changeScan(Document& document, const anatomy::Scan& after, const QString& text);
/// The bone goes back to what the table gives.
void removeScan(Document& document, const anatomy::BoneName& bone);

/// The bone of the other side from this scan; false for a bone of the midline and where there is no scan.
bool mirrorScan(Document& document, const anatomy::BoneName& bone);
void scaleScan(Document& document, const anatomy::BoneName& bone, double factor);
/// What a scan measures goes into the table; the bones around it that were not measured follow.
void enterMeasures(Document& document, const anatomy::BoneName& bone, std::span<const anatomy::MarkedMeasure> measures,
                   const QString& text);
/// The whole animal `factor` times as large: table, scans and poses.
void scaleAnimal(Document& document, double factor, const QString& text);

/// The scan of a bone, if it has one.
const files::ProjectScan* scanOf(const Document& document, const anatomy::BoneName& bone);

}  // namespace zyga::ui
