#include "core/picture/sampling.h"

#include <gtest/gtest.h>

#include <random>

#include "core/picture/colour.h"
#include "tests/core/picture/shapes.h"

namespace zyga::picture {
namespace {

using Eigen::Vector2f;
using Eigen::Vector3f;
using Stream = PixelSequence::Stream;

std::vector<Vector2f> points(PixelSequence sequence, int count) {
  std::vector<Vector2f> all;
  for (int i = 0; i < count; ++i) all.push_back(sequence.next());
  return all;
}

/// Greatest difference between the share of points in a box from the origin and its area, over a grid of boxes.
double discrepancy(const std::vector<Vector2f>& points) {
  double worst = 0;
  for (int i = 1; i <= 20; ++i)
    for (int j = 1; j <= 20; ++j) {
      const Vector2f corner(0.05f * static_cast<float>(i), 0.05f * static_cast<float>(j));
      double inside = 0;
      for (const Vector2f& p : points) inside += (p.array() < corner.array()).all();
      worst = std::max(worst, std::abs(inside / static_cast<double>(points.size()) - corner.prod()));
    }
  return worst;
}

TEST(PixelSequence, StaysInTheUnitSquare) {
  for (const Stream use : {Stream::Fill, Stream::Key, Stream::Place})
    for (const Vector2f& p : points({1234567, 89, use, 4000000000u}, 5000)) {
      EXPECT_TRUE((p.array() >= 0).all());
      EXPECT_TRUE((p.array() < 1).all());
    }
}

TEST(PixelSequence, IsMoreEvenThanChance) {
  std::mt19937 random(1);
  std::uniform_real_distribution<float> u(0, 1);
  std::vector<Vector2f> chance;
  for (int i = 0; i < 512; ++i) {
    const float x = u(random);
    chance.emplace_back(x, u(random));
  }
  for (const Stream use : {Stream::Fill, Stream::Key, Stream::Place})
    for (std::uint32_t x = 0; x < 8; ++x) {
      EXPECT_LT(discrepancy(points({x, 3, use, 0}, 512)), 0.02);
      EXPECT_LT(discrepancy(points({x, 3, use, 0}, 512)), 0.7 * discrepancy(chance));
    }
}

TEST(PixelSequence, SamplesOfAPixelContinueOneSequence) {
  const auto whole = points({5, 6, Stream::Fill, 0}, 24), second = points({5, 6, Stream::Fill, 12}, 12);
  for (std::size_t i = 0; i < 12; ++i) EXPECT_EQ(whole[12 + i], second[i]);
}

TEST(PixelSequence, PixelsAndUsesDiffer) {
  const auto here = points({5, 6, Stream::Fill, 0}, 1)[0];
  EXPECT_NE(here, points({6, 5, Stream::Fill, 0}, 1)[0]);
  EXPECT_NE(here, points({5, 7, Stream::Fill, 0}, 1)[0]);
  EXPECT_NE(here, points({5, 6, Stream::Key, 0}, 1)[0]);
}

TEST(TangentFrame, IsSquareAndRightHanded) {
  std::mt19937 random(2);
  for (int i = 0; i < 200; ++i) {
    Vector3f n = test::randomPoint(random, 1).normalized().cast<float>();
    if (i < 6) n = (i < 3 ? 1.0f : -1.0f) * Vector3f::Unit(i % 3);
    const TangentFrame frame(n);
    EXPECT_NEAR(frame.tangent.dot(frame.bitangent), 0, 1e-5);
    EXPECT_NEAR(frame.tangent.dot(n), 0, 1e-5);
    EXPECT_NEAR(frame.tangent.norm(), 1, 1e-5);
    EXPECT_LT((frame.tangent.cross(frame.bitangent) - n).norm(), 1e-5);
  }
}

TEST(Directions, CosineDensityHasItsMeans) {
  const TangentFrame frame(Vector3f(1, 2, -2) / 3);
  double first = 0, second = 0;
  const int count = 20000;
  for (const Vector2f& u : points({0, 0, Stream::Fill, 0}, count)) {
    const Vector3f d = cosineDirection(frame, u);
    EXPECT_NEAR(d.norm(), 1, 1e-5);
    first += d.dot(frame.normal);
    second += d.dot(frame.normal) * d.dot(frame.normal);
  }
  // With density cos / pi the mean of cos is 2/3 and of cos^2 is 1/2.
  EXPECT_NEAR(first / count, 2.0 / 3, 1e-3);
  EXPECT_NEAR(second / count, 0.5, 1e-3);
}

TEST(Directions, ConeKeepsWithinItsSpread) {
  const TangentFrame frame(Vector3f(0, 0.6f, 0.8f));
  for (const Vector2f& u : points({0, 0, Stream::Key, 0}, 2000))
    EXPECT_GE(coneDirection(frame, 0.14f, u).dot(frame.normal), std::cos(std::atan(0.14)) - 1e-5);
}

TEST(Colour, TransferFunctionsAgreeWithTheStandard) {
  // IEC 61966-2-1: 0.5 encoded is 0.214041 of the light; the two branches meet at 0.04045.
  EXPECT_NEAR(linearFromSrgb(0.5f), 0.214041f, 1e-5);
  EXPECT_NEAR(linearFromSrgb(0.04045f), 0.0031308f, 1e-6);
  EXPECT_EQ(linearFromSrgb(0.0f), 0);
  EXPECT_NEAR(linearFromSrgb(1.0f), 1, 1e-6);
  for (int i = 0; i <= 255; ++i) EXPECT_EQ(byteOf(srgbFromLinear(linearFromSrgb(static_cast<float>(i) / 255))), i);
}

TEST(Colour, BytesAreClamped) {
  EXPECT_EQ(byteOf(-0.5f), 0);
  EXPECT_EQ(byteOf(1.5f), 255);
}

}  // namespace
}  // namespace zyga::picture
