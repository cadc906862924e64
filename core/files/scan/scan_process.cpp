#include "core/files/scan/scan_process.h"

#include <fcntl.h>
#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <new>
#include <optional>
#include <span>

#include "core/files/json/json.h"
#include "core/files/json/json_write.h"
#include "core/files/json/utf8.h"
#include "core/files/scan/sanitizer_shadow.h"
#include "core/files/scan/scan_allowance.h"
#include "core/files/scan/scan_faults.h"
#include "core/files/scan/scan_import.h"
#include "core/files/scan/scan_precheck.h"
#include "core/files/scan/scan_wire.h"

namespace zyga::files {
namespace {

int told = STDOUT_FILENO;  ///< where to talk to the parent; also used where nothing may be allocated

void say(std::string_view text) {
  while (!text.empty()) {
    const ssize_t written = write(told, text.data(), text.size());
    if (written <= 0) return;
    text.remove_prefix(static_cast<std::size_t>(written));
  }
}

void outOfMemory() { _exit(protocol::kOutOfMemory); }

/// Libraries may print what they like; the parent hears only us.
void keepOutputForOurselves() {
  told = fcntl(STDOUT_FILENO, F_DUPFD_CLOEXEC, 3);
  const int nowhere = open("/dev/null", O_WRONLY | O_CLOEXEC);
  if (nowhere >= 0) dup2(nowhere, STDOUT_FILENO);
}

template <class Number>
Number numberFrom(std::string_view text) {
  Number number{};
  std::from_chars(text.data(), text.data() + text.size(), number);
  return number;
}

/// Lowers the limit, never raises it.
void allowProcessorTime(rlim_t seconds) {
  rlimit limit{};
  getrlimit(RLIMIT_CPU, &limit);
  limit.rlim_cur = std::min(limit.rlim_cur, seconds);
  setrlimit(RLIMIT_CPU, &limit);
  say(std::string(protocol::kAllowed) + std::to_string(limit.rlim_cur) + "\n");
}

/// Bytes that this process maps already: the program with its libraries.
std::uint64_t mappedNow() {
  std::uint64_t pages = 0;
  if (!kShadowed) std::ifstream("/proc/self/statm") >> pages;
  return pages * static_cast<std::uint64_t>(sysconf(_SC_PAGESIZE));
}

void refuseBeyond(std::uint64_t memory, const ScanHead& head) {
  const std::uint64_t needed = memoryNeeded(head) + mappedNow();
  if (memoryNeeded(head) == 0 || needed <= memory) return;
  const auto bytes = [](std::uint64_t count) {
    return reason::Quantity{static_cast<double>(count), reason::Unit::Bytes};
  };
  throw FileError(
      {fault::kNeedsMemory, {reason::Count{static_cast<long long>(head.triangles)}, bytes(needed), bytes(memory)}});
}

void run(char** argv) {
  const auto largestFile = numberFrom<std::uint64_t>(argv[3]);
  std::set_new_handler(outOfMemory);
  const ScanHead head = checkScanHead(argv[1]);
  allowProcessorTime(secondsAllowed(numberFrom<double>(argv[4]), numberFrom<double>(argv[5]), head.triangles));
  refuseBeyond(numberFrom<std::uint64_t>(argv[6]), head);
  int last = -1;
  const task::Task task(nullptr, [&](double share) {
    const int percent = static_cast<int>(100 * share);
    if (percent == last) return;
    last = percent;
    say(std::string(protocol::kProgress) + std::to_string(percent) + "\n");
  });
  writeWire(importScan(argv[1], head, largestFile, task), argv[2]);
}

constexpr std::size_t kLongestText = 300;  ///< bytes of a text in a cause
constexpr int kDeepestCause = 4;           ///< reasons within reasons

/// All that the reading process has to say.
constexpr reason::Id kTold[] = {
    fault::kInItsWords, fault::kUnreadable, fault::kEmptyFile, fault::kNoMeshFormat, fault::kNoSurface,
    fault::kCountsBeyondMeasure, fault::kTooManyVertices, fault::kBadCount, fault::kElements, fault::kDeclaresTooMany,
    fault::kNoPlyType, fault::kPlyHeadOpen, fault::kFaceNamesNoVertex, fault::kTooShortForStl, fault::kTooShortForGlb,
    fault::kGltfJson, fault::kGltfJsonCutShort, fault::kGlbCutShort, fault::kCompressed, fault::kNoRoom,
    fault::kNeedsMemory,
    // What the reader of JSON says of a glTF document.
    fault::kFoundInstead, fault::kEndsHere, fault::kExpectedMemberEnd, fault::kExpectedItemEnd, fault::kExpectedColon,
    fault::kExpectedKey, fault::kExpectedValue, fault::kExpectedDigit, fault::kExpectedHex, fault::kMoreAfterEnd,
    fault::kTooDeep, fault::kKeyTwice, fault::kLeadingZero, fault::kOpenQuotes, fault::kControlInQuotes,
    fault::kNotUtf8, fault::kUnknownEscape, fault::kHalfSurrogate, fault::kExpectedKind};

constexpr reason::Term kTermsTold[] = {
    kVertices,         kFaces,          kTriangles,      kKindTerms.null,  kKindTerms.boolean,
    kKindTerms.number, kKindTerms.text, kKindTerms.list, kKindTerms.object};

/// Cut between two characters.
std::string_view shortened(std::string_view text) {
  if (text.size() <= kLongestText) return text;
  std::size_t end = kLongestText;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) --end;
  return text.substr(0, end);
}

/// Whatever the file has put into it, it goes into one line of a message.
std::string onOneLine(std::string text) {
  for (char& c : text)
    if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) c = ' ';
  return text;
}

