#include "core/picture/picture.h"

#include <QBuffer>
#include <QImage>
#include <algorithm>
#include <iostream>

#include "app/verbs/project_file.h"
#include "app/verbs/sculpting.h"
#include "app/verbs/verbs.h"
#include "core/files/atomic_file.h"
#include "core/files/bone_tone.h"

namespace zyga::app {
namespace {

using picture::StandardView;

constexpr double kUsualWidth = 1600;

std::vector<picture::Instance> posedBones(const files::Project& project, const kinematics::Pose& pose) {
  const auto X_WB = kinematics::place(project.specimen, articulationOf(project), pose);
  const auto meshes = sculpt(project);
  std::vector<picture::Instance> instances;
  for (std::size_t i = 0; i < meshes.size(); ++i) {
    if (!meshes[i] || meshes[i]->levels.empty()) continue;
    // The finest level lives as long as the bone that owns it.
    const std::shared_ptr<const solid::TriangleMesh> finest(meshes[i], &meshes[i]->levels.front());
    instances.push_back({finest, X_WB[i], files::boneTone(project.specimen.bones[i].evidence)});
  }
  return instances;
}

Eigen::AlignedBox3d boundsOf(const std::vector<picture::Instance>& instances) {
  Eigen::AlignedBox3d box;
  for (const auto& instance : instances) {
    for (const auto& p : instance.mesh->positions) box.extend(instance.X_WB * p.cast<double>());
  }
  return box;
}

/// Width over height that the animal asks for from this side, within what still makes a picture.
double aspectOf(StandardView view, const Eigen::Vector3d& size) {
  const auto ratio = [&] {
    switch (view) {
      case StandardView::Left:
      case StandardView::Right:
        return size.x() / size.z();
      case StandardView::Dorsal:
        return size.x() / size.y();
      case StandardView::Cranial:
      case StandardView::Caudal:
        return size.y() / size.z();
      case StandardView::ThreeQuarter:
        break;
    }
    return 1.6;
  };
  return std::clamp(ratio(), 0.6, 3.0);
}

std::string pngBytes(const picture::Image& image) {
  const QImage view(image.rgba.data(), image.width, image.height, image.width * 4, QImage::Format_RGBA8888);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  if (!view.save(&buffer, "PNG")) throw BadInput("the picture could not be written as PNG");
  return bytes.toStdString();
}

StandardView viewOf(const VerbSpec& spec, const Arguments& arguments) {
  required(spec, arguments, "--view");
  return choiceOf<StandardView>(arguments, "--view",
                                {{"left", StandardView::Left},
                                 {"right", StandardView::Right},
                                 {"dorsal", StandardView::Dorsal},
                                 {"cranial", StandardView::Cranial},
                                 {"caudal", StandardView::Caudal},
                                 {"three-quarter", StandardView::ThreeQuarter}});
}

int widthOf(const Arguments& arguments) {
  const auto width = arguments.find("--width");
  return static_cast<int>(width ? numberOf({"--width", *width}, 64, 16384, "pixels") : kUsualWidth);
}

int pictureVerbRun(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  if (!out.ends_with(".png")) throw BadInput("--out: " + out + " must end in .png");
  files::checkPlace(out);
  const auto view = viewOf(spec, arguments);
  picture::PictureOptions options;
  options.width = widthOf(arguments);
  const auto project = files::readProject(arguments.file);
  const auto instances = posedBones(project, choosePose(project, arguments).pose);
  const auto box = boundsOf(instances);
  const double aspect = aspectOf(view, box.sizes());
  options.height = std::max(1, static_cast<int>(options.width / aspect));
  const auto image = picture::trace(instances, picture::frame(view, box, aspect), options);
  files::writeWhole(out, pngBytes(image));
  std::cout << "wrote " << out << ", " << image.width << " x " << image.height << " pixels\n";
  return kDone;
}

}  // namespace

Verb pictureVerb() {
  return {{"picture",
           "FILE.zyga",
           "draws the posed skeleton, the same bytes every time",
           {{"--view", "VIEW", "left, right, dorsal, cranial, caudal or three-quarter"},
            {"--out", "FILE.png", "the picture to write"},
            {"--pose", "NAME", "a named pose instead of the present one"},
            {"--width", "PX", "1600 unless said otherwise; the height follows from the animal"}},
           "Bones that were found are warm, mirrored ones darker, inferred ones grey.\n"},
          pictureVerbRun};
}

}  // namespace zyga::app
