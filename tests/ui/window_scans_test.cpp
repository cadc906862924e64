#include <gmock/gmock.h>

#include <QMenu>
#include <QRegularExpression>
#include <QToolButton>

#include "core/anatomy/marks/suggested_marks.h"
#include "tests/ui/scans_fixture.h"
#include "ui/parts/message_bar.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

using testing::HasSubstr;

TEST_F(ScansTest, FourFilesAreDroppedNamedAndPutInPlaceAsOneStep) {
  dropAll({scanned("C5", "C5.stl"), scanned("C6", "cervical_06.stl"), scanned("C7", "piece.stl"),
           scanned("humerus.L", "left_humerus.stl")});
  auto* bringing = readAll();
  ASSERT_NE(bringing, nullptr);
  EXPECT_EQ(document_->undoStack().count(), 0) << "nothing has changed yet";
  const auto before = document_->specimen()[bone("C5")].evidence;
  EXPECT_THAT(outcome(*bringing, 2).toStdString(), HasSubstr("choose one"));
  auto* piece = bringing->findChild<QComboBox*>("bone.piece.stl");
  piece->setFocus();
  piece->lineEdit()->selectAll();
  QTest::keyClicks(piece, "c7");
  QWidget* offered = QApplication::activePopupWidget();  // names with "c7" in them; it has the keys
  QTest::keyClick(offered ? offered : piece, Qt::Key_Tab);
  EXPECT_THAT(outcome(*bringing, 2).toStdString(), HasSubstr("triangles"));
  press(*bringing, "Add to skeleton");
  EXPECT_EQ(document_->undoStack().count(), 1);
  EXPECT_EQ(document_->undoStack().undoText(), "Import 4 bones");
  for (const char* id : {"C5", "C6", "C7", "humerus.L"}) {
    EXPECT_EQ(document_->specimen()[bone(id)].evidence, anatomy::Evidence::Found) << id;
    EXPECT_EQ(document_->project().scans.size(), 4u);
  }
  settle();
  undoByKey();
  EXPECT_TRUE(document_->project().scans.empty());
  EXPECT_EQ(document_->specimen()[bone("C5")].evidence, before);
  settle();
}

TEST_F(ScansTest, ABrokenFileSaysWhyInItsRowAndCostsNothing) {
  const auto broken = write("C6.ply", "ply\nformat ascii 1.0\nelement vertex 3\nproperty float x\nend_header\n1 2\n");
  dropAll({broken, scanned("C5", "C5.stl")});
  auto* bringing = readAll();
  ASSERT_NE(bringing, nullptr);
  EXPECT_TRUE(outcome(*bringing, 0).startsWith("Left out: ")) << outcome(*bringing, 0).toStdString();
  EXPECT_FALSE(outcome(*bringing, 0).contains("C6.ply")) << "the file stands beside it";
  press(*bringing, "Add to skeleton");
  ASSERT_EQ(document_->project().scans.size(), 1u);
  EXPECT_EQ(toId(document_->project().scans.front().scan.bone), "C5");
}

TEST_F(ScansTest, TwoFilesForOneBoneAreToldAndNeitherIsTaken) {
  dropAll({scanned("C5", "C5.stl"), scanned("C6", "C5_again.stl")});
  auto* bringing = readAll();
  ASSERT_NE(bringing, nullptr);
  EXPECT_THAT(outcome(*bringing, 0).toStdString(), HasSubstr("C5_again.stl is chosen for the same bone"));
  EXPECT_FALSE(bringing->findChild<QPushButton*>("putInPlace")->isEnabled());
  bringing->findChild<QTableWidget*>("bringInTable")->selectRow(1);
  press(*bringing, "Remove");
  EXPECT_TRUE(bringing->findChild<QPushButton*>("putInPlace")->isEnabled());
  QTest::keyClick(bringing, Qt::Key_Escape);
  EXPECT_EQ(document_->undoStack().count(), 0);
}

