#include "core/anatomy/marks/mark_doubts.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <set>

#include "core/anatomy/landmarks.h"
#include "core/linear/linear.h"

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;

// Shares of the bone's size; program defaults, no source.
constexpr double kNearPlane = 0.03;   ///< marks that agree on a mid-plane scatter by about so much
constexpr double kApart = 0.1;        ///< three places nearer to one line tell no plane
constexpr double kMostAslant = 0.27;  ///< tan 15 degrees: pairs may be sheared so far before the others tell

reason::Value doubtedLength(double metres) { return reason::Quantity{metres, reason::Unit::Length}; }

/// A mark that stands on the scan, straightened.
struct PlacedMark {
  const WantedMark* wanted;
  Vector3d p;
  std::optional<Facet> facet;
};

/// A point that lies in the mid-plane when its marks are right.
struct Middle {
  std::size_t mark, partner;  ///< places in the list of marks; the same for a mark of the middle
  Vector3d p;
  bool pair() const { return mark != partner; }
};

struct FittedPlane {
  Vector3d point, normal;
  Eigen::Matrix3d axes;    ///< columns; the last two in the plane
  Eigen::Vector3d spread;  ///< sums of squares along them
  double count;
};

std::optional<FittedPlane> planeThrough(const std::vector<Vector3d>& points, double size) {
  if (points.size() < 3) return std::nullopt;
  FittedPlane plane;
  plane.count = static_cast<double>(points.size());
  plane.point = Vector3d::Zero();
  for (const Vector3d& p : points) plane.point += p / plane.count;
  Eigen::Matrix3d scatter = Eigen::Matrix3d::Zero();
  for (const Vector3d& p : points) scatter += (p - plane.point) * (p - plane.point).transpose();
  const auto principal = linear::symmetricEigen(scatter);
  plane.axes = principal.vectors;
  plane.spread = principal.values;
  plane.normal = principal.vectors.col(0);
  if (!(principal.values(1) > 2 * std::pow(kApart * size, 2))) return std::nullopt;
  return plane;
}

/// How much less surely the plane is known at a place than it scatters: the root of one more than the place's leverage.
double lessSurely(const FittedPlane& plane, const Vector3d& p) {
  double leverage = 1 / plane.count;
  for (int k = 1; k < 3; ++k)
    leverage += std::pow(plane.axes.col(k).dot(p - plane.point), 2) / std::max(1e-18, plane.spread(k));
  return std::sqrt(1 + leverage);
}

class Doubter {
 public:
  Doubter(const Scan& scan, const Bone& sculpted, double size)
      : scan_(scan), sculpted_(sculpted), wanted_(marksFor(sculpted)), size_(size) {
    const Eigen::Affine3d map{Eigen::Affine3d(scan.straighten)};
    for (const WantedMark& mark : wanted_) {
      const auto p = placeOf(scan, mark);
      if (!p) continue;
      marks_.push_back({&mark, map * *p, {}});
      if (mark.role) marks_.back().facet = mapped(facetOf(scan, *mark.role)->facet, map);
    }
    if (scan.bone.side == Side::Midline) findMiddles();
    findPlane();
  }

  const std::optional<MarkedMidPlane>& plane() const { return plane_; }

  std::vector<MarkDoubt> doubts() {
    doubtMiddles();
    doubtPairs();
    doubtFits();
    doubtFacing();
    std::vector<MarkDoubt> out;
    for (const WantedMark& mark : wanted_)
      for (const MarkDoubt& doubt : found_)
        if (doubt.mark == mark.name) out.push_back(doubt);
    return out;
  }

 private:
  double told(double length) const { return scan_.scale * length; }
  void doubt(std::size_t i, reason::Id id, std::vector<reason::Value> values) {
    values.insert(values.begin(), markValue(*marks_[i].wanted));
    found_.push_back({marks_[i].wanted->name, {id, std::move(values)}, {}});
  }