json::Value causeJson(const reason::Reason& cause) {
  struct Write {
    json::Value operator()(const reason::Text& v) const { return shortened(v.text); }
    json::Value operator()(const reason::Term& v) const { return json::object({{"term", v.id}}); }
    json::Value operator()(const reason::Count& v) const { return v.value; }
    json::Value operator()(const reason::Quantity& v) const {
      if (v.unit != reason::Unit::Bytes) return {};
      return json::object({{"bytes", static_cast<long long>(v.value)}});
    }
    json::Value operator()(const reason::Inner& v) const { return causeJson(*v); }
    json::Value operator()(const std::shared_ptr<const reason::List>&) const { return {}; }
  };
  json::Value values = json::array({});
  for (const reason::Value& value : cause.values) values.push(std::visit(Write(), value));
  return json::object({{"id", cause.id.text}, {"values", values}});
}

reason::Reason causeFrom(const JsonValue& value, int depth);

const JsonValue* find(const JsonValue& object, std::string_view key) {
  const auto found = std::find(object.keys.begin(), object.keys.end(), key);
  return found == object.keys.end() ? nullptr : &object.items[static_cast<std::size_t>(found - object.keys.begin())];
}

const FileError& damaged() {
  static const FileError error(fault::kDamagedAnswer);
  return error;
}

std::optional<long long> wholeFrom(const JsonValue& value) {
  long long count = 0;
  const auto read = std::from_chars(value.text.data(), value.text.data() + value.text.size(), count);
  return value.kind == JsonValue::Kind::Number && read.ec == std::errc() ? std::optional(count) : std::nullopt;
}

reason::Value valueFrom(const JsonValue& value, int depth) {
  using Kind = JsonValue::Kind;
  if (value.kind == Kind::String) return reason::text(onOneLine(std::string(shortened(value.text))));
  if (value.kind == Kind::Number)
    if (const auto count = wholeFrom(value)) return reason::Count{*count};
  if (value.kind != Kind::Object) throw damaged();
  if (const JsonValue* bytes = find(value, "bytes"))
    if (const auto count = wholeFrom(*bytes)) return reason::Quantity{static_cast<double>(*count), reason::Unit::Bytes};
  const JsonValue* term = find(value, "term");
  if (!term) return reason::inner(causeFrom(value, depth + 1));
  for (const reason::Term& known : kTermsTold)
    if (term->text == known.id) return known;
  throw damaged();
}

reason::Reason causeFrom(const JsonValue& value, int depth) {
  const JsonValue *id = find(value, "id"), *values = find(value, "values");
  if (!id || !values || depth > kDeepestCause) throw damaged();
  const auto* known =
      std::find_if(std::begin(kTold), std::end(kTold), [&](auto& told) { return told.text == id->text; });
  if (known == std::end(kTold) || values->items.size() != static_cast<std::size_t>(known->values)) throw damaged();
  std::vector<reason::Value> read;
  for (const JsonValue& item : values->items) read.push_back(valueFrom(item, depth));
  return {*known, std::move(read)};
}

}  // namespace

std::string writeCause(const reason::Reason& cause) { return json::text(causeJson(cause)); }

reason::Reason readCause(std::string_view line) {
  try {
    return causeFrom(parseJson(line, "").root, 0);
  } catch (const FileError&) {
    return fault::kDamagedAnswer;
  }
}

int readScanProcess(int argc, char** argv) {
  keepOutputForOurselves();
  if (argc < 7) return protocol::kMisused;
  try {
    run(argv);
    return protocol::kRead;
  } catch (const std::exception& error) {
    say(std::string(protocol::kCause) + writeCause(reasonOf(error)) + "\n");
  }
  return protocol::kFailed;
}

}  // namespace zyga::files