TEST_F(ScansTest, AClickInTheEditorMarksThatPlaceAndUndoTakesItBack) {
  auto* editor = editorWith("C7", "C7.stl");
  ASSERT_NE(editor, nullptr);
  choose(*editor, "Top of the neural spine");
  // The file was written in the bone's own axes, so that its own top is known.
  const Eigen::Vector3d top = anatomy::buildSpecimen(document_->project().table)[bone("C7")].landmark("spineTop");
  const Eigen::Vector3d wanted = top - Eigen::Vector3d(0, 0, 0.02);
  const QPointF at = editor->view().placeOf(wanted).value();
  QTest::mouseClick(&editor->view(), Qt::LeftButton, {}, at.toPoint());
  ASSERT_TRUE(document_->project().scans.front().scan.landmarks.contains("spineTop"));
  const Eigen::Vector3d marked = document_->project().scans.front().scan.landmarks.at("spineTop");
  const auto shown = editor->view().placeOf(marked).value();
  EXPECT_LT(std::hypot(shown.x() - at.x(), shown.y() - at.y()), 1.5) << "under the pointer, to the pixel";
  EXPECT_LT((marked - wanted).cwiseProduct(Eigen::Vector3d(1, 0, 1)).norm(), 5e-3);
  QTest::mouseClick(editor->findChild<QToolButton*>("landmarkUndo"), Qt::LeftButton);
  EXPECT_FALSE(document_->project().scans.front().scan.landmarks.contains("spineTop"));
  QTest::mouseClick(editor->findChild<QToolButton*>("landmarkRedo"), Qt::LeftButton);
  EXPECT_EQ(document_->project().scans.front().scan.landmarks.at("spineTop"), marked);
  settle();
}

/// The flat facets of a sculpted bone are exactly the model's, so that a brushed one must come out in their plane.
TEST_F(ScansTest, ABrushedFacetLiesInItsPlaneAndItsMirrorImageToo) {
  auto* editor = editorWith("C7", "C7.stl");
  ASSERT_NE(editor, nullptr);
  const anatomy::Specimen sculpted = anatomy::buildSpecimen(document_->project().table);
  const anatomy::Bone& c7 = sculpted[bone("C7")];
  const auto scanNow = [&]() -> const anatomy::Scan& { return document_->project().scans.front().scan; };
  anatomy::Scan laid = scanNow();
  for (const char* name : {"cranialRim", "caudalRim", "spineTop", "cranial", "caudal"})
    setLandmark(laid, c7, name, c7.landmark(name));  // written in the bone's own axes
  ASSERT_TRUE(laid.placed);
  changeScan(*document_, laid, "lay it");
  choose(*editor, "Left prezygapophyseal facet");
  const anatomy::Facet& facet = *c7.facet(anatomy::FacetRole::PrezygLeft);
  ASSERT_TRUE(QTest::qWaitFor([&] { return editor->view().cursor().shape() == Qt::BlankCursor; }, kPatience));
  editor->view().showView(picture::StandardView::Dorsal);
  editor->findChild<UnitSpinBox*>("brushSize")->setValue(350 * facet.length());
  const QPointF at = editor->view().placeOf(facet.centre).value();
  QTest::mouseClick(&editor->view(), Qt::LeftButton, {}, at.toPoint());
  const auto* brushed = facetOf(scanNow(), anatomy::FacetRole::PrezygLeft);
  ASSERT_NE(brushed, nullptr) << editor->findChild<QLabel*>("markTold")->text().toStdString();
  const anatomy::Facet made = mapped(brushed->facet, boneFromScan(scanNow()));
  EXPECT_GT(made.normal.dot(facet.normal), std::cos(0.03));
  EXPECT_LT(std::abs((made.centre - facet.centre).dot(facet.normal)), 1e-3);
  EXPECT_LT(brushed->residual, 1e-3);
  QTest::mouseClick(editor->findChild<QPushButton*>("mirrorMarks"), Qt::LeftButton);
  const auto* other = facetOf(scanNow(), anatomy::FacetRole::PrezygRight);
  ASSERT_NE(other, nullptr);
  const anatomy::Facet there = mapped(other->facet, boneFromScan(scanNow()));
  EXPECT_LT((there.centre - anatomy::mirrored(made).centre).norm(), 1e-6);
  EXPECT_LT((there.normal - anatomy::mirrored(made).normal).norm(), 1e-6);
  EXPECT_EQ(document_->undoStack().undoText(), "Mirror the marks of C7");
  settle();
}

