#pragma once

#include <QObject>
#include <optional>
#include <vector>

#include "core/study/ground/trackway_fit.h"
#include "core/study/mass/balance.h"
#include "ui/document/document.h"

namespace zyga::ui {

/// What a view shows on the ground.
struct GroundShown {
  bool trackway = true;
  bool balance = true;
};

/// Mass, balance and trackway of the document as it is on screen, worked out on first use after a change. Only while a
/// project is open.
class GroundState : public QObject {
  Q_OBJECT
 public:
  explicit GroundState(Document& document, QObject* parent = nullptr);

  const study::Balance& balance() const;
  const study::LaidTrackway& laid() const;
  const std::vector<study::FootFit>& fits() const;
  /// Where the animal faces, world, unit.
  Eigen::Vector2d forward() const;
  Document& document() const { return document_; }

 private:
  void forget(Changes what);

  Document& document_;
  mutable std::optional<std::vector<study::BodySegment>> segments_;
  mutable std::optional<study::Balance> balance_;
  mutable std::optional<study::LaidTrackway> laid_;
  mutable std::optional<std::vector<study::FootFit>> fits_;
};

}  // namespace zyga::ui
