#include "ui/viewport/pace.h"

#include <algorithm>
#include <array>

namespace zyga::ui {
namespace {

constexpr std::array kScales{1.0, 0.8, 0.65, 0.5, 0.4};
// A tenth of a second a frame is the aim; the rest of it belongs to the pose, the findings and the other panels.
constexpr double kTooLong = 55, kQuick = 22;  // ms
constexpr int kPatience = 12;                 // quick frames before drawing finer, so that it does not swing

}  // namespace

double Pace::scale() const { return kScales[static_cast<std::size_t>(step_)]; }

void Pace::took(double milliseconds) {
  quickFrames_ = milliseconds < kQuick ? quickFrames_ + 1 : 0;
  if (milliseconds > kTooLong)
    step_ = std::min(step_ + 1, static_cast<int>(kScales.size()) - 1);
  else if (quickFrames_ >= kPatience && step_ > 0) {
    --step_;
    quickFrames_ = 0;
  }
}

}  // namespace zyga::ui
