#pragma once

#include <QObject>
#include <memory>

#include "core/study/run.h"
#include "ui/document/document.h"
#include "ui/document/worker.h"

class QWidget;

namespace zyga::ui {

class JobReadout;
class MessageBar;

/// What a report is to hold and how it is written.
struct ReportChoice {
  QString ending = "pdf";
  bool claimsOnly = false;
  bool studies = true;
  bool numbers = false;  ///< also a table of numbers beside it
};

/// Reports out: asks what and where, then builds, traces and writes beside the window with progress.
class ReportController : public QObject {
  Q_OBJECT
 public:
  /// `answers`: what studies have found already.
  ReportController(Document& document, std::shared_ptr<study::StudyAnswers> answers, MessageBar& messages,
                   QWidget& window);

  /// For the status bar.
  QWidget* readout() const;
  bool busy() const { return writer_.busy(); }

 public slots:
  void writeReport();

 signals:
  void written(const QString& file);

 private:
  void askFile(const ReportChoice& choice);
  void start(const ReportChoice& choice, const QString& file);

  Document& document_;
  std::shared_ptr<study::StudyAnswers> answers_;
  MessageBar& messages_;
  QWidget& window_;
  Worker writer_;
  JobReadout* readout_;
};

}  // namespace zyga::ui
