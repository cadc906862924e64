#version 330 core
in vec2 place;
out vec4 colour;

uniform sampler2D source;
uniform vec2 wide;    // step of the cast shadow's blur, texture units
uniform vec2 narrow;  // step of the contact's blur

const float kWeight[5] = float[](0.204, 0.180, 0.124, 0.066, 0.028);

void main() {
  vec2 sum = kWeight[0] * texture(source, place).rg;
  for (int i = 1; i < 5; ++i) {
    float k = float(i);
    sum.r += kWeight[i] * (texture(source, place + k * wide).r + texture(source, place - k * wide).r);
    sum.g += kWeight[i] * (texture(source, place + k * narrow).g + texture(source, place - k * narrow).g);
  }
  colour = vec4(sum, 0.0, 1.0);
}
