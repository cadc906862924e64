#pragma once

#include <Eigen/Geometry>
#include <QColor>
#include <QOpenGLFunctions_3_3_Core>
#include <QOpenGLShaderProgram>
#include <QSize>
#include <memory>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/solid/mesh/triangle_mesh.h"

namespace zyga::ui {

using Gl = QOpenGLFunctions_3_3_Core;

/// A shader program from resources/shaders with its uniforms by name. All members need the context to be current, the
/// destructor too.
class Program {
 public:
  /// Throws std::runtime_error with the driver's log.
  Program(Gl& gl, const QString& vertexFile, const QString& fragmentFile);

  void use();
  void set(const char* name, int value);
  void set(const char* name, float value);
  void set(const char* name, const Eigen::Vector2f& value);
  void set(const char* name, const Eigen::Vector3f& value);
  void set(const char* name, const Eigen::Vector4f& value);
  void set(const char* name, const Eigen::Matrix4f& value);
  void set(const char* name, const Eigen::Vector4f* values, int count);
  void set(const char* name, const float* values, int count);

 private:
  GLint place(const char* name);
  Gl& gl_;
  QOpenGLShaderProgram program_;
  std::unordered_map<std::string, GLint> places_;
};

/// One triangle over the whole target (screen.vert), without buffers.
class ScreenTriangle {
 public:
  explicit ScreenTriangle(Gl& gl);
  ~ScreenTriangle();
  ScreenTriangle(const ScreenTriangle&) = delete;
  ScreenTriangle& operator=(const ScreenTriangle&) = delete;
  void draw();

 private:
  Gl& gl_;
  GLuint array_ = 0;
};

/// Rectangles of the target (tiles.vert), each given by its corners as parts of the target from 0 to 1.
class ScreenRectangles {
 public:
  explicit ScreenRectangles(Gl& gl);
  ~ScreenRectangles();
  ScreenRectangles(const ScreenRectangles&) = delete;
  ScreenRectangles& operator=(const ScreenRectangles&) = delete;
  void draw(const std::vector<Eigen::AlignedBox2f>& rectangles);

 private:
  Gl& gl_;
  GLuint array_ = 0, corners_ = 0;
};

void bindTexture(Gl& gl, int unit, GLuint texture);

/// sRGB components as they are, 0 to 1.
Eigen::Vector3f screenColour(const QColor& colour);
/// The same in linear light.
Eigen::Vector3f linearColour(const QColor& colour);

/// One triangle mesh in the graphics memory. The context must be current, in the destructor too.
class GlMesh {
 public:
  GlMesh(Gl& gl, const solid::TriangleMesh& mesh);
  ~GlMesh();
  GlMesh(const GlMesh&) = delete;
  GlMesh& operator=(const GlMesh&) = delete;

  void draw();
  GLsizei triangles() const { return indices_ / 3; }

 private:
  Gl& gl_;
  GLuint array_ = 0, vertices_ = 0, elements_ = 0;
  GLsizei indices_ = 0;
};

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
