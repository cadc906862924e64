#include <fcl/geometry/bvh/BVH_model.h>
#include <gtest/gtest.h>

#include <Eigen/Eigenvalues>

#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/tables/measurement_table.h"
#include "core/solid/mesh/triangle_mesh.h"
#include "core/solid/sculpt/sculpt.h"

/// Volume, centroid and moments of inertia against a general library's (FCL: Pan, Chitta & Manocha 2012, ICRA), on
/// bones of every shape.
namespace zyga::solid {
namespace {

using Model = fcl::BVHModel<fcl::OBBRSS<double>>;

std::unique_ptr<Model> modelOf(const TriangleMesh& mesh) {
  auto model = std::make_unique<Model>();
  model->beginModel(static_cast<int>(mesh.triangles.size()), static_cast<int>(mesh.positions.size()));
  std::vector<fcl::Vector3<double>> points;
  for (const auto& p : mesh.positions) points.push_back(p.cast<double>());
  std::vector<fcl::Triangle> triangles;
  for (const auto& t : mesh.triangles) triangles.emplace_back(t[0], t[1], t[2]);
  model->addSubModel(points, triangles);
  model->endModel();
  return model;
}

TEST(MassProperties, AgreeWithAGeneralLibraryOnBones) {
  const auto specimen = anatomy::buildSpecimen(anatomy::fillBlanks(anatomy::MeasurementTable{}));
  for (const char* id : {"C7", "D4", "Ca5", "femur.L", "rib.D5.L", "scapula.R"}) {
    TriangleMesh mesh = sculptBone(specimen, specimen.findBone(id).value(), 3000).levels.front();
    for (auto& p : mesh.positions) p += Eigen::Vector3f(0.3f, -0.2f, 0.1f);
    const MassProperties ours = massProperties(mesh);
    const auto theirs = modelOf(mesh);
    EXPECT_NEAR(ours.volume, theirs->computeVolume(), 1e-6 * ours.volume) << id;
    EXPECT_LT((ours.centroid - theirs->computeCOM()).norm(), 1e-6) << id;
    // About the origin: tr(C) 1 - C, C the second moments V (cov + c c^T).
    const Eigen::Matrix3d C = ours.volume * (ours.axes * ours.variances.asDiagonal() * ours.axes.transpose() +
                                             ours.centroid * ours.centroid.transpose());
    const Eigen::Matrix3d inertia = C.trace() * Eigen::Matrix3d::Identity() - C;
    const Eigen::Matrix3d known = theirs->computeMomentofInertia();
    EXPECT_LT((inertia - known).norm(), 1e-5 * known.norm()) << id << "\n" << inertia << "\n\n" << known;
  }
}

}  // namespace
}  // namespace zyga::solid
