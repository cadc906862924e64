#include "ui/commands/set_assumptions.h"

#include "ui/document/document.h"

namespace zyga::ui {

SetAssumptions::SetAssumptions(Document& document, range::Assumptions after, const QString& text, int mergeKey)
    : QUndoCommand(text), document_(document), before_(document.assumptions()), after_(after), mergeKey_(mergeKey) {}

void SetAssumptions::undo() { document_.setAssumptions(before_); }

void SetAssumptions::redo() { document_.setAssumptions(after_); }

int SetAssumptions::id() const { return mergeKey_ == 0 ? -1 : mergeKey_; }

bool SetAssumptions::mergeWith(const QUndoCommand* other) {
  const auto* next = dynamic_cast<const SetAssumptions*>(other);
  if (!next) return false;
  after_ = next->after_;
  setText(next->text());
  setObsolete(after_ == before_);
  return true;
}

}  // namespace zyga::ui
