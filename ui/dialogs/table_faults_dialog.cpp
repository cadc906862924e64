#include "ui/dialogs/table_faults_dialog.h"

#include <QApplication>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/parts/panel_parts.h"
#include "ui/theme/typography.h"
#include "ui/words/say.h"
#include "ui/words/table_words.h"

namespace zyga::ui {
namespace {

using anatomy::TableMessage;

bool isError(const TableMessage& message) { return message.severity == TableMessage::Severity::Error; }

QString headline(const QString& fileName, const std::vector<TableMessage>& messages) {
  const auto errors = std::count_if(messages.begin(), messages.end(), isError);
  if (errors == 0) return TableFaultsDialog::tr("%1 was opened with remarks").arg(fileName);
  if (errors == 1) return TableFaultsDialog::tr("%1 has one fault").arg(fileName);
  return TableFaultsDialog::tr("%1 has %n faults", nullptr, static_cast<int>(errors)).arg(fileName);
}

QTableWidgetItem* cell(const QString& text) {
  auto* item = new QTableWidgetItem(text);
  item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
  item->setToolTip(text);
  item->setTextAlignment(Qt::AlignLeft | Qt::AlignTop);
  return item;
}

QTableWidget* listOf(const std::vector<TableMessage>& messages) {
  auto* table = new QTableWidget(static_cast<int>(messages.size()), 5);
  table->setObjectName("faults");
  table->setHorizontalHeaderLabels({TableFaultsDialog::tr("Kind"), TableFaultsDialog::tr("Line"),
                                    TableFaultsDialog::tr("Column"), TableFaultsDialog::tr("What is wrong"),
                                    TableFaultsDialog::tr("What to do")});
  for (int row = 0; row < table->rowCount(); ++row) {
    const TableMessage& message = messages[static_cast<std::size_t>(row)];
    table->setItem(row, 0, cell(isError(message) ? TableFaultsDialog::tr("fault") : TableFaultsDialog::tr("remark")));
    table->setItem(row, 1, cell(message.line > 0 ? QString::number(message.line) : QString()));
    // The column by its number, and whose cell it is.
    QStringList where;
    if (message.column > 0) where << QString::number(message.column);
    if (message.bone) where << cellOf(message);
    table->setItem(row, 2, cell(where.join(": ")));
    table->setItem(row, 3, cell(say(message.cause)));
    table->setItem(row, 4, cell(say(message.mend)));
  }
  table->setSelectionBehavior(QAbstractItemView::SelectRows);
  table->setShowGrid(false);
  table->setWordWrap(true);
  table->verticalHeader()->hide();
  QHeaderView& header = *table->horizontalHeader();
  header.setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  for (int column : {0, 1, 2}) header.setSectionResizeMode(column, QHeaderView::ResizeToContents);
  for (int column : {3, 4}) header.setSectionResizeMode(column, QHeaderView::Stretch);
  table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  return table;
}

}  // namespace

TableFaultsDialog::TableFaultsDialog(const QString& fileName, const std::vector<TableMessage>& messages,
                                     QWidget* parent)
    : QDialog(parent), messages_(messages) {
  setObjectName("tableFaults");
  setWindowTitle(tr("Measurement table"));
  auto* title = new QLabel(headline(fileName, messages));
  title->setFont(titleFont(font()));
  const bool refused = std::any_of(messages.begin(), messages.end(), isError);
  auto* note =
      mutedLabel(refused ? tr("Nothing was opened, and what was open is as it was. Correct the table and open it "
                              "again.")
                         : tr("The table is in use. These cells deserve a second look."));
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
  auto* copy = buttons->addButton(tr("Copy all"), QDialogButtonBox::ActionRole);
  connect(copy, &QPushButton::clicked, this, &TableFaultsDialog::copyAll);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  layout->setSpacing(kGap);
  layout->addWidget(title);
  layout->addWidget(note);
  layout->addWidget(listOf(messages), 1);
  layout->addWidget(buttons);
  resize(760, 420);
}

void TableFaultsDialog::copyAll() const { QApplication::clipboard()->setText(say(messages_)); }

}  // namespace zyga::ui