  std::optional<std::size_t> partnerOf(std::size_t i) const {
    const WantedMark& mark = *marks_[i].wanted;
    if (mark.side == Side::Midline) return std::nullopt;
    const std::string other = mark.role ? std::string(toText(mirrored(*mark.role))) : otherSide(mark.name);
    for (std::size_t k = 0; k < marks_.size(); ++k)
      if (marks_[k].wanted->name == other) return k;
    return std::nullopt;
  }

  void findMiddles() {
    for (std::size_t i = 0; i < marks_.size(); ++i) {
      const bool seen = std::any_of(middles_.begin(), middles_.end(),
                                    [&](const Middle& m) { return (m.p - marks_[i].p).norm() < 1e-6 * size_; });
      if (marks_[i].wanted->side == Side::Midline) {
        if (!seen) middles_.push_back({i, i, marks_[i].p});  // a centre that follows its rim counts once
      } else if (marks_[i].wanted->side == Side::Left) {
        if (const auto right = partnerOf(i)) middles_.push_back({i, *right, (marks_[i].p + marks_[*right].p) / 2});
      }
    }
  }

  std::vector<Vector3d> nearPlane(const MarkedMidPlane& plane, std::optional<std::size_t> without = {}) const {
    std::vector<Vector3d> out;
    for (std::size_t i = 0; i < middles_.size(); ++i)
      if (i != without && std::abs(plane.side(middles_[i].p)) < doubtful::kOffMidPlane * size_)
        out.push_back(middles_[i].p);
    return out;
  }

  double disagreement(const MarkedMidPlane& plane) const {
    double sum = 0;
    for (const Middle& m : middles_) {
      const double off = std::pow(plane.side(m.p) / (kNearPlane * size_), 2);
      sum += off / (1 + off);
    }
    return sum;
  }

