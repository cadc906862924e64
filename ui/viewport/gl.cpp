#include "ui/viewport/gl.h"

#include <cmath>
#include <cstddef>
#include <stdexcept>
#include <vector>

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

namespace {

struct Vertex {
  float position[3];
  std::int16_t normalAndOpenness[4];
};

std::int16_t packed(float value) { return static_cast<std::int16_t>(std::lround(32767.0f * value)); }

std::vector<Vertex> vertices(const solid::TriangleMesh& mesh) {
  std::vector<Vertex> out(mesh.positions.size());
  for (std::size_t i = 0; i < out.size(); ++i) {
    const Eigen::Vector3f& p = mesh.positions[i];
    const Eigen::Vector3f n = mesh.normals[i];
    const float open = mesh.occlusion.empty() ? 1.0f : mesh.occlusion[i];
    out[i] = {{p.x(), p.y(), p.z()}, {packed(n.x()), packed(n.y()), packed(n.z()), packed(open)}};
  }
  return out;
}

}  // namespace

GlMesh::GlMesh(Gl& gl, const solid::TriangleMesh& mesh) : gl_(gl) {
  solid::TriangleMesh withNormals;
  const solid::TriangleMesh* source = &mesh;
  if (mesh.normals.size() != mesh.positions.size()) {
    withNormals = mesh;
    solid::computeNormals(withNormals);
    source = &withNormals;
  }
  const std::vector<Vertex> data = vertices(*source);
  indices_ = static_cast<GLsizei>(3 * mesh.triangles.size());
  gl_.glGenVertexArrays(1, &array_);
  gl_.glBindVertexArray(array_);
  gl_.glGenBuffers(1, &vertices_);
  gl_.glBindBuffer(GL_ARRAY_BUFFER, vertices_);
  gl_.glBufferData(GL_ARRAY_BUFFER, static_cast<GLsizeiptr>(data.size() * sizeof(Vertex)), data.data(), GL_STATIC_DRAW);
  gl_.glGenBuffers(1, &elements_);
  gl_.glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, elements_);
  gl_.glBufferData(GL_ELEMENT_ARRAY_BUFFER, static_cast<GLsizeiptr>(12 * mesh.triangles.size()), mesh.triangles.data(),
                   GL_STATIC_DRAW);
  gl_.glEnableVertexAttribArray(0);
  gl_.glVertexAttribPointer(0, 3, GL_FLOAT, GL_FALSE, sizeof(Vertex), nullptr);
  gl_.glEnableVertexAttribArray(1);
  gl_.glVertexAttribPointer(1, 4, GL_SHORT, GL_TRUE, sizeof(Vertex),
                            reinterpret_cast<const void*>(offsetof(Vertex, normalAndOpenness)));
  gl_.glBindVertexArray(0);
}

GlMesh::~GlMesh() {
  gl_.glDeleteBuffers(1, &vertices_);
  gl_.glDeleteBuffers(1, &elements_);
  gl_.glDeleteVertexArrays(1, &array_);
}

void GlMesh::draw() {
  gl_.glBindVertexArray(array_);
  gl_.glDrawElements(GL_TRIANGLES, indices_, GL_UNSIGNED_INT, nullptr);
}

namespace {

GLenum point(std::size_t i) { return static_cast<GLenum>(GL_COLOR_ATTACHMENT0 + i); }

void filter(Gl& gl, GLint how) {
  gl.glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, how);
  gl.glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, how);
  gl.glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
  gl.glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
}

}  // namespace

Framebuffer::Framebuffer(Gl& gl, QSize size, int samples, std::vector<GLenum> colours, Depth depth)
    : gl_(gl), size_(size), samples_(samples) {
  gl_.glGenFramebuffers(1, &id_);
  gl_.glBindFramebuffer(GL_FRAMEBUFFER, id_);
  for (std::size_t i = 0; i < colours.size(); ++i) {
    planes_.push_back(samples_ > 0 ? makeStore(colours[i]) : makeTexture(colours[i], Depth::None));
    attach(point(i), planes_.back());
  }
  if (depth != Depth::None) {
    depth_ = samples_ > 0 ? makeStore(GL_DEPTH_COMPONENT24) : makeTexture(GL_DEPTH_COMPONENT24, depth);
    attach(GL_DEPTH_ATTACHMENT, depth_);
  }
  if (colours.empty()) {
    gl_.glDrawBuffer(GL_NONE);
    gl_.glReadBuffer(GL_NONE);
  }
}

