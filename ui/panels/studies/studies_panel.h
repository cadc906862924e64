#pragma once

#include <QTimer>
#include <QWidget>

#include "ui/studies/study_job.h"
#include "ui/words/study_words.h"

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QToolButton;

namespace zyga::ui {

class PlotView;
class PlotWindow;
class StudyFields;

/// Chooses a study, runs it beside the window, shows its figure and what it tells, and takes it elsewhere. An answer
/// that the pose or the assumptions have left behind is pale and says so; a study that cannot be made says why.
class StudiesPanel : public QWidget {
  Q_OBJECT
 public:
  explicit StudiesPanel(Document& document, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {312, 480}; }

  StudyJob& job() { return job_; }
  StudyKind kind() const;
  void choose(StudyKind kind);
  bool drawsEnvelope() const;
  void setDrawsEnvelope(bool draws);
  /// For the title of the folded panel.
  QString inShort() const;

 public slots:
  void run();

 signals:
  void shortChanged(const QString& words);
  /// What the view is to draw; none: nothing.
  void envelopeChanged(const std::shared_ptr<const zyga::study::Envelope>& envelope, bool outOfDate);
  void warned(const QString& message);
  void told(const QString& message);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QLayout* createChoice();
  QLayout* createRun();
  QLayout* createOut();
  void save();
  void copy();
  void enlarge();
  void refresh();
  void refreshWords();
  void showProgress(bool busy);
  void tellEnvelope();
  void runQuickOnes();

  Document& document_;
  StudyJob job_;
  QTimer quick_;  ///< before what is quick is worked out anew
  QComboBox* choice_;
  QLabel *about_, *stale_, *failure_, *words_, *cautions_;
  StudyFields* fields_;
  QPushButton *run_, *save_, *copy_;
  QProgressBar* progress_;
  QToolButton* stop_;
  PlotView* plot_;
  PlotWindow* large_ = nullptr;
};

}  // namespace zyga::ui
