#pragma once

#include <QSize>
#include <vector>

#include "ui/viewport/gl.h"

namespace zyga::ui {

/// A target to draw into. With samples it can only be resolved into another one; without, its planes are textures.
/// The context must be current, in the destructor too.
class Framebuffer {
 public:
  enum class Depth { None, Plain, Compared };  ///< Compared: for shadow look-ups

  Framebuffer(Gl& gl, QSize size, int samples, std::vector<GLenum> colours, Depth depth);
  ~Framebuffer();
  Framebuffer(const Framebuffer&) = delete;
  Framebuffer& operator=(const Framebuffer&) = delete;

  /// Draws go here from now on, to all colour planes, over the whole size.
  void bind();
  void resolveInto(Framebuffer& other);
  /// Copies the first colour plane onto all of another target, stretched to its size.
  void copyTo(GLuint target, QSize size);
  GLuint id() const { return id_; }
  QSize size() const { return size_; }
  int samples() const { return samples_; }
  GLuint colour(std::size_t i) const { return planes_[i]; }
  GLuint depth() const { return depth_; }

 private:
  GLuint makeTexture(GLenum format, Depth depth);
  GLuint makeStore(GLenum format);
  void attach(GLenum point, GLuint plane);

  Gl& gl_;
  QSize size_;
  int samples_;
  GLuint id_ = 0;
  std::vector<GLuint> planes_;
  GLuint depth_ = 0;
};

}  // namespace zyga::ui
