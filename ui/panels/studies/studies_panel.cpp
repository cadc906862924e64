#include "ui/panels/studies/studies_panel.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QSettings>
#include <QStandardPaths>
#include <QToolButton>

#include "ui/panels/studies/plot_view.h"
#include "ui/panels/studies/save_study.h"
#include "ui/panels/studies/study_fields.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"
#include "ui/words/assumption_words.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

constexpr char kKindKey[] = "studies/kind";
constexpr char kFolderKey[] = "files/outputFolder";
constexpr int kQuickDelay = 150;  // ms, so that a drag is not held up

QLabel* readable(const char* name, bool muted) {
  QLabel* label = muted ? mutedLabel() : new QLabel;
  label->setObjectName(name);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse);
  return label;
}

}  // namespace

StudiesPanel::StudiesPanel(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), job_(document), fields_(new StudyFields), plot_(new PlotView) {
  setObjectName("studiesPanel");
  quick_.setSingleShot(true);
  quick_.setInterval(kQuickDelay);
  auto* content = new QWidget;
  auto* column = new QVBoxLayout(content);
  setPanelMargins(*column);
  column->addLayout(createChoice());
  column->addWidget(fields_);
  column->addLayout(createRun());
  stale_ = readable("studyStale", false);
  column->addWidget(stale_);
  failure_ = readable("studyFailure", false);
  column->addWidget(failure_);
  column->addWidget(plot_);
  words_ = readable("studyWords", false);
  words_->setFont(figureFont(words_->font()));
  column->addWidget(words_);
  column->addLayout(createOut());
  cautions_ = readable("studyCautions", true);
  column->addWidget(cautions_);
  column->addStretch(1);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(scrolling(content));

  connect(&quick_, &QTimer::timeout, this, &StudiesPanel::runQuickOnes);
  connect(plot_, &PlotView::enlargeAsked, this, &StudiesPanel::enlarge);
  connect(fields_, &StudyFields::edited, this, [this] {
    if (isQuick(kind())) quick_.start();
  });
  connect(fields_, &StudyFields::drawsEnvelopeChanged, this, &StudiesPanel::tellEnvelope);
  connect(&job_, &StudyJob::failed, this, &StudiesPanel::warned);
  connect(&job_, &StudyJob::changed, this, [this](StudyKind changed) {
    if (changed == kind()) refresh();
    if (changed == StudyKind::Envelope) tellEnvelope();
  });
  connect(&job_.worker(), &Worker::busyChanged, this, &StudiesPanel::showProgress);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & (Changes(Change::Pose) | Change::Assumptions | Change::Contact | Change::Ground)) quick_.start();
    if (what & Change::Contact) refresh();
  });
  refresh();
}

QLayout* StudiesPanel::createChoice() {
  auto* column = new QVBoxLayout;
  column->setSpacing(kGridStep);
  choice_ = calmComboBox();
  choice_->setObjectName("studyKind");
  choice_->setAccessibleName(tr("Study"));
  for (const StudyKind kind : kStudyKinds) choice_->addItem(title(kind));
  choice_->setCurrentIndex(qBound(0, QSettings().value(kKindKey, 0).toInt(), choice_->count() - 1));
  about_ = mutedLabel();
  about_->setObjectName("studyAbout");
  column->addWidget(choice_);
  column->addWidget(about_);
  connect(choice_, &QComboBox::currentIndexChanged, this, [this](int index) {
    QSettings().setValue(kKindKey, index);
    refresh();
    quick_.start();
  });
  return column;
}

QLayout* StudiesPanel::createRun() {
  auto* row = new QHBoxLayout;
  row->setSpacing(kGap);
  run_ = new QPushButton;
  run_->setObjectName("studyRun");
  progress_ = new QProgressBar;
  progress_->setObjectName("studyProgress");
  progress_->setTextVisible(false);
  progress_->hide();
  stop_ = iconButton("close", tr("Stop the study"));
  stop_->setObjectName("studyStop");
  stop_->hide();
  row->addWidget(run_, 1);
  row->addWidget(progress_, 1);
  row->addWidget(stop_);
  connect(run_, &QPushButton::clicked, this, &StudiesPanel::run);
  connect(stop_, &QToolButton::clicked, this, [this] { job_.cancel(); });
  connect(&job_.worker(), &Worker::progress, this, [this](double share) {
    progress_->setRange(0, 1000);
    progress_->setValue(static_cast<int>(1000 * share));
  });
  return row;
}

QLayout* StudiesPanel::createOut() {
  auto* row = new QHBoxLayout;
  row->setSpacing(kGap);
  save_ = new QPushButton(tr("Save…"));
  save_->setObjectName("studySave");
  save_->setToolTip(tr("The figure as SVG, PDF or PNG, or the numbers as JSON"));
  copy_ = new QPushButton(tr("Copy"));
  copy_->setObjectName("studyCopy");
  copy_->setToolTip(tr("The sentences as text and the figure as a picture"));
  row->addWidget(save_, 1);
  row->addWidget(copy_, 1);
  connect(save_, &QPushButton::clicked, this, &StudiesPanel::save);
  connect(copy_, &QPushButton::clicked, this, &StudiesPanel::copy);
  return row;
}

