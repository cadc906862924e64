#include <array>
#include <charconv>
#include <cmath>

#include "core/solid/mesh/repair.h"

namespace zyga::solid {

namespace {

/// "1,234,567"
std::string counted(std::size_t count) {
  std::string text = std::to_string(count);
  for (auto i = static_cast<std::ptrdiff_t>(text.size()) - 3; i > 0; i -= 3)
    text.insert(static_cast<std::size_t>(i), 1, ',');
  return text;
}

std::string joined(std::initializer_list<std::string_view> parts) {
  std::string text;
  for (const std::string_view part : parts) text += part;
  return text;
}

/// "1 hole", "2 holes"
std::string counted(std::size_t count, std::string_view one, std::string_view many) {
  return joined({counted(count), " ", count == 1 ? one : many});
}

std::string rounded(double value) {
  std::array<char, 64> text{};
  const auto end = std::to_chars(text.data(), text.data() + text.size(), std::round(value * 10) / 10).ptr;
  return {text.data(), end};
}

std::string length(double value, double unit) {
  return unit > 0 ? rounded(value * unit * 1000) + " mm" : rounded(value) + " in the file's unit";
}

}  // namespace

std::vector<std::string> repairsInWords(const Repairs& r) {
  std::vector<std::string> words;
  const auto say = [&](std::size_t count, std::string_view before, std::string_view one, std::string_view many,
                       std::string_view after = "") {
    if (count > 0) words.push_back(joined({before, counted(count, one, many), after}));
  };
  say(r.badIndices, "dropped ", "triangle", "triangles", " naming vertices that are not there");
  say(r.notFinite, "dropped ", "triangle", "triangles", " with a corner that is no number");
  say(r.welded, "welded ", "vertex", "vertices", " standing at the same place as another");
  say(r.seamsClosed, "closed seams at ", "vertex", "vertices");
  say(r.degenerate, "dropped ", "triangle", "triangles", " without area");
  say(r.duplicates, "dropped ", "triangle", "triangles", " given twice");
  say(r.turned, "turned ", "triangle", "triangles", " over to face as the rest");
  say(r.insideOut, "turned ", "surface", "surfaces", " over, inside out before");
  say(r.unusedVertices, "dropped ", "vertex", "vertices", " without triangles");
  return words;
}

std::vector<std::string> flawsInWords(const Flaws& f, double unit) {
  std::vector<std::string> words;
  const auto say = [&](std::size_t count, std::string_view one, std::string_view many, std::string_view after) {
    if (count > 0) words.push_back(joined({counted(count, one, many), after}));
  };
  say(f.holes, "hole", "holes", joined({" left open, the longest border ", length(f.longestHole, unit)}));
  say(f.nonManifoldEdges, "edge", "edges", " with more than two triangles");
  say(f.twisted, "edge", "edges", " where the surface is one-sided");
  if (f.surfaces > 1) say(f.surfaces, "surface", "surfaces", " that are not connected");
  say(f.cavities, "hollow", "hollows", " inside, counted off the volume");
  return words;
}

}  // namespace zyga::solid
