#include "ui/settings/preferences.h"

#include <QSettings>
#include <algorithm>

namespace zyga::ui {
namespace {

constexpr char kLanguage[] = "look/language", kDark[] = "look/dark", kContrast[] = "look/contrast",
               kText[] = "look/textPercent", kHints[] = "hints/shown";

}  // namespace

Preferences Preferences::read() {
  const QSettings kept;
  Preferences p;
  p.language = kept.value(kLanguage).toString();
  p.look.scheme = kept.value(kDark, false).toBool() ? Scheme::Dark : Scheme::Light;
  p.look.highContrast = kept.value(kContrast, false).toBool();
  p.look.textPercent = std::clamp(kept.value(kText, 100).toInt(), Look::kLeastText, Look::kMostText);
  p.hints = kept.value(kHints, true).toBool();
  return p;
}

void Preferences::write() const {
  QSettings kept;
  kept.setValue(kLanguage, language);
  kept.setValue(kDark, look.scheme == Scheme::Dark);
  kept.setValue(kContrast, look.highContrast);
  kept.setValue(kText, look.textPercent);
  kept.setValue(kHints, hints);
}

}  // namespace zyga::ui
