#include "app/verbs/offscreen.h"

#include <QGuiApplication>

namespace zyga::app {

Offscreen::Offscreen(bool figures) {
  if (QCoreApplication::instance()) return;
  if (figures)
    application_ = std::make_unique<QGuiApplication>(count_, words_);
  else
    application_ = std::make_unique<QCoreApplication>(count_, words_);
}

Offscreen::~Offscreen() = default;

}  // namespace zyga::app
