#include "ui/viewport/framebuffer.h"

namespace zyga::ui {
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