  void findPlane() {
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < middles_.size(); ++i)
      for (std::size_t j = i + 1; j < middles_.size(); ++j)
        for (std::size_t k = j + 1; k < middles_.size(); ++k) {
          const auto fit = planeThrough({middles_[i].p, middles_[j].p, middles_[k].p}, size_);
          if (!fit) continue;
          const MarkedMidPlane plane{fit->point, fit->normal};
          if (const double cost = disagreement(plane); cost < least) {
            least = cost;
            plane_ = plane;
          }
        }
    if (!plane_) return;
    if (const auto fit = planeThrough(nearPlane(*plane_), size_)) plane_ = {fit->point, fit->normal};
    double left = 0;
    for (const Middle& m : middles_)
      if (m.pair()) left += std::copysign(1.0, plane_->left.dot(marks_[m.mark].p - marks_[m.partner].p));
    if (left < 0) plane_->left = -plane_->left;
  }

  /// Each against the plane of those of the others that agree.
  void doubtMiddles() {
    if (!plane_) return;
    for (std::size_t i = 0; i < middles_.size(); ++i) {
      const auto others = planeThrough(nearPlane(*plane_, i), size_);
      if (!others) continue;
      const Middle& m = middles_[i];
      const double off = std::abs(others->normal.dot(m.p - others->point));
      const double most = doubtful::kOffMidPlane * size_ * lessSurely(*others, m.p);
      if (!(off > most)) continue;
      if (m.pair())
        doubtOneOf(m.mark, m.partner, doubt::kUneven, {doubtedLength(told(2 * off)), doubtedLength(told(2 * most))});
      else
        doubt(m.mark, doubt::kOffMidPlane, {doubtedLength(told(off)), doubtedLength(told(most))});
    }
  }

  /// The slope of a step from right to left against the plane's normal, in the plane.
  Vector3d slope(const Middle& m) const {
    const Vector3d step = marks_[m.mark].p - marks_[m.partner].p;
    const double across = step.dot(plane_->left);
    return step / across - plane_->left;
  }
  /// That most pairs share: of a bone that was sheared. Zero for fewer than three pairs.
  Vector3d commonSlope() const {
    std::array<std::vector<double>, 3> parts;
    for (const Middle& m : middles_)
      if (m.pair() && std::abs(plane_->left.dot(marks_[m.mark].p - marks_[m.partner].p)) > 0.1 * size_)
        for (int k = 0; k < 3; ++k) parts[static_cast<std::size_t>(k)].push_back(slope(m)(k));
    if (parts[0].size() < 3) return Vector3d::Zero();
    Vector3d out;
    for (int k = 0; k < 3; ++k) {
      auto& values = parts[static_cast<std::size_t>(k)];
      std::sort(values.begin(), values.end());
      out(k) = (values[(values.size() - 1) / 2] + values[values.size() / 2]) / 2;
    }
    return out;
  }

  bool isDoubted(std::size_t i) const {
    return std::any_of(found_.begin(), found_.end(),
                       [&](const MarkDoubt& doubt) { return doubt.mark == marks_[i].wanted->name; });
  }

  void doubtPairs() {
    if (!plane_) return;
    const Vector3d sheared = commonSlope();
    for (const Middle& m : middles_) {
      if (!m.pair() || isDoubted(m.mark) || isDoubted(m.partner)) continue;
      const Vector3d step = marks_[m.mark].p - marks_[m.partner].p;
      const double across = step.dot(plane_->left);
      if (across < -doubtful::kOtherSide * size_) {
        doubt(m.mark, doubt::kOtherSide, {});
        doubt(m.partner, doubt::kOtherSide, {});
        continue;
      }
      const double off = (step - across * (plane_->left + sheared)).norm();
      const double most = doubtful::kUneven * size_ + (sheared.isZero() ? kMostAslant * std::abs(across) : 0);
      if (off > most)
        doubtOneOf(m.mark, m.partner, doubt::kUneven, {doubtedLength(told(off)), doubtedLength(told(most))});
      if (marks_[m.mark].facet && !isDoubted(m.mark) && !isDoubted(m.partner)) doubtFacetPair(m);
    }
    for (std::size_t i = 0; i < marks_.size(); ++i) {
      const Side side = marks_[i].wanted->side;
      if (side == Side::Midline || scan_.bone.side != Side::Midline || partnerOf(i) || !scan_.placed) continue;
      const double left = plane_->left.dot(leftAxis()) < 0 ? -plane_->side(marks_[i].p) : plane_->side(marks_[i].p);
      if ((side == Side::Left ? left : -left) < -doubtful::kOtherSide * size_) doubt(i, doubt::kOtherSide, {});
    }
  }
  Vector3d leftAxis() const { return scan_.X_BoneScan.linear().row(1).transpose(); }

  static double areaOf(const Facet& facet) {
    double twice = 0;
    for (std::size_t i = 0; i < facet.outline.size(); ++i) {
      const auto &a = facet.outline[i], &b = facet.outline[(i + 1) % facet.outline.size()];
      twice += a.x() * b.y() - a.y() * b.x();
    }
    return std::abs(twice) / 2;
  }

  void doubtFacetPair(const Middle& m) {
    const Facet &a = *marks_[m.mark].facet, &b = *marks_[m.partner].facet;
    const double ratio = std::max(areaOf(a), areaOf(b)) / std::max(1e-18, std::min(areaOf(a), areaOf(b)));
    if (ratio > doubtful::kAreas)
      doubtOneOf(
          m.mark, m.partner, doubt::kAreasDiffer,
          {reason::Quantity{ratio, reason::Unit::Plain}, reason::Quantity{doubtful::kAreas, reason::Unit::Plain}},
          [&](std::size_t i, const Facet& known, double scale) {
            return std::abs(std::log(areaOf(*marks_[i].facet) / (scale * scale * areaOf(known))));
          });
    const Vector3d image = b.normal - 2 * b.normal.dot(plane_->left) * plane_->left;
    const double turned = std::acos(std::clamp(a.normal.dot(image), -1.0, 1.0));
    if (turned > doubtful::kTurned)
      doubtOneOf(
          m.mark, m.partner, doubt::kTurned,
          {reason::Quantity{turned, reason::Unit::Angle}, reason::Quantity{doubtful::kTurned, reason::Unit::Angle}},
          [&](std::size_t i, const Facet& known, double) {
            return 1 - known.normal.dot(scan_.X_BoneScan.linear() * marks_[i].facet->normal);
          });
  }

  const Facet* knownFacet(std::size_t i) const { return sculpted_.facet(inBone(*marks_[i].wanted->role)); }
  FacetRole inBone(FacetRole role) const { return scan_.mirror ? mirrored(role) : role; }
  /// Of a mark on the sculpted bone, as it would lie on this one were it not mirrored.
  std::optional<Vector3d> knownPlace(std::size_t i) const {
    Vector3d p;
    if (marks_[i].facet) {
      const Facet* facet = knownFacet(i);
      if (!facet) return std::nullopt;
      p = facet->centre;
    } else {
      const auto& name = marks_[i].wanted->name;
      const auto at = sculpted_.landmarks.find(scan_.mirror ? otherSide(name) : name);
      if (at == sculpted_.landmarks.end()) return std::nullopt;
      p = at->second;
    }
    if (scan_.mirror) p.y() = -p.y();
    return p;
  }
  Vector3d placeInFrame(std::size_t i) const { return scan_.X_BoneScan * (scan_.scale * marks_[i].p) / scan_.scale; }
  /// How many times as large as the sculpted bone this one is, by its marks.
  double likeness() const {
    double here = 0, there = 0;
    for (std::size_t i = 0; i < marks_.size(); ++i)
      if (const auto known = knownPlace(i)) {
        here += placeInFrame(i).norm();
        there += known->norm();
      }
    return there > 0 && here > 0 ? here / there : 1;
  }

  void doubtOneOf(std::size_t a, std::size_t b, reason::Id id, std::vector<reason::Value> values) {
    const double scale = likeness();
    const auto off = [&](std::size_t i) -> std::optional<double> {
      const auto known = knownPlace(i);
      if (!known || !scan_.placed) return std::nullopt;
      return (placeInFrame(i) - scale * *known).norm();
    };
    tellOneOf(a, b, id, std::move(values), off(a), off(b));
  }
  template <class Unlike>
  void doubtOneOf(std::size_t a, std::size_t b, reason::Id id, std::vector<reason::Value> values,
                  const Unlike& unlike) {
    const double scale = likeness();
    const auto off = [&](std::size_t i) -> std::optional<double> {
      const Facet* known = scan_.placed ? knownFacet(i) : nullptr;
      if (!known) return std::nullopt;
      Facet here = *known;
      if (scan_.mirror) here.normal.y() = -here.normal.y();
      return unlike(i, here, scale);
    };
    tellOneOf(a, b, id, std::move(values), off(a), off(b));
  }
  void tellOneOf(std::size_t a, std::size_t b, reason::Id id, const std::vector<reason::Value>& values,
                 std::optional<double> offA, std::optional<double> offB) {
    const auto tell = [&](std::size_t i, std::size_t partner) {
      std::vector<reason::Value> all = values;
      all.insert(all.begin(), markValue(*marks_[partner].wanted));
      doubt(i, id, std::move(all));
      found_.back().partner = marks_[partner].wanted->name;
    };
    const bool known = offA && offB && *offA != *offB;
    if (!known || *offA > *offB) tell(a, b);
    if (!known || *offB > *offA) tell(b, a);
  }

  void doubtFits() {
    for (std::size_t i = 0; i < marks_.size(); ++i) {
      if (marks_[i].facet) {
        const ScanFacet& marked = *facetOf(scan_, *marks_[i].wanted->role);
        const double most = doubtful::kFacetResidual * std::sqrt(areaOf(*marks_[i].facet));
        if (marked.measured && marked.residual > most)
          doubt(i, doubt::kPoorFacet, {doubtedLength(told(marked.residual)), doubtedLength(told(most))});
        continue;
      }
      const auto fit = scan_.fits.find(marks_[i].wanted->name);
      if (fit == scan_.fits.end()) continue;
      const double error = doubtful::kCentreError * size_, residual = doubtful::kFitResidual * size_;
      if (!(fit->second.centreError <= error))
        doubt(i, doubt::kCentreUnsure, {doubtedLength(told(fit->second.centreError)), doubtedLength(told(error))});
      else if (!(fit->second.residual <= residual))
        doubt(i, doubt::kPoorFit, {doubtedLength(told(fit->second.residual)), doubtedLength(told(residual))});
    }
  }

  /// Prezygapophyseal facets face up or towards the mid-plane, those behind down or away from it.
  void doubtFacing() {
    constexpr double kClearly = 0.3;
    if (!scan_.placed) return;
    for (std::size_t i = 0; i < marks_.size(); ++i) {
      if (!marks_[i].facet) continue;
      const FacetRole role = *marks_[i].wanted->role;
      const Vector3d n = scan_.X_BoneScan.linear() * marks_[i].facet->normal;
      const double inwards = isLeft(role) ? -n.y() : n.y();
      const double right = isPrezyg(role) ? n.z() + inwards : -n.z() - inwards;
      if (right < -kClearly) doubt(i, doubt::kWrongWay, {});
    }
  }

  const Scan& scan_;
  const Bone& sculpted_;
  std::vector<WantedMark> wanted_;
  double size_;
  std::vector<PlacedMark> marks_;
  std::vector<Middle> middles_;
  std::optional<MarkedMidPlane> plane_;
  std::vector<MarkDoubt> found_;
};

}  // namespace

