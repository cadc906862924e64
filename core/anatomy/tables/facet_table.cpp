#include "core/anatomy/tables/facet_table.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/anatomy/tables/csv.h"
#include "core/anatomy/tables/table_fields.h"
#include "core/anatomy/tables/table_reasons.h"

namespace zyga::anatomy {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using reason::Reason;
using reason::text;

constexpr std::array kRoles{FacetRole::PrezygLeft, FacetRole::PrezygRight, FacetRole::PostzygLeft,
                            FacetRole::PostzygRight};

enum FacetColumn : std::size_t {
  InBone,
  InFacet,
  Centre,
  Normal = 5,
  Slide = 8,
  Length = 11,
  Width,
  Radius,
  Residual,
  InConfidence,
  Outline,
  kFacetColumns
};

constexpr std::array<MarkColumn, kFacetColumns> kFacetTitles{{{"bone", false, true},
                                                              {"facet", false, true},
                                                              {"centre x", true, true},
                                                              {"centre y", true, true},
                                                              {"centre z", true, true},
                                                              {"normal x", false, true},
                                                              {"normal y", false, true},
                                                              {"normal z", false, true},
                                                              {"slide x", false, false},
                                                              {"slide y", false, false},
                                                              {"slide z", false, false},
                                                              {"length", true, true},
                                                              {"width", true, true},
                                                              {"radius", true, false},
                                                              {"residual", true, false},
                                                              {"confidence", false, false},
                                                              {"outline", true, false}}};

constexpr double kRounding = 1e-7;       ///< by which a direction that was written may be off
constexpr double kAlongNormal = 0.02;    ///< a slide of which less lies in the facet's plane is none
constexpr double kRoundedCorner = 4e-9;  ///< m, by which corners that were written may stand in
constexpr double kLeastFacet = 1e-6;     ///< m
constexpr double kLongestFacet = 20;     ///< m

/// Twice the area on the left of the way from a over b to c.
double turnAt(const Vector2d& a, const Vector2d& b, const Vector2d& c) {
  const Vector2d u = b - a, v = c - b;
  return u.x() * v.y() - u.y() * v.x();
}

/// Convex, once round; counter-clockwise afterwards.
bool madeConvex(std::vector<Vector2d>& outline) {
  const std::size_t n = outline.size();
  if (n < 3) return false;
  double area = 0, longest = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const Vector2d &p = outline[i], &q = outline[(i + 1) % n];
    area += 0.5 * (p.x() * q.y() - p.y() * q.x());
    longest = std::max(longest, (q - p).norm());
  }
  if (!(std::abs(area) > 1e-6 * longest * longest)) return false;
  if (area < 0) std::reverse(outline.begin(), outline.end());
  double turned = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const Vector2d &a = outline[i], &b = outline[(i + 1) % n], &c = outline[(i + 2) % n];
    const double turn = turnAt(a, b, c);
    if (turn < -(1e-6 * longest + kRoundedCorner) * longest) return false;
    turned += std::atan2(turn, (b - a).dot(c - b));
  }
  return turned < 7;  // 2 pi: a star goes round twice
}

class FacetReader : private MarkTableReader {
 public:
  explicit FacetReader(std::string_view file)
      : MarkTableReader(file, kFacetTitles, facet_table::kWriteHeader, SecondColumn::IsAFault) {}

  FacetReading read(std::string_view csv) {
    FacetReading out;
    readLines(csv, [&](const CsvLine& line) { row(line, out.table); });
    out.messages = std::move(messages_);
    return out;
  }

 private:
  void fault(int line, std::size_t place, Reason cause, Reason mend) {
    good_ = false;
    MarkTableReader::fault(line, place, std::move(cause), std::move(mend));
  }

  const std::string& field(std::size_t column) const { return MarkTableReader::field(*line_, column); }
  bool blank(std::size_t column) const { return field(column).empty(); }

  double number(std::size_t column, const Reason& mend) {
    double value = 0;
    if (!parseNumber(field(column), value)) {
      // A column that is not there has been told of already.
      if (placeOf(column) > 0)
        fault(line_->number, placeOf(column), {table::kNotANumber, {text(field(column))}}, mend);
      else
        good_ = false;
      return 0;
    }
    return value * unitOf(column);
  }

