#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QDoubleSpinBox>
#include <QImageReader>
#include <QMessageBox>
#include <QRegularExpression>
#include <QSpinBox>
#include <QToolButton>
#include <cmath>

#include "core/picture/lens_view.h"
#include "tests/ui/patience.h"
#include "tests/ui/widgets_seen.h"
#include "tests/ui/window_fixture.h"
#include "ui/dialogs/picture/picture_dialog.h"
#include "ui/dialogs/picture/picture_preview.h"

namespace zyga::ui {
namespace {

constexpr double kDegree = 3.14159265358979323846 / 180;

class WindowPicture : public WindowTest {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    openDialog();
  }
  void TearDown() override {
    WindowTest::TearDown();
    ThemeSwitch::instance().apply(*qApp, Scheme::Light);
  }
  void openDialog() {
    QTest::keyClick(window_.get(), Qt::Key_P, Qt::ControlModifier);
    dialog_ = dialog<PictureDialog>("pictureDialog");
    ASSERT_NE(dialog_, nullptr);
  }
  template <typename Widget>
  Widget* field(const QString& name) const {
    return dialog_->findChild<Widget*>(name);
  }
  /// Goes through a list of choices with the keys.
  void choose(const char* name, const QString& words) {
    auto* box = field<QComboBox>(name);
    box->setFocus();
    QTest::keyClick(box, Qt::Key_Home);
    for (int i = 0; i < box->count() && box->currentText() != words; ++i) QTest::keyClick(box, Qt::Key_Down);
    EXPECT_EQ(box->currentText(), words);
  }
  void type(const char* name, const QString& number) {
    auto* box = field<QAbstractSpinBox>(name);
    box->setFocus();
    QTest::keyClick(box, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(box, number);
  }
  void tick(const QString& name) {
    auto* box = field<QCheckBox>(name);
    ASSERT_TRUE(box->isEnabled()) << name.toStdString();
    QTest::mouseClick(box, Qt::LeftButton, {}, QPoint(8, box->height() / 2));
  }
  QString told(const char* name) const { return field<QLabel>(name)->text(); }
  PicturePreview* preview() const { return field<PicturePreview>("picturePreview"); }
  bool previewRests() {
    return QTest::qWaitFor([this] { return preview()->rests(); }, kPatience);
  }
  void save(const std::filesystem::path& file) {
    press(*dialog_, "Choose a file");
    answerFile(file);
  }
  bool waitWritten(const QString& name) {
    return QTest::qWaitFor([&] { return messages().join(' ').contains(name + " is written."); }, kPatience);
  }
  QImage read(const char* name) const {
    QImage image(QString::fromStdString((folder() / name).string()));
    return image.convertToFormat(QImage::Format_RGBA8888);
  }
  QStringList made() const {
    return QDir(QString::fromStdString(folder().string())).entryList(QDir::Files | QDir::Hidden, QDir::Name);
  }
  /// Corners of the boxes around the bones, taken from the document.
  std::vector<Eigen::Vector3d> corners() const {
    std::vector<Eigen::Vector3d> all;
    for (std::size_t i = 0; i < document_->meshes().size(); ++i) {
      if (!document_->meshes()[i]) continue;
      Eigen::AlignedBox3d box;
      for (const auto& p : document_->meshes()[i]->levels.front().positions) box.extend(p.cast<double>());
      for (int k = 0; k < 8; ++k)
        all.push_back(document_->placement()[i] * box.corner(static_cast<Eigen::AlignedBox3d::CornerType>(k)));
    }
    return all;
  }

  PictureDialog* dialog_ = nullptr;
};

/// Mean of the rows by their alpha in one column, pixels from the top.
double middleRow(const QImage& image, int column) {
  double sum = 0, weight = 0;
  for (int y = 0; y < image.height(); ++y) {
    const double alpha = qAlpha(image.pixel(column, y));
    sum += alpha * (y + 0.5);
    weight += alpha;
  }
  return weight > 0 ? sum / weight : -1;
}

TEST_F(WindowPicture, ThroughALensWithHorizonAndPasses) {
  choose("pictureView", "Three-quarter");
  choose("pictureProjection", "Through a lens");
  type("pictureLens", "50");
  type("pictureEye", "1.6");
  tick("pictureHorizon");
  tick("pictureTransparent");
  type("pictureWidth", "600");
  for (const auto pass : picture::kAllPasses)
    tick("picturePass-" + QString::fromStdString(std::string(picture::wordOf(pass))));
  EXPECT_EQ(told("pictureSize"), "600 × 400 px");
  EXPECT_EQ(told("pictureWarning"), "");
  ASSERT_TRUE(previewRests());
  save(folder() / "animal.png");
  ASSERT_TRUE(waitWritten("animal.png")) << messages().join(' ').toStdString();

  const QImage finished = read("animal.png"), shaded = read("animal-shaded.png"), horizon = read("animal-horizon.png");
  ASSERT_EQ(finished.size(), QSize(600, 400));
  EXPECT_EQ(qAlpha(finished.pixel(0, 0)), 0);
  // All passes of bones have one and the same mask.
  int covered = 0;
  for (const char* pass : {"depth", "direction", "bones", "evidence"}) {
    const QImage image = read(("animal-" + std::string(pass) + ".png").c_str());
    ASSERT_EQ(image.size(), finished.size()) << pass;
    for (int y = 0; y < 400; ++y)
      for (int x = 0; x < 600; ++x) {
        ASSERT_EQ(qAlpha(image.pixel(x, y)), qAlpha(shaded.pixel(x, y))) << pass << ' ' << x << ' ' << y;
        covered += qAlpha(image.pixel(x, y)) == 255;
      }
  }
  EXPECT_GT(covered, 4 * 5000);
  EXPECT_EQ(read("animal-outline.png").size(), finished.size());
  EXPECT_EQ(read("animal-shadow.png").size(), finished.size());
  // The horizon is in the row that the camera's own number names, in the picture of its own and behind the bones.
  const auto view = picture::lensView({50, 1.6, 49 * kDegree, std::nullopt}, corners(), 1.5);
  EXPECT_NEAR(middleRow(horizon, 3), view.horizon * 400, 0.1);  // its alpha is in steps of 1/255
  EXPECT_NEAR(middleRow(finished, 3), view.horizon * 400, 0.1);
  // The files say what the depth stands for.
  QImageReader depth(QString::fromStdString((folder() / "animal-depth.png").string()));
  EXPECT_TRUE(depth.text("Depth").startsWith("white ")) << depth.text("Depth").toStdString();
  EXPECT_EQ(made().filter(".zygapose").size(), 0) << "nothing of the staging is left";
  EXPECT_TRUE(made().contains("animal-bones.csv"));
}

TEST_F(WindowPicture, PreviewShowsThePictureSmall) {
  choose("pictureView", "Three-quarter");
  choose("pictureProjection", "Through a lens");
  tick("pictureHorizon");
  tick("pictureTransparent");
  ASSERT_TRUE(previewRests());
  const QImage& small = preview()->picture();
  const auto view = picture::lensView({50, 1.6, 49 * kDegree, std::nullopt}, corners(), 1.5);
  EXPECT_NEAR(static_cast<double>(small.width()) / small.height(), 1.5, 0.01);
  EXPECT_NEAR(middleRow(small, 2) / small.height(), view.horizon, 0.005);
  // Another turn shows another side at once.
  const QImage before = small;
  type("pictureTurn", "60");
  EXPECT_EQ(field<QComboBox>("pictureView")->currentIndex(), -1) << "no standard side";
  ASSERT_TRUE(previewRests());
  EXPECT_NE(preview()->picture(), before);
  type("pictureTurn", "90");
  EXPECT_EQ(field<QComboBox>("pictureView")->currentText(), "From the left");
}

TEST_F(WindowPicture, TellsWhatIsOutside) {
  choose("pictureView", "From the left");
  choose("pictureProjection", "Through a lens");
  EXPECT_EQ(told("pictureWarning"), "");
  const double usual = field<QDoubleSpinBox>("pictureDistance")->value();
  const auto view = picture::lensView({50, 1.6, 90 * kDegree, std::nullopt}, corners(), 1.5);
  EXPECT_NEAR(usual, view.distance, 0.006) << "the field tells the distance that was found";
  tick("pictureNearest");
  type("pictureDistance", "6");
  EXPECT_TRUE(told("pictureWarning").contains("outside the picture"));
  type("pictureDistance", "80");
  EXPECT_EQ(told("pictureWarning"), "");
  tick("pictureHorizon");
  type("pictureEye", "60");
  EXPECT_TRUE(told("pictureWarning").contains("horizon is outside")) << told("pictureWarning").toStdString();
  for (const char* name : {"pictureFinished"}) tick(name);
  EXPECT_TRUE(told("pictureWarning").contains("at least one pass"));
  for (auto* button : dialog_->findChildren<QPushButton*>())
    if (button->text().startsWith("Choose a file")) {
      EXPECT_FALSE(button->isEnabled());
    }
}

TEST_F(WindowPicture, FromAboveThereIsNoEyeHeight) {
  choose("pictureView", "Three-quarter");
  choose("pictureProjection", "Through a lens");
  EXPECT_TRUE(field<QDoubleSpinBox>("pictureLens")->isEnabled());
  choose("pictureView", "Dorsal");
  EXPECT_FALSE(field<QDoubleSpinBox>("pictureLens")->isEnabled());
  EXPECT_FALSE(field<QCheckBox>("pictureHorizon")->isEnabled());
  EXPECT_TRUE(told("pictureTold").contains("no eye height"));
  type("pictureWidth", "300");
  save(folder() / "above.png");
  ASSERT_TRUE(waitWritten("above.png"));
  EXPECT_EQ(read("above.png").width(), 300);
}

TEST_F(WindowPicture, ChoicesComeBack) {
  choose("pictureView", "Caudal");
  choose("pictureProjection", "Through a lens");
  type("pictureLens", "35");
  type("pictureTurn", "-150");
  tick("pictureNearest");
  type("pictureDistance", "33.5");
  tick("pictureHorizon");
  type("pictureWidth", "16000");
  tick("picturePass-depth");
  tick("pictureFinished");
  const PictureChoice before = dialog_->choice();
  EXPECT_EQ(before.width, 16000);
  EXPECT_NEAR(before.shot.turn, -150 * kDegree, 1e-9);
  press(*dialog_, "Choose a file");
  QTest::keyClick(dialog<QFileDialog>(), Qt::Key_Escape);
  openDialog();
  EXPECT_EQ(dialog_->choice(), before);
  EXPECT_EQ(field<QComboBox>("pictureView")->currentIndex(), -1);
  EXPECT_EQ(field<QDoubleSpinBox>("pictureDistance")->value(), 33.5);
}

TEST_F(WindowPicture, AsOnScreenKeepsThePerspectiveOfTheView) {
  QTest::keyClick(dialog_, Qt::Key_Escape);
  viewport()->showView(picture::StandardView::ThreeQuarter);
  Camera last;
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {  // until the view has come to rest
        const bool rests = viewport()->camera() == last && last.perspective;
        last = viewport()->camera();
        return rests;
      },
      kPatience));
  openDialog();
  EXPECT_EQ(field<QComboBox>("pictureView")->currentText(), "As on screen");
  EXPECT_TRUE(field<QCheckBox>("pictureHorizon")->isEnabled()) << "there is one in perspective";
  type("pictureWidth", "500");
  tick("pictureFinished");
  tick("picturePass-bones");
  save(folder() / "seen.png");
  ASSERT_TRUE(waitWritten("seen-bones.png")) << messages().join(' ').toStdString();
  const QImage bones = read("seen-bones.png");
  const double scale = 500 / last.size.x();
  EXPECT_NEAR(bones.height(), last.size.y() * scale, 1);
  // What the picture covers is what the view's own projection of the bones spans.
  QRectF spanned, seen;
  for (std::size_t i = 0; i < document_->meshes().size(); ++i) {
    if (!document_->meshes()[i]) continue;
    for (const auto& p : document_->meshes()[i]->levels.front().positions)
      if (const auto at = last.project(document_->placement()[i] * p.cast<double>()))
        spanned |= QRectF(at->x() * scale - 1e-6, at->y() * scale - 1e-6, 2e-6, 2e-6);
  }
  for (int y = 0; y < bones.height(); ++y)
    for (int x = 0; x < bones.width(); ++x)
      if (qAlpha(bones.pixel(x, y)) > 0) seen |= QRectF(x, y, 1, 1);
  spanned &= QRectF(0, 0, 500, bones.height());
  for (const auto& [a, b] : {std::pair(seen.left(), spanned.left()), std::pair(seen.right(), spanned.right()),
                             std::pair(seen.top(), spanned.top()), std::pair(seen.bottom(), spanned.bottom())})
    EXPECT_NEAR(a, b, 1.5);
}

