#include "core/anatomy/plan_name.h"

namespace zyga::anatomy {

std::string_view toText(BodyPlan plan) {
  switch (plan) {
    case BodyPlan::LowBrowser:
      return "low browser";
    case BodyPlan::WideGauge:
      return "wide gauge";
    case BodyPlan::Mammal:
      return "mammal";
    case BodyPlan::Bird:
      return "bird";
    case BodyPlan::HighBrowser:
      break;
  }
  return "high browser";
}

std::optional<BodyPlan> bodyPlanFromText(std::string_view text) {
  for (const BodyPlan plan : kBodyPlans)
    if (text == toText(plan)) return plan;
  return std::nullopt;
}

}  // namespace zyga::anatomy
