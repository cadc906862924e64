#include <QPainter>
#include <QTreeWidget>
#include <QtMath>
#include <functional>

#include "core/files/project/project_measures.h"
#include "core/report/report.h"
#include "tests/ui/marked_window.h"
#include "ui/commands/project_edits.h"
#include "ui/commands/scan_edits.h"
#include "ui/panels/joint/joint_view.h"
#include "ui/panels/studies/plot_view.h"
#include "ui/plots/study_plots.h"
#include "ui/report/report_text.h"
#include "ui/scans/landmark_editor.h"
#include "ui/sheets/sheet.h"
#include "ui/studies/study_job.h"
#include "ui/viewport/mark_overlays.h"
#include "ui/viewport/overlay.h"
#include "ui/viewport/study_overlays.h"
#include "ui/words/say.h"

// Words that no label holds, because they are painted: drawings, plots, what lies over the bones, sheets, the report.
namespace zyga::ui {
namespace {

constexpr const char* kSamples[] = {"high_browser.csv", "low_browser.csv"};

TEST(PaintedText, IsWhatAPersonReads) {
  test::PaintedText paper({400, 300});
  QPainter painter(&paper);
  painter.drawText(QPointF(10, 20),
                   "C6 \u03B1\u03B2\u03B3 \u2212"
                   "12.5\u00B0");  // three scripts
  painter.translate(100, 100);
  painter.rotate(-90);
  painter.drawText(QPointF(0, 0), "upwards");
  painter.resetTransform();
  painter.drawText(QRectF(0, 100, 60, 200), Qt::TextWordWrap,
                   test::marked("a sentence of many words in a narrow room"));
  painter.drawText(QPointF(0, 250), painter.fontMetrics().elidedText(test::marked("far too long"), Qt::ElideRight, 40));
  painter.drawText(QPointF(200, 250), "plain");
  painter.end();
  const QStringList texts = paper.texts();
  ASSERT_EQ(texts.size(), 5) << texts.join('|').toStdString();
  EXPECT_EQ(texts[0], QString("C6 \u03B1\u03B2\u03B3 \u2212"
                              "12.5\u00B0"));
  EXPECT_EQ(texts[1], "upwards");
  const auto nothing = [](const QString&) { return false; };
  EXPECT_EQ(texts[2].count(' '), 8) << texts[2].toStdString();
  for (const int marked : {2, 3}) EXPECT_EQ(test::unmarkedWords(texts[marked], nothing), QStringList());
  EXPECT_EQ(test::unmarkedWords(texts[4], nothing), QStringList("plain"));
}

TEST(PaintedText, OfAWidgetIsThatOfItsChildrenToo) {
  QWidget widget;
  widget.resize(300, 100);
  auto* label = new QLabel("left <b>out</b>", &widget);
  label->setGeometry(0, 0, 300, 40);
  EXPECT_EQ(test::paintedTexts(widget).join(' ').simplified(), "left out");
}

class PaintedInAMarkedLanguage : public WindowInAMarkedLanguage {
 protected:
  using Paint = std::function<void(QPainter&, const QRectF&)>;

  /// Looks at what is painted on a paper of this size; there have to be at least so many translated texts.
  void lookAtPainting(const QString& place, const QSize& size, const Paint& paint, int least = 1) {
    test::PaintedText paper(size);
    QPainter painter(&paper);
    painter.setFont(QApplication::font());
    paint(painter, QRectF(QPointF(), size));
    painter.end();
    const QStringList texts = paper.texts();
    EXPECT_GE(texts.filter(test::kMarked).size(), least)
        << place.toStdString() << ": " << texts.join('|').toStdString();
    lookAtTexts(place, texts);
  }
  void lookAtWidget(QWidget& widget, const QSize& size, int least = 1) {
    widget.resize(size);
    const QStringList texts = test::paintedTexts(widget);
    const QString place = QString("painted by %1").arg(widget.metaObject()->className());
    EXPECT_GE(texts.filter(test::kMarked).size(), least)
        << place.toStdString() << ": " << texts.join('|').toStdString();
    lookAtTexts(place, texts);
  }
  void lookAtOverlays(const char* place, int least = 1) {
    lookAtPainting(
        place, viewport()->size(), [this](QPainter& painter, const QRectF&) { viewport()->paintOver(painter); }, least);
  }

