#include "ui/parts/message_bar.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QToolButton>
#include <algorithm>

#include "ui/parts/panel_parts.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

constexpr std::size_t kMostMessages = 3;

/// One message: a stripe in the choice colour (in vermillion for a warning), the words, the answers, a close button.
class MessageRow : public QWidget {
 public:
  MessageRow(const QString& text, bool warning, MessageBar::Stays stays)
      : warning_(warning), stays_(stays), label_(new QLabel(text)) {
    setObjectName("message");
    label_->setObjectName("messageText");
    label_->setWordWrap(true);
    label_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    row_ = new QHBoxLayout(this);
    row_->setContentsMargins(kWideGap, kGap, kGap, kGap);
    row_->setSpacing(kGap);
    row_->addWidget(label_, 1);
  }

  QString text() const { return label_->text(); }
  bool isWarning() const { return warning_; }
  /// Whether it may stay when another project is opened.
  bool outlivesProject() const {
    return stays_ == MessageBar::Stays::UntilAnswered && findChild<QPushButton*>() != nullptr;
  }
  void add(QWidget* widget) { row_->addWidget(widget, 0, Qt::AlignTop); }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.fillRect(rect(), theme().panel);
    painter.fillRect(QRect(0, 0, kGridStep, height()), warning_ ? theme().beyond : theme().choice);
    painter.fillRect(QRect(0, height() - 1, width(), 1), theme().line);
  }

 private:
  bool warning_;
  MessageBar::Stays stays_;
  QLabel* label_;
  QHBoxLayout* row_;
};

std::vector<MessageRow*> rowsOf(const QVBoxLayout& layout) {
  std::vector<MessageRow*> rows;
  for (int i = 0; i < layout.count(); ++i)
    if (auto* row = dynamic_cast<MessageRow*>(layout.itemAt(i)->widget())) rows.push_back(row);
  return rows;
}

void take(QVBoxLayout& layout, MessageRow* row) {
  layout.removeWidget(row);
  row->hide();
  row->deleteLater();
}

}  // namespace

MessageBar::MessageBar(QWidget* parent) : QWidget(parent), rows_(new QVBoxLayout(this)) {
  setObjectName("messages");
  rows_->setContentsMargins(0, 0, 0, 0);
  rows_->setSpacing(0);
}

void MessageBar::warn(const QString& text, std::vector<Answer> answers, Stays stays) {
  add(text, true, answers, stays);
}

void MessageBar::tell(const QString& text, std::vector<Answer> answers, Stays stays) {
  add(text, false, answers, stays);
}

void MessageBar::add(const QString& text, bool warning, const std::vector<Answer>& answers, Stays stays) {
  remove(text);
  auto* row = new MessageRow(text, warning, stays);
  for (const Answer& answer : answers) {
    auto* button = new QPushButton(answer.text);
    connect(button, &QPushButton::clicked, this, [this, text, act = answer.act] {
      remove(text);
      if (act) act();
    });
    row->add(button);
  }
  QToolButton* close = iconButton("close", tr("Close this message"));
  connect(close, &QToolButton::clicked, this, [this, text] { remove(text); });
  row->add(close);
  rows_->addWidget(row);
  const auto rows = rowsOf(*rows_);
  if (rows.size() <= kMostMessages) return;
  // The oldest goes, warnings last.
  const auto mild = std::find_if(rows.begin(), rows.end() - 1, [](const auto* r) { return !r->isWarning(); });
  take(*rows_, mild == rows.end() - 1 ? rows.front() : *mild);
}

void MessageBar::remove(const QString& text) {
  for (MessageRow* row : rowsOf(*rows_))
    if (row->text() == text) take(*rows_, row);
}

QStringList MessageBar::texts() const {
  QStringList texts;
  for (const MessageRow* row : rowsOf(*rows_)) texts += row->text();
  return texts;
}

void MessageBar::clearPassing() {
  for (MessageRow* row : rowsOf(*rows_))
    if (!row->outlivesProject()) take(*rows_, row);
}

}  // namespace zyga::ui
