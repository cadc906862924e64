#include <gmock/gmock.h>

#include <QListWidget>
#include <QRegularExpression>
#include <QTextBrowser>
#include <QToolButton>

#include "tests/ui/window_fixture.h"
#include "ui/help/help_pages.h"
#include "ui/help/help_window.h"
#include "ui/words/language.h"

namespace zyga::ui {
namespace {

/// What stands in an attribute, everywhere in a page: the names of figures, or the targets of links.
QStringList attributes(const QString& html, const QString& name) {
  QStringList found;
  const QRegularExpression pattern(name + "=\"([^\"]*)\"");
  for (auto it = pattern.globalMatch(html); it.hasNext();) found += it.next().captured(1);
  return found;
}

TEST(HelpPages, EveryLinkAndFigureLeadsSomewhereInEveryLanguage) {
  for (const Language& language : languagesOffered()) {
    speak(language.code);
    for (const QString& page : HelpWindow::pages()) {
      const QString html = helpHtml(page);
      ASSERT_FALSE(html.isEmpty()) << page.toStdString();
      EXPECT_FALSE(helpTitle(page).isEmpty()) << page.toStdString();
      for (const QString& link : attributes(html, "href"))
        EXPECT_TRUE(HelpWindow::pages().contains(link)) << page.toStdString() << " -> " << link.toStdString();
      for (const QString& figure : attributes(html, "src"))
        EXPECT_FALSE(helpFigure(figure, 1).isNull()) << page.toStdString() << ": " << figure.toStdString();
    }
  }
  speak("en");
}

TEST(HelpPages, FiguresTakeTheColoursOfTheTheme) {
  for (const Scheme scheme : {Scheme::Light, Scheme::Dark}) {
    ThemeSwitch::instance().apply(*qApp, scheme);
    const QImage figure = helpFigure("overlap.svg", 1).convertToFormat(QImage::Format_RGB32);
    int strokes = 0;
    for (int y = 0; y < figure.height(); ++y)
      for (int x = 0; x < figure.width(); ++x) strokes += QColor(figure.pixel(x, y)) == theme().text;
    EXPECT_GT(strokes, 50);
  }
  ThemeSwitch::instance().apply(*qApp, Scheme::Light);
}

TEST_F(WindowTest, HelpOpensAtThePageOfThePanelAndIsSearched) {
  auto* assumptions = part<QWidget>("jointDock");
  QTest::mouseClick(assumptions->findChild<QToolButton*>("panelHelp"), Qt::LeftButton);
  auto* help = dialog<HelpWindow>();
  ASSERT_NE(help, nullptr);
  EXPECT_EQ(help->page(), "overlap");
  auto* browser = help->findChild<QTextBrowser*>("helpBrowser");
  EXPECT_TRUE(browser->toPlainText().startsWith("Facet overlap"));
  EXPECT_TRUE(browser->toPlainText().contains("Cobley"));

  auto* search = help->findChild<QLineEdit*>("helpSearch");
  search->setFocus();
  QTest::keyClicks(search, "rhea");
  EXPECT_EQ(help->page(), "cartilage");
  EXPECT_FALSE(browser->extraSelections().isEmpty()) << "hits are marked";
  auto* list = help->findChild<QListWidget*>("helpPages");
  int shown = 0;
  for (int row = 0; row < list->count(); ++row) shown += !list->item(row)->isHidden();
  EXPECT_EQ(shown, 1);
  search->clear();
  list->setFocus();
  QTest::keyClick(list, Qt::Key_Home);
  EXPECT_EQ(help->page(), HelpWindow::pages().front());
}

}  // namespace
}  // namespace zyga::ui
