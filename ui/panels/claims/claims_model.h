#pragma once

#include <QAbstractListModel>

#include "ui/panels/claims/claim_answers.h"

namespace zyga::ui {

/// The project's claims, each with the shape of its verdict; the roles are those of FindingsModel, whose delegate draws
/// them. Not judged: not answered yet.
class ClaimsModel : public QAbstractListModel {
  Q_OBJECT
 public:
  ClaimsModel(Document& document, ClaimAnswers& answers, QObject* parent = nullptr);

  int rowCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;

 private:
  void follow(Changes what);
  range::Level levelOf(std::size_t row) const;
  QString verdictWord(std::size_t row) const;

  Document& document_;
  ClaimAnswers& answers_;
  int rows_ = 0;
};

}  // namespace zyga::ui