  /// A trackway, a note, claims of every kind and of both bounds, near and far, under names that somebody has typed.
  void furnish() {
    study::Trackway trackway;
    // Xing et al. 2016, Swiss J. Geosci., table 1.
    for (const auto& [foot, pace, next, stride] :
         {std::tuple{"LP1", 0.62, 0.66, 1.06}, std::tuple{"RP1", 0.66, 0.72, 1.04},
          std::tuple{"LP2", 0.72, 0.585, 1.025}, std::tuple{"RP2", 0.585, 0.69, 1.0}})
      trackway.prints.push_back({foot, pace, next, stride, 0.33, {}, {}, {}});
    changeTrackway(*document_, trackway, "Typed");
    std::vector<anatomy::Note> notes;
    for (const char* id : {"skull", "femur.L"}) {
      const anatomy::Bone& pinned = document_->specimen()[bone(id)];
      notes.push_back(
          {pinned.name, anatomy::usualPin(pinned), "Typed by a person", anatomy::NoteBasis::Conjecture, "Mallison"});
    }
    document_->setNotes(notes);
    std::vector<study::Claim> claims;
    for (const study::ClaimKind kind : study::kClaimKinds)
      for (const study::Bound bound : {study::Bound::AtLeast, study::Bound::AtMost}) {
        if (bound == study::Bound::AtMost && !study::traitsOf(kind).bounds) continue;
        study::Claim claim = study::usualClaim(kind);
        claim.bound = bound;
        claims.push_back(claim);
        for (const double value : {study::traitsOf(kind).min, study::traitsOf(kind).max}) {
          claim.value = value;
          claim.source = "Typed by a person";
          claims.push_back(claim);
        }
      }
    document_->setClaims(claims);
  }

  study::StudyOutcome found(study::StudyKind kind) {
    study::StudySettings settings;
    settings.spread.draws = 20;
    return answers_.run(kind, document_->scenario(), settings, files::measuresOf(document_->project()));
  }