TEST_F(WindowPicture, ALensForWhatIsOnScreenLooksFromItsSide) {
  QTest::keyClick(dialog_, Qt::Key_Escape);
  viewport()->showView(picture::StandardView::Cranial);
  ASSERT_TRUE(QTest::qWaitFor([&] { return std::abs(viewport()->camera().azimuth) < 1e-9; }, kPatience));
  openDialog();
  choose("pictureProjection", "Through a lens");
  EXPECT_EQ(field<QDoubleSpinBox>("pictureTurn")->value(), 0);
  EXPECT_EQ(field<QComboBox>("pictureView")->currentText(), "Cranial");
}

TEST_F(WindowPicture, StoppedThereIsNoFile) {
  choose("pictureView", "Three-quarter");
  type("pictureWidth", "9000");
  tick("picturePass-outline");
  save(folder() / "large.png");
  QWidget* readout = nullptr;
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {
        for (auto* label : window_->findChildren<QLabel*>())
          if (label->isVisible() && label->text() == "Tracing large.png") readout = label->parentWidget();
        return readout != nullptr;
      },
      kPatience));
  QTest::mouseClick(readout->findChild<QToolButton*>(), Qt::LeftButton);
  EXPECT_TRUE(QTest::qWaitFor([&] { return !readout->isVisible(); }, kPatience));
  settle();
  closeWindow();  // waits for the work to end
  EXPECT_EQ(QDir(QString::fromStdString(folder().string()))
                .entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot)
                .filter(QRegularExpression("large|zygapose-"))
                .join(' ')
                .toStdString(),
            "");
}

