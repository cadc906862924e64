// The view itself redrawn while it is turned and while the neck bends, in a window on whatever draws here: the sculpted
// sample (about 200 bones, 2 million triangles), then with 150 of its bones scanned, 200,000 triangles each. Needs a
// display. Figures to reach: display rate (60 a second) on a graphics processor, ten a second where the processor
// draws. On a machine with a graphics processor run it as it is, on its display: redraw_bench
#include <QApplication>
#include <QElapsedTimer>
#include <QMouseEvent>
#include <QOpenGLContext>
#include <QOpenGLFunctions>
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <stdexcept>

#include "core/solid/mesh/simplify.h"
#include "tests/bench/lumpy_ball.h"
#include "tests/bench/process_memory.h"
#include "tests/bench/sample_project.h"
#include "ui/viewport/viewport.h"

namespace zyga {
namespace {

constexpr int kWarmUp = 30, kFrames = 90;  // pictures; the pace of a picture in motion needs some to settle
constexpr int kScans = 150, kRings = 316;  // 2 n^2 = 199,712 triangles a scan
constexpr double kBend = 0.004;            // rad a joint, at most

files::BoneMeshes sculpted(const anatomy::Specimen& specimen) {
  solid::SculptOptions options;
  if (const char* folder = std::getenv("ZYGAPOSE_BENCH_CACHE")) options.cacheFolder = folder;
  return solid::sculptAll(specimen, options);
}

/// The same surface filling the box of another.
solid::TriangleMesh fitted(solid::TriangleMesh mesh, const solid::TriangleMesh& into) {
  Eigen::AlignedBox3f from, to;
  for (const auto& p : mesh.positions) from.extend(p);
  for (const auto& p : into.positions) to.extend(p);
  const Eigen::Vector3f scale = to.sizes().cwiseQuotient(from.sizes());
  for (auto& p : mesh.positions) p = to.center() + scale.cwiseProduct(p - from.center());
  for (auto& n : mesh.normals) n = n.cwiseQuotient(scale).normalized();
  return mesh;
}

/// Rough scans in the places of the first sculpted bones, every one in memory of its own.
files::BoneMeshes scanned(files::BoneMeshes meshes) {
  const solid::BoneMesh scan = solid::displayLevels(bench::lumpyBall(kRings));
  int left = kScans;
  for (auto& mesh : meshes) {
    if (!mesh || mesh->levels.empty() || left-- <= 0) continue;
    auto bone = std::make_shared<solid::BoneMesh>();
    for (const auto& level : scan.levels) bone->levels.push_back(fitted(level, mesh->levels.back()));
    mesh = std::move(bone);
  }
  return meshes;
}

double millions(const files::BoneMeshes& meshes) {
  double triangles = 0;
  for (const auto& mesh : meshes)
    if (mesh && !mesh->levels.empty()) triangles += static_cast<double>(mesh->levels.front().triangles.size());
  return triangles / 1e6;
}

/// The view with a document of its own, on the screen.
class Picture {
 public:
  Picture() {
    QObject::connect(&view_, &QOpenGLWidget::frameSwapped, &view_, [this] { swapped_ = true; });
    document_.open(bench::sampleProject(), {});
    view_.resize(1280, 800);
    view_.show();
  }

  const anatomy::Specimen& specimen() const { return document_.specimen(); }

  void show(files::BoneMeshes meshes) {
    document_.setMeshes(std::move(meshes));
    QElapsedTimer clock;
    clock.start();
    while (!view_.inFullDetail()) {
      QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents);
      if (clock.elapsed() > 120'000) throw std::runtime_error("the bones never came to be drawn");
    }
  }

  QString renderer() {
    view_.makeCurrent();
    const QString name = reinterpret_cast<const char*>(view_.context()->functions()->glGetString(GL_RENDERER));
    view_.doneCurrent();
    return name;
  }

  double turning() {
    QPointF at(640, 400);
    mouse(QEvent::MouseButtonPress, at);
    const double median = medianOf([&] { mouse(QEvent::MouseMove, at += QPointF(3, 0)); });
    mouse(QEvent::MouseButtonRelease, at);
    return median;
  }

