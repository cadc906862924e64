#include "ui/viewport/ground_marks.h"

#include <cmath>
#include <numbers>

namespace zyga::ui {
namespace {

using Eigen::Vector2d;

constexpr int kCorners = 28;
constexpr double kRing = 0.06;         // m, radius of a print without a length
constexpr double kHindBreadth = 0.78;  // width over length where no width was typed
constexpr double kForeBreadth = 1.5;

/// Half width of a print at `along`, both as shares of half its length and width; -1 is the heel.
double broadness(double along, bool fore) {
  const double round = std::sqrt(std::max(0.0, 1 - along * along));
  return fore ? round * (1 + 0.25 * along) / 1.05 : round * (1 + 0.22 * along);
}

void addTrackway(std::vector<GroundMark>& marks, const std::vector<study::PlacedPrint>& prints, const Theme& theme) {
  const QColor ink = theme.text;
  for (const bool fore : {false, true}) {
    GroundMark way{.points = {}, .closed = false, .line = withAlpha(ink, 0.35), .width = 1, .fill = {}};
    for (const auto& print : prints)
      if (isFore(print.foot) == fore) way.points.push_back(print.p_W);
    // Of the fore feet the steps would only cross those of the hind feet.
    if (!fore && way.points.size() > 1) marks.push_back(std::move(way));
  }
  for (const auto& print : prints) {
    const bool left = isLeft(print.foot);
    const double strength = print.ownRow ? 1 : 0.5;
    marks.push_back({.points = printOutline(print),
                     .closed = true,
                     .line = withAlpha(ink, 0.8 * strength),
                     .width = 1.6,
                     .fill = left ? withAlpha(ink, 0.28 * strength) : QColor()});
  }
}

void addBalance(std::vector<GroundMark>& marks, const study::Balance& balance, const Theme& theme) {
  if (balance.polygon.size() < 2) return;
  const QColor& colour = theme.verdict(balance.inside() ? range::Level::Supported : range::Level::Beyond);
  marks.push_back({.points = balance.polygon,
                   .closed = balance.polygon.size() > 2,
                   .line = colour,
                   .width = 2.2,
                   .fill = balance.polygon.size() > 2 ? withAlpha(colour, 0.12) : QColor()});
  // The way to the nearest edge: the margin.
  marks.push_back({.points = {balance.body.p_WCentre.head<2>(), balance.p_WNearest},
                   .closed = false,
                   .line = colour,
                   .width = 1.2,
                   .fill = {}});
}

}  // namespace

std::vector<Vector2d> printOutline(const study::PlacedPrint& print) {
  const bool fore = isFore(print.foot);
  const double breadth = fore ? kForeBreadth : kHindBreadth;
  double halfLength = kRing, halfWidth = kRing;
  if (print.length) {
    halfLength = *print.length / 2;
    halfWidth = print.width.value_or(*print.length * breadth) / 2;
  }
  const Vector2d ahead(std::cos(print.heading), std::sin(print.heading)), left(-ahead.y(), ahead.x());
  std::vector<Vector2d> outline;
  for (int i = 0; i < kCorners; ++i) {
    const double angle = 2 * std::numbers::pi * i / kCorners;
    const double along = std::cos(angle);
    const double across =
        std::copysign(print.length ? broadness(along, fore) : std::abs(std::sin(angle)), std::sin(angle));
    outline.push_back(print.p_W + halfLength * along * ahead + halfWidth * across * left);
  }
  return outline;
}

std::vector<GroundMark> groundMarks(const GroundState& ground, const GroundShown& shown, const Theme& theme) {
  std::vector<GroundMark> marks;
  if (shown.trackway) addTrackway(marks, ground.laid().prints, theme);
  if (shown.balance) addBalance(marks, ground.balance(), theme);
  return marks;
}

}  // namespace zyga::ui
