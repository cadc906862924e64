#pragma once

#include "ui/report/report_text.h"

/// The report's sections. Private to the report.
namespace zyga::ui {

// report_pose.cpp: what the bones say of the pose.
ReportSection poseSection(const report::ReportData& data);
ReportSection findingsSection(const report::ReportData& data);
/// One section for all claims; without claims it says how to add one.
ReportSection claimsSection(const report::ReportData& data);
ReportSection neckLimitsSection(const report::ReportData& data);
/// Every joint's angles and verdict.
ReportSection anglesSection(const report::ReportData& data);

// report_animal.cpp: what is known of the animal, and what is taken for granted.
ReportSection specimenSection(const report::ReportData& data);
ReportSection evidenceSection(const report::ReportData& data);
ReportSection assumptionsSection(const report::ReportData& data);
ReportSection massSection(const report::ReportData& data);

/// An angle with its sign and without its unit, for tables whose heads say it.
QString bareDegrees(double angle);

}  // namespace zyga::ui
