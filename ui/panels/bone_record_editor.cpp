#include "ui/panels/bone_record_editor.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

#include "ui/commands/project_edits.h"
#include "ui/panels/bones_model.h"
#include "ui/parts/evidence_mark.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

void push(Document& document, BoneIndex bone, BoneRecord after, const QString& text) {
  const anatomy::Bone& present = document.specimen()[bone];
  if (after == BoneRecord{present.evidence, present.source}) return;
  document.undoStack().push(
      new SetBoneRecord(document, bone, std::move(after), text.arg(QString::fromStdString(present.id))));
}

}  // namespace

BoneRecordEditor::BoneRecordEditor(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), evidence_(evidenceChoice()), source_(new QLineEdit), missing_(new QLabel) {
  // The list above keeps its height when the first bone is chosen.
  QSizePolicy steady = sizePolicy();
  steady.setRetainSizeWhenHidden(true);
  setSizePolicy(steady);
  evidence_->setObjectName("boneEvidence");
  evidence_->setAccessibleName(tr("Evidence"));
  source_->setObjectName("boneSource");
  source_->setAccessibleName(tr("Source"));
  source_->setPlaceholderText(tr("source"));
  evidence_->setToolTip(tr("How this bone is known"));
  source_->setToolTip(tr("Where that is written, or whose choice it is"));
  missing_->setObjectName("boneMissing");
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(kGridStep);
  row->addWidget(evidence_);
  row->addWidget(source_, 1);
  row->addWidget(missing_);
  connect(evidence_, &QComboBox::activated, this, &BoneRecordEditor::takeEvidence);
  connect(source_, &QLineEdit::editingFinished, this, &BoneRecordEditor::takeSource);
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & (Changes(Change::Selection) | Change::Bones | Change::Scans)) refresh();
  });
  connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, this, [this] { paintEvidenceMarks(*evidence_); });
  refresh();
}

void BoneRecordEditor::refresh() {
  const auto bone = document_.hasProject() ? document_.selectedBone() : std::nullopt;
  setVisible(bone.has_value());
  if (!bone) return;
  const anatomy::Bone& present = document_.specimen()[*bone];
  evidence_->setCurrentIndex(evidence_->findData(static_cast<int>(present.evidence)));
  source_->setText(QString::fromStdString(present.source));
  source_->setCursorPosition(0);
  const QStringList missing = missingOf(document_, present.name);
  missing_->setVisible(!missing.isEmpty());
  missing_->setText(QString("<span style='color:%1'>\u25B2</span>").arg(theme().beyond.name()));
  missing_->setToolTip(tr("Incomplete scan: %1.").arg(missing.join("; ")));
  missing_->setAccessibleName(missing_->toolTip());
}

void BoneRecordEditor::takeEvidence() {
  if (const auto bone = document_.selectedBone())
    push(document_, *bone,
         {static_cast<anatomy::Evidence>(evidence_->currentData().toInt()), document_.specimen()[*bone].source},
         tr("Evidence of %1"));
}

void BoneRecordEditor::takeSource() {
  if (const auto bone = document_.selectedBone())
    push(document_, *bone, {document_.specimen()[*bone].evidence, source_->text().trimmed().toStdString()},
         tr("Source of %1"));
}

}  // namespace zyga::ui
