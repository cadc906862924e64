#include "ui/dialogs/sheet/sheet_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "core/files/disk/atomic_file.h"
#include "ui/commands/project_edits.h"
#include "ui/dialogs/sheet/sheet_preview.h"
#include "ui/parts/panel_parts.h"
#include "ui/sheets/page_file.h"
#include "ui/sheets/sheet.h"
#include "ui/sheets/sheet_view.h"
#include "ui/theme/typography.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using files::Sheet;

constexpr char kFolderKey[] = "files/outputFolder";
constexpr int kScales[] = {5, 10, 20, 25, 30, 40, 50, 60, 75, 100, 200};
constexpr int kTitleKey = 3100, kPersonKey = 3101;  // merge keys

SheetWork workOf(double dotsPerInch, int samples, double lineSpacing, const Worker::Control& control) {
  SheetWork work;
  work.dotsPerInch = dotsPerInch;
  work.samples = samples;
  work.lineSpacing = lineSpacing;
  work.task = control.task;
  return work;
}

}  // namespace

SheetDialog::SheetDialog(Document& document, QWidget* parent)
    : QDialog(parent), document_(document), shown_(new SheetPreview) {
  setObjectName("sheetDialog");
  setProperty("helpPage", "drawings");
  setWindowTitle(tr("Sheet"));
  auto* middle = new QHBoxLayout;
  middle->setSpacing(kWideGap);
  middle->addWidget(shown_, 1);
  middle->addWidget(createChoices());
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  all->setSpacing(kWideGap);
  all->addLayout(middle, 1);
  all->addWidget(createFoot());
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (!document_.hasProject()) return close(), void();
    const Changes seen = Changes(Change::Pose) | Change::Assumptions | Change::Contact | Change::Bones |
                         Change::Meshes | Change::Notes | Change::Sheet;
    if (what & Change::Sheet) fill();
    if (what & ~Changes(Change::Sheet)) body_.reset();
    if (what & seen) redraw(false);
  });
  connect(&saver_, &Worker::progress, progress_, [this](double share) {
    progress_->setMaximum(1000);
    progress_->setValue(static_cast<int>(1000 * share));
  });
  connect(&saver_, &Worker::busyChanged, this, &SheetDialog::showSaving);
  fill();
  showSaving(false);
  redraw(false);
}

QWidget* SheetDialog::createChoices() {
  auto* choices = new QWidget;
  choices->setFixedWidth(300);
  auto* form = new QFormLayout(choices);
  form->setContentsMargins(0, 0, 0, 0);
  form->setVerticalSpacing(kGap);
  const auto combo = [&](const char* name, const QString& title, const QStringList& words) {
    QComboBox* box = calmComboBox();
    box->setObjectName(name);
    box->addItems(words);
    form->addRow(title, box);
    connect(box, &QComboBox::activated, this, &SheetDialog::choose);
    return box;
  };
  const auto check = [&](const char* name, const QString& title) {
    auto* box = new QCheckBox(title);
    box->setObjectName(name);
    connect(box, &QCheckBox::clicked, this, &SheetDialog::choose);
    form->addRow(box);
    return box;
  };
  title_ = new QLineEdit;
  title_->setObjectName("sheetTitle");
  form->addRow(tr("Title"), title_);
  connect(title_, &QLineEdit::editingFinished, this, &SheetDialog::choose);
  layout_ = combo("sheetLayout", tr("Layout"),
                  {tr("Side view"), tr("Three views"), tr("What is known"), tr("Neck with its joints"),
                   tr("Plate of bones in five views")});
  plate_ = new QLineEdit;
  plate_->setObjectName("sheetPlate");
  plate_->setPlaceholderText(tr("C5, manus.L, pelvis …"));
  form->addRow(tr("Bones of the plate"), plate_);
  connect(plate_, &QLineEdit::editingFinished, this, &SheetDialog::choose);
  paper_ = combo("sheetPaper", tr("Paper"), {tr("A4"), tr("A3"), tr("A2"), tr("A1")});
  bones_ = combo("sheetBones", tr("Bones"),
                 {tr("Shaded picture"), tr("Outline drawing"), tr("Solid silhouette"), tr("White before a dark body")});
  scale_ = combo("sheetScale", tr("Scale"), {});
  scale_->addItem(tr("As large as fits"), 0);
  for (const int scale : kScales) scale_->addItem(scaleWords(scale), scale);
  height_ = new UnitSpinBox(tr("m"));
  height_->setObjectName("sheetPersonHeight");
  height_->setAccessibleName(tr("Height of the human figure"));
  height_->setRange(files::kLeastPerson, files::kMostPerson);
  height_->setDecimals(2);
  height_->setSingleStep(0.05);
  connect(height_, &QDoubleSpinBox::valueChanged, this, &SheetDialog::choose);
  person_ = new QCheckBox(tr("Human figure"));
  person_->setObjectName("sheetPerson");
  connect(person_, &QCheckBox::clicked, this, &SheetDialog::choose);
  form->addRow(person_, height_);
  tones_ = check("sheetTones", tr("Tone bones by their evidence"));
  joints_ = check("sheetJoints", tr("Mark the joints' verdicts"));
  spans_ = check("sheetSpans", tr("Heights and lengths"));
  ground_ = check("sheetGround", tr("Ground line"));
  notes_ = check("sheetNotes", tr("Numbered notes"));
  transparent_ = check("sheetTransparent", tr("Transparent paper"));
  return choices;
}

