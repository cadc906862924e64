#pragma once

namespace zyga::ui {

/// Keeps moving pictures fluent on a machine without a graphics processor: draws fewer pixels when frames take too
/// long, more when there is time to spare.
class Pace {
 public:
  /// Tells what the last frame took at the present scale, ms.
  void took(double milliseconds);
  /// Pixels drawn per pixel of the window, each way.
  double scale() const;

 private:
  int step_ = 1;
  int quickFrames_ = 0;
};

}  // namespace zyga::ui
