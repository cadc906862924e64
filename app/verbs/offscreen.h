#pragma once

#include <QGuiApplication>

namespace zyga::app {

/// What fonts and figures need of Qt in a batch verb: an application that asks no display. Make it once a run, before
/// the first figure.
class Offscreen {
 public:
  Offscreen();

 private:
  int count_ = 3;
  char name_[10] = "zygapose", option_[10] = "-platform", platform_[10] = "offscreen";
  char* words_[4] = {name_, option_, platform_, nullptr};
  QGuiApplication application_;
};

}  // namespace zyga::app
