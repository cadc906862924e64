#pragma once

#include <QAbstractListModel>
#include <QTimer>
#include <memory>
#include <vector>

#include "core/study/claims/claim_probability.h"
#include "ui/document/document.h"
#include "ui/document/worker.h"

namespace zyga::ui {

/// The answers to the project's claims, found beside the window whenever pose, assumptions, shapes or claims have come
/// to rest, and dropped where they are asked anew before they are ready. Answers come first; how probable they are
/// takes longer and follows claim by claim. What has been answered once (study::claimBook) is not asked again.
class ClaimAnswers : public QObject {
  Q_OBJECT
 public:
  /// What is known of a claim.
  struct Known {
    study::Claim claim;                                ///< without its source, which changes no answer
    range::Scenario scenario;                          ///< what was asked
    std::shared_ptr<const study::ClaimAnswer> answer;  ///< null where asking failed
    QString failure;                                   ///< why it failed
    bool current = true;                               ///< false where pose or assumptions have moved on since
    std::shared_ptr<const study::ClaimProbability> probability = nullptr;  ///< null until the samples are ready
    bool answered() const { return answer && answer->answered(); }
    /// Nothing more is to be found out.
    bool complete() const { return current && (probability || !answered()); }
  };

  explicit ClaimAnswers(Document& document, QObject* parent = nullptr);

  /// What was last found of a claim of the list; none before the first.
  const Known* find(std::size_t index) const;
  /// Whether all that can be known of the present pose and assumptions is there.
  bool complete(std::size_t index) const;
  /// Waiting for the document to come to rest, or asking.
  bool busy() const { return wait_.isActive() || worker_.busy(); }
  /// Busy with answers, not with how probable they are.
  bool answering() const;
  /// Gives up what is being asked; the next change asks again.
  void cancel();
  /// Asks again what was given up.
  void ask();

 signals:
  void changed();
  void progress(double share);
  void busyChanged();
  /// For people: what went wrong.
  void failed(const QString& message);

 private:
  void follow(Changes what);
  void start();
  void take(const std::vector<Known>& found);
  const Known* known(const study::Claim& claim) const;

  Document& document_;
  QTimer wait_;
  Worker worker_;
  std::vector<Known> known_;
};

/// The project's claims, each with the shape of its verdict; the roles are those of FindingsModel, whose delegate draws
/// them. Not assessed: not answered yet.
class ClaimsModel : public QAbstractListModel {
  Q_OBJECT
 public:
  ClaimsModel(Document& document, ClaimAnswers& answers, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

 private:
  void follow(Changes what);
  range::Level levelOf(std::size_t row) const;
  QString stateOf(std::size_t row) const;

  Document& document_;
  ClaimAnswers& answers_;
  int rows_ = 0;
};

}  // namespace zyga::ui