  double bending() {
    kinematics::Pose pose = document_.pose();
    int frame = 0;
    const double median = medianOf([&] {
      const double angle = kBend * std::sin(0.1 * ++frame);
      for (const auto joint : specimen().chainTo(*specimen().findBone("skull")))
        if (specimen()[joint].hasFacets()) pose[joint].x() = angle;
      document_.previewPose(pose);
    });
    document_.cancelPreview();
    return median;
  }

 private:
  void mouse(QEvent::Type type, const QPointF& at) {
    const auto held = type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::RightButton;
    QMouseEvent event(type, at, view_.mapToGlobal(at), type == QEvent::MouseMove ? Qt::NoButton : Qt::RightButton, held,
                      Qt::NoModifier);
    QCoreApplication::sendEvent(&view_, &event);
  }

  /// Seconds from a change to its picture on the screen.
  double medianOf(const std::function<void()>& change) {
    std::vector<double> seconds;
    for (int i = 0; i < kWarmUp + kFrames; ++i) {
      QElapsedTimer clock;
      clock.start();
      swapped_ = false;
      change();
      while (!swapped_) QCoreApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents);
      view_.makeCurrent();
      view_.context()->functions()->glFinish();
      view_.doneCurrent();
      if (i >= kWarmUp) seconds.push_back(1e-9 * static_cast<double>(clock.nsecsElapsed()));
    }
    std::sort(seconds.begin(), seconds.end());
    std::printf("%zu frames: median %.1f ms, worst %.1f ms\n", seconds.size(), 1e3 * seconds[seconds.size() / 2],
                1e3 * seconds.back());
    return seconds[seconds.size() / 2];
  }

  ui::Document document_;
  ui::Viewport view_{document_};
  bool swapped_ = false;
};

/// A row has a target for a graphics processor and one for a machine without; only one of them is measured here.
class Teller {
 public:
  explicit Teller(const QString& renderer) : renderer_(renderer.toStdString()) {
    for (const char* name : {"llvmpipe", "softpipe", "swrast"}) software_ = software_ || renderer.contains(name);
  }

  void frame(const std::string& work, double seconds) const {
    const char *here = software_ ? "Software" : "Gpu", *elsewhere = software_ ? "Gpu" : "Software";
    std::printf("@ %s%s %.3f ms\n# %s%s drawn by %s\n", work.c_str(), here, 1e3 * seconds, work.c_str(), here,
                renderer_.c_str());
    std::printf("- %s%s drawn by %s here\n", work.c_str(), elsewhere, renderer_.c_str());
  }
  void memory(const std::string& work) const {
    std::printf("@ %sMegabytes %.0f\n", work.c_str(), bench::mostMegabytes());
    if (software_) std::printf("# %sMegabytes with the pictures, which are in the same memory here\n", work.c_str());
  }

 private:
  std::string renderer_;
  bool software_ = false;
};

void measure(Picture& picture, const std::string& work, const files::BoneMeshes& meshes) {
  const Teller tell(picture.renderer());
  std::printf("%s: %zu bones, %.1f million triangles\n", work.c_str(), picture.specimen().bones.size(),
              millions(meshes));
  tell.frame(work + "Turn", picture.turning());
  tell.frame(work + "Bend", picture.bending());
  tell.memory(work);
  std::fflush(stdout);
}

void run() {
  Picture picture;
  files::BoneMeshes meshes = sculpted(picture.specimen());
  picture.show(meshes);
  measure(picture, "sculpted", meshes);
  meshes = scanned(std::move(meshes));
  picture.show(meshes);
  measure(picture, "scanned", meshes);
}

}  // namespace
}  // namespace zyga

int main(int argc, char** argv) {
  QSurfaceFormat format;
  format.setSwapInterval(0);  // what is measured is the work, not the wait for the screen
  QSurfaceFormat::setDefaultFormat(format);
  QApplication application(argc, argv);
  try {
    zyga::run();
  } catch (const std::exception& error) {
    std::fprintf(stderr, "error: %s\n", error.what());
    return 1;
  }
}
