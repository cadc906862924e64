#include "app/window/controllers/stance_actions.h"

#include <QAction>
#include <QMenu>
#include <algorithm>
#include <numbers>

#include "app/window/controllers/menu_action.h"
#include "core/kinematics/standing.h"
#include "ui/panels/readouts.h"
#include "ui/parts/message_bar.h"
#include "ui/theme/icons.h"
#include "ui/words/ground_words.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"
#include "ui/words/say.h"
#include "ui/words/stance_words.h"

namespace zyga::ui {
namespace {

using kinematics::Foot;

constexpr double kTrunkStep = 0.02;                       // m
constexpr double kTiltStep = 1 * std::numbers::pi / 180;  // rad
constexpr int kRaiseKey = 2400, kTiltKey = 2401;          // merge keys

}  // namespace

StanceActions::StanceActions(Document& document, MessageBar& messages, QObject* parent)
    : QObject(parent), document_(document), messages_(messages) {}

QAction* StanceActions::add(QMenu& menu, const QString& text, const QKeySequence& key,
                            const std::function<void()>& act) {
  return actions_.emplace_back(addMenuAction(menu, this, text, key, act));
}

void StanceActions::addTo(QMenu& menu) {
  stand_ = add(menu, tr("&Stand on the ground"), QKeySequence("Ctrl+G"), [this] {
    document_.changePose(kinematics::stand(document_.specimen(), document_.articulation(), document_.pose()),
                         tr("Stand on the ground"));
  });
  stand_->setIcon(icon("stand"));
  addStances(*menu.addMenu(tr("S&tances")));
  addFeet(*menu.addMenu(tr("&Feet")));
  addTrunk(*menu.addMenu(tr("T&runk")));
}

void StanceActions::addStances(QMenu& menu) {
  menu.setToolTipsVisible(true);
  int number = 1;
  for (const study::Stance stance : study::kStances) {
    if (stance == study::Stance::WalkLeftHind || stance == study::Stance::Rear) menu.addSeparator();
    const QKeySequence key(QKeyCombination(Qt::AltModifier, static_cast<Qt::Key>(Qt::Key_0 + number++)));
    QAction* action = add(menu, stanceName(stance), key, [this, stance] { take(stance); });
    const std::string_view id = idOf(stance);
    action->setObjectName("stance." + QString::fromUtf8(id.data(), static_cast<qsizetype>(id.size())));
    action->setToolTip(stanceMeaning(stance) + QString("  (%1)").arg(key.toString(QKeySequence::NativeText)));
    action->setStatusTip(stanceMeaning(stance));
  }
}

void StanceActions::addFeet(QMenu& menu) {
  int number = 1;
  for (const Foot foot : {Foot::LeftFore, Foot::RightFore, Foot::LeftHind, Foot::RightHind}) {
    const QKeySequence key(
        QKeyCombination(Qt::ControlModifier | Qt::AltModifier, static_cast<Qt::Key>(Qt::Key_0 + number++)));
    QAction* action = add(menu, tr("Lift or plant the %1").arg(footName(foot)), key,
                          [this, foot] { tellMisses(liftOrPlant(document_, foot)); });
    action->setObjectName("liftOrPlant." + footName(foot).replace(' ', '.'));
  }
  menu.addSeparator();
  add(menu, tr("&Plant all feet"), QKeySequence("Ctrl+Shift+G"), [this] {
    tellMisses(plantFeet(document_, {kinematics::kFeet.begin(), kinematics::kFeet.end()}));
  })->setObjectName("plantAll");
}

void StanceActions::addTrunk(QMenu& menu) {
  const auto key = [](Qt::Key k) { return QKeySequence(QKeyCombination(Qt::ControlModifier | Qt::AltModifier, k)); };
  add(menu, tr("&Raise over planted feet"), key(Qt::Key_PageUp), [this] { stepTrunk(kTrunkStep, 0); });
  add(menu, tr("&Lower over planted feet"), key(Qt::Key_PageDown), [this] { stepTrunk(-kTrunkStep, 0); });
  add(menu, tr("Tilt &up about the hips"), key(Qt::Key_Home), [this] { stepTrunk(0, kTiltStep); });
  add(menu, tr("Tilt &down about the hips"), key(Qt::Key_End), [this] { stepTrunk(0, -kTiltStep); });
}

void StanceActions::addFor(QMenu& menu, BoneIndex bone) {
  const auto foot = kinematics::footOf(document_.specimen(), bone);
  if (!foot) return;
  const std::vector<Foot> planted = plantedFeet(document_);
  const bool stands = std::find(planted.begin(), planted.end(), *foot) != planted.end();
  menu.addAction((stands ? tr("&Lift the %1") : tr("&Plant the %1")).arg(footName(*foot)), this,
                 [this, foot = *foot] { tellMisses(liftOrPlant(document_, foot)); });
  menu.addAction(tr("Plant &all feet"), this, [this] {
    tellMisses(plantFeet(document_, {kinematics::kFeet.begin(), kinematics::kFeet.end()}));
  });
}

void StanceActions::take(study::Stance stance) {
  const study::StanceAnswer answer = takeStance(document_, stance);
  QStringList lines;
  lines += tr("%1: snout at %2, assuming %3.")
               .arg(stanceName(stance), metres(headHeight(document_)), assumptionsInShort(document_.assumptions()));
  for (const reason::Reason& note : answer.notes) lines += say(note);
  if (answer.balance)
    if (const QString tail = tailLoadWords(*answer.balance); !tail.isEmpty()) lines += tail;
  if (!answer.beyond.empty()) {
    QStringList joints;
    for (const JointIndex joint : answer.beyond) joints += QString::fromStdString(document_.specimen()[joint].id);
    lines += tr("Out of range: %1.").arg(joints.join(", "));
  }
  for (const range::ContactFinding& contact : answer.contacts)
    lines += capital(contactWords(document_.specimen(), contact)) + '.';
  messages_.clearPassing();
  messages_.tell(lines.join('\n'));
}

void StanceActions::stepTrunk(double up, double tilt) {
  if (up != 0) {
    const Eigen::Isometry3d move(Eigen::Translation3d(0, 0, up));
    return tellMisses(moveTrunk(document_, move, up > 0 ? tr("Raise the trunk") : tr("Lower the trunk"), kRaiseKey));
  }
  const Eigen::Vector3d left = kinematics::levelled(document_.pose().X_WRoot).linear().col(1);
  tellMisses(
      moveTrunk(document_, turnAboutHips(document_, document_.pose(), left, -tilt), tr("Tilt the trunk"), kTiltKey));
}

void StanceActions::tellMisses(const kinematics::FeetAnswer& answer) {
  const QString words = missWords(document_, answer.fits);
  messages_.clearPassing();
  if (!words.isEmpty()) messages_.tell(capital(words) + '.');
}

}  // namespace zyga::ui
