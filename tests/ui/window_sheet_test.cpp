#include <QComboBox>
#include <QMenu>
#include <QPlainTextEdit>

#include "tests/ui/window_fixture.h"
#include "ui/commands/project_edits.h"
#include "ui/dialogs/sheet/sheet_dialog.h"
#include "ui/dialogs/sheet/sheet_preview.h"

namespace zyga::ui {
namespace {

class WindowNotes : public WindowTest {};
class WindowSheet : public WindowTest {};

TEST_F(WindowNotes, ANoteIsPinnedByKeyWrittenAndUndone) {
  document_->selectBone(bone("skull"));
  QTest::keyClick(window_.get(), Qt::Key_N, Qt::ControlModifier | Qt::AltModifier);
  ASSERT_TRUE(QTest::qWaitFor([this] { return document_->project().notes.size() == 1; }, kPatience));
  auto* words = part<QPlainTextEdit>("noteWords");
  ASSERT_TRUE(QTest::qWaitFor([words] { return words->isVisible(); }, kPatience));
  words->setFocus();
  QTest::keyClicks(words, "fleshy nostril");
  part<QLineEdit>("noteSource")->setFocus();
  EXPECT_EQ(document_->project().notes[0].text, "fleshy nostril");
  EXPECT_EQ(toId(document_->project().notes[0].bone), "skull");
  auto* basis = part<QComboBox>("noteBasis");
  basis->setFocus();
  QTest::keyClick(basis, Qt::Key_Down);
  EXPECT_EQ(document_->project().notes[0].basis, anatomy::NoteBasis::LivingRelatives);
  action("Undo")->trigger();
  action("Undo")->trigger();
  EXPECT_EQ(document_->project().notes[0].text, "");
  action("Undo")->trigger();
  EXPECT_TRUE(document_->project().notes.empty());
}

TEST_F(WindowNotes, ARightClickPinsWhereThePointerIs) {
  viewport()->showView(picture::StandardView::Left);
  const auto place = [this] { return viewport()->placeOf(bone("femur.L")); };
  QPointF last;
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {  // until the view has come to rest
        const auto now = place();
        const bool rests = now && *now == last;
        if (now) last = *now;
        return rests;
      },
      kPatience));
  QTest::mouseMove(viewport(), last.toPoint());
  QTest::mouseClick(viewport(), Qt::RightButton, {}, last.toPoint());
  auto* menu = part<QMenu>("boneMenu");
  ASSERT_NE(menu, nullptr);
  QAction* pin = nullptr;
  for (QAction* offered : menu->actions())
    if (offered->text().remove('&').startsWith("Pin a note")) pin = offered;
  ASSERT_NE(pin, nullptr);
  pin->trigger();
  ASSERT_EQ(document_->project().notes.size(), 1U);
  const anatomy::Note& note = document_->project().notes[0];
  const auto pinned = anatomy::boneOf(note, document_->specimen());
  ASSERT_TRUE(pinned);
  // On screen the point is where the click was.
  const auto at = viewport()->camera().project(document_->placement()[pinned->value] * note.p_B);
  ASSERT_TRUE(at);
  EXPECT_NEAR(at->x(), last.x(), 3);
  EXPECT_NEAR(at->y(), last.y(), 3);
}

TEST_F(WindowSheet, IsDesignedAndSaved) {
  files::Sheet small;
  small.paper = files::SheetPaper::A4;  // half of the points to trace
  changeSheet(*document_, small, "Smaller paper");
  action("Sheet")->trigger();
  auto* dialog = this->dialog<SheetDialog>("sheetDialog");
  ASSERT_NE(dialog, nullptr);
  auto* page = dialog->findChild<SheetPreview*>("sheetPreview");
  ASSERT_TRUE(QTest::qWaitFor([page] { return page->shows(); }, kPatience));
  auto* layout = dialog->findChild<QComboBox*>("sheetLayout");
  layout->setFocus();
  QTest::keyClick(layout, Qt::Key_Down);
  EXPECT_EQ(document_->project().sheet.layout, files::SheetLayout::ThreeViews);
  press(*dialog, "Save as");
  const auto file = folder() / "page.pdf";
  answerFile(file);
  ASSERT_TRUE(QTest::qWaitFor([&] { return std::filesystem::exists(file); }, kPatience));
  std::ifstream in(file, std::ios::binary);
  std::string head(5, ' ');
  in.read(head.data(), 5);
  EXPECT_EQ(head, "%PDF-");
  press(*dialog, "Close");
  action("Undo")->trigger();
  EXPECT_EQ(document_->project().sheet, small);
}

}  // namespace
}  // namespace zyga::ui