  Vector3d vector(std::size_t first, const Reason& mend) {
    Vector3d v;
    for (std::size_t i = 0; i < 3; ++i) v(static_cast<Eigen::Index>(i)) = number(first + i, mend);
    return v;
  }

  Vector3d centre() {
    const Vector3d p = vector(Centre, {landmark::kWriteCoordinate});
    for (std::size_t i = 0; i < 3; ++i)
      if (std::abs(p(static_cast<Eigen::Index>(i))) > kFarthestPoint)
        fault(line_->number, placeOf(Centre + i), {landmark::kTooFar, {text(field(Centre + i))}},
              {landmark::kCheckUnit});
    return p;
  }

  Vector3d direction(std::size_t first, std::string_view what) {
    Vector3d v = vector(first, {facet_table::kWriteDirection});
    if (!good_) return v;
    const double length = v.norm();
    if (!(length > 1e-6) || !std::isfinite(length)) {
      fault(line_->number, placeOf(first), {facet_table::kNoDirection, {text(what)}}, {facet_table::kWriteDirection});
      return v;
    }
    if (std::abs(length - 1) > kRounding) v /= length;
    return v;
  }

  double extent(std::size_t column) {
    const double value = number(column, {table::kWriteLength});
    // Corners that were written are a little off the length and width that they were made with.
    const double slack = blank(Outline) ? 1 : 1.05;
    if (good_ && !(value >= kLeastFacet / slack))
      fault(line_->number, placeOf(column), {table::kNotALength, {text(field(column)), text(unitName(column))}},
            {table::kWriteLength});
    else if (good_ && value > kLongestFacet * slack)
      fault(line_->number, placeOf(column), {table::kTooLong, {text(field(column)), text(unitName(column))}},
            {table::kCheckHeaderUnit});
    return value;
  }

  /// In the plane of the normal; zero where none is given.
  Vector3d slide(const Vector3d& normal) {
    if (blank(Slide) && blank(Slide + 1) && blank(Slide + 2)) return Vector3d::Zero();
    const Vector3d v = direction(Slide, "slide");
    if (!good_) return v;
    const double along = v.dot(normal);
    if (std::abs(along) < kRounding) return v;
    const Vector3d flat = v - along * normal;
    if (!(flat.norm() > kAlongNormal)) {
      fault(line_->number, placeOf(Slide), {facet_table::kSlideAlongNormal}, {facet_table::kWriteSlide});
      return v;
    }
    return flat.normalized();
  }

  std::vector<Vector2d> outline() {
    std::vector<Vector2d> corners;
    std::string_view left = field(Outline);
    const Reason mend{facet_table::kWriteOutline};
    while (!left.empty()) {
      const std::size_t end = std::min(left.find('/'), left.size());
      const std::string corner = trimmed(left.substr(0, end));
      left.remove_prefix(std::min(end + 1, left.size()));
      const std::size_t space = corner.find(' ');
      Vector2d p;
      if (space == std::string::npos || !parseNumber(corner.substr(0, space), p.x()) ||
          !parseNumber(trimmed(corner.substr(space)), p.y()) ||
          p.cwiseAbs().maxCoeff() * unitOf(Outline) > kLongestFacet) {
        fault(line_->number, placeOf(Outline), {facet_table::kBadCorner, {text(corner)}}, mend);
        return {};
      }
      corners.push_back(p * unitOf(Outline));
    }
    Facet shape;
    shape.outline = corners;
    if (!madeConvex(shape.outline) || shape.length() < kLeastFacet / 1.05 || shape.width() < kLeastFacet / 1.05)
      fault(line_->number, placeOf(Outline), {facet_table::kNotConvex}, mend);
    return shape.outline;
  }

