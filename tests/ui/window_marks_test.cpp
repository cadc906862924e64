#include <gmock/gmock.h>

#include <QMenu>
#include <QTextDocumentFragment>
#include <QToolButton>
#include <numbers>

#include "core/anatomy/marks/straighten.h"
#include "tests/ui/scans_fixture.h"
#include "tests/ui/widgets_seen.h"
#include "ui/help/help_window.h"
#include "ui/panels/bones_model.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/words/anatomy_words.h"

namespace zyga::ui {
namespace {

using testing::HasSubstr;

/// The landmark editor in a hurry: what is wrong is seen at once, and everything is done by keys.
class MarksTest : public ScansTest {
 protected:
  anatomy::Bone sculptedBone(const char* id) const {
    return anatomy::buildSpecimen(document_->project().table)[bone(id)];
  }
  const anatomy::Scan& scanNow(const char* id) const {
    return scanOf(*document_, document_->specimen()[bone(id)].name)->scan;
  }
  /// Every mark where the bone was made with it; the file was written in the bone's own axes.
  anatomy::Scan wellMarked(const char* id) const {
    const anatomy::Bone known = sculptedBone(id);
    anatomy::Scan scan = scanNow(id);
    const Eigen::Vector3d canal = known.landmark("canal");
    setLandmark(scan, known, std::string(anatomy::kCanalCranial), canal + Eigen::Vector3d(0.05, 0, 0));
    setLandmark(scan, known, std::string(anatomy::kCanalCaudal), canal - Eigen::Vector3d(0.05, 0, 0));
    for (const char* name : {"cranialRim", "caudalRim", "spineTop", "cranial", "caudal"})
      setLandmark(scan, known, name, known.landmark(name));
    for (const anatomy::Facet& facet : known.facets) setFacet(scan, known, {facet, 0.0002});
    return scan;
  }
  static QTreeWidgetItem* itemOf(LandmarkEditor& editor, const QString& mark) {
    auto* list = editor.findChild<QTreeWidget*>("landmarkList");
    for (int i = 0; i < list->topLevelItemCount(); ++i)
      if (list->topLevelItem(i)->text(0) == mark) return list->topLevelItem(i);
    return nullptr;
  }
  static QStringList inDoubt(LandmarkEditor& editor) {
    QStringList out;
    auto* list = editor.findChild<QTreeWidget*>("landmarkList");
    for (int i = 0; i < list->topLevelItemCount(); ++i)
      if (list->topLevelItem(i)->text(1) == "in doubt") out += list->topLevelItem(i)->text(0);
    return out;
  }
  /// What stands on a label, without its sign.
  static QString words(LandmarkEditor& editor, const char* label) {
    return QTextDocumentFragment::fromHtml(editor.findChild<QLabel*>(label)->text())
        .toPlainText()
        .remove(QChar(0x25B2))
        .trimmed();
  }
  void give(LandmarkEditor& editor, Qt::Key key, Qt::KeyboardModifiers with = {}) {
    ASSERT_TRUE(broughtForward(editor));
    QTest::keyClick(&editor, key, with);
  }
  /// Several bones in place; the editor on the first.
  LandmarkEditor* editorWithAll(const std::vector<const char*>& ids) {
    std::vector<fs::path> files;
    for (const char* id : ids) files.push_back(scanned(id, (std::string(id) + ".stl").c_str()));
    dropAll(files);
    press(*readAll(), "Add to skeleton");
    settle();
    return openedEditor();
  }
};

TEST_F(MarksTest, AMarkClickedInTheWrongPlaceIsDoubtedAtOnceShownAndTakenBack) {
  auto* editor = editorWith("C7", "C7.stl");
  ASSERT_NE(editor, nullptr);
  changeScan(*document_, wellMarked("C7"), "mark it well");
  EXPECT_EQ(inDoubt(*editor), QStringList());
  EXPECT_FALSE(editor->findChild<QPushButton*>("showDoubt")->isVisible());
  // The tip of the left process, from above, taken for the top of the spine.
  choose(*editor, "Top of the neural spine");
  editor->view().setPlace(boneFromScan(scanNow("C7")));
  editor->view().showView(picture::StandardView::Dorsal);
  const Eigen::Vector3d tip = sculptedBone("C7").landmark("diapophysis.L");
  const QPointF at = editor->view().placeOf(tip - Eigen::Vector3d(0, 0.02, 0)).value();
  QTest::mouseClick(&editor->view(), Qt::LeftButton, {}, at.toPoint());
  EXPECT_EQ(inDoubt(*editor), QStringList("Top of the neural spine"));
  auto* item = itemOf(*editor, "Top of the neural spine");
  EXPECT_THAT(item->toolTip(0).toStdString(), HasSubstr("off the mid-plane"));
  EXPECT_EQ(item->foreground(1).color(), theme().beyond);
  EXPECT_TRUE(editor->findChild<QLabel*>("markDoubt")->isVisible());
  EXPECT_THAT(words(*editor, "markDoubt").toStdString(), HasSubstr("program default, no source"));
  // "Show it" from another mark goes to it and puts it into the middle of the view.
  choose(*editor, "Cotyle");
  EXPECT_EQ(words(*editor, "markDoubt"), "One mark can hardly be right.");
  QTest::mouseClick(editor->findChild<QPushButton*>("showDoubt"), Qt::LeftButton);
  EXPECT_EQ(editor->findChild<QTreeWidget*>("landmarkList")->currentItem()->text(0), "Top of the neural spine");
  const auto shown = editor->view().placeOf(scanNow("C7").landmarks.at("spineTop")).value();
  EXPECT_NEAR(shown.x(), editor->view().width() / 2.0, 2);
  EXPECT_NEAR(shown.y(), editor->view().height() / 2.0, 2);
  // Undo and redo by keys while the editor has the focus, in the field of the brush too.
  give(*editor, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(inDoubt(*editor), QStringList());
  give(*editor, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(inDoubt(*editor), QStringList("Top of the neural spine"));
  choose(*editor, "Left prezygapophyseal facet");
  auto* brush = editor->findChild<UnitSpinBox*>("brushSize");
  brush->setFocus();
  QTest::keyClick(brush, Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(inDoubt(*editor), QStringList());
  settle();
}

TEST_F(MarksTest, WhatIsMirroredIsMeasuredOnItsOwnSideOrSaysThatItIsNot) {
  auto* editor = editorWith("C7", "C7.stl");
  ASSERT_NE(editor, nullptr);
  anatomy::Scan half = wellMarked("C7");
  removeFacet(half, anatomy::FacetRole::PrezygRight);
  changeScan(*document_, half, "mark the left");
  choose(*editor, "Left prezygapophyseal facet");
  give(*editor, Qt::Key_M);
  const auto* made = facetOf(scanNow("C7"), anatomy::FacetRole::PrezygRight);
  ASSERT_NE(made, nullptr);
  EXPECT_TRUE(made->measured);
  EXPECT_NE(made->residual, 0.0002) << "not the other side's";
  EXPECT_EQ(inDoubt(*editor), QStringList());
  // A facet that hangs in mid-air gives an image that nobody can measure.
  anatomy::Scan off = half;
  for (auto& marked : off.facets)
    if (marked.facet.role == anatomy::FacetRole::PrezygLeft) marked.facet.centre += Eigen::Vector3d(0, 0.05, 0.2);
  changeScan(*document_, off, "move it off");
  give(*editor, Qt::Key_M);
  EXPECT_FALSE(facetOf(scanNow("C7"), anatomy::FacetRole::PrezygRight)->measured);
  EXPECT_THAT(inDoubt(*editor).join(';').toStdString(), HasSubstr("Right prezygapophyseal facet"));
  EXPECT_THAT(words(*editor, "landmarkMissing").toStdString(), HasSubstr("in doubt: left prezygapophyseal facet"))
      << "the joint names the suspects";
  settle();
}

TEST_F(MarksTest, SeveralBonesAreGoneThroughByKeysAndEachSaysWhatItLacks) {
  auto* editor = editorWithAll({"C5", "C6", "C7"});
  ASSERT_NE(editor, nullptr);
  auto* bones = editor->findChild<QComboBox*>("landmarkBone");
  const auto shown = [&] { return bones->currentData().toString(); };
  EXPECT_EQ(shown(), "C5");
  EXPECT_THAT(bones->itemText(1).toStdString(), HasSubstr(" open")) << "nothing is marked yet";
  changeScan(*document_, wellMarked("C6"), "mark C6");
  EXPECT_FALSE(bones->itemText(1).contains("open")) << bones->itemText(1).toStdString();
  EXPECT_THAT(words(*editor, "landmarkOpen").toStdString(), HasSubstr("Required and open: "));
  const auto ready = [&] { return QTest::qWaitFor([&] { return editor->ready(); }, kPatience); };
  give(*editor, Qt::Key_N);
  EXPECT_EQ(shown(), "C6");
  ASSERT_TRUE(ready());
  EXPECT_EQ(words(*editor, "landmarkOpen"), "Every required mark is made.");
  give(*editor, Qt::Key_P);
  EXPECT_EQ(shown(), "C5");
  ASSERT_TRUE(ready());
  give(*editor, Qt::Key_O);
  EXPECT_EQ(shown(), "C7") << "C6 has nothing open";
  ASSERT_TRUE(ready());
  QTest::mouseClick(editor->findChild<QToolButton*>("nextBone"), Qt::LeftButton);
  EXPECT_EQ(shown(), "C5") << "round to the first";
  ASSERT_TRUE(ready());
  auto* list = editor->findChild<QTreeWidget*>("landmarkList");
  const QString first = list->currentItem()->text(0);
  give(*editor, Qt::Key_Period);
  EXPECT_NE(list->currentItem()->text(0), first);
  give(*editor, Qt::Key_Comma);
  EXPECT_EQ(list->currentItem()->text(0), first);
  const double before = editor->findChild<UnitSpinBox*>("brushSize")->value();
  give(*editor, Qt::Key_BracketRight);
  EXPECT_GT(editor->findChild<UnitSpinBox*>("brushSize")->value(), before);
  settle();
}

TEST_F(MarksTest, TheBoneIsTurnedUprightByAKey) {
  auto* editor = editorWith("C7", "C7.stl");
  ASSERT_NE(editor, nullptr);
  changeScan(*document_, wellMarked("C7"), "mark it well");
  auto& view = editor->view();
  Eigen::Affine3d askew(Eigen::AngleAxisd(2, Eigen::Vector3d(1, 2, 3).normalized()));
  view.setPlace(askew * boneFromScan(scanNow("C7")));
  const auto up = [&](const char* above, const char* below) {
    const auto& marks = scanNow("C7").landmarks;
    return view.placeOf(marks.at(below)).value().y() - view.placeOf(marks.at(above)).value().y();
  };
  give(*editor, Qt::Key_U);
  EXPECT_GT(up("spineTop", "cranialRim"), 20) << "px";
  EXPECT_NEAR(up("canalCranial", "canalCaudal"), 0, 2) << "the canal is level";
  EXPECT_LT(view.placeOf(scanNow("C7").landmarks.at("cranialRim")).value().x(),
            view.placeOf(scanNow("C7").landmarks.at("caudalRim")).value().x())
      << "left lateral: cranial is left";
  EXPECT_EQ(words(*editor, "markTold"), "Upright by its marks.");
  // Without any mark by shape alone; a second time it is turned over.
  anatomy::Scan bare = scanNow("C7");
  bare.landmarks.clear();
  bare.facets.clear();
  bare.placed = false;
  changeScan(*document_, bare, "no marks");
  const anatomy::Bone known = sculptedBone("C7");
  const auto spine = [&] {
    return view.placeOf(known.landmark("cranialRim")).value().y() -
           view.placeOf(known.landmark("spineTop")).value().y();
  };
  give(*editor, Qt::Key_U);
  const double first = spine();
  EXPECT_GT(std::abs(first), 20) << "px";
  give(*editor, Qt::Key_U);
  EXPECT_NEAR(spine(), -first, 2);
  settle();
}

TEST_F(MarksTest, AListOfKeysAndAPageOfTheHelpAreAKeyAway) {
  auto* editor = editorWith("C7", "C7.stl");
  ASSERT_NE(editor, nullptr);
  QTest::mouseClick(editor->findChild<QPushButton*>("landmarkKeysButton"), Qt::LeftButton);
  auto* keys = editor->findChild<QFrame*>("landmarkKeys");
  ASSERT_NE(keys, nullptr);
  EXPECT_TRUE(keys->isVisible());
  QStringList said;
  for (const auto* label : keys->findChildren<QLabel*>()) said += label->text();
  for (const auto& key : editor->keys()) EXPECT_TRUE(said.contains(key.does)) << key.does.toStdString();
  EXPECT_TRUE(said.contains("Turn the bone upright"));
  EXPECT_EQ(clipped(*keys).join('\n').toStdString(), "");
  keys->close();
  give(*editor, Qt::Key_F1);
  auto* help = dialog<HelpWindow>("helpWindow");
  ASSERT_NE(help, nullptr);
  EXPECT_EQ(help->page(), "marks");
  help->close();
  settle();
}

TEST_F(MarksTest, NoWordIsCutOffInASmallWindowAndTheListGrowsInALargeOne) {
  auto* editor = editorWith("C7", "C7.stl");
  ASSERT_NE(editor, nullptr);
  anatomy::Scan spoilt = wellMarked("C7");
  spoilt.landmarks.at("spineTop").y() += 0.2;
  changeScan(*document_, spoilt, "spoil it");
  editor->resize(1280, 760);  // 800 less a title bar
  for (const char* mark : {"Top of the neural spine", "Left prezygapophyseal facet", "Cotyle"}) {
    choose(*editor, mark);
    EXPECT_TRUE(QTest::qWaitFor([&] { return clipped(*editor).isEmpty(); }, kPatience));
    EXPECT_EQ(editor->size(), QSize(1280, 760)) << "it fits";
    EXPECT_EQ(clipped(*editor).join('\n').toStdString(), "") << mark;
    EXPECT_GE(editor->view().width(), 800);
    EXPECT_GE(editor->findChild<QTreeWidget*>("landmarkList")->height(), 100);
  }
  const int narrow = editor->findChild<QTreeWidget*>("landmarkList")->width();
  editor->resize(3840, 2100);
  EXPECT_TRUE(QTest::qWaitFor([&] { return clipped(*editor).isEmpty(); }, kPatience));
  EXPECT_GT(editor->findChild<QTreeWidget*>("landmarkList")->width(), narrow);
  EXPECT_EQ(clipped(*editor).join('\n').toStdString(), "");
  settle();
}

TEST_F(MarksTest, AnIncompleteScanIsSignedInTheListBesideTheEvidenceAndInTheEditor) {
  dropAll({scanned("C7", "C7.stl", false, [](const Eigen::Vector3f& p) { return p.x() > 0 || p.y() < 0; }),
           scanned("C6", "C6.stl")});
  auto* bringing = readAll();
  ASSERT_NE(bringing, nullptr);
  EXPECT_THAT(outcome(*bringing, 0).toStdString(), HasSubstr("incomplete scan: open borders: "));
  EXPECT_FALSE(outcome(*bringing, 1).contains("incomplete"));
  press(*bringing, "Add to skeleton");
  settle();
  document_->selectBone(bone("C7"));
  const BonesModel bones(*document_);
  const auto told = [&](const char* id, int role) { return bones.indexOf(bone(id)).data(role); };
  EXPECT_THAT(told("C7", Qt::ToolTipRole).toString().toStdString(), HasSubstr("Incomplete scan: open borders: "));
  EXPECT_TRUE(told("C7", Qt::DecorationRole).isValid());
  EXPECT_FALSE(told("C6", Qt::DecorationRole).isValid()) << "a whole one has no sign";
  auto* beside = window_->findChild<QLabel*>("boneMissing");
  ASSERT_NE(beside, nullptr);
  EXPECT_TRUE(beside->isVisible());
  EXPECT_THAT(beside->toolTip().toStdString(), HasSubstr("of the closed surface is missing"));
  document_->selectBone(bone("C6"));
  EXPECT_FALSE(beside->isVisible());
  document_->selectBone(bone("C7"));
  action("Place landmarks")->trigger();
  auto* editor = dialog<LandmarkEditor>("landmarkEditor");
  ASSERT_NE(editor, nullptr);
  ASSERT_TRUE(QTest::qWaitFor([&] { return editor->ready(); }, kPatience));
  EXPECT_TRUE(editor->findChild<QLabel*>("scanMissing")->isVisible());
  EXPECT_THAT(words(*editor, "scanMissing").toStdString(), HasSubstr("open borders: "));
  anatomy::Scan laid = wellMarked("C7");
  changeScan(*document_, laid, "lay it");
  EXPECT_THAT(words(*editor, "scanMissing").toStdString(), HasSubstr("left side missing: caudal half"));
  settle();
}

TEST_F(MarksTest, StraightenAdvisesOneCorrectionAndSaysWhy) {
  auto* editor = editorWith("C7", "C7.stl");
  ASSERT_NE(editor, nullptr);
  anatomy::Scan scan = wellMarked("C7");
  const anatomy::Bone known = sculptedBone("C7");
  for (const char* name : {"diapophysis.L", "diapophysis.R"}) setLandmark(scan, known, name, known.landmark(name));
  const auto entry = [&](const char* name) -> QAction* {
    auto* menu = editor->findChild<QToolButton*>("straighten")->menu();
    emit menu->aboutToShow();
    return menu->findChild<QAction*>(name);
  };
  changeScan(*document_, scan, "well");
  ASSERT_NE(entry("straightenAdvice"), nullptr);
  EXPECT_THAT(entry("straightenAdvice")->text().toStdString(), HasSubstr("leave it as it was found"));
  EXPECT_EQ(entry("straightenAdvised"), nullptr);
  Eigen::Matrix3d shear = Eigen::Matrix3d::Identity();
  shear(0, 1) = std::tan(8 * std::numbers::pi / 180);
  anatomy::Scan sheared = scan;
  for (auto& [name, p] : sheared.landmarks) p = shear * p;
  for (auto& marked : sheared.facets) marked.facet = anatomy::mapped(marked.facet, Eigen::Affine3d(shear));
  changeScan(*document_, sheared, "shear the marks");
  ASSERT_NE(entry("straightenAdvised"), nullptr);
  EXPECT_THAT(entry("straightenAdvice")->text().toStdString(), HasSubstr("Advised: a shear of 8.0"));
  EXPECT_THAT(entry("straightenAdvised")->text().toStdString(), HasSubstr("Undo shear of 8.0"));
  settle();
}

TEST_F(MarksTest, AFullNameTypedInTheImportListIsTaken) {
  dropAll({scanned("C6", "piece.stl"), scanned("humerus.L", "other.stl")});
  auto* bringing = readAll();
  ASSERT_NE(bringing, nullptr);
  const auto type = [&](const char* box, const QString& name) {
    auto* choice = bringing->findChild<QComboBox*>(box);
    choice->setFocus();
    choice->lineEdit()->selectAll();
    QTest::keyClicks(choice, name);
    QWidget* offered = QApplication::activePopupWidget();
    QTest::keyClick(offered ? offered : choice, Qt::Key_Tab);
    return choice->currentData().toString();
  };
  const auto nameOf = [&](const char* id) { return boneName(document_->specimen()[bone(id)].name); };
  EXPECT_EQ(type("bone.piece.stl", nameOf("C6")), "C6") << nameOf("C6").toStdString();
  EXPECT_EQ(type("bone.other.stl", nameOf("humerus.L").toUpper()), "humerus.L");
  EXPECT_EQ(type("bone.other.stl", "hum"), "humerus.L") << "half a word leaves what was chosen";
  QTest::keyClick(bringing, Qt::Key_Escape);
  settle();
}

}  // namespace
}  // namespace zyga::ui
