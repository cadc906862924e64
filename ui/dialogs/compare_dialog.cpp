#include "ui/dialogs/compare_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>
#include <cmath>

#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"
#include "ui/words/stance_words.h"

namespace zyga::ui {
namespace {

constexpr int kUsualAssumptions = -1;

QTableWidget* table(const QString& name, const QStringList& heads) {
  auto* table = new QTableWidget;
  table->setObjectName(name);
  table->setColumnCount(static_cast<int>(heads.size()));
  table->setHorizontalHeaderLabels(heads);
  table->verticalHeader()->hide();
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setShowGrid(false);
  table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  table->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
  return table;
}

void setRow(QTableWidget& table, int row, const QStringList& cells) {
  for (int column = 0; column < cells.size(); ++column) {
    auto* item = new QTableWidgetItem(cells[column]);
    if (column > 0) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    table.setItem(row, column, item);
  }
}

QString value(double number, bool angle) {
  if (!std::isfinite(number)) return "–";
  return angle ? signedDegrees(number) : metres(number);
}

QString difference(double number, bool angle) {
  if (!std::isfinite(number)) return "–";
  return angle ? signedDegrees(number) : (number > 0 ? "+" : "") + millimetres(number, 0);
}

QString levels(const study::ComparedJoint& joint) {
  if (joint.firstLevel == joint.secondLevel) return levelWords(joint.firstLevel);
  return levelWords(joint.firstLevel) + " → " + levelWords(joint.secondLevel);
}

}  // namespace

CompareDialog::CompareDialog(Document& document, QWidget* parent)
    : QDialog(parent),
      document_(document),
      other_(calmComboBox()),
      empty_(mutedLabel()),
      readings_(table("compareReadings", {tr("Reading"), tr("Now"), tr("Other"), tr("Difference")})),
      joints_(table("compareJoints", {tr("Joint"), tr("Up"), tr("Left"), tr("Torsion"), tr("Verdict, now → other")})) {
  setObjectName("compareDialog");
  setWindowTitle(tr("Compare"));
  other_->setObjectName("compareOther");
  other_->setAccessibleName(tr("What the present pose is compared with"));
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kGap);
  layout->addWidget(mutedLabel(tr("The present pose against")));
  layout->addWidget(other_);
  layout->addWidget(readings_, 2);
  layout->addWidget(mutedLabel(tr("Joints that differ: degrees of the other less the present")));
  layout->addWidget(joints_, 3);
  layout->addWidget(empty_);
  layout->addWidget(buttons);
  resize(620, 640);
  connect(other_, &QComboBox::activated, this, &CompareDialog::choose);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & (Changes(Change::NamedPoses) | Change::Compared)) fillChoices();
    if (what & (Changes(Change::Pose) | Change::Assumptions | Change::Contact | Change::NamedPoses | Change::Compared))
      refresh();
  });
  fillChoices();
  if (!document_.comparedPose() && document_.hasProject() && !document_.project().poses.empty())
    document_.comparePose(0);
  refresh();
}

CompareDialog::~CompareDialog() {
  document_.disconnect(this);
  document_.comparePose(std::nullopt);
}

void CompareDialog::fillChoices() {
  if (!document_.hasProject()) return;
  const QSignalBlocker quiet(other_);
  other_->clear();
  const auto& poses = document_.project().poses;
  for (std::size_t i = 0; i < poses.size(); ++i)
    other_->addItem(tr("Pose “%1”").arg(QString::fromStdString(poses[i].name)), static_cast<int>(i));
  other_->addItem(tr("The same pose under the usual assumptions"), kUsualAssumptions);
  const auto compared = document_.comparedPose();
  other_->setCurrentIndex(other_->findData(compared ? static_cast<int>(*compared) : kUsualAssumptions));
}

std::optional<std::size_t> CompareDialog::chosenPose() const {
  const int data = other_->currentData().toInt();
  if (data < 0) return std::nullopt;
  return static_cast<std::size_t>(data);
}

void CompareDialog::choose() {
  document_.comparePose(chosenPose());
  refresh();
}

void CompareDialog::refresh() {
  if (!document_.hasProject()) return;
  const range::Scenario& now = document_.scenario();
  const auto pose = chosenPose();
  if (pose && *pose < document_.project().poses.size())
    return fill(study::compare(now, now.withPose(document_.project().poses[*pose].pose)));
  fill(study::compare(now, now.withAssumptions({})));
}

void CompareDialog::fill(const study::Comparison& comparison) {
  readings_->setRowCount(static_cast<int>(comparison.readings.size()));
  for (std::size_t i = 0; i < comparison.readings.size(); ++i) {
    const auto& r = comparison.readings[i];
    setRow(*readings_, static_cast<int>(i),
           {readingName(r.reading), value(r.first, isAngle(r.reading)), value(r.second, isAngle(r.reading)),
            difference(r.second - r.first, isAngle(r.reading))});
  }
  joints_->setRowCount(static_cast<int>(comparison.joints.size()));
  for (std::size_t i = 0; i < comparison.joints.size(); ++i) {
    const auto& joint = comparison.joints[i];
    const Eigen::Vector3d change = joint.second - joint.first;
    setRow(*joints_, static_cast<int>(i),
           {QString::fromStdString(document_.specimen()[joint.joint].id), signedDegrees(change[0]),
            signedDegrees(change[1]), signedDegrees(change[2]), levels(joint)});
  }
  empty_->setText(comparison.joints.empty() ? tr("No joint differs in angle or verdict.") : QString());
  empty_->setVisible(comparison.joints.empty());
}

}  // namespace zyga::ui
