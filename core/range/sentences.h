#pragma once

#include <string>

#include "core/range/joint_judge.h"

namespace zyga::range {

/// What a criterion found: "right facets share 38 % (least 50 %)", "flexion 52° of 40° (author's choice)".
std::string describe(const JointJudge& judge, const Criterion& criterion);

/// A whole verdict: "C6-C7 beyond: right facets share 38 % (least 50 %), dorsiflexion 9.4° of 7.1°". The angle after
/// "of" is where the range of that motion ends with the joint's other angles as they are; "by itself" is added where
/// the other angles leave no range around zero and are taken as zero instead.
std::string sentence(const JointJudge& judge, const Criteria& criteria, const Eigen::Vector3d& angles);

/// What is at its limit where a range ends, from the criteria just outside: "left facets share 50 %",
/// "limit 40° (author's choice)".
std::string stopText(const JointJudge& judge, const Criteria& justOutside);

}  // namespace zyga::range
