#pragma once

#include <QObject>
#include <QTimer>
#include <optional>
#include <vector>

#include "core/kinematics/pose.h"
#include "ui/document/document.h"
#include "ui/strip/strip_columns.h"

namespace zyga::ui {

/// A band as the strip draws it.
struct ShownBand {
  range::MotionRange band;
  /// The part that is supported and not near the edge, rad; empty (least > most) when all of it is near.
  double firmLeast = 0, firmMost = 0;
  bool typed = false;  ///< the limits were typed, no bone gives them

  double width() const { return band.judged && !band.empty ? band.max - band.min : 0; }
};

/// The bands of one motion along the column. Bands that a change has made out of date are found again in slices of a
/// few milliseconds; until then the old band stays, so that a drag never waits for the whole column.
class ShownBands : public QObject {
  Q_OBJECT
 public:
  explicit ShownBands(const Document& document, QObject* parent = nullptr);

  /// Forgets everything and starts over.
  void reset(const StripColumns& columns, int motion);
  /// Looks which joints have moved since their band was found.
  void poseChanged();
  void assumptionsChanged();

  /// None before the band has been found for the first time.
  const std::optional<ShownBand>& operator[](std::size_t column) const { return shown_[column].band; }
  /// Finds this band at once, where it is out of date.
  const ShownBand& upToDate(std::size_t column);
  bool complete() const { return waiting_ == 0; }

 signals:
  void changed();

 private:
  struct Shown {
    std::optional<ShownBand> band;
    Eigen::Vector3d angles = Eigen::Vector3d::Zero();  ///< at which the band was found
    bool stale = true;
  };

  void findSome();
  void find(std::size_t column);
  void markStale(std::size_t column);

  const Document& document_;
  std::vector<JointIndex> joints_;
  std::vector<Shown> shown_;
  int motion_ = 0;
  std::size_t waiting_ = 0;
  std::size_t next_ = 0;
  QTimer timer_;
};

/// How a span of joints turns together, in proportion to the widths of their bands (rad), so that each spends the same
/// share of its range: what kinematics::spreadTurn takes.
struct SpanTurn {
  std::vector<double> weights;  ///< sum to 1; empty without joints
  Eigen::Vector3d turn = Eigen::Vector3d::Zero();
};
/// The joint `grabbed` (index into `widths`) turns by `delta` rad; where it has no band of its own, the joint with the
/// widest band does. Joints without a band stay; when none has one, all turn alike.
SpanTurn spanTurn(const std::vector<double>& widths, int motion, std::size_t grabbed, double delta);

}  // namespace zyga::ui
