#include <QComboBox>

#include "core/files/project/project.h"
#include "core/kinematics/stand_readings.h"
#include "tests/ui/window_fixture.h"
#include "ui/panels/claims/claims_panel.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

class ClaimsTest : public WindowTest {
 protected:
  double snout() const { return kinematics::snoutHeight(document_->specimen(), document_->placement()).value(); }
  QString words(const char* name) const { return part<QLabel>(name)->text(); }
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
    QWidget* focus = QApplication::focusWidget();
    QTest::keyClick(focus ? focus : window_.get(), key, modifiers);
  }
  static range::Assumptions withOverlap(range::Assumptions assumptions, double overlap) {
    assumptions.minOverlap = overlap;
    return assumptions;
  }
};

// A neck claim from the first key to the pose: added by its shortcut, typed, answered, shown, saved.
TEST_F(ClaimsTest, ANeckClaimByKeyboardAlone) {
  key(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
  ASSERT_TRUE(QTest::qWaitFor([this] { return part<UnitSpinBox>("claimMetres")->hasFocus(); }, kPatience));
  QTest::keyClicks(QApplication::focusWidget(), "8.85");
  key(Qt::Key_Return);
  settle();
  ASSERT_EQ(document_->project().claims.size(), 1u);
  EXPECT_EQ(document_->project().claims[0].value, 8.85);
  EXPECT_TRUE(words("claimVerdict").startsWith("Out of range")) << words("claimVerdict").toStdString();
  // A looser rule turns the answer.
  document_->changeAssumptions(withOverlap(document_->assumptions(), 0.25), "looser");
  settle();
  EXPECT_TRUE(words("claimVerdict").startsWith("Within range")) << words("claimVerdict").toStdString();
  key(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_GE(snout(), 8.85 - 1e-6);
  const auto file = folder() / "claimed.zyga";
  files::saveProject(document_->project(), file);
  EXPECT_EQ(files::readProject(file).claims, document_->project().claims);
  key(Qt::Key_Z, Qt::ControlModifier);
  EXPECT_LT(snout(), 8.85);
}

TEST_F(ClaimsTest, TheWindowStillFitsWithTheClaimsUnfolded) {
  key(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
  settle();
  EXPECT_LE(window_->height(), 800);
  EXPECT_LE(window_->width(), 1280);
}

}  // namespace
}  // namespace zyga::ui
