#pragma once

#include <optional>
#include <vector>

#include "core/picture/framing.h"
#include "core/picture/passes.h"

namespace zyga::ui {

/// What picture is to be traced.
struct PictureChoice {
  static constexpr int kNarrowest = 100, kWidest = 16000;  // px

  bool operator==(const PictureChoice&) const = default;

  std::optional<picture::StandardView> view;  ///< none: as the viewport shows it
  bool lens = false;                          ///< through a lens rather than in parallel
  picture::LensShot shot{50, 1.6, picture::turnOf(picture::StandardView::ThreeQuarter).value(), std::nullopt};
  bool horizon = false;
  int width = 2400;  ///< px
  bool transparentGround = false;
  bool groundGrid = false;
  bool finished = true;  ///< the picture as a whole
  std::vector<picture::Pass> passes;

  /// Nobody at eye height looks from above.
  bool throughLens() const { return lens && view && picture::turnOf(*view); }
  bool anything() const { return finished || !passes.empty(); }

  /// What was chosen last on this machine.
  static PictureChoice read();
  void write() const;
};

}  // namespace zyga::ui
