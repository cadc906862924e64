#version 330 core
layout(location = 0) in vec2 place;
layout(location = 1) in vec4 tone;
out vec4 tone_;

uniform mat4 clipOfWorld;

void main() {
  tone_ = tone;
  gl_Position = clipOfWorld * vec4(place, 0.0, 1.0);
  // The ground reaches farther than the bones, whose extent sets the range of depth.
  gl_Position.z = 0.0;
}
