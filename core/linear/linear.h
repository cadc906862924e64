#pragma once

#include <Eigen/Geometry>
#include <optional>

/// Linear algebra that is more than sums and products, on the few sizes that core works with. Every function wraps one
/// decomposition of Eigen; they stand here so that its templates are compiled once and not in every file that solves.
/// Unless said otherwise input that is not finite gives a result that is not finite.
namespace zyga::linear {

/// Eigenvalues in ascending order, and the unit eigenvectors as columns in the same order; the sign of each is free.
template <int N>
struct SymmetricEigen {
  Eigen::Matrix<double, N, 1> values;
  Eigen::Matrix<double, N, N> vectors;
};

/// Of a symmetric matrix, of which the lower triangle alone is read.
SymmetricEigen<2> symmetricEigen(const Eigen::Matrix2d& A);
SymmetricEigen<3> symmetricEigen(const Eigen::Matrix3d& A);
SymmetricEigen<Eigen::Dynamic> symmetricEigen(const Eigen::MatrixXd& A);

/// Sizes up to this one need no memory from the heap in `SmallMatrix` and `SmallVector`.
inline constexpr int kMostSmall = 12;
using SmallMatrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, kMostSmall, kMostSmall>;
using SmallVector = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, kMostSmall, 1>;

/// x with A x = b for a symmetric A that is positive or negative semidefinite (pivoting LDL^T); the lower triangle
/// alone is read. Where A is singular, a solution of the part that can be solved.
Eigen::Vector3d solveSymmetric(const Eigen::Matrix3d& A, const Eigen::Vector3d& b);
Eigen::Vector4d solveSymmetric(const Eigen::Matrix4d& A, const Eigen::Vector4d& b);
SmallVector solveSymmetric(const SmallMatrix& A, const SmallVector& b);

/// X with A X = B for a symmetric positive definite A (LL^T), of which the lower triangle alone is read. Not checked:
/// for any other A the result means nothing.
Eigen::MatrixXd solvePositive(const Eigen::MatrixXd& A, const Eigen::MatrixXd& B);

/// The inverse of a symmetric positive definite matrix; none when it is not positive definite.
std::optional<Eigen::MatrixXd> inverseOfPositive(const Eigen::MatrixXd& A);

/// x with A x = b (LU with full pivoting); none when A is singular within rounding.
std::optional<Eigen::Vector4d> solve(const Eigen::Matrix4d& A, const Eigen::Vector4d& b);

/// In descending order: how far the columns reach along their three principal directions. From the squares, so that
/// what is smaller than 1e-8 of the largest is rounding.
Eigen::Vector3d singularValues(const Eigen::Matrix3Xd& columns);

/// The turn, scale and shift, as one homogeneous matrix, that bring the columns of `from` nearest to those of `to` in
/// least squares (Umeyama 1991, IEEE Trans. Pattern Anal. Mach. Intell. 13:376). Both have as many columns, three or
/// more that do not lie on one line.
Eigen::Matrix4d similarity(const Eigen::Matrix3Xd& from, const Eigen::Matrix3Xd& to);

/// The shortest turn that brings the direction of `from` onto that of `to`; of opposite directions one of the many.
Eigen::Quaterniond turnBetween(const Eigen::Vector3d& from, const Eigen::Vector3d& to);

}  // namespace zyga::linear
