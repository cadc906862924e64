#include "core/anatomy/marks/scan_guess.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <string>

#include "core/anatomy/specimen_reasons.h"

namespace zyga::anatomy {
namespace {

bool isUpper(char c) { return c >= 'A' && c <= 'Z'; }
bool isLower(char c) { return c >= 'a' && c <= 'z'; }
bool isLetter(char c) { return isUpper(c) || isLower(c); }
bool isDigit(char c) { return c >= '0' && c <= '9'; }
char lowered(char c) { return isUpper(c) ? static_cast<char>(c + 32) : c; }

std::string lowered(std::string_view text) {
  std::string out(text);
  std::transform(out.begin(), out.end(), out.begin(), [](char c) { return lowered(c); });
  return out;
}

/// Name without folders and ending, and without a "bone" in front.
std::string_view stemOf(std::string_view name) {
  name.remove_prefix(name.find_last_of("/\\") + 1);
  const auto dot = name.rfind('.');
  if (dot != std::string_view::npos && dot > 0 && name.size() - dot <= 6) name = name.substr(0, dot);
  if (lowered(name.substr(0, 4)) == "bone" && name.size() > 4) name.remove_prefix(4);
  return name;
}

/// Words, numbers apart from letters, "leftFemur" in two.
std::vector<std::string> wordsOf(std::string_view stem) {
  std::vector<std::string> words;
  char before = ' ';
  for (const char c : stem) {
    const bool inWord = isLetter(c) || isDigit(c);
    const bool goesOn =
        (isLetter(c) && isLetter(before) && !(isUpper(c) && isLower(before))) || (isDigit(c) && isDigit(before));
    if (inWord && !goesOn) words.emplace_back();
    if (inWord) words.back() += lowered(c);
    before = c;
  }
  return words;
}

struct Word {
  std::string_view text;
  BoneKind kind;
  double confidence;
};

constexpr double kWhole = 0.95, kShort = 0.8, kLoose = 0.5;

/// Names and the short forms of the trade (common practice, no source).
constexpr std::array kWords{Word{"skull", BoneKind::Skull, kWhole},
                            Word{"cranium", BoneKind::Skull, kWhole},
                            Word{"jaw", BoneKind::Jaw, kWhole},
                            Word{"mandible", BoneKind::Jaw, kWhole},
                            Word{"cervical", BoneKind::Cervical, kWhole},
                            Word{"cerv", BoneKind::Cervical, kShort},
                            Word{"cv", BoneKind::Cervical, kShort},
                            Word{"c", BoneKind::Cervical, kShort},
                            Word{"atlas", BoneKind::Cervical, kWhole},
                            Word{"axis", BoneKind::Cervical, kWhole},
                            Word{"dorsal", BoneKind::Dorsal, kWhole},
                            Word{"thoracic", BoneKind::Dorsal, kWhole},
                            Word{"dv", BoneKind::Dorsal, kShort},
                            Word{"d", BoneKind::Dorsal, kShort},
                            Word{"t", BoneKind::Dorsal, kShort},
                            Word{"th", BoneKind::Dorsal, kShort},
                            Word{"sacral", BoneKind::Sacral, kWhole},
                            Word{"sacrum", BoneKind::Sacral, kLoose},
                            Word{"s", BoneKind::Sacral, kShort},
                            Word{"sv", BoneKind::Sacral, kShort},
                            Word{"caudal", BoneKind::Caudal, kWhole},
                            Word{"ca", BoneKind::Caudal, kShort},
                            Word{"cd", BoneKind::Caudal, kShort},
                            Word{"tail", BoneKind::Caudal, kShort},
                            Word{"chevron", BoneKind::Chevron, kWhole},
                            Word{"rib", BoneKind::DorsalRib, kWhole},
                            Word{"scapula", BoneKind::Scapula, kWhole},
                            Word{"coracoid", BoneKind::Coracoid, kWhole},
                            Word{"sternal", BoneKind::SternalPlate, kWhole},
                            Word{"humerus", BoneKind::Humerus, kWhole},
                            Word{"hum", BoneKind::Humerus, kShort},
                            Word{"radius", BoneKind::Radius, kWhole},
                            Word{"rad", BoneKind::Radius, kShort},
                            Word{"ulna", BoneKind::Ulna, kWhole},
                            Word{"carpal", BoneKind::Carpal, kWhole},
                            Word{"metacarpal", BoneKind::Metacarpal, kWhole},
                            Word{"mc", BoneKind::Metacarpal, kShort},
                            Word{"ilium", BoneKind::Ilium, kWhole},
                            Word{"pelvis", BoneKind::Ilium, kLoose},
                            Word{"pubis", BoneKind::Pubis, kWhole},
                            Word{"ischium", BoneKind::Ischium, kWhole},
                            Word{"femur", BoneKind::Femur, kWhole},
                            Word{"femoris", BoneKind::Femur, kWhole},
                            Word{"fem", BoneKind::Femur, kShort},
                            Word{"tibia", BoneKind::Tibia, kWhole},
                            Word{"tib", BoneKind::Tibia, kShort},
                            Word{"fibula", BoneKind::Fibula, kWhole},
                            Word{"fib", BoneKind::Fibula, kShort},
                            Word{"astragalus", BoneKind::Astragalus, kWhole},
                            Word{"metatarsal", BoneKind::Metatarsal, kWhole},
                            Word{"mt", BoneKind::Metatarsal, kShort}};

bool isSided(BoneKind kind) { return parseBoneId(toId({kind, 1, 1, Side::Left})).has_value(); }
bool isNumbered(BoneKind kind) {
  BoneName name{kind, 0, 0, isSided(kind) ? Side::Left : Side::Midline};
  const std::string bare = toId(name);
  name.number = 1;
  return toId(name) != bare;
}

/// 1 to 99, leading noughts taken in stride; Roman up to five, as digits of hand and foot are written. 0: no number.
int numberIn(const std::string& word) {
  constexpr std::array<std::string_view, 5> kRoman{"i", "ii", "iii", "iv", "v"};
  for (std::size_t i = 0; i < kRoman.size(); ++i)
    if (word == kRoman[i]) return static_cast<int>(i) + 1;
  int number = 0;
  const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), number);
  const bool whole = error == std::errc() && end == word.data() + word.size();
  return whole && number < 100 ? number : 0;
}

