#version 330 core
in float height;
out vec4 colour;

// Red: the cast shadow, weaker from high up. Green: the contact close to the ground.
void main() { colour = vec4(exp(-max(height, 0.0) / 5.0), exp(-max(height, 0.0) / 0.22), 0.0, 1.0); }
