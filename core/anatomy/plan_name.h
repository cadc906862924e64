#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace zyga::anatomy {

/// Which kind of animal a skeleton is built as: whose proportions fill what neither neighbours nor the other side can
/// tell, and whose characters its sculpted bones have.
enum class BodyPlan { HighBrowser, LowBrowser, WideGauge, Mammal, Bird };
inline constexpr std::array kBodyPlans{BodyPlan::HighBrowser, BodyPlan::LowBrowser, BodyPlan::WideGauge,
                                       BodyPlan::Mammal, BodyPlan::Bird};

/// What tables and files call it: "high browser".
std::string_view toText(BodyPlan plan);
std::optional<BodyPlan> bodyPlanFromText(std::string_view text);

}  // namespace zyga::anatomy
