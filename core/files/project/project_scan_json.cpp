#include "core/files/project/project_scan_json.h"

#include <Eigen/LU>
#include <cmath>
#include <set>

#include "core/files/json/json_layout.h"
#include "core/files/json/numeral.h"
#include "core/files/project/project_schema.h"

namespace zyga::files {
namespace {

using anatomy::FacetRole;
using anatomy::ScanUnit;
using Eigen::Matrix3d;
using Eigen::Vector3d;

constexpr double kTolerance = 1e-6;  ///< of what should be a unit vector or a rotation

constexpr std::array<std::pair<std::string_view, FacetRole>, 4> kRoles{{{"prezyg left", FacetRole::PrezygLeft},
                                                                        {"prezyg right", FacetRole::PrezygRight},
                                                                        {"postzyg left", FacetRole::PostzygLeft},
                                                                        {"postzyg right", FacetRole::PostzygRight}}};
constexpr std::array<std::pair<std::string_view, ScanUnit>, 3> kUnits{
    {{"mm", ScanUnit::Millimetre}, {"cm", ScanUnit::Centimetre}, {"m", ScanUnit::Metre}}};

std::string number(double value, int places) {
  if (!std::isfinite(value)) throw FileError("cannot save: a scan's placing is not a finite number");
  return toNumeral(value, places);
}

template <class Vector>
std::string vectorText(const Vector& v, int places) {
  std::vector<std::string> items;
  for (Eigen::Index i = 0; i < v.size(); ++i) items.push_back(number(v(i), places));
  return list(items);
}

std::string matrixText(const Matrix3d& m) {
  return list({vectorText(m.row(0), 0), vectorText(m.row(1), 0), vectorText(m.row(2), 0)});
}

std::string facetText(const anatomy::ScanFacet& marked) {
  const auto& facet = marked.facet;
  std::vector<std::string> outline;
  for (const auto& p : facet.outline) outline.push_back(vectorText(p, schema::kMillimetres));
  return onOneLine({member("role", jsonString(schema::wordOf(kRoles, facet.role))),
                    member("centre_mm", vectorText(facet.centre, schema::kMillimetres)),
                    member("normal", vectorText(facet.normal, 0)), member("slide", vectorText(facet.slide, 0)),
                    member("outline_mm", list(outline)),
                    member("residual_mm", number(marked.residual, schema::kMillimetres))});
}

std::string scanText(const anatomy::Scan& scan) {
  std::vector<std::string> landmarks, facets;
  for (const auto& [name, p] : scan.landmarks) landmarks.push_back(member(name, vectorText(p, schema::kMillimetres)));
  for (const auto& marked : scan.facets) facets.push_back(facetText(marked));
  std::vector<std::string> members{
      member("bone", jsonString(toId(scan.bone))),
      member("file", jsonString(scan.file)),
      member("sha256", jsonString(scan.checksum)),
      member("unit", jsonString(schema::wordOf(kUnits, scan.unit))),
      member("evidence", jsonString(toText(scan.evidence))),
      member("source", jsonString(scan.source)),
      member("placed", scan.placed ? "true" : "false"),
      member("position_mm", vectorText(scan.X_BoneScan.translation(), schema::kMillimetres)),
      member("rotation", matrixText(scan.X_BoneScan.linear()))};
  if (scan.scale != 1) members.push_back(member("scale", number(scan.scale, 0)));
  if (scan.mirror) members.push_back(member("mirror", "true"));
  if (!scan.straighten.isIdentity(0)) members.push_back(member("straighten", matrixText(scan.straighten)));
  members.push_back(member("landmarks_mm", onOneLine(landmarks)));
  members.push_back(member("facets", list(facets)));
  return onOneLine(members);
}

template <class Value, std::size_t n>
Value readWord(const JsonPlace& place, const std::array<std::pair<std::string_view, Value>, n>& words) {
  if (const auto value = schema::valueOf(words, place.string())) return *value;
  place.fail(jsonString(place.string()) + " is not known here");
}

Vector3d readVector(const JsonPlace& place, int places) {
  const auto items = place.items(3, "numbers");
  Vector3d v;
  for (int i = 0; i < 3; ++i) v(i) = fromNumeral(items[static_cast<std::size_t>(i)].numeral(), places);
  if (!v.allFinite()) place.fail("a number is too large");
  return v;
}

Vector3d readUnit(const JsonPlace& place) {
  const Vector3d v = readVector(place, 0);
  if (std::abs(v.norm() - 1) > kTolerance) place.fail("must be of length 1");
  return v;
}

Matrix3d readMatrix(const JsonPlace& place) {
  const auto rows = place.items(3, "rows");
  Matrix3d m;
  for (int i = 0; i < 3; ++i) m.row(i) = readVector(rows[static_cast<std::size_t>(i)], 0).transpose();
  if (!(m.determinant() > kTolerance)) place.fail("these rows turn space inside out or press it flat");
  return m;
}

Matrix3d readRotation(const JsonPlace& place) {
  const Matrix3d R = readMatrix(place);
  if (!(R * R.transpose()).isApprox(Matrix3d::Identity(), kTolerance)) place.fail("these rows are not a rotation");
  return R;
}

std::vector<Eigen::Vector2d> readOutline(const JsonPlace& place) {
  std::vector<Eigen::Vector2d> outline;
  for (const auto& corner : place.items()) {
    const auto items = corner.items(2, "numbers");
    outline.emplace_back(fromNumeral(items[0].numeral(), schema::kMillimetres),
                         fromNumeral(items[1].numeral(), schema::kMillimetres));
    if (!outline.back().allFinite()) corner.fail("a number is too large");
  }
  if (outline.size() < 3) place.fail("an outline needs at least three corners");
  return outline;
}

anatomy::ScanFacet readFacet(const JsonPlace& place) {
  place.allowOnly({"role", "centre_mm", "normal", "slide", "outline_mm", "residual_mm"});
  anatomy::ScanFacet marked;
  marked.facet.role = readWord(place["role"], kRoles);
  marked.facet.centre = readVector(place["centre_mm"], schema::kMillimetres);
  marked.facet.normal = readUnit(place["normal"]);
  marked.facet.slide = readUnit(place["slide"]);
  if (std::abs(marked.facet.normal.dot(marked.facet.slide)) > kTolerance)
    place["slide"].fail("must lie in the facet's plane");
  marked.facet.outline = readOutline(place["outline_mm"]);
  marked.residual = fromNumeral(place["residual_mm"].numeral(), schema::kMillimetres);
  return marked;
}

anatomy::BoneName readName(const JsonPlace& place) {
  const auto name = anatomy::parseBoneId(place.string());
  if (!name) place.fail("there is no bone " + jsonString(place.string()));
  return *name;
}

anatomy::Evidence readEvidence(const JsonPlace& place) {
  const auto evidence = anatomy::evidenceFromText(place.string());
  if (!evidence) place.fail(jsonString(place.string()) + " is no kind of evidence");
  return *evidence;
}

anatomy::Scan readScan(const JsonPlace& place) {
  place.allowOnly({"bone", "file", "sha256", "unit", "evidence", "source", "placed", "position_mm", "rotation", "scale",
                   "mirror", "straighten", "landmarks_mm", "facets"});
  anatomy::Scan scan;
  scan.bone = readName(place["bone"]);
  scan.file = place["file"].string();
  scan.checksum = place["sha256"].string();
  scan.unit = readWord(place["unit"], kUnits);
  scan.evidence = readEvidence(place["evidence"]);
  scan.source = place["source"].string();
  scan.placed = place["placed"].boolean();
  scan.X_BoneScan.translation() = readVector(place["position_mm"], schema::kMillimetres);
  scan.X_BoneScan.linear() = readRotation(place["rotation"]);
  if (const auto scale = place.find("scale")) {
    scan.scale = scale->number();
    if (!(scan.scale > 0)) scale->fail("must be more than 0");
  }
  if (const auto mirror = place.find("mirror")) scan.mirror = mirror->boolean();
  if (const auto straighten = place.find("straighten")) scan.straighten = readMatrix(*straighten);
  for (const auto& [name, p] : place["landmarks_mm"].members())
    scan.landmarks[name] = readVector(p, schema::kMillimetres);
  for (const auto& facet : place["facets"].items()) scan.facets.push_back(readFacet(facet));
  return scan;
}

}  // namespace

std::string scansText(const std::vector<ProjectScan>& scans) {
  std::vector<std::string> lines;
  for (const auto& kept : scans) lines.push_back(scanText(kept.scan));
  return onLines(lines, "  ", '[', ']');
}

std::vector<ProjectScan> readScans(const JsonPlace& place) {
  std::vector<ProjectScan> scans;
  std::set<anatomy::BoneName> seen;
  for (const auto& item : place.items()) {
    scans.push_back({readScan(item), nullptr, ""});
    if (!seen.insert(scans.back().scan.bone).second) item["bone"].fail("this bone has two scans");
  }
  return scans;
}

}  // namespace zyga::files
