#pragma once

#include <Eigen/Core>
#include <array>
#include <vector>

namespace zyga::kinematics {

/// The half-space n . x <= max, where n has at most three entries that are not zero.
struct HalfSpace {
  std::array<int, 3> at{};         ///< which entries of x
  std::array<double, 3> normal{};  ///< the entries of n there
  int count = 0;
  double max = 0;

  void add(int entry, double value);
  double operator()(const Eigen::VectorXd& x) const;
};

/// Minimises x'Hx/2 - g'x over the half-spaces by the dual method of Goldfarb & Idnani (1983, Math. Program. 27:1),
/// which starts from the free minimum and takes in one violated half-space after the other.
class QuadraticProgram {
 public:
  /// Takes the inverse of H, which must be positive definite, as it serves several sets of half-spaces.
  explicit QuadraticProgram(Eigen::MatrixXd inverseOfH) : inverse_(std::move(inverseOfH)) {}

  /// False when no point lies in all half-spaces; `x` is then of no use.
  bool solve(const Eigen::VectorXd& g, const std::vector<HalfSpace>& halfSpaces, Eigen::VectorXd& x);

 private:
  struct Step {
    Eigen::VectorXd along;    ///< of x
    Eigen::VectorXd release;  ///< how fast the active multipliers fall
    double slope = 0;         ///< how fast the violation falls
  };
  bool takeIn(const std::vector<HalfSpace>& halfSpaces, std::size_t violated, Eigen::VectorXd& x);
  Step stepFor(const std::vector<HalfSpace>& halfSpaces, const HalfSpace& violated) const;
  Eigen::VectorXd times(const HalfSpace& halfSpace) const;
  /// Works out the row of the factor that belongs to the active half-space at `place`, the rows before it standing.
  void join(const std::vector<HalfSpace>& halfSpaces, std::size_t place);
  void drop(const std::vector<HalfSpace>& halfSpaces, std::size_t place);

  Eigen::MatrixXd inverse_;
  std::vector<std::size_t> active_;
  std::vector<double> multipliers_;            ///< of the active ones
  std::vector<Eigen::VectorXd> inverseTimes_;  ///< inverse_ times their normals
  Eigen::MatrixXd factor_;                     ///< lower, of N' H^-1 N; its first active_.size() rows
};

}  // namespace zyga::kinematics
