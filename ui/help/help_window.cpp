#include "ui/help/help_window.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QScreen>
#include <QShortcut>
#include <QTextBrowser>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/help/help_pages.h"
#include "ui/parts/panel_parts.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

/// Pages are named plainly ("overlap"); figures are drawn in the colours of the theme.
class HelpBrowser : public QTextBrowser {
 public:
  HelpBrowser() {
    setOpenExternalLinks(false);
    setFrameShape(QFrame::NoFrame);
    document()->setDocumentMargin(kWideGap);
  }

 protected:
  QVariant loadResource(int type, const QUrl& name) override {
    if (type == QTextDocument::ImageResource) {
      const QImage figure = helpFigure(name.fileName(), devicePixelRatioF());
      return figure.isNull() ? QVariant() : figure;
    }
    return helpHtml(name.fileName());
  }
};

}  // namespace

const QStringList& HelpWindow::pages() {
  static const QStringList pages{"judged",    "neutral", "overlap",  "gap",    "contact", "typed",    "range",
                                 "cartilage", "angles",  "reach",    "claims", "ground",  "evidence", "table",
                                 "animals",   "marks",   "drawings", "files",  "living",  "sources"};
  return pages;
}

QString HelpWindow::pageFor(const QWidget* widget) {
  for (; widget; widget = widget->parentWidget())
    if (const QString page = widget->property("helpPage").toString(); pages().contains(page)) return page;
  return pages().front();
}

HelpWindow::HelpWindow(QWidget* parent)
    : QDialog(parent), search_(new QLineEdit), list_(new QListWidget), browser_(new HelpBrowser) {
  setObjectName("helpWindow");
  setWindowTitle(tr("How joints are judged"));
  search_->setObjectName("helpSearch");
  search_->setPlaceholderText(tr("Search"));
  search_->setAccessibleName(tr("Search the help"));
  search_->setClearButtonEnabled(true);
  list_->setObjectName("helpPages");
  list_->setAccessibleName(tr("Pages of the help"));
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->setWordWrap(true);
  browser_->setObjectName("helpBrowser");
  browser_->setAccessibleName(tr("Help page"));
  auto* left = new QVBoxLayout;
  left->setSpacing(kGap);
  left->addWidget(search_);
  left->addWidget(list_, 1);
  auto* whole = new QHBoxLayout(this);
  whole->setContentsMargins(kWideGap, kWideGap, kWideGap, kWideGap);
  whole->setSpacing(kWideGap);
  whole->addLayout(left, 1);
  whole->addWidget(browser_, 3);
  fillList();
  connect(search_, &QLineEdit::textChanged, this, &HelpWindow::find);
  connect(list_, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* now) {
    if (now && now->data(Qt::UserRole) != page()) showPage(now->data(Qt::UserRole).toString());
  });
  connect(browser_, &QTextBrowser::sourceChanged, this, [this] {
    for (int row = 0; row < list_->count(); ++row)
      if (list_->item(row)->data(Qt::UserRole) == page()) list_->setCurrentRow(row);
    markHits();
  });
  connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, this, [this] { showPage(page()); });
  new QShortcut(QKeySequence::Find, search_, [this] { search_->setFocus(Qt::ShortcutFocusReason); });
  new QShortcut(QKeySequence::Back, browser_, [this] { browser_->backward(); });
  const QSize room = screen()->availableSize();
  resize(std::min(scaledWithText(860), room.width() - 40), std::min(scaledWithText(620), room.height() - 80));
  showPage(pages().front());
}

void HelpWindow::fillList() {
  for (const QString& page : pages()) {
    auto* item = new QListWidgetItem(helpTitle(page), list_);
    item->setData(Qt::UserRole, page);
  }
}

QString HelpWindow::page() const { return browser_->source().fileName(); }

void HelpWindow::showPage(const QString& page) {
  browser_->document()->setDefaultStyleSheet(helpStyle());
  if (page == this->page()) return browser_->reload();
  browser_->setSource(QUrl(page), QTextDocument::HtmlResource);
}

/// Pages that hold all the words stay in the list.
void HelpWindow::find() {
  const QStringList words = search_->text().split(' ', Qt::SkipEmptyParts);
  QListWidgetItem* first = nullptr;
  for (int row = 0; row < list_->count(); ++row) {
    QListWidgetItem* item = list_->item(row);
    const QString text = helpWords(item->data(Qt::UserRole).toString());
    const bool holds = std::all_of(words.begin(), words.end(),
                                   [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
    item->setHidden(!holds);
    if (holds && !first) first = item;
  }
  if (first && list_->currentItem() && list_->currentItem()->isHidden()) list_->setCurrentItem(first);
  markHits();
}

void HelpWindow::markHits() {
  QList<QTextEdit::ExtraSelection> hits;
  for (const QString& word : search_->text().split(' ', Qt::SkipEmptyParts))
    for (QTextCursor at = browser_->document()->find(word); !at.isNull(); at = browser_->document()->find(word, at)) {
      QTextEdit::ExtraSelection hit;
      hit.cursor = at;
      hit.format.setBackground(mixed(theme().panel, theme().choice, 0.35));
      hits += hit;
    }
  browser_->setExtraSelections(hits);
  if (hits.isEmpty()) return;
  QTextCursor first = hits.front().cursor;
  first.clearSelection();
  browser_->setTextCursor(first);
}

}  // namespace zyga::ui
