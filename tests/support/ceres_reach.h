#pragma once

#include <ceres/ceres.h>

#include "core/kinematics/jacobian.h"
#include "tests/support/reach_task.h"

namespace zyga::test {

/// The same task in the words of Ceres, a general least-squares optimiser with bounds: the miss of the point as
/// residual, the neck's angles as one block, our Jacobian.
class CeresMiss final : public ceres::CostFunction {
 public:
  CeresMiss(const ReachTask& task, const std::vector<kinematics::FreeMotion>& free, const Eigen::Vector3d& p_WTarget)
      : task_(task), free_(free), p_WTarget_(p_WTarget), pose_(task.neutral) {
    kinematics::placeInto(task.specimen, task.articulation, pose_, X_WB_);
    path_ = task.specimen.chainTo(task.snout.bone);
    path_.erase(path_.begin(), std::find(path_.begin(), path_.end(), free.front().joint));
    set_num_residuals(3);
    mutable_parameter_block_sizes()->push_back(static_cast<int>(free.size()));
  }

  bool Evaluate(double const* const* parameters, double* residuals, double** jacobians) const override {
    for (std::size_t c = 0; c < free_.size(); ++c) pose_[free_[c].joint][free_[c].motion] = parameters[0][c];
    for (const kinematics::JointIndex j : path_) {
      const anatomy::Joint& joint = task_.specimen[j];
      X_WB_[joint.distal.value] =
          X_WB_[joint.proximal.value] * kinematics::jointTransform(joint, task_.articulation[j], pose_[j]);
    }
    const Eigen::Vector3d p_WPoint = X_WB_[task_.snout.bone.value] * task_.snout.p_BPoint;
    Eigen::Map<Eigen::Vector3d> miss(residuals);
    miss = p_WPoint - p_WTarget_;
    if (jacobians && jacobians[0]) {
      kinematics::jacobianInto(task_.specimen, task_.articulation, pose_, X_WB_, free_, p_WPoint, J_);
      Eigen::Map<Eigen::Matrix<double, 3, Eigen::Dynamic, Eigen::RowMajor>>(jacobians[0], 3, J_.point.cols()) =
          J_.point;
    }
    return true;
  }

 private:
  const ReachTask& task_;
  const std::vector<kinematics::FreeMotion>& free_;
  Eigen::Vector3d p_WTarget_;
  std::vector<kinematics::JointIndex> path_;
  mutable kinematics::Pose pose_;
  mutable kinematics::Placement X_WB_;
  mutable kinematics::Jacobian J_;
};

/// Stops as soon as the target is met to a hundredth of a millimetre: what follows would not count.
class CeresNearEnough final : public ceres::IterationCallback {
 public:
  ceres::CallbackReturnType operator()(const ceres::IterationSummary& summary) override {
    return summary.cost < 0.5e-10 ? ceres::SOLVER_TERMINATE_SUCCESSFULLY : ceres::SOLVER_CONTINUE;
  }
};

/// How near Ceres brings the snout within the boxes, m.
inline double ceresDistance(const ReachTask& task, const Eigen::Vector3d& p_WTarget, int mostSteps = 200) {
  const auto free = kinematics::freeMotions(task.snout.joints, {true, true, true});
  std::vector<double> q(free.size(), 0);
  ceres::Problem::Options kept;
  kept.cost_function_ownership = ceres::DO_NOT_TAKE_OWNERSHIP;
  CeresMiss miss(task, free, p_WTarget);
  ceres::Problem problem(kept);
  problem.AddResidualBlock(&miss, nullptr, q.data());
  for (std::size_t c = 0; c < free.size(); ++c) {
    const auto box = task.boxes->box(free[c].joint);
    problem.SetParameterLowerBound(q.data(), static_cast<int>(c), box.min[free[c].motion]);
    problem.SetParameterUpperBound(q.data(), static_cast<int>(c), box.max[free[c].motion]);
  }
  CeresNearEnough nearEnough;
  ceres::Solver::Options options;
  options.linear_solver_type = ceres::DENSE_QR;
  options.max_num_iterations = mostSteps;
  options.function_tolerance = 1e-12;
  options.logging_type = ceres::SILENT;
  options.callbacks.push_back(&nearEnough);
  ceres::Solver::Summary summary;
  ceres::Solve(options, &problem, &summary);
  return std::sqrt(2 * summary.final_cost);
}

}  // namespace zyga::test