std::optional<Side> sideIn(const std::string& word) {
  for (const std::string_view left : {"left", "l", "lt", "sin", "sinistra"})
    if (word == left) return Side::Left;
  for (const std::string_view right : {"right", "r", "rt", "dex", "dextra"})
    if (word == right) return Side::Right;
  return std::nullopt;
}

/// "cervicals" and "vertebrae" are told in the plural as well.
const Word* wordIn(const std::string& text) {
  for (const Word& word : kWords)
    if (text == word.text || (text.size() > 4 && text == std::string(word.text) + "s")) return &word;
  return nullptr;
}

struct Reading {
  std::optional<BoneGuess> guess;
  bool lumbar = false;
};

/// The number right behind the word, else right before it.
int numberBeside(const std::vector<std::string>& words, std::size_t at) {
  if (at + 1 < words.size())
    if (const int number = numberIn(words[at + 1])) return number;
  return at > 0 && isDigit(words[at - 1].front()) ? numberIn(words[at - 1]) : 0;
}

void addDoubt(BoneGuess& guess, double confidence, const reason::Reason& doubt) {
  guess.confidence = std::min(guess.confidence, confidence);
  guess.doubts.push_back(doubt);
}

/// The word that names the bone best; a letter alone only with its number.
std::size_t bestWord(const std::vector<std::string>& words) {
  std::size_t best = words.size();
  double most = 0;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const Word* word = wordIn(words[i]);
    if (!word || (words[i].size() <= 2 && isNumbered(word->kind) && numberBeside(words, i) == 0)) continue;
    if (word->confidence <= most) continue;
    most = word->confidence;
    best = i;
  }
  return best;
}

void giveSide(BoneGuess& guess, const std::vector<std::string>& words, std::size_t at) {
  if (!isSided(guess.name.kind)) return;
  guess.name.side = Side::Left;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const auto side = i == at ? std::nullopt : sideIn(words[i]);
    if (!side) continue;
    guess.name.side = *side;
    return;
  }
  addDoubt(guess, 0.4, {scan::kNoSide});
}

void giveNumber(BoneGuess& guess, const std::vector<std::string>& words, std::size_t at) {
  if (!isNumbered(guess.name.kind)) return;
  if (words[at] == "atlas" || words[at] == "axis") {
    guess.name.number = words[at] == "atlas" ? 1 : 2;
    return;
  }
  guess.name.number = numberBeside(words, at);
  if (words[at] == "sacrum") {
    guess.name.number = 1;
    addDoubt(guess, kLoose, {scan::kWholeSacrum});
  } else if (guess.name.number == 0) {
    addDoubt(guess, 0.3, {scan::kNoNumber});
  }
}

constexpr int kMostLumbars = 9;  ///< "L12" is the joint of L1 and L2, if anything (common practice, no source)

/// "L3" and "lumbar3"; a lone "l" is a side as soon as another word names a bone.
std::optional<int> lumbarIn(const std::vector<std::string>& words) {
  for (std::size_t i = 0; i < words.size(); ++i)
    if (words[i] == "lumbar" || words[i] == "l")
      if (const int number = numberBeside(words, i); number > 0 && number <= kMostLumbars) return number;
  return std::nullopt;
}

/// "rib.D4.L", "humerus.R.stl": an id of ours that says more than its words.
std::optional<BoneName> idIn(std::string_view name) {
  name.remove_prefix(name.find_last_of("/\\") + 1);
  for (const std::string_view id : {name, name.substr(0, name.rfind('.'))})
    if (id.find('.') != std::string_view::npos)
      if (const auto bone = parseBoneId(id)) return bone;
  return std::nullopt;
}

