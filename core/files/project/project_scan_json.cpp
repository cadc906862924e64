#include "core/files/project/project_scan_json.h"

#include <Eigen/LU>
#include <cmath>
#include <set>

#include "core/files/project/project_schema.h"

namespace zyga::files {
namespace {

using anatomy::FacetRole;
using anatomy::ScanUnit;
using Eigen::Matrix3d;
using Eigen::Vector3d;

constexpr reason::Term kPlacing{"project.scan-placing"};
constexpr double kTolerance = 1e-6;  ///< of what should be a unit vector or a rotation

constexpr std::array<std::pair<std::string_view, FacetRole>, 4> kRoles{{{"prezyg left", FacetRole::PrezygLeft},
                                                                        {"prezyg right", FacetRole::PrezygRight},
                                                                        {"postzyg left", FacetRole::PostzygLeft},
                                                                        {"postzyg right", FacetRole::PostzygRight}}};
constexpr std::array<std::pair<std::string_view, ScanUnit>, 3> kUnits{
    {{"mm", ScanUnit::Millimetre}, {"cm", ScanUnit::Centimetre}, {"m", ScanUnit::Metre}}};

template <class Vector>
json::Value coordinatesJson(const Vector& v, int places) {
  json::Value items = json::array({});
  for (Eigen::Index i = 0; i < v.size(); ++i) items.push(schema::numeral(v(i), places, kPlacing));
  return items;
}

json::Value matrixJson(const Matrix3d& m) {
  return json::array({coordinatesJson(m.row(0), 0), coordinatesJson(m.row(1), 0), coordinatesJson(m.row(2), 0)});
}

json::Value facetJson(const anatomy::ScanFacet& marked) {
  const auto& facet = marked.facet;
  json::Value outline = json::array({});
  for (const auto& p : facet.outline) outline.push(coordinatesJson(p, schema::kMillimetres));
  json::Value members =
      json::object({{"role", schema::wordOf(kRoles, facet.role)},
                    {"centre_mm", coordinatesJson(facet.centre, schema::kMillimetres)},
                    {"normal", coordinatesJson(facet.normal, 0)},
                    {"slide", coordinatesJson(facet.slide, 0)},
                    {"outline_mm", outline},
                    {"residual_mm", schema::numeral(marked.residual, schema::kMillimetres, kPlacing)}});
  if (!marked.measured) members.add("measured", false);
  return members;
}

json::Value fitsJson(const anatomy::Scan& scan) {
  json::Value fits = json::object({});
  const auto millimetres = [](double length) { return schema::numeral(length, schema::kMillimetres, kPlacing); };
  for (const auto& [name, fit] : scan.fits)
    fits.add(name, json::object({{"radius_mm", millimetres(fit.radius)},
                                 {"residual_mm", millimetres(fit.residual)},
                                 {"centre_error_mm", millimetres(fit.centreError)}}));
  return fits;
}

json::Value scanJson(const anatomy::Scan& scan) {
  json::Value landmarks = json::object({}), facets = json::array({});
  for (const auto& [name, p] : scan.landmarks) landmarks.add(name, coordinatesJson(p, schema::kMillimetres));
  for (const auto& marked : scan.facets) facets.push(facetJson(marked));
  json::Value members =
      json::object({{"bone", toId(scan.bone)},
                    {"file", scan.file},
                    {"sha256", scan.checksum},
                    {"unit", schema::wordOf(kUnits, scan.unit)},
                    {"evidence", toText(scan.evidence)},
                    {"source", scan.source},
                    {"placed", scan.placed},
                    {"position_mm", coordinatesJson(scan.X_BoneScan.translation(), schema::kMillimetres)},
                    {"rotation", matrixJson(scan.X_BoneScan.linear())}});
  if (scan.scale != 1) members.add("scale", schema::numeral(scan.scale, 0, kPlacing));
  if (scan.mirror) members.add("mirror", true);
  if (!scan.straighten.isIdentity(0)) members.add("straighten", matrixJson(scan.straighten));
  members.add("landmarks_mm", std::move(landmarks));
  members.add("facets", std::move(facets));
  if (!scan.suggested.empty()) {
    json::Value suggested = json::object({});
    for (const auto& [name, confidence] : scan.suggested) suggested.add(name, schema::numeral(confidence, 0, kPlacing));
    members.add("suggested", std::move(suggested));
  }
  if (!scan.fits.empty()) members.add("fits", fitsJson(scan));
  return members;
}

Vector3d readVector(const JsonPlace& place, int places) {
  const auto items = place.items(3, kNumbers);
  Vector3d v;
  for (int i = 0; i < 3; ++i) v(i) = fromNumeral(items[static_cast<std::size_t>(i)].numeral(), places);
  if (!v.allFinite()) place.fail(fault::kNumberTooLarge);
  return v;
}

Vector3d readUnit(const JsonPlace& place) {
  const Vector3d v = readVector(place, 0);
  if (std::abs(v.norm() - 1) > kTolerance) place.fail(fault::kNotUnitLength);
  return v;
}

Matrix3d readMatrix(const JsonPlace& place) {
  const auto rows = place.items(3, kRows);
  Matrix3d m;
  for (int i = 0; i < 3; ++i) m.row(i) = readVector(rows[static_cast<std::size_t>(i)], 0).transpose();
  if (!(m.determinant() > kTolerance)) place.fail(fault::kFlatRows);
  return m;
}

Matrix3d readRotation(const JsonPlace& place) {
  const Matrix3d R = readMatrix(place);
  if (!(R * R.transpose()).isApprox(Matrix3d::Identity(), kTolerance)) place.fail(fault::kNotRotation);
  return R;
}

std::vector<Eigen::Vector2d> readOutline(const JsonPlace& place) {
  std::vector<Eigen::Vector2d> outline;
  for (const auto& corner : place.items()) {
    const auto items = corner.items(2, kNumbers);
    outline.emplace_back(fromNumeral(items[0].numeral(), schema::kMillimetres),
                         fromNumeral(items[1].numeral(), schema::kMillimetres));
    if (!outline.back().allFinite()) corner.fail(fault::kNumberTooLarge);
  }
  if (outline.size() < 3) place.fail(fault::kShortOutline);
  return outline;
}

anatomy::ScanFacet readFacet(const JsonPlace& place) {
  place.allowOnly({"role", "centre_mm", "normal", "slide", "outline_mm", "residual_mm", "measured"});
  anatomy::ScanFacet marked;
  marked.facet.role = schema::readWord(place["role"], kRoles);
  marked.facet.centre = readVector(place["centre_mm"], schema::kMillimetres);
  marked.facet.normal = readUnit(place["normal"]);
  marked.facet.slide = readUnit(place["slide"]);
  if (std::abs(marked.facet.normal.dot(marked.facet.slide)) > kTolerance) place["slide"].fail(fault::kOffFacetPlane);
  marked.facet.outline = readOutline(place["outline_mm"]);
  marked.residual = fromNumeral(place["residual_mm"].numeral(), schema::kMillimetres);
  if (const auto measured = place.find("measured")) marked.measured = measured->boolean();
  return marked;
}

anatomy::MarkFit readFit(const JsonPlace& place) {
  place.allowOnly({"radius_mm", "residual_mm", "centre_error_mm"});
  const auto length = [&](const char* key) {
    const double value = fromNumeral(place[key].numeral(), schema::kMillimetres);
    if (!std::isfinite(value)) place[key].fail(fault::kNumberTooLarge);
    return value;
  };
  return {length("radius_mm"), length("residual_mm"), length("centre_error_mm")};
}

anatomy::BoneName readName(const JsonPlace& place) {
  const auto name = anatomy::parseBoneId(place.string());
  if (!name) place.fail({fault::kNoBone, {shown(place.string())}});
  return *name;
}

anatomy::Evidence readEvidence(const JsonPlace& place) {
  const auto evidence = anatomy::evidenceFromText(place.string());
  if (!evidence) place.fail({fault::kNoEvidence, {shown(place.string())}});
  return *evidence;
}

anatomy::Scan readScan(const JsonPlace& place) {
  place.allowOnly({"bone", "file", "sha256", "unit", "evidence", "source", "placed", "position_mm", "rotation", "scale",
                   "mirror", "straighten", "landmarks_mm", "facets", "suggested", "fits"});
  anatomy::Scan scan;
  scan.bone = readName(place["bone"]);
  scan.file = place["file"].string();
  scan.checksum = place["sha256"].string();
  scan.unit = schema::readWord(place["unit"], kUnits);
  scan.evidence = readEvidence(place["evidence"]);
  scan.source = place["source"].string();
  scan.placed = place["placed"].boolean();
  scan.X_BoneScan.translation() = readVector(place["position_mm"], schema::kMillimetres);
  scan.X_BoneScan.linear() = readRotation(place["rotation"]);
  if (const auto scale = place.find("scale")) {
    scan.scale = scale->number();
    if (!(scan.scale > 0)) scale->fail(fault::kNotAboveZero);
  }
  if (const auto mirror = place.find("mirror")) scan.mirror = mirror->boolean();
  if (const auto straighten = place.find("straighten")) scan.straighten = readMatrix(*straighten);
  for (const auto& [name, p] : place["landmarks_mm"].members())
    scan.landmarks[name] = readVector(p, schema::kMillimetres);
  for (const auto& facet : place["facets"].items()) scan.facets.push_back(readFacet(facet));
  if (const auto suggested = place.find("suggested")) {
    for (const auto& [name, confidence] : suggested->members()) {
      const double sure = confidence.number();
      if (!(sure >= 0 && sure <= 1)) confidence.fail({fault::kOutOfBounds, {reason::Count{0}, reason::Count{1}}});
      scan.suggested[name] = sure;
    }
  }
  if (const auto fits = place.find("fits"))
    for (const auto& [name, fit] : fits->members()) scan.fits[name] = readFit(fit);
  return scan;
}

}  // namespace

json::Value scansJson(const std::vector<ProjectScan>& scans) {
  json::Value lines = json::Value::array(json::Layout::OnLines);
  for (const auto& kept : scans) lines.push(scanJson(kept.scan));
  return lines;
}

std::vector<ProjectScan> readScans(const JsonPlace& place) {
  std::vector<ProjectScan> scans;
  std::set<anatomy::BoneName> seen;
  for (const auto& item : place.items()) {
    scans.emplace_back();
    scans.back().scan = readScan(item);
    if (!seen.insert(scans.back().scan.bone).second) item["bone"].fail(fault::kTwoScans);
  }
  return scans;
}

}  // namespace zyga::files
