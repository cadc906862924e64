#include "ui/panels/notes_panel.h"

#include <QComboBox>
#include <QFocusEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QToolButton>
#include <QVBoxLayout>

#include "ui/commands/project_edits.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/say.h"

namespace zyga::ui {

using anatomy::NoteBasis;

NotesPanel::NotesPanel(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      list_(new QListWidget),
      empty_(mutedLabel(tr("Nothing is pinned. Click a bone with the right button and choose “Pin a note here”."))),
      fields_(new QWidget),
      words_(new QPlainTextEdit),
      basis_(calmComboBox()),
      source_(new QLineEdit),
      remove_(iconButton("delete", tr("Delete the note"))) {
  setObjectName("notesPanel");
  list_->setObjectName("notesList");
  list_->setAccessibleName(tr("Notes"));
  list_->setMinimumHeight(64);
  words_->setObjectName("noteWords");
  words_->setAccessibleName(tr("Words of the note"));
  words_->setPlaceholderText(tr("What is to be seen here"));
  words_->setFixedHeight(64);
  words_->setTabChangesFocus(true);
  words_->installEventFilter(this);
  basis_->setObjectName("noteBasis");
  for (const NoteBasis basis : {NoteBasis::Bone, NoteBasis::LivingRelatives, NoteBasis::Conjecture})
    basis_->addItem(capital(noteBasisName(basis)));
  basis_->setAccessibleName(tr("What the note rests on"));
  source_->setObjectName("noteSource");
  source_->setPlaceholderText(tr("Source"));
  source_->setAccessibleName(tr("Source of the note"));
  auto* row = new QHBoxLayout;
  row->addWidget(basis_, 1);
  row->addWidget(remove_);
  auto* fields = new QVBoxLayout(fields_);
  fields->setContentsMargins(0, 0, 0, 0);
  fields->setSpacing(kGap);
  fields->addWidget(words_);
  fields->addLayout(row);
  fields->addWidget(source_);
  auto* content = new QWidget;
  auto* layout = new QVBoxLayout(content);
  setPanelMargins(*layout);
  layout->addWidget(empty_);
  layout->addWidget(list_, 1);
  layout->addWidget(fields_);
  auto* whole = new QVBoxLayout(this);
  whole->setContentsMargins(0, 0, 0, 0);
  whole->addWidget(scrolling(content));
  connect(list_, &QListWidget::currentRowChanged, this, [this](int number) {
    if (!filling_ && number >= 0) document_.selectNote(static_cast<std::size_t>(number));
  });
  connect(list_, &QListWidget::itemActivated, this, [this] {
    const auto number = document_.selectedNote();
    const auto bone = number ? boneOf(document_.project().notes[*number], document_.specimen()) : std::nullopt;
    if (bone) emit frameBone(*bone);
  });
  connect(basis_, &QComboBox::activated, this, [this] { keep(tr("Change what note %1 rests on")); });
  connect(source_, &QLineEdit::editingFinished, this, [this] { keep(tr("Change the source of note %1")); });
  connect(remove_, &QToolButton::clicked, this, [this] {
    if (const auto number = document_.selectedNote()) deleteNote(document_, *number);
  });
  connect(&document_, &Document::changed, this, &NotesPanel::refresh);
  refresh(Change::Everything);
}

void NotesPanel::write() { words_->setFocus(Qt::OtherFocusReason); }

/// Words are kept when the keyboard leaves them, as one step.
bool NotesPanel::eventFilter(QObject* watched, QEvent* event) {
  if (watched == words_ && event->type() == QEvent::FocusOut) keep(tr("Write note %1"));
  return QWidget::eventFilter(watched, event);
}

void NotesPanel::keep(const QString& what) {
  const auto number = document_.hasProject() ? document_.selectedNote() : std::nullopt;
  if (!number || filling_) return;
  anatomy::Note note = document_.project().notes[*number];
  note.text = words_->toPlainText().simplified().toStdString();
  note.basis = static_cast<NoteBasis>(basis_->currentIndex());
  note.source = source_->text().trimmed().toStdString();
  changeNote(document_, *number, note, what.arg(*number + 1));
}

void NotesPanel::refresh(Changes what) {
  if (!(what & Change::Notes) && !(what & Change::Specimen)) return;
  filling_ = true;
  fillList();
  fillFields();
  filling_ = false;
}

void NotesPanel::fillList() {
  list_->clear();
  const auto count = document_.hasProject() ? document_.project().notes.size() : 0;
  for (std::size_t i = 0; i < count; ++i) {
    const anatomy::Note& note = document_.project().notes[i];
    QString line = QString("%1  %2").arg(i + 1).arg(QString::fromStdString(toId(note.bone)));
    if (!note.text.empty()) line += ": " + QString::fromStdString(note.text);
    if (!boneOf(note, document_.specimen())) line = tr("%1 (the animal has no such bone)").arg(line);
    auto* item = new QListWidgetItem(line, list_);
    item->setToolTip(line);
  }
  if (const auto chosen = count > 0 ? document_.selectedNote() : std::nullopt)
    list_->setCurrentRow(static_cast<int>(*chosen));
  empty_->setVisible(count == 0);
  list_->setVisible(count > 0);
  emit shortChanged(count == 0 ? QString() : tr("%n pinned", nullptr, static_cast<int>(count)));
}

void NotesPanel::fillFields() {
  const auto chosen = document_.hasProject() ? document_.selectedNote() : std::nullopt;
  fields_->setVisible(chosen.has_value());
  if (!chosen) return;
  const anatomy::Note& note = document_.project().notes[*chosen];
  const QString words = QString::fromStdString(note.text);
  if (words_->toPlainText() != words) words_->setPlainText(words);
  basis_->setCurrentIndex(static_cast<int>(note.basis));
  source_->setText(QString::fromStdString(note.source));
}

}  // namespace zyga::ui
