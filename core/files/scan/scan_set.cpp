#include "core/files/scan/scan_set.h"

#include <algorithm>
#include <array>
#include <map>

#include "core/anatomy/marks/scan.h"
#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/plan/plan_table.h"
#include "core/anatomy/specimen_reasons.h"
#include "core/files/scan/scan_faults.h"
#include "core/task/parallel.h"

namespace zyga::files {
namespace {

namespace fs = std::filesystem;

constexpr std::array<std::string_view, 12> kMeshEndings{".ply", ".obj", ".stl", ".glb", ".gltf", ".dae",
                                                        ".off", ".3ds", ".fbx", ".x",   ".lwo",  ".3mf"};
constexpr double kHalfSure = 0.5;

bool endsLikeMesh(const fs::path& file) {
  std::string ending = file.extension().string();
  for (char& c : ending)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c + 32);
  return std::find(kMeshEndings.begin(), kMeshEndings.end(), ending) != kMeshEndings.end();
}

struct FileOfSet {
  fs::path path;
  bool asked = true;
  std::optional<anatomy::BoneName> bone;
};

std::vector<FileOfSet> filesOf(const ScanSetWish& wish) {
  std::vector<FileOfSet> out;
  for (const fs::path& path : wish.paths) {
    std::error_code failed;
    if (!fs::is_directory(path, failed)) {
      out.push_back({path, true, {}});
      continue;
    }
    std::vector<fs::path> found = meshFilesIn(path);
    if (found.empty()) throw FileError({fault::kCannotRead, {pathText(path), reason::inner(fault::kNoMeshInFolder)}});
    for (fs::path& file : found) out.push_back({std::move(file), false, {}});
  }
  for (std::size_t i = 0; i < out.size() && i < wish.bones.size(); ++i) out[i].bone = wish.bones[i];
  return out;
}

/// What came of one file.
struct FileRead {
  std::optional<CleanScans> scans;
  reason::Reason why;
};

std::vector<FileRead> readAll(const std::vector<FileOfSet>& files, const ScanReader& reader) {
  std::vector<FileRead> out(files.size());
  ScanReader each = reader;
  each.task = reader.task.quiet();
  task::forEach(files.size(), reader.task, [&](std::size_t i) {
    try {
      out[i].scans = readCleanScans(files[i].path, each, files[i].bone.has_value());
    } catch (const FileError& error) {
      out[i].why = error.reason();
    }
  });
  return out;
}

reason::Reason doubtsOf(const anatomy::BoneGuess& guess) {
  std::vector<reason::Value> doubts;
  for (const reason::Reason& doubt : guess.doubts) doubts.push_back(reason::inner(doubt));
  return {fault::kNameNotSure, {reason::text(toId(guess.name)), reason::list(std::move(doubts))}};
}

/// Why a guess cannot be taken; empty when it can.
reason::Reason whyNotTaken(const std::optional<anatomy::BoneGuess>& guess, bool asked,
                           const anatomy::Specimen& animal) {
  if (!guess) return fault::kNameTellsNoBone;
  const std::string id = toId(guess->name);
  if (!anatomy::parseBoneId(id) || (!asked && guess->confidence < kHalfSure)) return doubtsOf(*guess);
  if (!animal.findBone(id)) return {fault::kAnimalHasNone, {reason::text(id)}};
  return {};
}

struct PieceOfSet {
  std::size_t file = 0;
  CleanScan clean;
};

std::string nameOf(const PieceOfSet& piece, const std::vector<FileOfSet>& files) {
  return piece.clean.part.empty() ? files[piece.file].path.string() : piece.clean.part;
}

std::vector<std::optional<anatomy::BoneGuess>> guessesOf(const std::vector<PieceOfSet>& pieces,
                                                         const std::vector<FileOfSet>& files,
                                                         const anatomy::RegionCounts& counts) {
  std::vector<std::string> names;
  for (const PieceOfSet& piece : pieces) names.push_back(nameOf(piece, files));
  auto guesses = anatomy::guessBones(names, counts);
  for (std::size_t i = 0; i < pieces.size(); ++i)
    if (const auto& said = files[pieces[i].file].bone) guesses[i] = anatomy::BoneGuess{*said, 1, {}};
  return guesses;
}

void nameAll(std::vector<PieceOfSet> pieces, const std::vector<FileOfSet>& files, const anatomy::Specimen& animal,
             ScanSet& out) {
  const auto guesses = guessesOf(pieces, files, animal.counts);
  std::map<anatomy::BoneName, std::string> taken;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const FileOfSet& file = files[pieces[i].file];
    reason::Reason why = whyNotTaken(guesses[i], file.asked, animal);
    if (why.empty()) {
      const auto [first, fresh] = taken.emplace(guesses[i]->name, nameOf(pieces[i], files));
      if (!fresh) why = {fault::kBoneInOtherFile, {reason::text(toId(guesses[i]->name)), reason::text(first->second)}};
    }
    if (!why.empty())
      out.leftOut.push_back({file.path, pieces[i].clean.part, std::move(why), file.asked});
    else
      out.bones.push_back({file.path, std::move(pieces[i].clean), *guesses[i], {}, {}, {}});
  }
}

