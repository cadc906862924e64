#include "ui/viewport/gl_mesh.h"

#include <cmath>
#include <cstddef>
#include <vector>

namespace zyga::ui {
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

}  // namespace zyga::ui