StudyKind StudiesPanel::kind() const { return kStudyKinds[static_cast<std::size_t>(choice_->currentIndex())]; }

void StudiesPanel::choose(StudyKind kind) { choice_->setCurrentIndex(static_cast<int>(kind)); }

bool StudiesPanel::drawsEnvelope() const { return fields_->drawsEnvelope(); }

void StudiesPanel::setDrawsEnvelope(bool draws) { fields_->setDrawsEnvelope(draws); }

void StudiesPanel::run() {
  progress_->setRange(0, 0);
  job_.run(kind(), fields_->settings());
  refresh();
}

/// Keeps what is quick up to date while somebody looks, and never in the way of a longer study.
void StudiesPanel::runQuickOnes() {
  if (isVisible() && document_.hasProject() && isQuick(kind()) && !job_.busy()) run();
}

void StudiesPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  quick_.start();
}

void StudiesPanel::showProgress(bool busy) {
  // What is quick is over before a bar could be seen.
  const bool shown = busy && !isQuick(job_.running());
  progress_->setVisible(shown);
  stop_->setVisible(shown);
  refresh();
}

void StudiesPanel::refresh() {
  const StudyKind now = kind();
  about_->setText(document_.contactPending() ? tells(now) + ' ' + provisionalReason() : tells(now));
  fields_->showFor(now);
  const auto result = job_.result(now);
  const bool outOfDate = result && job_.outOfDate(now);
  run_->setText(result ? tr("Run again") : tr("Run"));
  run_->setEnabled(document_.hasProject());
  run_->setVisible(!isQuick(now) && !(job_.busy() && !isQuick(job_.running())));
  stale_->setText(document_.hasProject() ? tr("Out of date: the pose or the assumptions have changed since.")
                                         : tr("Open an animal to study it."));
  stale_->setVisible(!document_.hasProject() || (outOfDate && !isQuick(now)));
  failure_->setText(job_.failure(now));
  failure_->setVisible(!failure_->text().isEmpty());
  plot_->show(result, outOfDate && !isQuick(now));
  save_->setVisible(result != nullptr);
  copy_->setVisible(result != nullptr);
  refreshWords();
  if (large_ && large_->isVisible()) large_->show(now, result, outOfDate);
  emit shortChanged(inShort());
}

void StudiesPanel::refreshWords() {
  const auto result = job_.result(kind());
  words_->setVisible(result != nullptr);
  cautions_->setVisible(result != nullptr);
  if (!result) return;
  words_->setText(sentences(*result).join("\n\n"));
  cautions_->setText(cautions(*result).join("\n\n"));
}

QString StudiesPanel::inShort() const {
  if (job_.busy() && !isQuick(job_.running())) return tr("working");
  const auto result = job_.result(kind());
  if (!result) return {};
  return job_.outOfDate(kind()) && !isQuick(kind()) ? tr("%1, out of date").arg(title(kind())) : title(kind());
}

void StudiesPanel::tellEnvelope() {
  const auto result = job_.result(StudyKind::Envelope);
  if (!result || !drawsEnvelope()) return emit envelopeChanged(nullptr, false);
  emit envelopeChanged({result, &std::get<study::Envelope>(*result)}, job_.outOfDate(StudyKind::Envelope));
}

void StudiesPanel::enlarge() {
  if (!large_) large_ = new PlotWindow(window());
  large_->show(kind(), job_.result(kind()), job_.outOfDate(kind()) && !isQuick(kind()));
  large_->raise();
}

void StudiesPanel::copy() {
  if (const auto result = job_.result(kind())) {
    QApplication::clipboard()->setMimeData(copyOfStudy(document_, *result));
    emit told(tr("The study is on the clipboard, as text and as a picture."));
  }
}

void StudiesPanel::save() {
  const auto result = job_.result(kind());
  if (!result) return;
  const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  auto* dialog = new QFileDialog(window(), tr("Save the study"), QSettings().value(kFolderKey, documents).toString(),
                                 tr("Drawing (*.svg);;Page (*.pdf);;Picture (*.png);;Numbers (*.json)"));
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix("svg");
  connect(dialog, &QFileDialog::filterSelected, dialog,
          [dialog](const QString& filter) { dialog->setDefaultSuffix(filter.section("*.", 1).section(')', 0, 0)); });
  dialog->selectFile(QString::fromStdString(document_.specimen().name).replace('/', '-') + ' ' +
                     title(kind()).toLower() + ".svg");
  connect(dialog, &QFileDialog::fileSelected, this, [this, result](const QString& file) {
    QSettings().setValue(kFolderKey, QFileInfo(file).absolutePath());
    try {
      saveStudy(document_, *result, file);
      emit told(tr("%1 is written.").arg(QFileInfo(file).fileName()));
    } catch (const files::FileError& error) {
      emit warned(tr("%1 was not written: %2").arg(QFileInfo(file).fileName(), sayFailure(error)));
    }
  });
  dialog->open();
}

}  // namespace zyga::ui
