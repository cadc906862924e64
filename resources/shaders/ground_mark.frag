#version 330 core
in vec4 tone_;
layout(location = 0) out vec4 colour;
layout(location = 1) out vec4 shape;

void main() {
  colour = tone_;
  shape = vec4(0.0);
}
