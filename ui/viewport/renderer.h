#pragma once

#include <array>
#include <cstdint>
#include <optional>

#include "ui/viewport/bone_pass.h"
#include "ui/viewport/ground_pass.h"
#include "ui/viewport/screen_tiles.h"
#include "ui/viewport/shadow_pass.h"

namespace zyga::ui {

/// Everything a frame depends on. The revisions count up with each change of what they stand for.
struct FrameRequest {
  const Scene* scene = nullptr;
  Camera camera;
  Theme theme;
  QSize pixels;            ///< of the window
  qreal pixelRatio = 1;    ///< window pixels per pixel of the design
  std::uint64_t look = 0;  ///< revision of tones, marks and ghost
  std::uint64_t pose = 0;  ///< revision of the bones' places
};

/// Draws frames with OpenGL 3.3. On a machine with a graphics processor each is drawn in full; without one, a moving
/// picture is drawn coarsely and refined in slices once it rests. The context must be current throughout, in the
/// destructor too.
class Renderer {
 public:
  explicit Renderer(Gl& gl);

  bool software() const { return software_; }
  /// Draws as a graphics processor would, whatever draws here: for tests on machines without one.
  void drawAsGraphicsProcessor() { software_ = false; }
  void setMeshes(const files::BoneMeshes& meshes);
  /// Draws into framebuffer `target`. Redraws the bones only when something they depend on has changed.
  void paint(const FrameRequest& request, GLuint target);
  /// Whether a resting view can still be shown better than the last paint did.
  bool unfinished(const FrameRequest& request) const;
  /// Whether every bone is in the picture that the last paint showed, however coarsely.
  bool showsAll() const;
  /// Works on the fine picture of a resting view for about `budget`; true when it has become ready to paint.
  bool refine(const FrameRequest& request, std::chrono::milliseconds budget);
  /// Draws the fine picture in one go.
  void finish(const FrameRequest& request);
  /// Milliseconds the last moving frame took.
  double lastFrame() const { return lastFrame_; }

 private:
  struct Key {
    Camera camera;
    QSize pixels;
    Scheme scheme = Scheme::Light;
    std::uint64_t look = 0, pose = 0, arrivals = 0, meshes = 0;
    bool operator==(const Key&) const = default;
  };
  struct Refinement {
    Key key;
    bool begun = false;
    std::size_t nextBone = 0;
  };
  Key keyOf(const FrameRequest& request) const;
  FrameView viewOf(const FrameRequest& request, double scale, double edgePixels) const;
  /// Brings the shadow maps up to date; with `inTurn` only one of them each few calls, so that moving bones are not
  /// held up by their shadow. True when something was drawn.
  bool drawShadow(const FrameRequest& request, const FrameView& view, bool inTurn);
  void drawMoving(const FrameRequest& request);
  void prepare(std::unique_ptr<Framebuffer>& buffer, QSize size, int samples);
  void beginScene(Framebuffer& buffer, const FrameRequest& request, const FrameView& view);
  bool refineSlice(const FrameRequest& request, std::size_t triangles);

  Gl& gl_;
  bool software_;
  int samples_;
  MeshStore meshes_;
  ShadowPass shadow_;
  GroundPass ground_;
  GroundMarkPass groundMarks_;
  BonePass bones_;
  EdgePass edges_;
  Pace pace_;
  std::unique_ptr<Framebuffer> multisampled_, fine_, coarse_, finished_;
  std::optional<Key> shown_;
  bool shownFine_ = false, shownComplete_ = false;
  double shownScale_ = 1;
  std::optional<Refinement> refinement_;
  using Casters = std::pair<std::uint64_t, std::uint64_t>;  // revisions of pose and meshes
  std::array<std::optional<Casters>, 2> shadowed_;          // what each map was drawn for
  int shadowTurn_ = 0;
  double lastFrame_ = 0;
};

}  // namespace zyga::ui
