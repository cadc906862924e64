#version 330 core
out vec4 colour;
uniform vec4 mask;

void main() { colour = mask; }