TEST_F(ScansTest, WhatTheMarksMeasureGoesIntoTheTableAndNeighboursFollow) {
  auto* editor = editorWith("C7", "C7.stl");
  ASSERT_NE(editor, nullptr);
  const anatomy::Specimen sculpted = anatomy::buildSpecimen(document_->project().table);
  const anatomy::Bone& c7 = sculpted[bone("C7")];
  const auto lengthOf = [&](const char* id) {
    return document_->specimen()[bone(id)].measures.value(anatomy::Measure::Length);
  };
  anatomy::Scan laid = document_->project().scans.front().scan;
  for (const char* name : {"cranialRim", "caudalRim", "spineTop"})
    setLandmark(laid, c7, name, 1.2 * c7.landmark(name));  // of a larger animal
  changeScan(*document_, laid, "lay it");
  const double before = lengthOf("C7");
  const auto entries = [&] {
    QStringList out;
    auto* measures = editor->findChild<QToolButton*>("landmarkMeasures");
    emit measures->menu()->aboutToShow();
    for (const QAction* entry : measures->menu()->actions())
      if (!entry->isSeparator()) out += entry->text();
    return out;
  };
  EXPECT_TRUE(entries().join("; ").contains(QRegularExpression("Length [0-9.]+.mm \\(table: [0-9.]+.mm")))
      << entries().join("; ").toStdString();
  editor->findChild<QToolButton*>("landmarkMeasures")->menu()->actions().first()->trigger();
  EXPECT_NEAR(lengthOf("C7"), 1.2 * before, 1e-9);
  EXPECT_TRUE(document_->specimen()[bone("C7")].measures[anatomy::Measure::Length].measured());
  EXPECT_EQ(document_->undoStack().undoText(), "Measures of C7 into the table");
  QTest::mouseClick(editor->findChild<QToolButton*>("landmarkUndo"), Qt::LeftButton);
  EXPECT_NEAR(lengthOf("C7"), before, 1e-12);
  settle();
}

TEST_F(ScansTest, AFolderOfNeighboursIsMarkedBySuggestionsThatAreAcceptedByAKey) {
  fs::create_directory(folder() / "neck");
  for (const char* id : {"C5", "C6", "C7"}) scanned(id, (std::string("neck/") + id + ".stl").c_str(), true);
  dropAll({folder() / "neck"});
  press(*readAll(), "Add to skeleton");
  ASSERT_EQ(document_->project().scans.size(), 3u);
  settle();
  action("Suggest landmarks and facets")->trigger();
  ASSERT_TRUE(QTest::qWaitFor([&] { return document_->undoStack().count() == 2; }, kPatience));
  EXPECT_EQ(document_->undoStack().undoText(), "Suggest landmarks and facets");
  const auto scanOfBone = [&](const char* id) -> const anatomy::Scan& {
    return scanOf(*document_, document_->specimen()[bone(id)].name)->scan;
  };
  for (const auto& [id, role] : {std::pair("C5", anatomy::FacetRole::PostzygLeft),
                                 {"C6", anatomy::FacetRole::PrezygRight},
                                 {"C6", anatomy::FacetRole::PostzygLeft},
                                 {"C7", anatomy::FacetRole::PrezygLeft}}) {
    EXPECT_NE(facetOf(scanOfBone(id), role), nullptr) << id;
    EXPECT_GT(scanOfBone(id).suggested.at(std::string(toText(role))), anatomy::kSureEnough) << id;
  }
  settle();
  action("Place landmarks")->trigger();
  auto* editor = dialog<LandmarkEditor>("landmarkEditor");
  ASSERT_NE(editor, nullptr);
  ASSERT_TRUE(QTest::qWaitFor([&] { return editor->ready(); }, kPatience));
  const char* shown = "C5";
  const auto list = editor->findChild<QTreeWidget*>("landmarkList");
  choose(*editor, "Left postzygapophyseal facet");
  EXPECT_THAT(list->currentItem()->text(1).toStdString(), HasSubstr("suggested, "));
  const std::size_t waiting = scanOfBone(shown).suggested.size();
  ASSERT_TRUE(broughtForward(*editor));
  QTest::keyClick(editor, Qt::Key_A);
  EXPECT_EQ(scanOfBone(shown).suggested.size(), waiting - 1);
  EXPECT_FALSE(scanOfBone(shown).suggested.contains("postzyg.L"));
  EXPECT_NE(facetOf(scanOfBone(shown), anatomy::FacetRole::PostzygLeft), nullptr) << "accepted, not taken away";
  QTest::keyClick(editor, Qt::Key_Delete);  // the next one, which was gone on to
  EXPECT_EQ(scanOfBone(shown).suggested.size(), waiting - 2);
  QTest::mouseClick(editor->findChild<QPushButton*>("acceptMarks"), Qt::LeftButton);
  EXPECT_TRUE(scanOfBone(shown).suggested.empty());
  EXPECT_FALSE(editor->findChild<QPushButton*>("acceptMarks")->isVisible());
  QTest::mouseClick(editor->findChild<QToolButton*>("landmarkUndo"), Qt::LeftButton);
  EXPECT_EQ(scanOfBone(shown).suggested.size(), waiting - 2);
  settle();
}