  void row(const CsvLine& line, FacetTable& table) {
    line_ = &line;
    good_ = true;
    const auto bone = parseBoneId(field(InBone));
    if (!bone)
      fault(line.number, placeOf(InBone), {landmark::kUnknownBone, {text(field(InBone))}}, {landmark::kWriteBoneId});
    const auto role = facetRoleFromText(field(InFacet));
    if (!role)
      fault(line.number, placeOf(InFacet), {facet_table::kUnknownFacet, {text(field(InFacet))}},
            {facet_table::kWriteFacet});
    bool all = good_;
    // Each field by itself, so that one fault does not hide another.
    const auto apart = [&](const auto& read) {
      good_ = true;
      const auto value = read();
      all = all && good_;
      return value;
    };
    TabledFacet out;
    Facet& facet = out.facet;
    facet.centre = apart([&] { return centre(); });
    facet.normal = apart([&] { return direction(Normal, "normal"); });
    const bool faced = good_;
    facet.slide = apart([&] { return faced ? slide(facet.normal) : Vector3d(Vector3d::Zero()); });
    const double length = apart([&] { return extent(Length); }), width = apart([&] { return extent(Width); });
    facet.radius = apart([&] { return blank(Radius) ? 0 : number(Radius, {table::kWriteLength}); });
    out.residual = apart([&] { return blank(Residual) ? 0 : number(Residual, {table::kWriteLength}); });
    out.confidence = apart([&]() -> std::optional<double> { return confidence(); });
    const auto corners = apart([&] { return blank(Outline) ? std::vector<Vector2d>() : outline(); });
    if (!all) return;
    facet.role = *role;
    facet.outline = corners.empty() ? ellipseOutline(length, width) : corners;
    out.slideGiven = !facet.slide.isZero();
    if (!out.slideGiven) facet.slide = facet.normal.unitOrthogonal();
    if (!table.facets[*bone].emplace(*role, out).second)
      fault(line.number, placeOf(InFacet), {facet_table::kTwice, {text(field(InBone)), text(field(InFacet))}},
            {landmark::kLeaveOneOut});
  }

  std::optional<double> confidence() {
    if (blank(InConfidence)) return std::nullopt;
    const double value = number(InConfidence, {facet_table::kWriteShare});
    if (good_ && !(value >= 0 && value <= 1))
      fault(line_->number, placeOf(InConfidence), {facet_table::kNotAShare, {text(field(InConfidence))}},
            {facet_table::kWriteShare});
    return value;
  }

  const CsvLine* line_ = nullptr;
  bool good_ = true;
};

std::string outlineText(const std::vector<Vector2d>& outline) {
  std::string out;
  for (const Vector2d& p : outline)
    out += (out.empty() ? "" : " / ") + millimetresText(p.x()) + " " + millimetresText(p.y());
  return out;
}

}  // namespace

std::string_view toText(FacetRole role) {
  switch (role) {
    case FacetRole::PrezygLeft:
      return "prezyg.L";
    case FacetRole::PrezygRight:
      return "prezyg.R";
    case FacetRole::PostzygLeft:
      return "postzyg.L";
    case FacetRole::PostzygRight:
      break;
  }
  return "postzyg.R";
}

std::optional<FacetRole> facetRoleFromText(std::string_view text) {
  for (const FacetRole role : kRoles)
    if (toText(role) == text) return role;
  return std::nullopt;
}

bool FacetReading::usable() const { return noErrorAmong(messages); }

FacetReading readFacetTable(std::string_view text, std::string_view fileName) {
  return FacetReader(fileName).read(text);
}

std::string writeFacetTable(const FacetTable& table) {
  std::string out;
  for (const MarkColumn& column : kFacetTitles)
    out += (out.empty() ? "" : ",") + std::string(column.title) + (column.length ? " (mm)" : "");
  out += "\n";
  for (const auto& [bone, facets] : table.facets)
    for (const auto& [role, tabled] : facets) {
      // Length and width are those of the corners as they are written.
      Facet f = tabled.facet;
      for (Vector2d& corner : f.outline) corner = (corner * 1e9).array().round().matrix() / 1e9;
      out += toId(bone) + "," + std::string(toText(role));
      for (const double length : {f.centre.x(), f.centre.y(), f.centre.z()}) out += "," + millimetresText(length);
      for (const double part : {f.normal.x(), f.normal.y(), f.normal.z()}) out += "," + shareText(part);
      for (const double part : {f.slide.x(), f.slide.y(), f.slide.z()})
        out += "," + (tabled.slideGiven ? shareText(part) : std::string());
      for (const double length : {f.length(), f.width()}) out += "," + millimetresText(length);
      for (const double length : {f.radius, tabled.residual}) out += "," + (length == 0 ? "" : millimetresText(length));
      out += "," + (tabled.confidence ? shareText(*tabled.confidence) : "") + "," + outlineText(f.outline) + "\n";
    }
  return out;
}

}  // namespace zyga::anatomy
