#include "ui/ground/ground_state.h"

namespace zyga::ui {

GroundState::GroundState(Document& document, QObject* parent) : QObject(parent), document_(document) {
  connect(&document_, &Document::changed, this, &GroundState::forget);
}

void GroundState::forget(Changes what) {
  // The articulation moves with the assumptions, and with it the hulls' parts against each other.
  if (what & (Changes(Change::Assumptions) | Change::Specimen | Change::Scans)) segments_.reset();
  if (what & (Changes(Change::Pose) | Change::Assumptions | Change::Specimen | Change::Scans | Change::Ground)) {
    balance_.reset();
    fits_.reset();
  }
  if (what & Change::Ground) laid_.reset();
}

const study::Balance& GroundState::balance() const {
  if (!segments_) segments_ = study::bodySegments(document_.scenario());
  if (!balance_) balance_ = study::balanceOf(document_.scenario(), *segments_, document_.project().densities);
  return *balance_;
}

const study::LaidTrackway& GroundState::laid() const {
  if (!laid_) laid_ = study::layOut(document_.project().trackway);
  return *laid_;
}

const std::vector<study::FootFit>& GroundState::fits() const {
  if (!fits_) fits_ = study::fitFeet(study::feetOf(document_.specimen(), document_.placement()), laid().prints);
  return *fits_;
}

Eigen::Vector2d GroundState::forward() const {
  const Eigen::Vector2d forward = document_.pose().X_WRoot.linear().col(0).head<2>();
  return forward.norm() > 1e-9 ? forward.normalized() : Eigen::Vector2d::UnitX();
}

}  // namespace zyga::ui
