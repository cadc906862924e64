#include <gtest/gtest.h>

#include "tests/ui/patience.h"
#include "ui/viewport/viewport.h"
#include "viewport_scene.h"

namespace zyga::ui {
namespace {

/// Views as they come up, without bones at first.
class ViewportLife : public testing::Test {
 protected:
  void SetUp() override {
    if (!test::haveScreen()) GTEST_SKIP() << "no display: run under xvfb-run";
  }
  void openSample() { document_.open(test::sampleProject("high_browser"), {}); }
  void show(QWidget& window, const QSize& size) {
    window.resize(size);
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
  }

  Document document_;
};

TEST_F(ViewportLife, WithoutAProjectItInvitesAndTakesNoHarmFromThePointer) {
  Viewport viewport(document_);
  show(viewport, {800, 500});
  QTest::mouseMove(&viewport, QPoint(400, 250));
  QTest::mouseClick(&viewport, Qt::LeftButton, {}, QPoint(400, 250));
  QTest::mouseDClick(&viewport, Qt::LeftButton, {}, QPoint(400, 250));
  QTest::keyClick(&viewport, Qt::Key_Up);
  viewport.frameAll();
  const QImage picture = viewport.grabPicture();
  // Text stands in the middle: its ink is darker than the calm background around it.
  QImage bare(picture.size(), picture.format());
  bare.fill(picture.pixelColor(400, 150));
  EXPECT_GT(test::differing(picture, bare, QRect(200, 200, 400, 90)), 300);
}

// Once, a graphics processor was asked for the same coarse picture for ever: what its first one had asked for never
// came.
TEST_F(ViewportLife, AGraphicsProcessorComesToRestInFullDetail) {
  openSample();
  Viewport viewport(document_);
  show(viewport, {500, 400});
  viewport.drawAsGraphicsProcessor();
  document_.setMeshes(test::inTwoLevels(test::barBones(document_.specimen())));
  EXPECT_TRUE(QTest::qWaitFor([&] { return viewport.inFullDetail(); }, kPatience));
  EXPECT_TRUE(viewport.showsBones());
}

TEST_F(ViewportLife, RoughBonesAreSeenUntilTheSculptedOnesAreThere) {
  openSample();
  Viewport viewport(document_);
  show(viewport, {500, 400});
  EXPECT_FALSE(viewport.showsBones());
  document_.setRoughMeshes(test::barBones(document_.specimen()));
  ASSERT_TRUE(QTest::qWaitFor([&] { return viewport.showsBones(); }, kPatience));
  EXPECT_FALSE(viewport.inFullDetail()) << "they are not the sculpted ones";
  EXPECT_TRUE(document_.meshes().empty());
  document_.setMeshes(test::inTwoLevels(test::barBones(document_.specimen())));
  EXPECT_TRUE(viewport.showsBones()) << "those that were there stay until the others come";
  EXPECT_TRUE(QTest::qWaitFor([&] { return viewport.inFullDetail(); }, kPatience));
}

TEST_F(ViewportLife, SurvivesBeingMovedToAnotherWindow) {
  openSample();
  document_.setMeshes(test::barBones(document_.specimen()));
  QWidget first, second;
  auto* viewport = new Viewport(document_, &first);
  viewport->resize(500, 400);
  show(first, {500, 400});
  const QImage before = viewport->grabPicture();
  viewport->setParent(&second);
  viewport->show();
  show(second, {500, 400});
  const QImage after = viewport->grabPicture();
  ASSERT_EQ(before.size(), after.size());
  EXPECT_LT(test::differing(before, after, before.rect()), 200);
}

}  // namespace
}  // namespace zyga::ui
