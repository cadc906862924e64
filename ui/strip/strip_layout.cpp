#include "ui/strip/strip_layout.h"

#include <QtMath>
#include <algorithm>
#include <array>
#include <cmath>

#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

constexpr std::array<double, 12> kScales{2, 3, 5, 8, 10, 15, 20, 25, 30, 45, 60, 90};  // degrees
/// The plot ends this much beyond the last tick, so that a mark on it is whole.
constexpr double kHeadroom = 1.1;
constexpr qreal kBonesLeast = 14, kBonesMost = 34;
constexpr double kRoomBeside = 0.75;  // stations of the neighbouring region shown beside a zoomed one

}  // namespace

StripLayout::StripLayout(const StripColumns& columns, const QRectF& area, qreal textHeight, qreal axisWidth,
                         std::optional<std::size_t> zoom, double reach)
    : columns_(&columns), axisWidth_(axisWidth), end_(std::max(1.0, columns.length)), reach_(reach * kHeadroom) {
  const QRectF inner = area.adjusted(axisWidth, 0, 0, 0);
  const qreal bonesHeight = std::clamp(area.height() * 0.17, kBonesLeast, kBonesMost);
  labels_ = QRectF(inner.left(), inner.top(), inner.width(), textHeight + kGridStep);
  bones_ = QRectF(inner.left(), labels_.bottom(), inner.width(), bonesHeight);
  names_ = QRectF(inner.left(), inner.bottom() - textHeight, inner.width(), textHeight);
  plot_ = QRectF(inner.left(), bones_.bottom() + kGridStep, inner.width(), 0);
  plot_.setBottom(std::max(plot_.top() + 1, names_.top() - kGridStep));
  if (!columns.columns.empty()) visible_ = {0, columns.columns.size() - 1};
  if (!zoom) return;
  const StripRegion& region = columns.regions[*zoom];
  start_ = std::max(0.0, region.start - kRoomBeside);
  end_ = std::min(columns.length, region.end + kRoomBeside);
  visible_ = {region.firstColumn, region.firstColumn + std::max<std::size_t>(region.columns, 1) - 1};
}

qreal StripLayout::slotWidth() const { return plot_.width() / (end_ - start_); }

qreal StripLayout::xOf(double place) const { return plot_.left() + (place - start_) * slotWidth(); }

QRectF StripLayout::laneRect(std::size_t column) const {
  const qreal width = slotWidth();
  return QRectF(xOfColumn(column) - width / 2, plot_.top(), width, plot_.height());
}

QRectF StripLayout::regionRect(const StripRegion& region) const {
  const qreal left = std::max(xOf(region.start), plot_.left());
  const qreal right = std::min(xOf(region.end), plot_.right());
  return QRectF(left, labels_.top(), std::max<qreal>(0, right - left), names_.bottom() - labels_.top());
}

qreal StripLayout::yOf(double angle) const { return plot_.center().y() - angle / reach_ * plot_.height() / 2; }

qreal StripLayout::yWithin(double angle, qreal inset) const {
  return std::clamp(yOf(angle), plot_.top() + inset, std::max(plot_.top() + inset, plot_.bottom() - inset));
}

double StripLayout::angleBetween(qreal dy) const { return -dy / plot_.height() * 2 * reach_; }

std::size_t StripLayout::nearestColumn(qreal x) const {
  std::size_t nearest = visible_.first;
  for (std::size_t i = visible_.first; i <= visible_.last; ++i)
    if (std::abs(xOfColumn(i) - x) < std::abs(xOfColumn(nearest) - x)) nearest = i;
  return nearest;
}

std::optional<std::size_t> StripLayout::columnAt(const QPointF& point) const {
  if (!columns_ || columns_->columns.empty() || point.x() < plot_.left() || point.x() > plot_.right())
    return std::nullopt;
  const std::size_t nearest = nearestColumn(point.x());
  // The skull, the sacrum and the tail's tip have room in which no joint lies.
  if (std::abs(xOfColumn(nearest) - point.x()) > std::max<qreal>(slotWidth() * 0.75, kGap)) return std::nullopt;
  return nearest;
}

std::optional<std::size_t> StripLayout::labelAt(const QPointF& point) const {
  if (!columns_ || point.y() < labels_.top() || point.y() > bones_.bottom()) return std::nullopt;
  for (std::size_t i = 0; i < columns_->regions.size(); ++i) {
    const QRectF rect = regionRect(columns_->regions[i]);
    if (columns_->regions[i].columns > 0 && point.x() >= rect.left() && point.x() < rect.right()) return i;
  }
  return std::nullopt;
}

double scaleFor(std::vector<double> extents, double largestMark) {
  double wanted = qDegreesToRadians(kScales[4]);
  if (!extents.empty()) {
    const std::size_t rank = std::min(extents.size() - 1, extents.size() * 3 / 4);
    std::nth_element(extents.begin(), extents.begin() + static_cast<std::ptrdiff_t>(rank), extents.end());
    wanted = extents[rank];
  }
  constexpr double kMostShrinking = 2.5;
  wanted = std::max(wanted, std::min(largestMark, kMostShrinking * wanted));
  for (double scale : kScales)
    if (wanted <= qDegreesToRadians(scale)) return qDegreesToRadians(scale);
  return qDegreesToRadians(kScales.back());
}

std::vector<double> axisTicks(double reach) {
  // The largest round angle within the plot, and half of it.
  const double most = qRadiansToDegrees(reach);
  double step = kScales.front();
  for (double scale : kScales)
    if (scale <= most + 1e-6) step = scale;
  return {qDegreesToRadians(-step), qDegreesToRadians(-step / 2), 0.0, qDegreesToRadians(step / 2),
          qDegreesToRadians(step)};
}

}  // namespace zyga::ui