QWidget* SheetDialog::createFoot() {
  auto* foot = new QWidget;
  told_ = mutedLabel(tr("Not an engineering document; local codes and licensed practice decide."));
  told_->setObjectName("sheetTold");
  progress_ = new QProgressBar;
  progress_->setTextVisible(false);
  width_ = new QSpinBox;
  width_->setObjectName("sheetPngWidth");
  width_->setRange(200, kWidestPng);
  width_->setSingleStep(500);
  width_->setValue(5000);
  width_->setSuffix(tr(" px"));
  width_->setToolTip(tr("Width of a PNG; PDF and SVG need none"));
  save_ = new QPushButton(tr("&Save as PDF, SVG or PNG…"));
  stop_ = new QPushButton(tr("Stop"));
  auto* shut = new QPushButton(tr("Close"));
  save_->setDefault(true);
  connect(save_, &QPushButton::clicked, this, &SheetDialog::save);
  connect(stop_, &QPushButton::clicked, this, [this] { saver_.cancel(); });
  connect(shut, &QPushButton::clicked, this, &QDialog::close);
  auto* row = new QHBoxLayout(foot);
  row->setContentsMargins(0, 0, 0, 0);
  row->addWidget(told_, 1);
  row->addWidget(progress_, 1);
  row->addWidget(stop_);
  row->addWidget(new QLabel(tr("PNG width")));
  row->addWidget(width_);
  row->addWidget(save_);
  row->addWidget(shut);
  return foot;
}

void SheetDialog::fill() {
  filling_ = true;
  const Sheet& sheet = document_.project().sheet;
  title_->setText(QString::fromStdString(sheet.title));
  const QString name = QString::fromStdString(document_.specimen().name);
  title_->setPlaceholderText(name);
  // So wide that the usual name of an animal is read whole.
  const QFontMetrics metrics(title_->font());
  title_->setMinimumWidth(std::min(metrics.horizontalAdvance(name) + 3 * metrics.height(), 20 * metrics.height()));
  layout_->setCurrentIndex(static_cast<int>(sheet.layout));
  paper_->setCurrentIndex(static_cast<int>(sheet.paper));
  bones_->setCurrentIndex(static_cast<int>(sheet.bones));
  if (scale_->findData(static_cast<int>(sheet.scale)) < 0) scale_->addItem(scaleWords(sheet.scale), sheet.scale);
  scale_->setCurrentIndex(scale_->findData(static_cast<int>(sheet.scale)));
  person_->setChecked(sheet.person > 0);
  if (sheet.person > 0) height_->setValue(sheet.person);
  tones_->setChecked(sheet.evidenceTones);
  joints_->setChecked(sheet.jointMarks);
  spans_->setChecked(sheet.spans);
  ground_->setChecked(sheet.ground);
  notes_->setChecked(sheet.notes);
  transparent_->setChecked(sheet.transparent);
  plate_->setText(QString::fromStdString(sheet.plate));
  const bool known = sheet.layout == files::SheetLayout::Evidence, plate = sheet.layout == files::SheetLayout::Plate;
  const bool neck = sheet.layout == files::SheetLayout::Neck || plate;  // parts that stand on no ground
  plate_->setEnabled(plate);
  for (QWidget* part : {static_cast<QWidget*>(joints_), static_cast<QWidget*>(notes_)}) part->setEnabled(!plate);
  bones_->setEnabled(!known);
  tones_->setEnabled(!known);
  for (QWidget* part : {static_cast<QWidget*>(person_), static_cast<QWidget*>(spans_), static_cast<QWidget*>(ground_)})
    part->setEnabled(!neck);
  height_->setEnabled(!neck && sheet.person > 0);
  filling_ = false;
}