Reading read(std::string_view fileName) {
  if (const auto bone = idIn(fileName)) return {BoneGuess{*bone, kWhole, {}}, false};
  const auto words = wordsOf(stemOf(fileName));
  const std::size_t at = bestWord(words);
  if (at == words.size()) {
    const auto lumbar = lumbarIn(words);
    if (!lumbar) return {};
    return {
        BoneGuess{
            {BoneKind::Dorsal, *lumbar, 0, Side::Midline}, 0.3, {{scan::kLumbarNotPlaced, {reason::Count{*lumbar}}}}},
        true};
  }
  BoneGuess guess{{wordIn(words[at])->kind, 0, 0, Side::Midline}, wordIn(words[at])->confidence, {}};
  giveNumber(guess, words, at);
  giveSide(guess, words, at);
  if (words[at] == "pelvis") guess.doubts = {{scan::kWholePelvis}};
  return {guess, false};
}

}  // namespace

double metresOf(ScanUnit unit) {
  if (unit == ScanUnit::Millimetre) return 1e-3;
  return unit == ScanUnit::Centimetre ? 1e-2 : 1.0;
}

std::string_view toText(ScanUnit unit) {
  if (unit == ScanUnit::Millimetre) return "mm";
  return unit == ScanUnit::Centimetre ? "cm" : "m";
}

UnitGuess guessUnit(double extent, double expected) {
  constexpr double kSure = 0.7;  // decades between the best and the next
  std::array<std::pair<double, ScanUnit>, 3> off;
  std::size_t i = 0;
  for (const ScanUnit unit : {ScanUnit::Millimetre, ScanUnit::Centimetre, ScanUnit::Metre})
    off[i++] = {std::abs(std::log10(extent * metresOf(unit) / expected)), unit};
  std::sort(off.begin(), off.end());
  return {off[0].second, off[1].first - off[0].first > kSure};
}

double sizeFactor(const std::vector<ScanExtents>& extents, ScanUnit unit) {
  std::vector<double> decades;
  for (const ScanExtents& each : extents)
    if (each.scan > 0 && each.expected > 0) decades.push_back(std::log10(each.scan * metresOf(unit) / each.expected));
  if (decades.empty()) return 0;
  const auto middle = decades.begin() + static_cast<std::ptrdiff_t>(decades.size() / 2);
  std::nth_element(decades.begin(), middle, decades.end());
  return std::pow(10, *middle);
}

SetUnitGuess guessUnitOfSet(const std::vector<ScanExtents>& extents) {
  const double inMetres = sizeFactor(extents, ScanUnit::Metre);
  if (!(inMetres > 0)) return {};
  const UnitGuess guess = guessUnit(inMetres, 1);
  const auto known = [](const ScanExtents& each) { return each.scan > 0 && each.expected > 0; };
  return {guess.unit, guess.sure, inMetres * metresOf(guess.unit),
          static_cast<std::size_t>(std::count_if(extents.begin(), extents.end(), known))};
}

std::vector<double> sizesAmong(const std::vector<ScanExtents>& extents) {
  const double middle = sizeFactor(extents, ScanUnit::Metre);
  std::vector<double> out;
  for (std::size_t i = 0; i < extents.size(); ++i) {
    const double own = sizeFactor({extents[i]}, ScanUnit::Metre);
    const double others = extents.size() == 2 ? sizeFactor({extents[1 - i]}, ScanUnit::Metre) : middle;
    out.push_back(extents.size() > 1 && others > 0 ? own / others : 0);
  }
  return out;
}

bool isTenfold(double factor) { return factor > 0 && std::abs(std::log10(factor)) > 0.5; }

ScanUp guessUp(std::string_view ending) {
  std::string lower(ending);
  for (char& c : lower)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c + 32);
  for (const std::string_view known : {".gltf", ".glb", ".dae", ".obj", ".fbx"})
    if (lower == known) return ScanUp::Y;
  return ScanUp::Z;
}

std::optional<BoneGuess> guessBone(std::string_view fileName) { return read(fileName).guess; }

std::vector<std::optional<BoneGuess>> guessBones(const std::vector<std::string>& fileNames,
                                                 const RegionCounts& counts) {
  std::vector<Reading> readings;
  int lastThoracic = 0, lastLumbar = 0;
  for (const auto& name : fileNames) {
    readings.push_back(read(name));
    const Reading& reading = readings.back();
    if (!reading.guess || reading.guess->name.kind != BoneKind::Dorsal) continue;
    int& last = reading.lumbar ? lastLumbar : lastThoracic;
    last = std::max(last, reading.guess->name.number);
  }
  const int before = lastThoracic > 0 ? lastThoracic : std::max(0, counts.dorsal - lastLumbar);
  std::vector<std::optional<BoneGuess>> guesses;
  for (Reading& reading : readings) {
    if (reading.lumbar && counts.lumbar > 0) {
      reading.guess->name.kind = BoneKind::Lumbar;
      reading.guess->doubts.clear();
      reading.guess->confidence = kShort;
    } else if (reading.lumbar) {
      reading.guess->doubts = {{scan::kLumbarCounted, {reason::Count{reading.guess->name.number}}}};
      reading.guess->name.number += before;
      reading.guess->confidence = 0.6;
    }
    guesses.push_back(std::move(reading.guess));
  }
  return guesses;
}

}  // namespace zyga::anatomy
