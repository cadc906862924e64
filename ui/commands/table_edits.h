#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "ui/document/document.h"

/// The measurement table of a project, edited: each function makes one undoable step, or none when nothing changes, and
/// the animal is built anew. What was not measured is inferred anew; poses, locks, notes and scans stay with the joints
/// and bones that are still there, and a pose that stood on the ground stands on it again.
namespace zyga::ui {

/// A typed value, or that a cell is blank again.
struct CellEdit {
  anatomy::BoneName bone;
  anatomy::Measure measure = anatomy::Measure::Length;
  std::optional<double> value;  ///< m or rad
};

/// What was typed into a cell: a number in mm or degrees, or one with its own unit (mm, cm, m, deg, °).
struct TypedValue {
  double value = 0;            ///< m or rad
  reason::Reason cause, mend;  ///< why it is refused; empty when it is not
  bool refused() const { return !cause.empty(); }
};
TypedValue readTyped(anatomy::Measure measure, const QString& text);

/// Why a table cannot take the place of the present one; empty when it can.
struct Obstacle {
  reason::Reason cause, mend;
  bool any() const { return !cause.empty(); }
};

/// What no bone can have (core/anatomy/tables/cell_checks.h), with the other cells of its row.
Obstacle obstacleTo(const Document& document, const CellEdit& edit);

/// Cells of bones that the animal has. A bone that is measured for the first time is preserved, one of which nothing is
/// measured any more is inferred. Changes nothing where one of them has an obstacle.
Obstacle changeCells(Document& document, const std::vector<CellEdit>& edits, const QString& text);
/// Refuses counts with which a measured or scanned bone would be gone.
Obstacle changeCounts(Document& document, const anatomy::RegionCounts& counts, const QString& text);
/// The same of a plan; counts that it cannot have become its own.
Obstacle changePlan(Document& document, anatomy::BodyPlan plan, const QString& text);
/// The measured total of a region, m: "neck"; none: it is not measured.
void changeTotal(Document& document, const std::string& region, std::optional<double> total, const QString& text);
/// These scans in the animal, and the animal fitted to them (files::fittedToScans), `factor` times as large. False, and
/// no step, when that changes nothing.
bool fitToScans(Document& document, std::vector<files::ProjectScan> scans, double factor, const QString& text);
/// Another table in the place of this one, scans stay. Refuses one without a bone that has a scan.
Obstacle replaceTable(Document& document, const anatomy::MeasurementTable& table, const QString& text);

}  // namespace zyga::ui