/// The animal that the bones of a set belong to, nothing measured.
anatomy::MeasurementTable tableFor(anatomy::BodyPlan plan, const std::vector<PieceOfSet>& pieces,
                                   const std::vector<FileOfSet>& files) {
  anatomy::MeasurementTable table;
  table.plan = plan;
  std::vector<anatomy::BoneName> known;
  bool wholeSacrum = false;
  for (const auto& guess : guessesOf(pieces, files, anatomy::planTable(plan).counts)) {
    if (!guess || guess->confidence < kHalfSure) continue;
    known.push_back(guess->name);
    for (const reason::Reason& doubt : guess->doubts) wholeSacrum |= doubt.id == anatomy::scan::kWholeSacrum;
  }
  table.counts = anatomy::countsFrom(plan, known);
  // A sacrum in one piece is one bone, if the plan can have it so.
  if (wholeSacrum) table.counts.sacral = anatomy::planTable(plan).sacrals.least;
  return table;
}

/// One for all; where the format fixes it, that one.
void giveUnits(const std::optional<anatomy::ScanUnit>& said, const anatomy::Specimen& animal, ScanSet& set) {
  std::vector<anatomy::ScanExtents> open, taken;
  const auto expected = [&](const ScanOfSet& bone) {
    return anatomy::extentOf(animal[*animal.findBone(toId(bone.bone.name))]);
  };
  for (const ScanOfSet& bone : set.bones)
    if (!bone.clean.unitFixed) open.push_back({bone.clean.extent, expected(bone)});
  set.unit = anatomy::guessUnitOfSet(open);
  for (ScanOfSet& bone : set.bones) {
    bone.unitBy = said ? UnitBy::Person : bone.clean.unitFixed ? UnitBy::Format : UnitBy::Size;
    bone.unit = said ? *said : bone.clean.unitFixed ? bone.clean.unitGuess.unit : set.unit.unit;
    bone.unitSure = bone.unitBy != UnitBy::Size || set.unit.sure;
    taken.push_back({bone.clean.extent * anatomy::metresOf(bone.unit), expected(bone)});
  }
  const auto sure = [](const ScanOfSet& bone) { return bone.unitSure; };
  set.unit.sure = std::all_of(set.bones.begin(), set.bones.end(), sure);
  if (open.empty() && !set.bones.empty()) set.unit.unit = set.bones.front().unit;
  if (said) set.unit.unit = *said;
  set.unit.factor = anatomy::sizeFactor(taken, anatomy::ScanUnit::Metre);
  set.unit.bones = taken.size();
}

/// What is in the files, and what of it cannot be read. Empty when cancelled.
std::optional<std::vector<PieceOfSet>> piecesOf(const std::vector<FileOfSet>& files, const ScanReader& reader,
                                                ScanSet& out) {
  auto read = readAll(files, reader);
  if (reader.task.cancelled()) return std::nullopt;
  std::vector<PieceOfSet> pieces;
  for (std::size_t i = 0; i < files.size(); ++i) {
    if (!read[i].scans) {
      out.leftOut.push_back({files[i].path, {}, read[i].why, files[i].asked});
      continue;
    }
    for (CleanScan& clean : read[i].scans->bones) pieces.push_back({i, std::move(clean)});
    for (const std::string& part : read[i].scans->partsLeftOut)
      out.leftOut.push_back({files[i].path, part, fault::kNameTellsNoBone, false});
  }
  return pieces;
}

}  // namespace

std::string_view toText(UnitBy by) {
  switch (by) {
    case UnitBy::Format:
      return "format";
    case UnitBy::Person:
      return "person";
    case UnitBy::Size:
      break;
  }
  return "size";
}

std::span<const std::string_view> meshEndings() { return kMeshEndings; }

std::vector<fs::path> meshFilesIn(const fs::path& folder) {
  std::vector<fs::path> found;
  std::error_code failed;
  for (fs::directory_iterator entry(folder, failed), end; !failed && entry != end; entry.increment(failed))
    if (endsLikeMesh(entry->path()) && entry->is_regular_file(failed)) found.push_back(entry->path());
  std::sort(found.begin(), found.end());
  return found;
}

std::optional<ScanSet> readScanSet(const ScanSetWish& wish, const anatomy::Specimen& animal, const ScanReader& reader) {
  const auto files = filesOf(wish);
  ScanSet out;
  auto pieces = piecesOf(files, reader, out);
  if (!pieces) return std::nullopt;
  nameAll(std::move(*pieces), files, animal, out);
  giveUnits(wish.unit, animal, out);
  return out;
}

std::optional<ScanSet> readScanSet(const ScanSetWish& wish, anatomy::BodyPlan plan, const ScanReader& reader) {
  const auto files = filesOf(wish);
  ScanSet out;
  auto pieces = piecesOf(files, reader, out);
  if (!pieces) return std::nullopt;
  out.table = tableFor(plan, *pieces, files);
  const anatomy::Specimen animal = buildSpecimen(fillBlanks(*out.table));
  nameAll(std::move(*pieces), files, animal, out);
  giveUnits(wish.unit, animal, out);
  return out;
}

}  // namespace zyga::files