Framebuffer::~Framebuffer() {
  gl_.glDeleteFramebuffers(1, &id_);
  if (depth_ != 0) planes_.push_back(depth_);
  const auto count = static_cast<GLsizei>(planes_.size());
  if (samples_ > 0)
    gl_.glDeleteRenderbuffers(count, planes_.data());
  else
    gl_.glDeleteTextures(count, planes_.data());
}

GLuint Framebuffer::makeTexture(GLenum format, Depth depth) {
  GLuint texture = 0;
  gl_.glGenTextures(1, &texture);
  bindTexture(gl_, 0, texture);
  const bool isDepth = depth != Depth::None;
  gl_.glTexImage2D(GL_TEXTURE_2D, 0, static_cast<GLint>(format), size_.width(), size_.height(), 0,
                   isDepth ? GL_DEPTH_COMPONENT : GL_RGBA, isDepth ? GL_UNSIGNED_INT : GL_UNSIGNED_BYTE, nullptr);
  filter(gl_, depth == Depth::Plain ? GL_NEAREST : GL_LINEAR);
  if (depth == Depth::Compared) {
    gl_.glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_COMPARE_MODE, GL_COMPARE_REF_TO_TEXTURE);
    gl_.glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_COMPARE_FUNC, GL_LEQUAL);
  }
  return texture;
}

GLuint Framebuffer::makeStore(GLenum format) {
  GLuint store = 0;
  gl_.glGenRenderbuffers(1, &store);
  gl_.glBindRenderbuffer(GL_RENDERBUFFER, store);
  gl_.glRenderbufferStorageMultisample(GL_RENDERBUFFER, samples_, format, size_.width(), size_.height());
  return store;
}

void Framebuffer::attach(GLenum point, GLuint plane) {
  if (samples_ > 0)
    gl_.glFramebufferRenderbuffer(GL_FRAMEBUFFER, point, GL_RENDERBUFFER, plane);
  else
    gl_.glFramebufferTexture2D(GL_FRAMEBUFFER, point, GL_TEXTURE_2D, plane, 0);
}

void Framebuffer::bind() {
  gl_.glBindFramebuffer(GL_FRAMEBUFFER, id_);
  gl_.glViewport(0, 0, size_.width(), size_.height());
  std::vector<GLenum> points;
  for (std::size_t i = 0; i < planes_.size(); ++i) points.push_back(point(i));
  if (!points.empty()) gl_.glDrawBuffers(static_cast<GLsizei>(points.size()), points.data());
}

void Framebuffer::resolveInto(Framebuffer& other) {
  gl_.glBindFramebuffer(GL_READ_FRAMEBUFFER, id_);
  gl_.glBindFramebuffer(GL_DRAW_FRAMEBUFFER, other.id_);
  const int w = size_.width(), h = size_.height();
  for (std::size_t i = 0; i < planes_.size(); ++i) {
    const GLenum to = point(i);
    gl_.glReadBuffer(to);
    gl_.glDrawBuffer(to);
    const GLbitfield what = GL_COLOR_BUFFER_BIT | (i == 0 && depth_ != 0 ? GL_DEPTH_BUFFER_BIT : 0u);
    gl_.glBlitFramebuffer(0, 0, w, h, 0, 0, w, h, what, GL_NEAREST);
  }
}

void Framebuffer::copyTo(GLuint target, QSize size) {
  gl_.glBindFramebuffer(GL_READ_FRAMEBUFFER, id_);
  gl_.glBindFramebuffer(GL_DRAW_FRAMEBUFFER, target);
  gl_.glReadBuffer(GL_COLOR_ATTACHMENT0);
  gl_.glBlitFramebuffer(0, 0, size_.width(), size_.height(), 0, 0, size.width(), size.height(), GL_COLOR_BUFFER_BIT,
                        size == size_ ? GL_NEAREST : GL_LINEAR);
}

}  // namespace zyga::ui
