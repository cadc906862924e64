#include "core/linear/linear.h"

#include <gtest/gtest.h>

#include <Eigen/LU>
#include <random>

namespace zyga::linear {
namespace {

/// Entries between -1 and 1 from a fixed seed.
class Linear : public ::testing::Test {
 protected:
  template <class Matrix>
  Matrix filled(Eigen::Index rows = Matrix::RowsAtCompileTime, Eigen::Index cols = Matrix::ColsAtCompileTime) {
    Matrix out(rows, cols);
    for (Eigen::Index i = 0; i < out.size(); ++i) out.data()[i] = number_(generator_);
    return out;
  }

  template <class Matrix>
  Matrix positive(Eigen::Index n = Matrix::RowsAtCompileTime) {
    const Matrix A = filled<Matrix>(n, n);
    return A * A.transpose() + 0.1 * Matrix::Identity(n, n);
  }

 private:
  std::mt19937 generator_{20};
  std::uniform_real_distribution<double> number_{-1, 1};
};

template <class Matrix>
void expectPrincipal(const Matrix& A) {
  const auto found = symmetricEigen(A);
  const Eigen::Index n = A.rows();
  EXPECT_TRUE((A * found.vectors).isApprox(found.vectors * found.values.asDiagonal(), 1e-12));
  EXPECT_TRUE((found.vectors.transpose() * found.vectors).isApprox(Matrix::Identity(n, n), 1e-12));
  for (Eigen::Index i = 1; i < n; ++i) EXPECT_LE(found.values(i - 1), found.values(i));
}

TEST_F(Linear, EigenvectorsStayOnTheirLinesAndStandInAscendingOrder) {
  expectPrincipal(positive<Eigen::Matrix2d>());
  expectPrincipal(positive<Eigen::Matrix3d>());
  expectPrincipal(positive<Eigen::MatrixXd>(17));
}

template <class Matrix, class Vector>
void expectSolved(const Matrix& A, const Vector& b) {
  EXPECT_TRUE((A * solveSymmetric(A, b)).isApprox(b, 1e-9));
  // The upper half is not read.
  Matrix lower = A;
  lower.template triangularView<Eigen::StrictlyUpper>().setConstant(std::numeric_limits<double>::quiet_NaN());
  EXPECT_EQ(solveSymmetric(lower, b), solveSymmetric(A, b));
}

TEST_F(Linear, SymmetricSystemsAreSolvedFromTheirLowerHalf) {
  expectSolved(positive<Eigen::Matrix3d>(), filled<Eigen::Vector3d>());
  expectSolved(positive<Eigen::Matrix4d>(), filled<Eigen::Vector4d>());
  for (const int n : {1, 5, kMostSmall}) expectSolved(positive<SmallMatrix>(n), filled<SmallVector>(n, 1));
}

TEST_F(Linear, WithNothingToSolveNothingIsAnswered) {
  EXPECT_EQ(solveSymmetric(SmallMatrix(0, 0), SmallVector(0)).size(), 0);
}

TEST_F(Linear, PositiveSystemsAreSolvedForManyRightSides) {
  const auto A = positive<Eigen::MatrixXd>(12);
  const auto B = filled<Eigen::MatrixXd>(12, 5);
  EXPECT_TRUE((A * solvePositive(A, B)).isApprox(B, 1e-9));
  EXPECT_TRUE((A * inverseOfPositive(A).value()).isApprox(Eigen::MatrixXd::Identity(12, 12), 1e-9));
}

TEST_F(Linear, AMatrixThatIsNotPositiveHasNoSuchInverse) {
  Eigen::MatrixXd A = positive<Eigen::MatrixXd>(6);
  A -= 2 * A.trace() * Eigen::MatrixXd::Identity(6, 6);
  EXPECT_FALSE(inverseOfPositive(A));
}

TEST_F(Linear, ASingularSystemHasNoAnswer) {
  Eigen::Matrix4d A = filled<Eigen::Matrix4d>();
  const Eigen::Vector4d b = filled<Eigen::Vector4d>();
  EXPECT_TRUE((A * solve(A, b).value()).isApprox(b, 1e-12));
  A.row(2) = A.row(0) + 2 * A.row(1);
  EXPECT_FALSE(solve(A, b));
}

TEST_F(Linear, SingularValuesTellALineFromAPlane) {
  Eigen::Matrix3Xd line(3, 5);
  for (int i = 0; i < 5; ++i) line.col(i) = (i - 2.0) * Eigen::Vector3d(1, 2, 2);
  const Eigen::Vector3d values = singularValues(line);
  EXPECT_NEAR(values(0), 3 * std::sqrt(10.0), 1e-12);
  EXPECT_NEAR(values(1), 0, 1e-7);
}

TEST_F(Linear, ASimilarityIsFoundAgain) {
  const Eigen::Matrix3Xd from = filled<Eigen::Matrix3Xd>(3, 6);
  Eigen::Affine3d map(Eigen::Translation3d(1, -2, 3) * Eigen::AngleAxisd(0.7, Eigen::Vector3d(1, 2, -1).normalized()) *
                      Eigen::Scaling(2.5));
  EXPECT_TRUE(similarity(from, map * from).isApprox(map.matrix(), 1e-12));
}

TEST_F(Linear, ATurnBringsOneDirectionOntoTheOther) {
  for (int i = 0; i < 20; ++i) {
    const Eigen::Vector3d from = filled<Eigen::Vector3d>(), to = filled<Eigen::Vector3d>();
    EXPECT_TRUE((turnBetween(from, to) * from.normalized()).isApprox(to.normalized(), 1e-9));
  }
  const Eigen::Vector3d up = Eigen::Vector3d::UnitZ();
  EXPECT_TRUE((turnBetween(up, -up) * up).isApprox(-up, 1e-9));
}

}  // namespace
}  // namespace zyga::linear
