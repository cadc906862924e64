#include "ui/scans/landmark_marks.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "core/anatomy/plan/build_specimen.h"
#include "core/solid/mesh/fit.h"
#include "ui/commands/scan_edits.h"
#include "ui/theme/typography.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using anatomy::MarkBy;
using anatomy::WantedMark;

constexpr double kFacetTurn = 0.6, kBallTurn = 1.1;  // rad from the place under the brush

std::vector<Eigen::Vector3d> outlineOf(const anatomy::Facet& facet) {
  std::vector<Eigen::Vector3d> corners;
  for (std::size_t i = 0; i < facet.outline.size(); ++i) corners.push_back(facet.corner(i));
  return corners;
}

}  // namespace

LandmarkMarks::LandmarkMarks(Document& document, QObject* parent) : QObject(parent), document_(document) {
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (!(what & Change::Scans) || !hasScan()) return;
    adoptTrace();
    doubt();
    emit changed();
  });
}

void LandmarkMarks::setBone(const anatomy::BoneName& bone, std::shared_ptr<const ScanSurface> surface) {
  bone_ = bone;
  surface_ = std::move(surface);
  sculptedAnimal_ = anatomy::buildSpecimen(document_.project().table);
  index_ = sculptedAnimal_.findBone(toId(bone)).value();
  wanted_ = anatomy::marksFor(sculpted());
  traces_.clear();
  current_ = wanted_.empty() ? std::string() : wanted_.front().name;
  for (auto mark = wanted_.rbegin(); mark != wanted_.rend(); ++mark)
    if (mark->required && !isMade(*mark)) current_ = mark->name;
  adoptTrace();
  doubt();
  emit changed();
}

void LandmarkMarks::setSurface(std::shared_ptr<const ScanSurface> surface) {
  surface_ = std::move(surface);
  doubt();
  emit changed();
}

void LandmarkMarks::doubt() {
  doubts_.clear();
  if (surface_ && hasScan()) doubts_ = solid::markDoubts(scan(), sculpted(), surface_->marked());
}

std::vector<anatomy::MarkDoubt> LandmarkMarks::doubtsOf(const WantedMark& mark) const {
  std::vector<anatomy::MarkDoubt> out;
  std::copy_if(doubts_.begin(), doubts_.end(), std::back_inserter(out),
               [&](const anatomy::MarkDoubt& doubt) { return doubt.mark == mark.name; });
  return out;
}

LandmarkMarks::Open LandmarkMarks::openMarks(const anatomy::Scan& scan) const {
  Open open;
  const auto index = sculptedAnimal_.findBone(toId(scan.bone));
  if (!index) return open;
  for (const WantedMark& mark : anatomy::marksFor(sculptedAnimal_[*index])) {
    const bool made = placeOf(scan, mark).has_value();
    open.lacking += mark.required && !made;
    open.suggested += made && scan.suggested.contains(mark.name);
  }
  return open;
}

const WantedMark* LandmarkMarks::nextDoubted() const {
  const auto now = std::find_if(wanted_.begin(), wanted_.end(), [this](const auto& w) { return w.name == current_; });
  const auto start = now == wanted_.end() ? 0 : now - wanted_.begin() + 1;
  for (std::size_t k = 0; k < wanted_.size(); ++k) {
    const WantedMark& mark = wanted_[(static_cast<std::size_t>(start) + k) % wanted_.size()];
    if (!doubtsOf(mark).empty()) return &mark;
  }
  return nullptr;
}

void LandmarkMarks::step(int places) {
  const auto now = std::find_if(wanted_.begin(), wanted_.end(), [this](const auto& w) { return w.name == current_; });
  if (now == wanted_.end()) return;
  const auto last = static_cast<std::ptrdiff_t>(wanted_.size()) - 1;
  choose(wanted_[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(now - wanted_.begin() + places, 0, last))].name);
}

