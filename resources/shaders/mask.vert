#version 330 core
layout(location = 0) in vec3 position_B;
uniform mat4 X_WB;
uniform mat4 clipOfWorld;

void main() { gl_Position = clipOfWorld * (X_WB * vec4(position_B, 1.0)); }
