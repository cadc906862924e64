#include "ui/commands/extreme_poses.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "ui/commands/edit_named_poses.h"
#include "ui/document/document.h"
#include "ui/theme/figures.h"
#include "ui/theme/words.h"
#include "ui/words/numbers.h"

namespace zyga::ui {
namespace {

using study::Chain;
using study::Extreme;

QString tr(const char* text) { return QCoreApplication::translate("Extremes", text); }

/// "1.20 m ahead of the neck's base and 3.40 m to the left".
QString reachWords(const Extreme& extreme) {
  const bool ahead = extreme.carriage.ahead >= 0;
  const QString base = extreme.chain == Chain::Neck ? tr("the neck's base") : tr("the tail's base");
  QString words =
      (ahead ? tr("%1 ahead of %2") : tr("%1 behind %2")).arg(metres(std::abs(extreme.carriage.ahead)), base);
  constexpr double kStraight = 0.005;  // m
  const double left = extreme.carriage.left;
  if (std::abs(left) < kStraight) return words;
  return words + (left > 0 ? tr(" and %1 to the left") : tr(" and %1 to the right")).arg(metres(std::abs(left)));
}

void replaceOrAdd(std::vector<files::NamedPose>& poses, const Extreme& extreme) {
  const std::string name = extremeName(extreme.chain, extreme.direction).toStdString();
  const auto same = std::find_if(poses.begin(), poses.end(), [&](const auto& pose) { return pose.name == name; });
  if (same == poses.end())
    poses.push_back({name, extreme.pose});
  else
    same->pose = extreme.pose;
}

}  // namespace

QString extremeName(Chain chain, range::Direction direction) {
  return (chain == Chain::Neck ? tr("Neck at its %1 limit") : tr("Tail at its %1 limit"))
      .arg(text(range::toText(direction)));
}

QString extremeWords(const Extreme& extreme) {
  const bool neck = extreme.chain == Chain::Neck;
  QString words = tr("%1 at %2, %3; %4 joints turn %5 together")
                      .arg(neck ? tr("snout") : tr("tip"), metres(extreme.carriage.tipHeight), reachWords(extreme))
                      .arg(extreme.joints.size())
                      .arg(degrees(std::abs(extreme.total)));
  const auto blank =
      std::count_if(extreme.joints.begin(), extreme.joints.end(), [](const auto& j) { return !j.judged; });
  if (blank > 0) words += tr(", %1 of them not judged").arg(blank);
  if (extreme.carriage.lowest < 0)
    words += tr("; part of it would be %1 in the ground").arg(metres(-extreme.carriage.lowest));
  return words;
}

Extreme takeExtreme(Document& document, Chain chain, range::Direction direction) {
  Extreme extreme = study::extreme(document.specimen(), document.articulation(), document.assumptions(),
                                   document.pose(), chain, direction, document.contact());
  document.changePose(extreme.pose, extremeName(chain, direction));
  return extreme;
}

std::vector<Extreme> keepExtremes(Document& document) {
  std::vector<Extreme> extremes = study::extremes(document.specimen(), document.articulation(), document.assumptions(),
                                                  document.pose(), document.contact());
  std::vector<files::NamedPose> poses = document.project().poses;
  for (const Extreme& extreme : extremes) replaceOrAdd(poses, extreme);
  document.undoStack().push(new EditNamedPoses(document, std::move(poses), tr("Keep the limits of neck and tail")));
  return extremes;
}

}  // namespace zyga::ui
