#pragma once

#include <QUndoCommand>
#include <functional>
#include <utility>

namespace zyga::ui {

/// One undoable step from one value of the document to another. Steps with the same non-zero key that follow each other
/// become one step, so that a dial that is turned is one step however many values it passed; it vanishes when it ends
/// where it began.
template <typename Value>
class SetValue : public QUndoCommand {
 public:
  using Setter = std::function<void(const Value&)>;

  SetValue(Value before, Value after, Setter set, const QString& text, int mergeKey = 0)
      : QUndoCommand(text),
        before_(std::move(before)),
        after_(std::move(after)),
        set_(std::move(set)),
        mergeKey_(mergeKey) {}

  void undo() override { set_(before_); }
  void redo() override { set_(after_); }
  int id() const override { return mergeKey_ == 0 ? -1 : mergeKey_; }

  bool mergeWith(const QUndoCommand* other) override {
    const auto* next = dynamic_cast<const SetValue*>(other);
    if (!next) return false;
    after_ = next->after_;
    setText(next->text());
    setObsolete(after_ == before_);
    return true;
  }

 private:
  Value before_;
  Value after_;
  Setter set_;
  int mergeKey_;
};

}  // namespace zyga::ui
