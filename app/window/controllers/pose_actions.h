#pragma once

#include <QKeySequence>
#include <QObject>
#include <functional>

#include "core/study/reach/extremes.h"
#include "ui/document/document.h"

class QAction;
class QMenu;

namespace zyga::ui {

class MessageBar;

/// Actions that pose the whole neck or tail: to neutral, and to its limits, with what that gives told as a message.
class PoseActions : public QObject {
  Q_OBJECT
 public:
  PoseActions(Document& document, MessageBar& messages, QObject* parent = nullptr);

  void addNeutral(QMenu& menu);
  void addLimits(QMenu& menu);

  QAction* allNeutral() const { return allNeutral_; }
  /// All of them: useful only while a project is open.
  const QList<QAction*>& actions() const { return actions_; }

 private:
  QAction* add(QMenu& menu, const QString& text, const QKeySequence& key, const std::function<void()>& act);
  void addChain(QMenu& menu, study::Chain chain, Qt::KeyboardModifiers modifiers);
  void toNeutral();
  void take(study::Chain chain, range::Direction direction);
  void keepAll();

  Document& document_;
  MessageBar& messages_;
  QList<QAction*> actions_;
  QAction* allNeutral_ = nullptr;
};

}  // namespace zyga::ui
