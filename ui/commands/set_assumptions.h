#pragma once

#include <QUndoCommand>

#include "core/range/assumptions.h"

namespace zyga::ui {

class Document;

/// Another set of assumptions. Steps with the same non-zero key that follow each other become one step, so that a dial
/// that is turned is one step however many values it passed.
class SetAssumptions : public QUndoCommand {
 public:
  SetAssumptions(Document& document, range::Assumptions after, const QString& text, int mergeKey = 0);

  void undo() override;
  void redo() override;
  int id() const override;
  bool mergeWith(const QUndoCommand* other) override;

 private:
  Document& document_;
  range::Assumptions before_;
  range::Assumptions after_;
  int mergeKey_;
};

}  // namespace zyga::ui
