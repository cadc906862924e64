#pragma once

#include <vector>

#include "ui/dialogs/picture/picture_choice.h"
#include "ui/document/document.h"
#include "ui/pictures/picture_set.h"
#include "ui/viewport/camera.h"

namespace zyga::ui {

/// The animal as it stands, as values: the document may change while it is traced.
struct PictureScene {
  std::vector<picture::Instance> instances;  ///< in full detail
  std::vector<picture::Instance> light;      ///< with fewer triangles, for a preview
  std::vector<std::string> bones;            ///< ids by instance
  std::vector<Eigen::Vector3d> corners;      ///< of the boxes around the bones, world, m
  Eigen::AlignedBox3d box;                   ///< world, m
  picture::Camera onScreen;
  double screenAspect = 1.5;
  double screenTurn = 0;             ///< rad, as LensShot::turn
  std::array<float, 3> top, bottom;  ///< background, sRGB
};

/// The present pose in the colours of the theme.
PictureScene pictureScene(const Document& document, const Camera& onScreen);

/// A camera and what it shows.
struct Framing {
  picture::Camera camera;
  double aspect = 1.5;             ///< width over height
  std::optional<double> horizon;   ///< as horizonOf
  std::optional<double> distance;  ///< m, level, from the eye to the middle of the animal; through a lens
  bool cropped = false;            ///< some of the animal is outside
};
Framing framingOf(const PictureScene& scene, const PictureChoice& choice);

/// Whether the horizon (share of the height) is within the picture.
bool inPicture(double horizon);

/// Size, ground and horizon of a picture so many pixels wide.
picture::PictureOptions pictureOptions(const PictureScene& scene, const PictureChoice& choice, const Framing& framing,
                                       int width);

/// All that is to be written.
PictureSet pictureSet(const PictureScene& scene, const PictureChoice& choice);

}  // namespace zyga::ui
