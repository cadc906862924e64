#pragma once

#include <array>
#include <string>
#include <string_view>
#include <utility>

namespace zyga::files {

enum class SheetLayout { Side, ThreeViews, Evidence, Neck, Plate };
enum class SheetPaper { A4, A3, A2, A1 };
enum class SheetBones { Shaded, Outline, Silhouette, InBody };

/// What a sheet shows: a page in landscape format, to scale.
struct Sheet {
  SheetLayout layout = SheetLayout::Side;
  SheetPaper paper = SheetPaper::A3;
  SheetBones bones = SheetBones::Shaded;
  double scale = 0;     ///< N of 1:N; 0: the largest round one with which everything fits
  double person = 1.7;  ///< height of the human figure, m; 0: none
  bool jointMarks = false;
  bool evidenceTones = true;
  bool spans = true;         ///< measured heights and lengths
  bool ground = true;        ///< the ground as a line
  bool notes = true;         ///< numbered call-outs with their legend
  bool transparent = false;  ///< no paper behind the drawing
  std::string title;         ///< empty: the specimen's name
  std::string plate;         ///< of a plate: its bones, as anatomy::bonesInList takes them
  bool operator==(const Sheet&) const = default;
};

inline constexpr double kLeastPerson = 0.5, kMostPerson = 2.5;  // m
inline constexpr double kLeastScale = 1, kMostScale = 1000;

/// Words of the project file and of the command line.
inline constexpr std::array<std::pair<std::string_view, SheetLayout>, 5> kSheetLayouts{
    {{"side", SheetLayout::Side},
     {"three-views", SheetLayout::ThreeViews},
     {"evidence", SheetLayout::Evidence},
     {"neck", SheetLayout::Neck},
     {"plate", SheetLayout::Plate}}};
inline constexpr std::array<std::pair<std::string_view, SheetPaper>, 4> kSheetPapers{
    {{"a4", SheetPaper::A4}, {"a3", SheetPaper::A3}, {"a2", SheetPaper::A2}, {"a1", SheetPaper::A1}}};
inline constexpr std::array<std::pair<std::string_view, SheetBones>, 4> kSheetBones{
    {{"shaded", SheetBones::Shaded},
     {"outline", SheetBones::Outline},
     {"silhouette", SheetBones::Silhouette},
     {"in-body", SheetBones::InBody}}};

}  // namespace zyga::files
