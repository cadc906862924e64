#include "core/anatomy/marks/scan_measures.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;
using Value = std::optional<double>;

/// The marks of a scan in its bone's frame.
class Marks {
 public:
  explicit Marks(const Scan& scan)
      : placed_(scan.placed), points_(landmarksInBone(scan)), facets_(facetsInBone(scan)) {}

  bool placed() const { return placed_; }

  const Vector3d* find(std::string_view name) const {
    const auto at = points_.find(name);
    return at == points_.end() ? nullptr : &at->second;
  }

  Value between(std::string_view a, std::string_view b) const {
    const Vector3d *p = find(a), *q = find(b);
    return p && q ? Value((*p - *q).norm()) : std::nullopt;
  }

  /// Mean over the facets of one end that were marked.
  Value meanOfFacets(bool prezyg, const std::function<double(const Facet&)>& of) const {
    double sum = 0;
    int count = 0;
    for (const Facet& facet : facets_) {
      if (isPrezyg(facet.role) != prezyg) continue;
      sum += of(facet);
      ++count;
    }
    return count > 0 ? Value(sum / count) : std::nullopt;
  }

 private:
  bool placed_;
  std::map<std::string, Vector3d, std::less<>> points_;
  std::vector<Facet> facets_;
};

/// From the rim without a condyle to the point of the condyle that is farthest out, along the axis of the centrum.
Value lengthWithCondyle(const Marks& marks) {
  const Vector3d *front = marks.find("cranialRim"), *back = marks.find("caudalRim"), *tip = marks.find("condyleTip");
  if (!front || !back || !tip || *front == *back) return std::nullopt;
  const Vector3d axis = (*front - *back).normalized();
  const bool behind = (*tip - *front).dot(axis) + (*tip - *back).dot(axis) < 0;
  return behind ? (*front - *tip).dot(axis) : (*tip - *back).dot(axis);
}

Value spineHeight(const Marks& marks) {
  const Vector3d *front = marks.find("cranialRim"), *back = marks.find("caudalRim"), *top = marks.find("spineTop");
  if (!marks.placed() || !front || !back || !top) return std::nullopt;
  return top->z() - 0.5 * (front->z() + back->z());
}

/// Across both processes; where one was marked, twice its distance from the mid-plane.
Value acrossProcesses(const Marks& marks) {
  if (const Value both = marks.between("diapophysis.L", "diapophysis.R")) return both;
  if (!marks.placed()) return std::nullopt;
  for (const char* name : {"diapophysis.L", "diapophysis.R"})
    if (const Vector3d* one = marks.find(name)) return 2 * std::abs(one->y());
  return std::nullopt;
}

/// Normal of a facet as if it faced up: a postzyg's turned round.
Vector3d upwardNormal(const Facet& facet) { return isPrezyg(facet.role) ? facet.normal : Vector3d(-facet.normal); }

/// Square to the facet in side view, dorsally, and along it, cranially.
Vector3d acrossPitch(const Facet& facet) {
  const Vector3d normal = upwardNormal(facet);
  return Vector3d(normal.x(), 0, normal.z()).normalized();
}
Vector3d alongPitch(const Facet& facet) {
  const Vector3d up = acrossPitch(facet);
  return {up.z(), 0, -up.x()};
}

/// From the centre of rotation of the joint in front (prezygs) or behind, in one direction of the facet.
template <bool prezyg, Vector3d (*direction)(const Facet&)>
Value fromCentre(const Marks& marks) {
  const Vector3d* centre = marks.find(prezyg ? "cranial" : "caudal");
  if (!marks.placed() || !centre) return std::nullopt;
  return marks.meanOfFacets(prezyg, [&](const Facet& facet) { return (facet.centre - *centre).dot(direction(facet)); });
}

template <bool prezyg>
Value facetSpread(const Marks& marks) {
  if (!marks.placed()) return std::nullopt;
  return marks.meanOfFacets(prezyg, [](const Facet& facet) { return std::abs(facet.centre.y()); });
}

