#version 330 core
out vec2 place;  // 0 to 1 from the lower left

// One triangle that covers the target; no buffers.
void main() {
  place = vec2((gl_VertexID << 1) & 2, gl_VertexID & 2);
  gl_Position = vec4(2.0 * place - 1.0, 0.0, 1.0);
}
