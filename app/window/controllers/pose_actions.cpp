#include "app/window/controllers/pose_actions.h"

#include <QAction>
#include <QMenu>
#include <utility>

#include "app/window/controllers/menu_action.h"
#include "core/kinematics/bend.h"
#include "core/kinematics/standing.h"
#include "ui/commands/pose_edits.h"
#include "ui/panels/readouts.h"
#include "ui/parts/message_bar.h"
#include "ui/theme/icons.h"
#include "ui/words/say.h"
#include "ui/words/stance_words.h"

namespace zyga::ui {

using range::Direction;
using study::Chain;

PoseActions::PoseActions(Document& document, MessageBar& messages, QObject* parent)
    : QObject(parent), document_(document), messages_(messages) {}

QAction* PoseActions::add(QMenu& menu, const QString& text, const QKeySequence& key, const std::function<void()>& act) {
  return actions_.emplace_back(addMenuAction(menu, this, text, key, act));
}

void PoseActions::addNeutral(QMenu& menu) {
  add(menu, tr("&Neck to neutral"), QKeySequence("Ctrl+Shift+N"), [this] {
    document_.changePose(atNeutral(document_.pose(), kinematics::neckChain(document_.specimen())),
                         tr("Neck to neutral"));
  });
  add(menu, tr("&Tail to neutral"), QKeySequence("Ctrl+Shift+T"), [this] {
    document_.changePose(atNeutral(document_.pose(), kinematics::tailChain(document_.specimen())),
                         tr("Tail to neutral"));
  });
  allNeutral_ = add(menu, tr("&All joints to neutral"), QKeySequence("Ctrl+Shift+A"), [this] { toNeutral(); });
  allNeutral_->setIcon(icon("neutral"));
}

void PoseActions::toNeutral() {
  kinematics::Pose pose = document_.pose();
  for (Eigen::Vector3d& angles : pose.angles) angles.setZero();
  // From a level root the limbs at zero hang straight down.
  pose.X_WRoot = kinematics::levelled(pose.X_WRoot);
  document_.changePose(kinematics::stand(document_.specimen(), document_.articulation(), pose),
                       tr("All joints to neutral"));
}

void PoseActions::addLimits(QMenu& menu) {
  addChain(*menu.addMenu(tr("Neck to its &limit")), Chain::Neck, Qt::ControlModifier | Qt::AltModifier);
  addChain(*menu.addMenu(tr("Tail to its l&imit")), Chain::Tail,
           Qt::ControlModifier | Qt::AltModifier | Qt::ShiftModifier);
  add(menu, tr("Keep all limits as named &poses"), {}, [this] { keepAll(); });
}

void PoseActions::addChain(QMenu& menu, Chain chain, Qt::KeyboardModifiers modifiers) {
  struct Row {
    Direction direction;
    QString neck, tail;
    Qt::Key key;
  };
  const Row rows[] = {{Direction::Dorsal, tr("Neck &dorsal"), tr("Tail &dorsal"), Qt::Key_Up},
                      {Direction::Ventral, tr("Neck &ventral"), tr("Tail &ventral"), Qt::Key_Down},
                      {Direction::Left, tr("Neck &left"), tr("Tail &left"), Qt::Key_Left},
                      {Direction::Right, tr("Neck &right"), tr("Tail &right"), Qt::Key_Right}};
  for (const Row& row : rows) {
    QAction* action =
        add(menu, chain == Chain::Neck ? row.neck : row.tail, QKeySequence(QKeyCombination(modifiers, row.key)),
            [this, chain, direction = row.direction] { take(chain, direction); });
    action->setObjectName(QString("extreme.%1.%2")
                              .arg(QString::fromUtf8(study::toText(chain).data()),
                                   QString::fromUtf8(range::toText(row.direction).data())));
  }
}

void PoseActions::take(Chain chain, Direction direction) {
  const study::Extreme extreme = takeExtreme(document_, chain, direction);
  messages_.clearPassing();
  messages_.tell(
      tr("%1: %2. Assuming %3.")
          .arg(extremeName(chain, direction), extremeWords(extreme), assumptionsInShort(document_.assumptions())));
}

void PoseActions::keepAll() {
  QStringList lines;
  for (const study::Extreme& extreme : keepExtremes(document_))
    lines += tr("%1: %2.").arg(extremeName(extreme.chain, extreme.direction), extremeWords(extreme));
  lines += tr("Assuming %1. They are among the named poses now.").arg(assumptionsInShort(document_.assumptions()));
  messages_.clearPassing();
  messages_.tell(lines.join('\n'));
}

}  // namespace zyga::ui