bool LandmarkMarks::hasScan() const { return scanOf(document_, bone_) != nullptr; }
const anatomy::Scan& LandmarkMarks::scan() const { return scanOf(document_, bone_)->scan; }
const anatomy::Bone& LandmarkMarks::sculpted() const { return sculptedAnimal_[index_]; }

const WantedMark* LandmarkMarks::current() const {
  const auto found = std::find_if(wanted_.begin(), wanted_.end(), [this](const auto& w) { return w.name == current_; });
  return found == wanted_.end() ? nullptr : &*found;
}

void LandmarkMarks::choose(const std::string& mark) {
  if (mark == current_) return;
  current_ = mark;
  adoptTrace();
  emit changed();
}

bool LandmarkMarks::isMade(const WantedMark& mark) const { return hasScan() && placeOf(scan(), mark).has_value(); }

std::optional<double> LandmarkMarks::suggested(const WantedMark& mark) const {
  if (!isMade(mark)) return std::nullopt;
  const auto found = scan().suggested.find(mark.name);
  return found == scan().suggested.end() ? std::nullopt : std::optional(found->second);
}

/// The trace whose work the record holds now; none when it was undone, mirrored or read from a table.
void LandmarkMarks::adoptTrace() {
  trace_ = {};
  trace_.mark = current_;
  const WantedMark* mark = current();
  const auto now = mark ? placeOf(scan(), *mark) : std::nullopt;
  for (const MarkTrace& trace : traces_)
    if (trace.mark == current_ && now && trace.made_S == now) trace_ = trace;
}

QString LandmarkMarks::made(const WantedMark& mark) const {
  if (!isMade(mark)) return {};
  if (const auto sure = suggested(mark))
    return tr("suggested by the program, %1 sure: accept it, or mark it anew").arg(percent(*sure));
  const double scale = scan().scale;
  if (mark.role) {
    const anatomy::ScanFacet& facet = *facetOf(scan(), *mark.role);
    const QString length = millimetres(scale * facet.facet.length(), 0),
                  width = millimetres(scale * facet.facet.width(), 0);
    return facet.measured ? tr("%1 × %2, residual %3").arg(length, width, millimetres(scale * facet.residual, 2))
                          : tr("%1 × %2, mirrored, not measured").arg(length, width);
  }
  if (const auto fit = scan().fits.find(mark.name); fit != scan().fits.end())
    return tr("radius %1, residual %2")
        .arg(millimetres(scale * fit->second.radius), millimetres(scale * fit->second.residual, 2));
  return tr("marked");
}

QString LandmarkMarks::madeBriefly(const WantedMark& mark) const {
  if (!isMade(mark)) return {};
  if (const auto sure = suggested(mark)) return tr("suggested, %1").arg(percent(*sure));
  if (!mark.role) return tr("marked");
  const anatomy::ScanFacet& facet = *facetOf(scan(), *mark.role);
  return facet.measured ? millimetres(scan().scale * facet.residual, 2) : tr("mirrored");
}

void LandmarkMarks::place(const ScanHit& at) {
  const WantedMark* mark = current();
  if (!mark || !hasScan()) return;
  if (mark->by == MarkBy::Point) return set(*mark, at.p_S);
  if (mark->by != MarkBy::Ring) return;
  trace_.places_S.push_back(at.p_S);
  make();
}

void LandmarkMarks::brush(const ScanHit& at, double radius, bool away) {
  const WantedMark* mark = current();
  if (!mark || !surface_ || !hasScan()) return;
  const double turn = mark->by == MarkBy::Facet ? kFacetTurn : kBallTurn;
  const auto covered = solid::brushTriangles(surface_->mesh(), at.p_S, at.normal_S, radius, turn);
  std::vector<std::uint32_t> now;
  if (away)
    std::set_difference(trace_.triangles.begin(), trace_.triangles.end(), covered.begin(), covered.end(),
                        std::back_inserter(now));
  else
    std::set_union(trace_.triangles.begin(), trace_.triangles.end(), covered.begin(), covered.end(),
                   std::back_inserter(now));
  if (now == trace_.triangles) return;
  trace_.triangles = std::move(now);
  emit changed();
}