  study::StudyAnswers answers_;
};

TEST_F(PaintedInAMarkedLanguage, AForgottenWordIsFoundWhereverItIsPainted) {
  openSample("high_browser.csv");
  language_->forgotten = {"right up", "cranial \u2191", "Sculpting bones, %1"};
  strip()->setMotion(2);
  lookAtWidget(*strip(), {1400, 220});
  JointView view(*document_);
  lookAtWidget(view, {420, 900});
  viewport()->setSculptProgress(0.4);
  lookAtOverlays("over the bones", 0);
  for (const char* word : {"RangeStrip: right up", "JointView: cranial \u2191", "over the bones: Sculpting bones, #"})
    EXPECT_FALSE(found_.filter(word).isEmpty()) << word << " in\n" << found_.join('\n').toStdString();
}

TEST_F(PaintedInAMarkedLanguage, TheRangeStripSaysNothingElse) {
  for (const char* sample : kSamples) {
    openSample(sample);
    for (int motion = 0; motion < 3; ++motion) {
      strip()->setMotion(motion);
      settle();
      for (const auto region : {std::optional<anatomy::Region>(), std::optional(anatomy::Region::Cervical),
                                std::optional(anatomy::Region::Dorsal), std::optional(anatomy::Region::Caudal)}) {
        strip()->zoomTo(region);
        strip()->setSpan(region ? std::nullopt : std::optional(ColumnSpan{2, 9}));
        for (const int width : {600, 1400}) lookAtWidget(*strip(), {width, 220}, 3);
      }
    }
  }
  expectAllMarked("strip");
}

TEST_F(PaintedInAMarkedLanguage, TheJointViewSaysNothingElse) {
  for (const char* sample : kSamples) {
    openSample(sample);
    JointView view(*document_);
    const auto& joints = document_->specimen().joints;
    std::vector<JointIndex> looked{joint("C6-C7"), joint("knee.L"), joint("C2-C3")};
    const auto fixed =
        std::find_if(joints.begin(), joints.end(), [](const auto& j) { return j.kind == anatomy::JointKind::Fixed; });
    ASSERT_NE(fixed, joints.end());
    looked.push_back({static_cast<std::size_t>(fixed - joints.begin())});
    for (const auto& verdict : document_->assessment().joints)
      if (verdict.level == range::Level::NotJudged) looked.push_back(verdict.joint);
    for (const JointIndex each : looked) {
      document_->selectJoint(each);
      for (const QSize size : {QSize(420, 900), QSize(1000, 900)}) lookAtWidget(view, size);
    }
    document_->selectJoint({});
    lookAtWidget(view, {420, 900});
  }
  expectAllMarked("joint view");
}

TEST_F(PaintedInAMarkedLanguage, EveryPlotSaysNothingElse) {
  for (const char* sample : kSamples) {
    openSample(sample);
    for (const study::StudyKind kind : study::kStudyKinds) {
      const auto outcome = found(kind);
      ASSERT_TRUE(outcome.result) << sample << ' ' << study::toText(kind);
      for (const QSize size : {figureSize(kind).toSize(), QSize(240, 300), QSize(1200, 800)})
        lookAtPainting(
            QString("plot %1").arg(static_cast<int>(kind)), size,
            [&](QPainter& painter, const QRectF& area) { paintStudy(painter, area, *outcome.result, printInk()); });
      for (const bool outOfDate : {false, true}) {
        PlotView view;
        view.show(outcome.result, outOfDate);
        lookAtWidget(view, {300, 300});
        PlotWindow window(nullptr);
        window.show(kind, outcome.result, outOfDate);
        look(window);
        window.hide();
      }
    }
  }
  expectAllMarked("plots");
}

TEST_F(PaintedInAMarkedLanguage, WhatLiesOverTheBonesSaysNothingElse) {
  for (const char* sample : kSamples) {
    openSample(sample);
    furnish();
    const auto outcome = found(study::StudyKind::Envelope);
    ASSERT_TRUE(outcome.result);
    const auto& envelope = std::get<study::Envelope>(*outcome.result);
    viewport()->showOnGround({true, true});
    viewport()->showEnvelope(std::make_shared<const study::Envelope>(envelope), false);
    viewport()->setSculptProgress(0.4);
    if (!document_->assessment().contacts.empty()) document_->selectBone(document_->assessment().contacts.front().bone);
    lookAtOverlays("over the bones");

    const GroundState ground(*document_);
    for (const picture::StandardView side : {picture::StandardView::Left, picture::StandardView::Dorsal}) {
      Camera camera;
      camera.size = {1200, 800};
      camera.turnTo(side);
      Eigen::AlignedBox3d prints, reach;
      for (const auto& print : ground.laid().prints) prints.extend(Eigen::Vector3d(print.p_W.x(), print.p_W.y(), 0));
      for (const auto& place : {envelope.highest, envelope.farthest, Eigen::Vector2d(0, 0)})
        reach.extend(envelope.plane.inWorld(place));
      camera.frame(prints);
      lookAtPainting(
          "prints", {1200, 800},
          [&](QPainter& painter, const QRectF& area) {
            paintGround(painter, area, ground, {true, false}, camera, theme());
          },
          0);
      camera.frame(reach, 0.3);
      lookAtPainting(
          "reach and balance", {1200, 800},
          [&](QPainter& painter, const QRectF& area) {
            paintGround(painter, area, ground, {false, true}, camera, theme());
            paintEnvelopeOutline(painter, area, envelope, false, camera, theme());
            const Eigen::Vector3d p_WHighest = envelope.plane.inWorld(envelope.highest);
            paintShortfall(painter, area, {p_WHighest, p_WHighest + Eigen::Vector3d(0, 0, 0.2), 0.2}, camera, theme());
          },
          side == picture::StandardView::Left ? 3 : 1);
    }
  }
  expectAllMarked("overlays");
}

TEST_F(PaintedInAMarkedLanguage, EverySheetSaysNothingElse) {
  for (const char* sample : kSamples) {
    openSample(sample);
    furnish();
    const SheetScene scene{document_->scenario(), document_->meshes(), {}, document_->project().notes};
    SheetWork work;
    work.dotsPerInch = 20;
    work.samples = 1;
    work.lineSpacing = 2;
    for (const auto& [word, layout] : files::kSheetLayouts) {
      files::Sheet sheet;
      sheet.layout = layout;
      sheet.plate = "C5,C6,D1,humerus.L";
      sheet.jointMarks = true;
      const auto page = drawSheet(scene, sheet, work);
      ASSERT_TRUE(page);
      QStringList lines;
      for (const PageMark& mark : page->marks)
        if (const auto* words = std::get_if<PageWords>(&mark)) {
          // Words that are broken into lines stand one after the other.
          if (!lines.isEmpty() && test::openMarks(lines.last()) > 0)
            lines.last() += ' ' + words->words;
          else
            lines += words->words;
        }
      EXPECT_GT(lines.filter(test::kMarked).size(), 15) << word;
      lookAtTexts("sheet", lines);
      lookAtPainting("sheet painted", QSize(1600, 1200),
                     [&](QPainter& painter, const QRectF&) { paintPage(painter, *page, 2); });
    }
    files::Sheet tooLarge;
    tooLarge.scale = 1;
    try {
      drawSheet(scene, tooLarge, work);
      ADD_FAILURE() << "fits at 1:1";
    } catch (const std::invalid_argument& error) {
      lookAtTexts("sheet that does not fit", {sayFailure(error)});
    }
  }
  expectAllMarked("sheets");
}

/// All that a report says, but for its own title.
QStringList saidBy(const ReportText& report) {
  QStringList said{report.subtitle};
  for (const ReportSection& section : report.sections) {
    said << section.heading << section.sentences << section.figureCaption << section.cautions;
    for (const ReportTable& table : section.tables) {
      said << table.caption << table.columns;
      for (const QStringList& row : table.rows) said << row;
    }
  }
  return said;
}

TEST_F(PaintedInAMarkedLanguage, TheReportSaysNothingElse) {
  for (const char* sample : kSamples) {
    openSample(sample);
    furnish();
    report::ReportOptions options;
    options.answers = &answers_;
    for (const bool claimsOnly : {false, true}) {
      options.claimsOnly = claimsOnly;
      auto data = report::buildReport(document_->scenario(), document_->project(), "Typed", options);
      ASSERT_TRUE(data);
      ASSERT_EQ(data->studies.size(), claimsOnly ? 0U : report::kReportStudies.size());
      const QStringList said = saidBy(reportText(*data));
      EXPECT_GT(said.filter(test::kMarked).size(), claimsOnly ? 20 : 100);
      lookAtTexts("report", said);
      for (auto& one : data->studies) one.outcome = {nullptr, reason::Reason(study::kNoMeasures)};
      data->claims.clear();
      data->poseName.clear();
      lookAtTexts("report without answers", saidBy(reportText(*data)));
    }
  }
  expectAllMarked("report");
}

TEST_F(PaintedInAMarkedLanguage, TheLandmarkEditorSaysNothingElse) {
  openSample("high_browser.csv");
  files::ProjectScan scan;
  scan.scan.bone = document_->specimen()[bone("C6")].name;
  scan.mesh = std::shared_ptr<const solid::TriangleMesh>(document_->meshes()[bone("C6").value],
                                                         &document_->meshes()[bone("C6").value]->levels.back());
  changeScans(*document_, {scan}, "Typed");
  settle();
  LandmarkEditor editor(*document_);
  editor.setObjectName("landmarkEditor");
  const auto paint = [&](QPainter& painter, const QRectF&) { editor.view().paintOver(painter); };
  editor.showBone(scan.scan.bone);
  lookAtPainting("bone not ready", editor.view().size(), paint);
  ASSERT_TRUE(QTest::qWaitFor([&] { return editor.ready(); }, kPatience));
  const auto wanted = editor.marks().wanted();
  const Eigen::Vector3d p_S = scan.mesh->positions.front().cast<double>();
  for (const auto& mark : wanted) {
    editor.marks().choose(mark.name);
    const bool point = mark.by == anatomy::MarkBy::Point;
    if (point) editor.marks().place({p_S, Eigen::Vector3d::UnitZ()});
    lookAtPainting("marks", editor.view().size(), paint, point ? 1 : 0);
    look(editor);
  }
  expectAllMarked("landmark editor");
}

TEST_F(PaintedInAMarkedLanguage, AWindowWithoutAnAnimalSaysNothingElse) {
  closeWindow();
  openWindow();
  ASSERT_FALSE(document_->hasProject());
  lookAtOverlays("viewport without an animal", 2);
  lookAtWidget(*strip(), strip()->size());
  lookAtEveryDock();
  lookAtEveryMenu();
  expectAllMarked("without an animal");
}

}  // namespace
}  // namespace zyga::ui
