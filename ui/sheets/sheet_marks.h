#pragma once

#include "ui/sheets/evidence_key.h"
#include "ui/sheets/page.h"
#include "ui/sheets/sheet_view.h"

/// What is drawn around and over the bones of a view.
namespace zyga::ui {

/// A bar of round length with its parts told apart, `widest` mm at most, its left end at `at`. Its outline is a group
/// named "scale-bar". Returns what it shows, m. `length`: that many metres instead of a round one.
double drawScaleBar(Page& page, const QPointF& at, double widest, double perMetre, const SheetStyle& style,
                    double length = 0);

/// Round lengths, 1, 2 or 5 times a power of ten (m), that a bar of `widest` mm can show.
double roundLength(double widest, double perMetre);

/// The human figure on the ground at x (m on the view's plane), with its height in words above.
void drawPerson(Page& page, const PlacedView& placed, double x, double height, const SheetStyle& style);

/// The ground as a line from x to x, mm.
void drawGround(Page& page, const PlacedView& placed, double from, double to, const SheetStyle& style);

/// Verdict shapes on the joints between the view's bones.
void drawJointMarks(Page& page, const SheetScene& scene, const PlacedView& placed, const SheetStyle& style);
/// One verdict shape.
void drawVerdict(Page& page, const QPointF& at, double size, range::Level level);

/// Heights of snout, shoulder and hip as level marks beside the view, at the page's x `left` and `right` (mm), and the
/// length as posed under the ground.
void drawSpans(Page& page, const SheetScene& scene, const PlacedView& placed, double left, double right,
               const SheetStyle& style);

/// Numbered marks of the notes whose bones are in the view, with leaders up to the page's y `top`, mm.
void drawCallouts(Page& page, const SheetScene& scene, const PlacedView& placed, double top, double left, double right,
                  const SheetStyle& style);

/// Tones and marks explained, in one or more rows that end at `right`; returns the height, mm.
double drawKey(Page& page, const SheetScene& scene, const files::Sheet& sheet, const EvidenceKey& key,
               const QPointF& topRight, double width, const SheetStyle& style);

}  // namespace zyga::ui
