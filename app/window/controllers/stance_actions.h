#pragma once

#include <QKeySequence>
#include <QObject>
#include <functional>

#include "ui/commands/stand_edits.h"

class QAction;
class QMenu;

namespace zyga::ui {

class MessageBar;

/// Actions that stand the animal: on its feet, in a stance, a foot lifted or planted, the trunk moved over planted
/// feet. What a stance could not have is told as a message.
class StanceActions : public QObject {
  Q_OBJECT
 public:
  StanceActions(Document& document, MessageBar& messages, QObject* parent = nullptr);

  /// Stand on the ground, and menus of stances, feet and trunk.
  void addTo(QMenu& menu);
  /// What can be done with the foot that a bone belongs to; nothing for other bones.
  void addFor(QMenu& menu, BoneIndex bone);

  QAction* stand() const { return stand_; }
  const QList<QAction*>& actions() const { return actions_; }

 private:
  QAction* add(QMenu& menu, const QString& text, const QKeySequence& key, const std::function<void()>& act);
  void addStances(QMenu& menu);
  void addFeet(QMenu& menu);
  void addTrunk(QMenu& menu);
  void take(study::Stance stance);
  void stepTrunk(double up, double tilt);
  void tellMisses(const kinematics::FeetAnswer& answer);

  Document& document_;
  MessageBar& messages_;
  QList<QAction*> actions_;
  QAction* stand_ = nullptr;
};

}  // namespace zyga::ui
