#pragma once

#include "ui/sheets/evidence_key.h"
#include "ui/sheets/page.h"
#include "ui/sheets/sheet_view.h"

namespace zyga::ui {

/// Draws the bones of a view: a picture in light, outlines (one named group of paths a bone), or one solid shape. False
/// when cancelled.
bool drawBones(Page& page, const SheetScene& scene, const files::Sheet& sheet, const PlacedView& placed,
               const EvidenceKey& key, const SheetStyle& style, const SheetWork& work);

/// Draws the body around the bones as one dark shape, over which they lie. False when cancelled.
bool drawBody(Page& page, const std::shared_ptr<const solid::TriangleMesh>& body, const PlacedView& placed,
              const SheetStyle& style, const SheetWork& work);

}  // namespace zyga::ui
