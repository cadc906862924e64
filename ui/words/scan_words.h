#pragma once

#include <QStringList>

#include "core/files/export/sculpting_base.h"
#include "core/files/project/carried_scans.h"
#include "core/files/project/project_scan_files.h"
#include "core/files/project/scan_cartilage.h"
#include "core/files/scan/scan_set.h"
#include "core/solid/facets/mark_fit.h"
#include "core/solid/facets/missing_parts.h"

namespace zyga::ui {

/// What was left out of a scan and what was put right on it, a phrase each: "welded 742 vertices that stood at the
/// place of another". `unit` is that of the mesh, m; 0: as it is guessed.
QStringList repairsSaid(const files::CleanScan& scan, double unit = 0);
/// What is left as it was found: "2 holes left open, the longest border 14.2 mm". `unit` is that of the mesh, m; 0 when
/// it is not known, and lengths are then said without unit.
QStringList flawsSaid(const solid::Flaws& flaws, double unit);
/// What is missing of a scan, a phrase each: "open borders: 3, at least 33 % of the closed surface is missing", "left
/// side missing: caudal half". Empty when too little is missing to be told.
QStringList missingSaid(const solid::OpenBorders& borders, const std::optional<solid::OneSidedness>& sides);
/// Why marks are doubted, a sentence each, without its full stop.
QStringList doubtsSaid(const std::vector<anatomy::MarkDoubt>& doubts);
/// "; in doubt: left prezygapophyseal facet" for the end of a sentence about a joint; empty when nothing is.
QString suspectsSaid(const std::vector<reason::Value>& marks);
/// "cartilage of the neck: 8.5 % of the centra's length, as 5 of its joints show (0.0 % to 13.2 %)".
QString cartilageShownSaid(const files::ShownCartilage& shown);
/// "C7: marks carried over from C6: 4, the surfaces 6 % of the bone's size apart", or why none.
QString carriedSaid(const files::CarriedTo& carried);
/// "BONERibcage.stl is left out: its name does not tell which bone it is"; a part of a file with the file's name.
QString leftOutSaid(const files::LeftOutOfSet& left);
/// Why a scan cannot be used, where its name stands already.
QString causeAlone(const std::exception& error);

/// What is to be known of the scans of a project that was opened, a sentence a scan: those that cannot be used, and
/// those that were found elsewhere. Empty when all are in their place.
QStringList scansAmissSaid(const std::vector<files::ProjectScan>& scans);
/// Where saving has put the scans of a project, a sentence each; empty for a project without scans.
QStringList scansSavedSaid(const files::ScansSaved& saved);

/// What came of surfaces made for sculptors, a sentence each.
QStringList surfacesSaid(const files::SculptedSurfaces& made, const anatomy::Specimen& specimen);
/// Of output that may be made into something that stands.
QString fabricationCaution();
/// Tells in the header of each surface's file what it is. In English, whatever is spoken: headers of mesh files hold
/// ASCII.
void noteSurfaces(files::SculptedSurfaces& made, const anatomy::Specimen& specimen,
                  const solid::GuideThickness& thickness);

}  // namespace zyga::ui