Sheet SheetDialog::chosen() const {
  Sheet sheet;
  sheet.title = title_->text().trimmed().toStdString();
  sheet.layout = static_cast<files::SheetLayout>(layout_->currentIndex());
  sheet.plate = plate_->text().trimmed().toStdString();
  if (sheet.layout == files::SheetLayout::Plate && sheet.plate.empty() && document_.selectedBone())
    sheet.plate = document_.specimen()[*document_.selectedBone()].id;
  sheet.paper = static_cast<files::SheetPaper>(paper_->currentIndex());
  sheet.bones = static_cast<files::SheetBones>(bones_->currentIndex());
  sheet.scale = scale_->currentData().toDouble();
  sheet.person = person_->isChecked() ? height_->value() : 0;
  sheet.evidenceTones = tones_->isChecked();
  sheet.jointMarks = joints_->isChecked();
  sheet.spans = spans_->isChecked();
  sheet.ground = ground_->isChecked();
  sheet.notes = notes_->isChecked();
  sheet.transparent = transparent_->isChecked();
  return sheet;
}

void SheetDialog::choose() {
  if (filling_) return;
  const int key = sender() == height_ ? kPersonKey : sender() == title_ ? kTitleKey : 0;
  changeSheet(document_, chosen(), tr("Change the sheet"), key);
}

SheetScene SheetDialog::scene() const {
  const files::Project& project = document_.project();
  SheetScene scene{document_.scenario(), document_.meshes(), {}, project.notes, project.guide, {}};
  for (const files::NamedPose& named : project.poses)
    if (named.pose == document_.pose()) scene.poseName = named.name;
  if (bodyOf_ == project.guide) scene.body = body_;
  return scene;
}

/// Coarse first, so that a choice is answered at once; then as fine as a screen shows.
void SheetDialog::redraw(bool fine) {
  const auto scene = std::make_shared<SheetScene>(this->scene());
  const auto work = [this, scene, sheet = document_.project().sheet,
                     fine](const Worker::Control& control) -> Worker::Delivery {
    try {
      if (!scene->body) scene->body = bodyAround(*scene, sheet, control.task);
      auto page = fine ? drawSheet(*scene, sheet, workOf(110, 4, 0.25, control))
                       : drawSheet(*scene, sheet, workOf(55, 1, 0.6, control));
      if (!page) return {};
      return [this, fine, scene, page = std::move(*page)] {
        shown_->setPage(page);
        body_ = scene->body;
        bodyOf_ = scene->guide;
        if (!fine) redraw(true);
      };
    } catch (const std::invalid_argument& error) {
      return [this, fault = sayFailure(error)] { shown_->setFault(fault); };
    }
  };
  preview_.start(work, [this](const QString& cause) { shown_->setFault(cause); });
}

void SheetDialog::save() {
  const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  auto* dialog = new QFileDialog(this, tr("Save the sheet"), QSettings().value(kFolderKey, documents).toString());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setNameFilters({tr("PDF (*.pdf)"), tr("SVG (*.svg)"), tr("PNG (*.png)")});
  dialog->setDefaultSuffix("pdf");
  connect(dialog, &QFileDialog::filterSelected, dialog,
          [dialog](const QString& filter) { dialog->setDefaultSuffix(filter.section('.', 1).chopped(1)); });
  connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& file) {
    QSettings().setValue(kFolderKey, QFileInfo(file).absolutePath());
    startSaving(file);
  });
  dialog->open();
}

void SheetDialog::startSaving(const QString& file) {
  const QString ending = QFileInfo(file).suffix().toLower();
  if (!pageEndings().contains(ending)) return told_->setText(tr("A sheet ends in .pdf, .svg or .png."));
  const auto scene = std::make_shared<const SheetScene>(this->scene());
  const Sheet sheet = document_.project().sheet;
  const int width = width_->value();
  const double dots = ending == "png" ? width / sizeOf(sheet.paper).width() * 25.4 : 300;
  const auto work = [this, scene, sheet, file, ending, width,
                     dots](const Worker::Control& control) -> Worker::Delivery {
    const auto page = drawSheet(*scene, sheet, workOf(dots, dots > 500 ? 4 : 9, 0.12, control));
    if (!page) return {};
    const QByteArray bytes = pageBytes(*page, ending, width);
    if (control.task.cancelled()) return {};
    files::writeWhole(file.toStdString(), {bytes.data(), static_cast<std::size_t>(bytes.size())});
    return [this, file] {
      told_->setText(tr("%1 is written.").arg(QFileInfo(file).fileName()));
      emit written(file);
    };
  };
  saver_.start(work, [this](const QString& cause) { told_->setText(cause); });
}

void SheetDialog::showSaving(bool saving) {
  progress_->setVisible(saving);
  stop_->setVisible(saving);
  told_->setVisible(!saving);
  save_->setEnabled(!saving);
}

}  // namespace zyga::ui
