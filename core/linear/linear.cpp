#include "core/linear/linear.h"

#include <Eigen/Cholesky>
#include <Eigen/Eigenvalues>
#include <Eigen/LU>
#include <algorithm>
#include <cassert>
#include <cmath>

namespace zyga::linear {
namespace {

template <class Matrix>
SymmetricEigen<Matrix::RowsAtCompileTime> eigenOf(const Matrix& A) {
  assert(A.rows() == A.cols());
  const Eigen::SelfAdjointEigenSolver<Matrix> solver(A);
  return {solver.eigenvalues(), solver.eigenvectors()};
}

template <class Matrix, class Vector>
Vector solvedSymmetric(const Matrix& A, const Vector& b) {
  assert(A.rows() == A.cols() && A.rows() == b.size());
  return A.template selfadjointView<Eigen::Lower>().ldlt().solve(b);
}

}  // namespace

/// Two rows have their tridiagonal form already, which spares the making of it.
SymmetricEigen<2> symmetricEigen(const Eigen::Matrix2d& A) {
  const double largest = std::max({std::abs(A(0, 0)), std::abs(A(1, 0)), std::abs(A(1, 1))});
  const double scale = largest == 0 ? 1 : largest;
  const Eigen::Matrix<double, 1, 1> below(A(1, 0) / scale);
  Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d> solver;
  solver.computeFromTridiagonal(A.diagonal() / scale, below, Eigen::ComputeEigenvectors);
  return {solver.eigenvalues() * scale, solver.eigenvectors()};
}

SymmetricEigen<3> symmetricEigen(const Eigen::Matrix3d& A) { return eigenOf(A); }
SymmetricEigen<Eigen::Dynamic> symmetricEigen(const Eigen::MatrixXd& A) { return eigenOf(A); }

Eigen::Vector3d solveSymmetric(const Eigen::Matrix3d& A, const Eigen::Vector3d& b) { return solvedSymmetric(A, b); }
Eigen::Vector4d solveSymmetric(const Eigen::Matrix4d& A, const Eigen::Vector4d& b) { return solvedSymmetric(A, b); }
SmallVector solveSymmetric(const SmallMatrix& A, const SmallVector& b) { return solvedSymmetric(A, b); }

Eigen::MatrixXd solvePositive(const Eigen::MatrixXd& A, const Eigen::MatrixXd& B) {
  assert(A.rows() == A.cols() && A.rows() == B.rows());
  return A.llt().solve(B);
}

std::optional<Eigen::MatrixXd> inverseOfPositive(const Eigen::MatrixXd& A) {
  assert(A.rows() == A.cols());
  const Eigen::LLT<Eigen::MatrixXd> llt(A);
  if (llt.info() != Eigen::Success) return std::nullopt;
  return llt.solve(Eigen::MatrixXd::Identity(A.rows(), A.cols()));
}

std::optional<Eigen::Vector4d> solve(const Eigen::Matrix4d& A, const Eigen::Vector4d& b) {
  const Eigen::FullPivLU<Eigen::Matrix4d> lu(A);
  if (!lu.isInvertible()) return std::nullopt;
  return lu.solve(b);
}

Eigen::Vector3d singularValues(const Eigen::Matrix3Xd& columns) {
  const Eigen::Matrix3d squares = columns.lazyProduct(columns.transpose());
  return eigenOf(squares).values.reverse().cwiseMax(0).cwiseSqrt();
}

Eigen::Matrix4d similarity(const Eigen::Matrix3Xd& from, const Eigen::Matrix3Xd& to) {
  assert(from.cols() == to.cols());
  return Eigen::umeyama(from, to, true);
}

Eigen::Quaterniond turnBetween(const Eigen::Vector3d& from, const Eigen::Vector3d& to) {
  constexpr double kOpposite = 1e-12;
  const Eigen::Vector3d a = from.normalized(), b = to.normalized();
  const double cosine = b.dot(a);
  Eigen::Quaterniond turn;
  if (cosine < -1 + kOpposite) {
    turn.w() = 0;
    turn.vec() = a.unitOrthogonal();
    return turn;
  }
  // Half the angle: its cosine is w, and |a x b| = 2 sin cos of it.
  const double s = std::sqrt((1 + cosine) * 2);
  const double share = 1 / s;
  turn.vec() = a.cross(b) * share;
  turn.w() = s * 0.5;
  return turn;
}

}  // namespace zyga::linear
