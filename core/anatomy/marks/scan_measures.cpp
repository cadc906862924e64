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

/// From the hind rim to the foremost point, along the axis of the centrum.
Value lengthWithCondyle(const Marks& marks) {
  const Vector3d *front = marks.find("cranialRim"), *back = marks.find("caudalRim"), *tip = marks.find("condyleTip");
  if (!front || !back || !tip || *front == *back) return std::nullopt;
  return (*tip - *back).dot((*front - *back).normalized());
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

/// Over the centre of rotation, square to the facet in side view.
Value facetHeight(const Marks& marks) {
  const Vector3d* centre = marks.find("cranial");
  if (!marks.placed() || !centre) return std::nullopt;
  return marks.meanOfFacets(true, [&](const Facet& facet) {
    const Vector3d up = Vector3d(facet.normal.x(), 0, facet.normal.z()).normalized();
    return (facet.centre - *centre).dot(up);
  });
}

Value facetSpread(const Marks& marks) {
  if (!marks.placed()) return std::nullopt;
  return marks.meanOfFacets(true, [](const Facet& facet) { return std::abs(facet.centre.y()); });
}

Value facetTilt(const Marks& marks) {
  if (!marks.placed()) return std::nullopt;
  return marks.meanOfFacets(true, [](const Facet& facet) {
    const double side = isLeft(facet.role) ? 1 : -1;
    return std::atan2(-side * facet.normal.y(), std::hypot(facet.normal.x(), facet.normal.z()));
  });
}

struct Rule {
  Measure measure;
  Value (*value)(const Marks&);
};

double lengthOf(const Facet& facet) { return facet.length(); }
double widthOf(const Facet& facet) { return facet.width(); }

constexpr Rule kOfVertebrae[] = {
    {Measure::Length, [](const Marks& marks) { return marks.between("cranialRim", "caudalRim"); }},
    {Measure::LengthWithCondyle, lengthWithCondyle},
    {Measure::SpineHeight, spineHeight},
    {Measure::DiapophysisWidth, acrossProcesses},
    {Measure::FacetLength, [](const Marks& marks) { return marks.meanOfFacets(true, lengthOf); }},
    {Measure::FacetWidth, [](const Marks& marks) { return marks.meanOfFacets(true, widthOf); }},
    {Measure::FacetHeight, facetHeight},
    {Measure::FacetSpread, facetSpread},
    {Measure::FacetTilt, facetTilt},
    {Measure::PostzygLength, [](const Marks& marks) { return marks.meanOfFacets(false, lengthOf); }}};

constexpr Rule kOfOthers[] = {{Measure::Length, [](const Marks& marks) { return marks.between("top", "bottom"); }}};

}  // namespace

std::vector<MarkedMeasure> measuresOf(const Scan& scan) {
  const Marks marks(scan);
  const std::span<const Rule> rules = isVertebra(scan.bone.kind) ? std::span<const Rule>(kOfVertebrae) : kOfOthers;
  std::vector<MarkedMeasure> out;
  for (const Rule& rule : rules)
    if (const Value value = rule.value(marks); value && std::isfinite(*value)) out.push_back({rule.measure, *value});
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
