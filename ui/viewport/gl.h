#pragma once

#include <Eigen/Geometry>
#include <QColor>
#include <QOpenGLFunctions_3_3_Core>
#include <QOpenGLShaderProgram>
#include <memory>
#include <string>
#include <unordered_map>
#include <vector>

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

}  // namespace zyga::ui