template <bool prezyg>
Value facetTilt(const Marks& marks) {
  if (!marks.placed()) return std::nullopt;
  return marks.meanOfFacets(prezyg, [](const Facet& facet) {
    const double side = isLeft(facet.role) ? 1 : -1;
    const Vector3d normal = upwardNormal(facet);
    return std::atan2(-side * normal.y(), std::hypot(normal.x(), normal.z()));
  });
}

template <bool prezyg>
Value facetPitch(const Marks& marks) {
  if (!marks.placed()) return std::nullopt;
  return marks.meanOfFacets(prezyg, [](const Facet& facet) {
    const Vector3d along = alongPitch(facet);
    return std::atan2(along.z(), along.x());
  });
}

/// Only where a facet was found to be curved: flat ones say nothing.
template <bool prezyg>
Value facetRadius(const Marks& marks) {
  const Value radius = marks.meanOfFacets(prezyg, [](const Facet& facet) { return facet.radius; });
  return radius && *radius != 0 ? radius : std::nullopt;
}

struct Rule {
  Measure measure;
  Value (*value)(const Marks&);
};

template <bool prezyg>
Value facetLength(const Marks& marks) {
  return marks.meanOfFacets(prezyg, [](const Facet& facet) { return facet.length(); });
}
template <bool prezyg>
Value facetWidth(const Marks& marks) {
  return marks.meanOfFacets(prezyg, [](const Facet& facet) { return facet.width(); });
}

constexpr Rule kOfVertebrae[] = {
    {Measure::Length, [](const Marks& marks) { return marks.between("cranialRim", "caudalRim"); }},
    {Measure::LengthWithCondyle, lengthWithCondyle},
    {Measure::SpineHeight, spineHeight},
    {Measure::DiapophysisWidth, acrossProcesses},
    {Measure::FacetLength, facetLength<true>},
    {Measure::FacetWidth, facetWidth<true>},
    {Measure::FacetHeight, fromCentre<true, acrossPitch>},
    {Measure::FacetSpread, facetSpread<true>},
    {Measure::FacetTilt, facetTilt<true>},
    {Measure::PostzygLength, facetLength<false>},
    {Measure::FacetOffset, fromCentre<true, alongPitch>},
    {Measure::FacetPitch, facetPitch<true>},
    {Measure::FacetRadius, facetRadius<true>},
    {Measure::PostzygWidth, facetWidth<false>},
    {Measure::PostzygHeight, fromCentre<false, acrossPitch>},
    {Measure::PostzygSpread, facetSpread<false>},
    {Measure::PostzygTilt, facetTilt<false>},
    {Measure::PostzygOffset, fromCentre<false, alongPitch>},
    {Measure::PostzygPitch, facetPitch<false>},
    {Measure::PostzygRadius, facetRadius<false>}};

constexpr Rule kOfOthers[] = {{Measure::Length, [](const Marks& marks) { return marks.between("top", "bottom"); }}};

}  // namespace

std::vector<MarkedMeasure> measuresOf(const Scan& scan) {
  const Marks marks(scan);
  const std::span<const Rule> rules = isVertebra(scan.bone.kind) ? std::span<const Rule>(kOfVertebrae) : kOfOthers;
  std::vector<MarkedMeasure> out;
  for (const Rule& rule : rules) {
    const Value value = rule.value(marks);
    if (value && std::isfinite(*value) && (isSigned(rule.measure) || *value >= 0))
      out.push_back({rule.measure, *value});
  }
  return out;
}

MeasurementTable withMeasures(MeasurementTable table, const Scan& scan, std::span<const MarkedMeasure> measures) {
  TableRow* row = table.find(scan.bone);
  if (!row) row = &table.rows.emplace_back(TableRow{scan.bone, {}, Evidence::Inferred, {}});
  if (!row->measures.anyMeasured()) {
    row->evidence = scan.evidence;
    row->source = scan.source;
  }
  for (const auto& [measure, value] : measures) row->measures[measure] = Cell{value, CellOrigin::Measured, {}};
  return table;
}

}  // namespace zyga::anatomy
