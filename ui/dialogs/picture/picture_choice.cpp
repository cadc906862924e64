#include "ui/dialogs/picture/picture_choice.h"

#include <QSettings>
#include <QStringList>
#include <algorithm>
#include <cmath>

namespace zyga::ui {
namespace {

constexpr char kView[] = "picture/view", kLens[] = "picture/throughLens", kFocal[] = "picture/lensMm",
               kEye[] = "picture/eyeM", kTurn[] = "picture/turn", kDistance[] = "picture/distanceM",
               kHorizon[] = "picture/horizon", kWidth[] = "picture/width", kTransparent[] = "picture/transparent",
               kGrid[] = "picture/grid", kFinished[] = "picture/finished", kPasses[] = "picture/passes";

/// What is kept, or the usual when it is no number in this range.
double number(const QSettings& kept, const char* key, double usual, double least, double most) {
  bool valid = false;
  const double value = kept.value(key, usual).toDouble(&valid);
  return valid && std::isfinite(value) ? std::clamp(value, least, most) : usual;
}

}  // namespace

PictureChoice PictureChoice::read() {
  const QSettings kept;
  PictureChoice choice;
  const int view = kept.value(kView, -1).toInt();
  if (view >= 0 && view <= static_cast<int>(picture::StandardView::ThreeQuarter))
    choice.view = static_cast<picture::StandardView>(view);
  choice.lens = kept.value(kLens, choice.lens).toBool();
  choice.shot.lens = number(kept, kFocal, choice.shot.lens, 8, 800);
  choice.shot.eyeHeight = number(kept, kEye, choice.shot.eyeHeight, 0.05, 100);
  choice.shot.turn = number(kept, kTurn, choice.shot.turn, -4, 4);
  if (kept.contains(kDistance)) choice.shot.distance = number(kept, kDistance, 20, 0.5, 10000);
  choice.horizon = kept.value(kHorizon, choice.horizon).toBool();
  choice.width = static_cast<int>(number(kept, kWidth, choice.width, kNarrowest, kWidest));
  choice.transparentGround = kept.value(kTransparent, choice.transparentGround).toBool();
  choice.groundGrid = kept.value(kGrid, choice.groundGrid).toBool();
  choice.finished = kept.value(kFinished, choice.finished).toBool();
  for (const QString& word : kept.value(kPasses).toStringList())
    if (const auto pass = picture::passOf(word.toStdString())) choice.passes.push_back(*pass);
  return choice;
}

void PictureChoice::write() const {
  QSettings kept;
  kept.setValue(kView, view ? static_cast<int>(*view) : -1);
  kept.setValue(kLens, lens);
  kept.setValue(kFocal, shot.lens);
  kept.setValue(kEye, shot.eyeHeight);
  kept.setValue(kTurn, shot.turn);
  if (shot.distance)
    kept.setValue(kDistance, *shot.distance);
  else
    kept.remove(kDistance);
  kept.setValue(kHorizon, horizon);
  kept.setValue(kWidth, width);
  kept.setValue(kTransparent, transparentGround);
  kept.setValue(kGrid, groundGrid);
  kept.setValue(kFinished, finished);
  QStringList words;
  for (const auto pass : passes) {
    const std::string_view word = picture::wordOf(pass);
    words += QString::fromLatin1(word.data(), static_cast<int>(word.size()));
  }
  kept.setValue(kPasses, words);
}

}  // namespace zyga::ui
