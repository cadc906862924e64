#pragma once

#include <QWidget>

#include "ui/document/document.h"

class QLabel;
class QListView;
class QPushButton;
class QToolButton;

namespace zyga::ui {

class AnswerView;
class ClaimAnswers;
class ClaimEditor;
class ClaimsModel;

/// Claims about what the animal could do, each put to the bones: the list, the fields of the chosen claim and its
/// answer.
class ClaimsPanel : public QWidget {
  Q_OBJECT
 public:
  explicit ClaimsPanel(Document& document, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {312, 480}; }

  /// Answers are still being found.
  bool busy() const;
  /// As ClaimAnswers::answering.
  bool answering() const;
  /// "1 of 3 within range": for the title of the folded panel.
  QString inShort() const;

 public slots:
  /// A claim on the head's height, whose value waits to be typed.
  void add();
  void remove();
  /// Takes the pose that shows the chosen claim, or the nearest, as one undoable step.
  void showPose();

 signals:
  void shortChanged(const QString& words);
  void warned(const QString& words);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QLayout* createHead();
  void createList();
  QWidget* createEmpty();
  std::optional<std::size_t> chosen() const;
  void follow(Changes what);
  void refresh();
  void refreshChosen();
  void tellProgress(int done, int total);

  Document& document_;
  ClaimAnswers* answers_;
  ClaimsModel* model_;
  QListView* list_;
  QToolButton *add_, *remove_;
  QPushButton* stop_;
  QLabel* state_;
  QWidget *empty_, *full_;
  ClaimEditor* editor_;
  AnswerView* answer_;
};

}  // namespace zyga::ui
