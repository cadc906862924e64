#include "ui/drag/reach_drag.h"

#include <algorithm>

#include "ui/drag/reach_settings.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"

namespace zyga::ui {

namespace {

using anatomy::BoneKind;

constexpr double kToldShortfall = 5e-3;  // m: less is not worth a line

bool isHead(const anatomy::Bone& bone) { return bone.name.kind == BoneKind::Skull; }

}  // namespace

ReachDrag::ReachDrag(const Document& document, const ReachSettings& settings, BoneIndex bone,
                     const Eigen::Vector3d& p_BPoint, const std::vector<JointIndex>& chain)
    : document_(document),
      settings_(settings),
      begun_(document.scenario()),
      ranges_(begun_.specimen(), begun_.articulation(), begun_.assumptions(), begun_.contact()),
      chain_(chain),
      start_(document.pose()),
      d_WGaze_(document.placement()[bone.value].linear().col(0)) {
  goal_.bone = bone;
  goal_.p_BPoint = p_BPoint;
  // The ranges are looked up now, not in the first frame.
  for (const JointIndex joint : chain_) ranges_.halfWidths(joint);
}

bool ReachDrag::turns(JointIndex joint) const { return !document_.isLocked(joint); }

kinematics::Pose ReachDrag::reached(const Eigen::Vector3d& p_WTarget, const std::array<bool, 3>& motions,
                                    const Eigen::Vector3d& alongLine_W) {
  goal_.alongLine_W = alongLine_W;
  goal_.joints = chain_;
  std::erase_if(goal_.joints, [this](JointIndex j) { return !turns(j); });
  goal_.motions = motions;
  goal_.p_WTarget = p_WTarget;
  goal_.style = settings_.style();
  goal_.pastRanges = settings_.pastRanges();
  goal_.directions.clear();
  if (settings_.keepsGaze() && isHead(document_.specimen()[goal_.bone])) {
    goal_.directions.push_back({Eigen::Vector3d::UnitX(), d_WGaze_});
  }
  const kinematics::Pose from = searched_ ? last_.reached.pose : start_;
  last_ = range::reachClear(begun_, ranges_, start_, goal_, &from);
  searched_ = true;
  return last_.reached.pose;
}

kinematics::Pose ReachDrag::turned(const kinematics::Pose& wished) {
  searched_ = false;
  kinematics::Pose pose = wished;
  for (const JointIndex joint : chain_) {
    if (!turns(joint)) pose[joint] = start_[joint];
    if (settings_.pastRanges() || pose[joint] == start_[joint]) continue;
    // A joint that starts outside has no range to be held in.
    if (!ranges_.supports(joint, start_[joint])) continue;
    pose[joint] = ranges_.lastSupported(joint, start_[joint], wished[joint]);
  }
  return pose;
}

std::optional<Shortfall> ReachDrag::shortfall() const {
  if (!searched_ || last_.reached.distance < kToldShortfall) return std::nullopt;
  return Shortfall{last_.reached.p_WPoint, goal_.p_WTarget, last_.reached.distance};
}

QString ReachDrag::telling() const {
  if (!searched_) return {};
  QStringList parts;
  if (const auto lacks = shortfall()) {
    QString text = shortfallText(lacks->length);
    if (!last_.stops.empty()) {
      text += QObject::tr(", stopped by %1").arg(stopWords(document_.specimen(), last_.stops.front()));
    }
    if (last_.stops.size() > 1) text += QObject::tr(" and %n more", nullptr, static_cast<int>(last_.stops.size()) - 1);
    parts << text;
  }
  QStringList broken;
  for (const JointIndex joint : last_.reached.broken) broken << QString::fromStdString(document_.specimen()[joint].id);
  if (broken.size() > 3) broken = broken.mid(0, 3) << QObject::tr("%1 more").arg(last_.reached.broken.size() - 3);
  if (!broken.isEmpty()) parts << QObject::tr("past the range at %1").arg(broken.join(", "));
  return parts.join(QStringLiteral(" · "));
}

QString shortfallText(double length) {
  return QObject::tr("%1 short").arg(length < 1 ? millimetres(length, 0) : metres(length));
}

void ReachSettings::setStyle(kinematics::BendStyle style) {
  if (style == style_) return;
  style_ = style;
  emit changed();
}

void ReachSettings::setPastRanges(bool past) {
  if (past == pastRanges_) return;
  pastRanges_ = past;
  emit changed();
}

void ReachSettings::setKeepsGaze(bool keeps) {
  if (keeps == keepsGaze_) return;
  keepsGaze_ = keeps;
  emit changed();
}

}  // namespace zyga::ui