reason::Value markValue(const WantedMark& mark) {
  if (mark.role) return termOf(*mark.role);
  if (mark.what.id.empty()) return reason::text(mark.name);
  if (mark.side == Side::Left) return reason::inner({doubt::kLeft, {mark.what}});
  if (mark.side == Side::Right) return reason::inner({doubt::kRight, {mark.what}});
  return mark.what;
}

std::optional<Vector3d> placeOf(const Scan& scan, const WantedMark& mark) {
  if (mark.role) {
    const ScanFacet* facet = facetOf(scan, *mark.role);
    return facet ? std::optional(facet->facet.centre) : std::nullopt;
  }
  const auto found = scan.landmarks.find(mark.name);
  return found == scan.landmarks.end() ? std::nullopt : std::optional(found->second);
}

std::optional<MarkedMidPlane> markedMidPlane(const Scan& scan, const Bone& sculpted, double size) {
  return size > 0 ? Doubter(scan, sculpted, size).plane() : std::nullopt;
}

std::vector<MarkDoubt> doubtsAmongMarks(const Scan& scan, const Bone& sculpted, double size) {
  return size > 0 ? Doubter(scan, sculpted, size).doubts() : std::vector<MarkDoubt>{};
}

std::vector<std::string> marksOfEnd(bool cranialEnd) {
  std::vector<std::string> out{"cranialRim", "caudalRim", std::string(kCanalCranial), std::string(kCanalCaudal),
                               cranialEnd ? "cranial" : "caudal"};
  for (const FacetRole role : cranialEnd ? std::array{FacetRole::PrezygLeft, FacetRole::PrezygRight}
                                         : std::array{FacetRole::PostzygLeft, FacetRole::PostzygRight})
    out.emplace_back(toText(role));
  return out;
}

std::vector<reason::Value> suspectsAtEnd(const std::vector<MarkDoubt>& doubts, bool cranialEnd) {
  const auto relevant = marksOfEnd(cranialEnd);
  std::vector<reason::Value> out;
  std::set<std::string> told;
  for (const MarkDoubt& doubt : doubts)
    if (std::find(relevant.begin(), relevant.end(), doubt.mark) != relevant.end() && told.insert(doubt.mark).second)
      out.push_back(doubt.why.values.front());
  return out;
}

}  // namespace zyga::anatomy