void LandmarkMarks::endStroke() { make(); }

void LandmarkMarks::make() {
  const WantedMark* mark = current();
  if (!mark) return;
  try {
    if (mark->by == MarkBy::Ring && trace_.places_S.size() >= 3) return makeRing();
    if (mark->by == MarkBy::Ball && !trace_.triangles.empty()) return makeBall();
    if (mark->by == MarkBy::Facet && !trace_.triangles.empty()) return makeFacet(*mark);
  } catch (const std::exception& error) {
    emit told(tr("%1: %2.").arg(capital(markName(*mark)), sayFailure(error)));
  }
  emit changed();
}

void LandmarkMarks::makeBall() {
  const solid::SphereFit fit = solid::fitSphere(solid::patchOf(surface_->mesh(), trace_.triangles));
  trace_.made_S = fit.centre;
  trace_.radius = fit.radius;
  trace_.rms = fit.quality.rms;
  trace_.error = fit.centreError;
  trace_.hollow = fit.hollow;
  traces_.push_back(trace_);
  const double share = fit.centreError / std::max(1e-9, fit.radius);
  constexpr double kDoubtful = 0.1;
  emit told(share > kDoubtful
                ? tr("The centre is only known to %1: brush more of the curve.").arg(millimetres(fit.centreError))
                : (fit.hollow ? tr("Centre known to %1; the surface is concave.")
                              : tr("Centre known to %1; the surface is convex."))
                      .arg(millimetres(fit.centreError)));
  // Of a flat patch the centre is not known at all; records hold numbers.
  constexpr double kUnknown = 1e3;  // m
  const auto known = [](double length) { return length < kUnknown ? length : kUnknown; };
  set(*current(), fit.centre, anatomy::MarkFit{known(fit.radius), known(fit.quality.rms), known(fit.centreError)});
}

void LandmarkMarks::makeRing() {
  const solid::CircleFit fit = solid::fitCircle(trace_.places_S);
  trace_.made_S = fit.centre;
  trace_.radius = fit.radius;
  trace_.rms = fit.rms;
  traces_.push_back(trace_);
  set(*current(), fit.centre, anatomy::MarkFit{fit.radius, fit.rms, 0});
}

Eigen::Vector3d LandmarkMarks::slideOf(anatomy::FacetRole role) const {
  const anatomy::Facet* known = sculpted().facet(scan().mirror ? mirrored(role) : role);
  if (!known || !scan().placed) return Eigen::Vector3d::Zero();
  return boneFromScan(scan()).linear().inverse() * known->slide;
}

void LandmarkMarks::makeFacet(const WantedMark& mark) {
  const auto fit =
      solid::fitFacet(solid::patchOf(surface_->mesh(), trace_.triangles), *mark.role, slideOf(*mark.role), outlineBy_);
  trace_.made_S = fit.facet.centre;
  trace_.rms = fit.quality.rms;
  traces_.push_back(trace_);
  constexpr double kKept = 0.8;
  if (fit.quality.kept < kKept)
    emit told(tr("%1 of what was brushed does not lie in the facet's plane and was left out.")
                  .arg(percent(1 - fit.quality.kept)));
  anatomy::Scan after = scan();
  setFacet(after, sculpted(), {fit.facet, fit.quality.rms});
  push(after, tr("Mark the %1 of %2").arg(markName(mark), QString::fromStdString(toId(bone_))));
}

void LandmarkMarks::set(const WantedMark& mark, const Eigen::Vector3d& p_S,
                        const std::optional<anatomy::MarkFit>& fit) {
  anatomy::Scan after = scan();
  if (fit)
    setLandmark(after, sculpted(), mark.name, p_S, *fit);
  else
    setLandmark(after, sculpted(), mark.name, p_S);
  push(after, tr("Mark the %1 of %2").arg(markName(mark), QString::fromStdString(toId(bone_))));
}

