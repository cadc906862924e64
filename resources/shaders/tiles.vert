#version 330 core
layout(location = 0) in vec2 corner;  // 0 to 1 from the lower left
out vec2 place;

void main() {
  place = corner;
  gl_Position = vec4(2.0 * place - 1.0, 0.0, 1.0);
}
