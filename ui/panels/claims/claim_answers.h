#pragma once

#include <QObject>
#include <QTimer>
#include <vector>

#include "core/study/claims/claim_answer.h"
#include "ui/document/document.h"
#include "ui/document/worker.h"

namespace zyga::ui {

/// The answers to the project's claims, found beside the window whenever pose, assumptions or claims have come to rest,
/// and dropped where they are asked anew before they are ready.
class ClaimAnswers : public QObject {
  Q_OBJECT
 public:
  explicit ClaimAnswers(Document& document, QObject* parent = nullptr);

  /// The last answer to a claim of the list; none before the first. Old where pose or assumptions have moved on since.
  const study::ClaimAnswer* find(std::size_t index) const;
  /// Whether the answer is that of the present pose and assumptions.
  bool current(std::size_t index) const;
  /// Waiting for the document to come to rest, or asking.
  bool busy() const { return wait_.isActive() || worker_.busy(); }
  /// Gives up what is being asked; the next change asks again.
  void cancel();
  /// Asks again what was given up.
  void ask();

 signals:
  void changed();
  void progress(int done, int total);
  void busyChanged();
  /// For people: what went wrong.
  void failed(const QString& message);

 private:
  /// An answer and what it belongs to.
  struct Known {
    study::Claim claim;  ///< without its source, which changes no answer
    study::ClaimAnswer answer;
    bool current = true;
  };
  void follow(Changes what);
  void start();
  void take(std::vector<Known> found);
  const Known* known(const study::Claim& claim) const;

  Document& document_;
  QTimer wait_;
  Worker worker_;
  std::vector<Known> known_;
};

}  // namespace zyga::ui