void LandmarkMarks::push(const anatomy::Scan& after, const QString& text) { changeScan(document_, after, text); }

void LandmarkMarks::takeAway() {
  const WantedMark* mark = current();
  if (!mark || !hasScan()) return;
  trace_ = {};
  trace_.mark = current_;
  if (!isMade(*mark)) return emit changed();
  anatomy::Scan after = scan();
  if (mark->role)
    removeFacet(after, *mark->role);
  else
    setLandmark(after, sculpted(), mark->name, std::nullopt);
  push(after, tr("Remove the %1 of %2").arg(markName(*mark), QString::fromStdString(toId(bone_))));
}

void LandmarkMarks::accept() {
  const WantedMark* mark = current();
  if (!mark || !suggested(*mark)) return;
  anatomy::Scan after = scan();
  after.suggested.erase(mark->name);
  const QString step = tr("Accept the %1 of %2").arg(markName(*mark), QString::fromStdString(toId(bone_)));
  const auto next = std::find_if(wanted_.begin(), wanted_.end(),
                                 [&](const WantedMark& other) { return &other != mark && suggested(other); });
  if (next != wanted_.end()) current_ = next->name;
  push(after, step);
}

void LandmarkMarks::acceptAll() {
  if (!hasScan() || scan().suggested.empty()) return;
  anatomy::Scan after = scan();
  after.suggested.clear();
  push(after, tr("Accept the marks of %1").arg(QString::fromStdString(toId(bone_))));
}

void LandmarkMarks::takeBackPlace() {
  if (trace_.places_S.empty()) return;
  trace_.places_S.pop_back();
  make();
}

void LandmarkMarks::mirrorAll() {
  if (!hasScan()) return;
  anatomy::Scan after = scan();
  try {
    const int made = anatomy::mirrorMarks(after, sculpted());
    if (made == 0) return emit told(tr("Every mark of one side has its partner already."));
    if (surface_) solid::measureMirrored(after, surface_->marked());
    push(after, tr("Mirror the marks of %1").arg(QString::fromStdString(toId(bone_))));
    emit told(tr("Mirrored across the mid-plane: %1.").arg(made));
  } catch (const std::exception& error) {
    emit told(capital(sayFailure(error)) + ".");
  }
}

void LandmarkMarks::mirrorCurrent() {
  const WantedMark* mark = current();
  if (!mark || !hasScan()) return;
  anatomy::Scan after = scan();
  try {
    const int made = anatomy::mirrorMarks(after, sculpted(), mark->name);
    if (made == 0) return emit told(tr("There is nothing here that could be mirrored: mark one side of a pair first."));
    if (surface_) solid::measureMirrored(after, surface_->marked());
    push(after, tr("Mirror the %1 of %2").arg(markName(*mark), QString::fromStdString(toId(bone_))));
  } catch (const std::exception& error) {
    emit told(capital(sayFailure(error)) + ".");
  }
}

std::vector<ShownMark> LandmarkMarks::shown() const {
  std::vector<ShownMark> out;
  if (!hasScan()) return out;
  for (const WantedMark& mark : wanted_) {
    const auto at = placeOf(scan(), mark);
    if (!at) continue;
    ShownMark drawn{markName(mark), *at, {}, 0, mark.name == current_};
    drawn.doubted = !doubtsOf(mark).empty();
    if (mark.role) drawn.outline = outlineOf(facetOf(scan(), *mark.role)->facet);
    if (drawn.chosen && mark.by == MarkBy::Ball) drawn.radius = trace_.radius;
    out.push_back(drawn);
  }
  for (const Eigen::Vector3d& p_S : trace_.places_S) out.push_back({{}, p_S, {}, 0, true});
  return out;
}

}  // namespace zyga::ui