TEST_F(WindowPicture, PassesThatAreThereAreAskedAbout) {
  write("a-depth.png", "not mine");
  write("a-horizon.png", "mine");
  type("pictureWidth", "200");
  tick("picturePass-depth");
  save(folder() / "a.png");
  auto* question = dialog<QMessageBox>("picturesThere");
  ASSERT_NE(question, nullptr);
  EXPECT_EQ(question->informativeText(), "a-depth.png");
  press(*question, "Go back");
  openDialog();
  save(folder() / "a.png");
  question = dialog<QMessageBox>("picturesThere");
  ASSERT_NE(question, nullptr);
  press(*question, "Replace them");
  ASSERT_TRUE(waitWritten("a.png"));
  EXPECT_EQ(read("a-depth.png").width(), 200);
}

TEST_F(WindowPicture, CanBeReadAtEverySizeOfText) {
  const auto readable = [this] {
    EXPECT_EQ(nameless(*dialog_).join('\n').toStdString(), "");
    QStringList cut;
    const auto whole = [&] { return (cut = clipped(*dialog_)).isEmpty(); };  // once the layout has come to rest
    EXPECT_TRUE(QTest::qWaitFor(whole, kMoment)) << cut.join('\n').toStdString();
    EXPECT_LE(dialog_->width(), 1280);
    EXPECT_LE(dialog_->height(), 800);
  };
  readable();
  for (const int percent : {150, 200}) {
    closeWindow();
    Look look(Scheme::Dark);
    look.textPercent = percent;
    ThemeSwitch::instance().apply(*qApp, look);
    openWindow();
    window_->open(sample());
    settle();
    openDialog();
    readable();
  }
}

}  // namespace
}  // namespace zyga::ui
