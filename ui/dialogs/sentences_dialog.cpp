#include "ui/dialogs/sentences_dialog.h"

#include <QApplication>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"

namespace zyga::ui {

SentencesDialog::SentencesDialog(const QString& title, const QStringList& sentences, QWidget* parent)
    : QDialog(parent) {
  setWindowTitle(title);
  auto* text = new QPlainTextEdit(sentences.join("\n\n"));
  text->setObjectName("sentences");
  text->setAccessibleName(title);
  text->setReadOnly(true);
  text->setTabChangesFocus(true);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  auto* copy = buttons->addButton(tr("Copy all"), QDialogButtonBox::ActionRole);
  connect(copy, &QPushButton::clicked, this, [sentences] { QApplication::clipboard()->setText(sentences.join('\n')); });
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kGap);
  layout->addWidget(text, 1);
  layout->addWidget(buttons);
  resize(760, 420);
}

}  // namespace zyga::ui
