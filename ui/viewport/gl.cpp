#include "ui/viewport/gl.h"

#include <cmath>
#include <stdexcept>

static void loadShaderFiles() { Q_INIT_RESOURCE(shaders); }

namespace zyga::ui {

Program::Program(Gl& gl, const QString& vertexFile, const QString& fragmentFile) : gl_(gl) {
  loadShaderFiles();
  const bool made = program_.addShaderFromSourceFile(QOpenGLShader::Vertex, ":/shaders/" + vertexFile) &&
                    program_.addShaderFromSourceFile(QOpenGLShader::Fragment, ":/shaders/" + fragmentFile) &&
                    program_.link();
  if (!made) throw std::runtime_error((vertexFile + ", " + fragmentFile + ": " + program_.log()).toStdString());
}

void Program::use() { program_.bind(); }

GLint Program::place(const char* name) {
  const auto found = places_.find(name);
  if (found != places_.end()) return found->second;
  return places_[name] = program_.uniformLocation(name);
}

void Program::set(const char* name, int value) { gl_.glUniform1i(place(name), value); }
void Program::set(const char* name, float value) { gl_.glUniform1f(place(name), value); }
void Program::set(const char* name, const Eigen::Vector2f& value) { gl_.glUniform2fv(place(name), 1, value.data()); }
void Program::set(const char* name, const Eigen::Vector3f& value) { gl_.glUniform3fv(place(name), 1, value.data()); }
void Program::set(const char* name, const Eigen::Vector4f& value) { gl_.glUniform4fv(place(name), 1, value.data()); }
void Program::set(const char* name, const Eigen::Matrix4f& value) {
  gl_.glUniformMatrix4fv(place(name), 1, GL_FALSE, value.data());
}
void Program::set(const char* name, const Eigen::Vector4f* values, int count) {
  if (count > 0) gl_.glUniform4fv(place(name), count, values->data());
}
void Program::set(const char* name, const float* values, int count) {
  if (count > 0) gl_.glUniform1fv(place(name), count, values);
}

ScreenTriangle::ScreenTriangle(Gl& gl) : gl_(gl) { gl_.glGenVertexArrays(1, &array_); }

ScreenTriangle::~ScreenTriangle() { gl_.glDeleteVertexArrays(1, &array_); }

void ScreenTriangle::draw() {
  gl_.glBindVertexArray(array_);
  gl_.glDrawArrays(GL_TRIANGLES, 0, 3);
  gl_.glBindVertexArray(0);
}

ScreenRectangles::ScreenRectangles(Gl& gl) : gl_(gl) {
  gl_.glGenVertexArrays(1, &array_);
  gl_.glBindVertexArray(array_);
  gl_.glGenBuffers(1, &corners_);
  gl_.glBindBuffer(GL_ARRAY_BUFFER, corners_);
  gl_.glEnableVertexAttribArray(0);
  gl_.glVertexAttribPointer(0, 2, GL_FLOAT, GL_FALSE, 0, nullptr);
  gl_.glBindVertexArray(0);
}

ScreenRectangles::~ScreenRectangles() {
  gl_.glDeleteBuffers(1, &corners_);
  gl_.glDeleteVertexArrays(1, &array_);
}

void ScreenRectangles::draw(const std::vector<Eigen::AlignedBox2f>& rectangles) {
  std::vector<Eigen::Vector2f> corners;
  corners.reserve(6 * rectangles.size());
  for (const auto& r : rectangles) {
    const Eigen::Vector2f a = r.min(), c = r.max(), b(c.x(), a.y()), d(a.x(), c.y());
    corners.insert(corners.end(), {a, b, c, a, c, d});
  }
  gl_.glBindVertexArray(array_);
  gl_.glBindBuffer(GL_ARRAY_BUFFER, corners_);
  gl_.glBufferData(GL_ARRAY_BUFFER, static_cast<GLsizeiptr>(corners.size() * sizeof(Eigen::Vector2f)), corners.data(),
                   GL_STREAM_DRAW);
  gl_.glDrawArrays(GL_TRIANGLES, 0, static_cast<GLsizei>(corners.size()));
  gl_.glBindVertexArray(0);
}

void bindTexture(Gl& gl, int unit, GLuint texture) {
  gl.glActiveTexture(static_cast<GLenum>(GL_TEXTURE0 + unit));
  gl.glBindTexture(GL_TEXTURE_2D, texture);
}

Eigen::Vector3f screenColour(const QColor& colour) {
  return {static_cast<float>(colour.redF()), static_cast<float>(colour.greenF()), static_cast<float>(colour.blueF())};
}

Eigen::Vector3f linearColour(const QColor& colour) {
  return screenColour(colour).unaryExpr(
      [](float c) { return c <= 0.04045f ? c / 12.92f : std::pow((c + 0.055f) / 1.055f, 2.4f); });
}

}  // namespace zyga::ui
