#pragma once

#include <memory>

class QCoreApplication;

namespace zyga::app {

/// What a batch verb needs of Qt: an application that asks no display, for the language and, where `figures` are drawn,
/// for fonts. One a run; in its place stays what is there already (tests have one).
class Offscreen {
 public:
  explicit Offscreen(bool figures);
  ~Offscreen();

 private:
  int count_ = 3;
  char name_[10] = "zygapose", option_[10] = "-platform", platform_[10] = "offscreen";
  char* words_[4] = {name_, option_, platform_, nullptr};
  std::unique_ptr<QCoreApplication> application_;
};

}  // namespace zyga::app
