#include "core/kinematics/quadratic_program.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace zyga::kinematics {
namespace {

// The dual active-set method of Goldfarb & Idnani (1983), for: minimise x'Hx/2 - g'x, n_i . x <= m_i for all i.
//
// x with multipliers u >= 0 of the active half-spaces A solves the problem of A alone where Hx - g + N u = 0 (N: their
// normals as columns) and N'x = m on A. It begins with A empty, x = H^-1 g. Then, while some half-space q is violated:
//
//   1. Let its multiplier grow by t. x moves by t z and u falls by t r, where from the two conditions
//        z = -H^-1 n + H^-1 N r,   r from (N' H^-1 N) r = N' H^-1 n,
//      so that x stays on the active planes and gains on n . x at the rate n . z = -slope.
//   2. The step ends where q is met, t = (n . x - m) / slope, or before that where the first multiplier of A has
//      fallen to zero, t = min u_i / r_i over r_i > 0. In the second case that half-space leaves A, and 1 again.
//   3. q joins A.
//
// Where the slope is zero and no r_i is positive, n is a combination of active normals that point the other way: no
// point lies in all half-spaces. N' H^-1 N is kept as its Cholesky factor L, to which q adds a row; those below one
// that leaves are worked out anew. The value of the dual problem rises with every step, so no A occurs twice.
constexpr double kViolated = 1e-11;
constexpr double kDependent = 1e-13;  // share of its own length that a normal must keep outside the active ones
constexpr double kNever = std::numeric_limits<double>::infinity();

}  // namespace

void HalfSpace::add(int entry, double value) {
  at[static_cast<std::size_t>(count)] = entry;
  normal[static_cast<std::size_t>(count++)] = value;
}

double HalfSpace::operator()(const Eigen::VectorXd& x) const {
  double sum = 0;
  for (int i = 0; i < count; ++i) sum += normal[static_cast<std::size_t>(i)] * x[at[static_cast<std::size_t>(i)]];
  return sum;
}

Eigen::VectorXd QuadraticProgram::times(const HalfSpace& halfSpace) const {
  Eigen::VectorXd product = Eigen::VectorXd::Zero(inverse_.rows());
  for (int i = 0; i < halfSpace.count; ++i) {
    const auto k = static_cast<std::size_t>(i);
    product += halfSpace.normal[k] * inverse_.col(halfSpace.at[k]);
  }
  return product;
}

void QuadraticProgram::join(const std::vector<HalfSpace>& halfSpaces, std::size_t place) {
  const auto n = static_cast<Eigen::Index>(place);
  if (n >= factor_.rows()) factor_.conservativeResize(2 * n + 8, 2 * n + 8);
  const HalfSpace& row = halfSpaces[active_[place]];
  Eigen::VectorXd entries(n);
  for (Eigen::Index j = 0; j < n; ++j) entries[j] = row(inverseTimes_[static_cast<std::size_t>(j)]);
  factor_.topLeftCorner(n, n).triangularView<Eigen::Lower>().solveInPlace(entries);
  const double own = row(inverseTimes_[place]);
  factor_.row(n).head(n) = entries.transpose();
  factor_(n, n) = std::sqrt(std::max(own - entries.squaredNorm(), kDependent * own));
}

void QuadraticProgram::drop(const std::vector<HalfSpace>& halfSpaces, std::size_t place) {
  const auto at = static_cast<std::ptrdiff_t>(place);
  active_.erase(active_.begin() + at);
  multipliers_.erase(multipliers_.begin() + at);
  inverseTimes_.erase(inverseTimes_.begin() + at);
  for (std::size_t i = place; i < active_.size(); ++i) join(halfSpaces, i);
}

QuadraticProgram::Step QuadraticProgram::stepFor(const std::vector<HalfSpace>& halfSpaces,
                                                 const HalfSpace& violated) const {
  Step step;
  const auto n = static_cast<Eigen::Index>(active_.size());
  step.along = -times(violated);
  const double own = -violated(step.along);
  step.release.resize(n);
  if (n > 0) {
    for (Eigen::Index i = 0; i < n; ++i)
      step.release[i] = -halfSpaces[active_[static_cast<std::size_t>(i)]](step.along);
    const auto L = factor_.topLeftCorner(n, n).triangularView<Eigen::Lower>();
    L.solveInPlace(step.release);
    L.transpose().solveInPlace(step.release);
    for (Eigen::Index i = 0; i < n; ++i) step.along += step.release[i] * inverseTimes_[static_cast<std::size_t>(i)];
  }
  step.slope = -violated(step.along);
  if (step.slope < kDependent * own) step.slope = 0;
  return step;
}

bool QuadraticProgram::takeIn(const std::vector<HalfSpace>& halfSpaces, std::size_t violated, Eigen::VectorXd& x) {
  const HalfSpace& wanted = halfSpaces[violated];
  double multiplier = 0;
  for (;;) {
    const Step step = stepFor(halfSpaces, wanted);
    double released = kNever;
    std::size_t first = 0;
    for (std::size_t i = 0; i < active_.size(); ++i) {
      const double rate = step.release[static_cast<Eigen::Index>(i)];
      if (rate <= 0 || multipliers_[i] / rate >= released) continue;
      released = multipliers_[i] / rate;
      first = i;
    }
    const double met = step.slope > 0 ? (wanted(x) - wanted.max) / step.slope : kNever;
    const double length = std::min(released, met);
    if (length == kNever) return false;
    if (step.slope > 0) x += length * step.along;
    for (std::size_t i = 0; i < active_.size(); ++i) {
      multipliers_[i] = std::max(0.0, multipliers_[i] - length * step.release[static_cast<Eigen::Index>(i)]);
    }
    multiplier += length;
    if (met <= released) break;
    drop(halfSpaces, first);
  }
  active_.push_back(violated);
  multipliers_.push_back(multiplier);
  inverseTimes_.push_back(times(wanted));
  join(halfSpaces, active_.size() - 1);
  return true;
}

bool QuadraticProgram::solve(const Eigen::VectorXd& g, const std::vector<HalfSpace>& halfSpaces, Eigen::VectorXd& x) {
  active_.clear();
  multipliers_.clear();
  inverseTimes_.clear();
  x.noalias() = inverse_ * g;
  // Every round raises the dual value; the bound is for rounding alone.
  for (std::size_t round = 0; round < 4 * halfSpaces.size() + 16; ++round) {
    std::size_t worst = halfSpaces.size();
    double most = kViolated;
    for (std::size_t i = 0; i < halfSpaces.size(); ++i) {
      const double violation = halfSpaces[i](x) - halfSpaces[i].max;
      if (violation <= most || std::find(active_.begin(), active_.end(), i) != active_.end()) continue;
      most = violation;
      worst = i;
    }
    if (worst == halfSpaces.size()) return true;
    if (!takeIn(halfSpaces, worst, x)) return false;
  }
  return true;
}

}  // namespace zyga::kinematics