TEST_F(ScansTest, BonesOfNoCommonFrameSayThatNothingIsSuggested) {
  dropAll({scanned("C5", "C5.stl"), scanned("C6", "C6.stl")});
  press(*readAll(), "Add to skeleton");
  settle();
  action("Suggest landmarks and facets")->trigger();
  auto* messages = window_->findChild<MessageBar*>();
  ASSERT_TRUE(QTest::qWaitFor(
      [&] { return messages->texts().join('\n').contains("Nothing is suggested at C5-C6: both bones"); }, kPatience))
      << messages->texts().join('\n').toStdString();
  EXPECT_EQ(document_->undoStack().count(), 1);
  settle();
}

TEST_F(ScansTest, ALeftBoneIsMirroredToTheRightAndBack) {
  dropAll({scanned("humerus.L", "humerus_L.stl")});
  press(*readAll(), "Add to skeleton");
  settle();
  action("Mirror to the other side")->trigger();
  ASSERT_EQ(document_->project().scans.size(), 2u);
  EXPECT_EQ(document_->specimen()[bone("humerus.R")].evidence, anatomy::Evidence::Mirrored);
  settle();
  const auto box = [&](const char* id) {
    Eigen::AlignedBox3f out;
    for (const auto& p : document_->meshes()[bone(id).value]->levels.front().positions) out.extend(p);
    return out;
  };
  const auto left = box("humerus.L"), right = box("humerus.R");
  EXPECT_NEAR(left.min().y(), -right.max().y(), 1e-5);
  EXPECT_NEAR(left.min().z(), right.min().z(), 1e-5);
  EXPECT_GT(solid::volume(document_->meshes()[bone("humerus.R").value]->levels.front()), 0);
  undoByKey();
  EXPECT_EQ(document_->project().scans.size(), 1u);
  settle();
}

TEST_F(ScansTest, TheAnimalIsScaledByItsFemurAndBack) {
  const double before = document_->specimen()[bone("femur.L")].measures.value(anatomy::Measure::Length);
  const double height = document_->pose().X_WRoot.translation().z();
  action("Scale the animal")->trigger();
  auto* scale = dialog<QDialog>("scaleDialog");
  ASSERT_NE(scale, nullptr);
  scale->findChild<UnitSpinBox*>("scaleLength")->setValue(1000 * before * 0.8);
  press(*scale, "Scale");
  EXPECT_NEAR(document_->specimen()[bone("femur.L")].measures.value(anatomy::Measure::Length), 0.8 * before, 1e-6);
  EXPECT_NEAR(document_->pose().X_WRoot.translation().z(), 0.8 * height, 1e-4);
  settle();
  undoByKey();
  EXPECT_NEAR(document_->specimen()[bone("femur.L")].measures.value(anatomy::Measure::Length), before, 1e-9);
  settle();
}

}  // namespace
}  // namespace zyga::ui
