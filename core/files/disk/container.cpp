#include "core/files/disk/container.h"

#include <fcntl.h>
#include <unistd.h>
#include <zip.h>

#include <algorithm>
#include <cassert>
#include <cerrno>
#include <cstring>
#include <exception>
#include <optional>
#include <set>

#include "core/files/disk/atomic_file.h"
#include "core/files/disk/plain_file.h"
#include "core/files/disk/staged_output.h"

namespace zyga::files {
namespace {

namespace fs = std::filesystem;

constexpr zip_int64_t kMostEntries = 10000;
/// Deflate makes text some tenfold and meshes twofold smaller; its most is a thousandfold, which only a bomb comes
/// near.
constexpr std::uint64_t kMostSwelling = 200, kSwellingAllowance = 64 << 10;
constexpr std::size_t kPart = 1 << 20;             ///< bytes unpacked at a time
constexpr zip_uint32_t kFastDeflate = 1;           ///< a mesh hardly gets smaller by more effort
constexpr zip_uint16_t kFirstDosDay = 1 << 5 | 1;  ///< 1980-01-01: the same bytes whenever it is written

using Archive = std::unique_ptr<zip_t, decltype(&zip_discard)>;

class ZipError {
 public:
  ZipError() { zip_error_init(&error_); }
  ~ZipError() { zip_error_fini(&error_); }
  ZipError(const ZipError&) = delete;
  ZipError& operator=(const ZipError&) = delete;
  explicit ZipError(int code) { zip_error_init_with_code(&error_, code); }
  zip_error_t* get() { return &error_; }

 private:
  zip_error_t error_{};
};

reason::Reason causeOfZip(const zip_error_t* error) {
  const int kind = zip_error_code_zip(error);
  if (kind == ZIP_ER_MEMORY) return fault::kNoMemory;
  const bool ofSystem = zip_error_system_type(error) == ZIP_ET_SYS && zip_error_code_system(error) != 0;
  return ofSystem ? systemCause(zip_error_code_system(error)) : reason::Reason(fault::kContainerBroken);
}

reason::Value bytesCount(std::uint64_t bytes) {
  return reason::Quantity{static_cast<double>(bytes), reason::Unit::Bytes};
}

/// Whether a name stays inside the folder that a container would be unpacked to.
bool staysInside(std::string_view name) {
  if (name.empty() || name.front() == '/' || name.find('\\') != std::string_view::npos) return false;
  if (name.size() > 1 && name[1] == ':') return false;
  for (std::size_t at = 0; at <= name.size();) {
    const auto end = std::min(name.find('/', at), name.size());
    if (name.substr(at, end - at) == "..") return false;
    at = end + 1;
  }
  return true;
}

bool swells(std::uint64_t size, std::uint64_t packed, std::uint64_t entries = 1) {
  return size / kMostSwelling > packed + entries * kSwellingAllowance / kMostSwelling;
}

/// Faults of what a container says of its entries; empty when there is none.
reason::Reason faultAmong(zip_t* archive, std::uint64_t fileSize) {
  const zip_int64_t count = zip_get_num_entries(archive, 0);
  if (count > kMostEntries) return {fault::kContainerCrowded, {reason::Count{count}, reason::Count{kMostEntries}}};
  std::set<std::string> names;
  std::uint64_t whole = 0;
  for (zip_int64_t i = 0; i < count; ++i) {
    const auto index = static_cast<zip_uint64_t>(i);
    zip_stat_t about;
    zip_stat_init(&about);
    const char* name = zip_get_name(archive, index, ZIP_FL_ENC_RAW);
    if (!name || zip_stat_index(archive, index, 0, &about) != 0) return fault::kContainerBroken;
    const reason::Value entry = reason::text(name);
    if (!staysInside(name)) return {fault::kEntryOutside, {entry}};
    if (!names.insert(name).second) return {fault::kEntryTwice, {entry}};
    if ((about.valid & ZIP_STAT_ENCRYPTION_METHOD) && about.encryption_method != ZIP_EM_NONE)
      return {fault::kEntryEncrypted, {entry}};
    if (about.comp_method != ZIP_CM_STORE && about.comp_method != ZIP_CM_DEFLATE)
      return {fault::kEntryPacking, {entry}};
    if (swells(about.size, about.comp_size)) return {fault::kEntrySwells, {entry, bytesCount(about.size)}};
    if (about.size > UINT64_MAX - whole) return {fault::kEntrySwells, {entry, bytesCount(about.size)}};
    whole += about.size;
  }
  // Entries that share their bytes may each be honest and absurd together.
  if (swells(whole, fileSize, static_cast<std::uint64_t>(count))) return {fault::kContainerSwells, {bytesCount(whole)}};
  return {};
}

/// What is asked of an entry while a container is written.
struct Feed {
  ContainerEntry entry;
  std::exception_ptr* failure = nullptr;
  std::string bytes;
  std::size_t at = 0;
  ZipError error;
};

zip_int64_t answerFeed(void* user, void* data, zip_uint64_t length, zip_source_cmd_t command) {
  Feed& feed = *static_cast<Feed*>(user);
  switch (command) {
    case ZIP_SOURCE_OPEN:
      try {
        feed.bytes = feed.entry.bytes();
        feed.at = 0;
        assert(feed.bytes.size() == feed.entry.size);
        return 0;
      } catch (...) {
        *feed.failure = std::current_exception();
        zip_error_set(feed.error.get(), ZIP_ER_INTERNAL, 0);
        return -1;
      }
    case ZIP_SOURCE_READ: {
      const std::size_t part = std::min<std::size_t>(length, feed.bytes.size() - feed.at);
      std::memcpy(data, feed.bytes.data() + feed.at, part);
      feed.at += part;
      return static_cast<zip_int64_t>(part);
    }
    case ZIP_SOURCE_CLOSE:
      feed.bytes = {};
      return 0;
    case ZIP_SOURCE_STAT: {
      auto* about = static_cast<zip_stat_t*>(data);
      zip_stat_init(about);
      about->size = feed.entry.size;
      about->valid |= ZIP_STAT_SIZE;
      return sizeof(*about);
    }
    case ZIP_SOURCE_ERROR:
      return zip_error_to_data(feed.error.get(), data, length);
    case ZIP_SOURCE_FREE:
      delete &feed;
      return 0;
    case ZIP_SOURCE_SUPPORTS:
      return zip_source_make_command_bitmap(ZIP_SOURCE_OPEN, ZIP_SOURCE_READ, ZIP_SOURCE_CLOSE, ZIP_SOURCE_STAT,
                                            ZIP_SOURCE_ERROR, ZIP_SOURCE_FREE, -1);
    default:
      zip_error_set(feed.error.get(), ZIP_ER_OPNOTSUPP, 0);
      return -1;
  }
}

[[noreturn]] void failToWrite(const fs::path& path, reason::Reason cause) {
  throw FileError(
      {fault::kCannotSave, {pathText(path), reason::inner(std::move(cause)), reason::inner(fault::kMakeRoom)}});
}

[[noreturn]] void failToWrite(const fs::path& path, zip_t* archive) {
  failToWrite(path, causeOfZip(zip_get_error(archive)));
}

/// Adds a source, which it takes, under a name.
void add(const fs::path& path, zip_t* archive, const std::string& name, zip_source_t* source, bool packed) {
  if (!source) failToWrite(path, archive);
  const zip_int64_t at = zip_file_add(archive, name.c_str(), source, ZIP_FL_ENC_UTF_8);
  if (at < 0) {
    zip_source_free(source);
    failToWrite(path, archive);
  }
  const auto index = static_cast<zip_uint64_t>(at);
  if (zip_file_set_dostime(archive, index, 0, kFirstDosDay, 0) != 0) failToWrite(path, archive);
  if (!packed && zip_set_file_compression(archive, index, ZIP_CM_DEFLATE, kFastDeflate) != 0)
    failToWrite(path, archive);
}

void feedInto(const fs::path& path, zip_t* archive, ContainerEntry entry, std::exception_ptr& failure) {
  const std::string name = entry.name;
  auto feed = std::make_unique<Feed>();
  feed->entry = std::move(entry);
  feed->failure = &failure;
  zip_source_t* source = zip_source_function(archive, answerFeed, feed.get());
  if (source) feed.release();  // it frees what it was given
  add(path, archive, name, source, false);
}

bool isStored(zip_t* archive, zip_int64_t at) {
  zip_stat_t about;
  zip_stat_init(&about);
  return zip_stat_index(archive, static_cast<zip_uint64_t>(at), 0, &about) == 0 && about.comp_method == ZIP_CM_STORE;
}

/// The bytes of a stored entry, be its sum wrong.
ContainerEntry asFarAsItGoes(zip_t* archive, const std::string& name, zip_int64_t at) {
  std::string bytes;
  if (zip_file_t* file = zip_fopen_index(archive, static_cast<zip_uint64_t>(at), 0)) {
    std::string part(kPart, '\0');
    for (zip_int64_t got = 0; (got = zip_fread(file, part.data(), part.size())) > 0;)
      bytes.append(part, 0, static_cast<std::size_t>(got));
    zip_fclose(file);
  }
  const std::size_t size = bytes.size();
  return {name, size, [bytes = std::move(bytes)] { return bytes; }};
}

void syncToDisk(const fs::path& path) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0) return;
  const bool failed = ::fsync(file) != 0;
  const int error = errno;
  ::close(file);
  if (failed && error != EINVAL) failToWrite(path, systemCause(error));
}

/// Where a link leads, so that the link stays one.
fs::path targetOf(const fs::path& path) {
  std::error_code failed;
  const auto target = fs::is_symlink(path, failed) ? fs::weakly_canonical(path, failed) : path;
  return failed ? path : target;
}

}  // namespace

bool isContainer(const fs::path& path) {
  try {
    const std::string head = readPlain(path, 4);
    return head == std::string_view("PK\3\4") || head == std::string_view("PK\5\6");
  } catch (const FileError&) {
    return false;
  }
}

struct Container::State {
  Archive archive{nullptr, &zip_discard};
};

Container::Container(const fs::path& path) : state_(std::make_unique<State>()) {
  const auto fail = [&path](reason::Reason cause) {
    throw FileError({fault::kCannotOpen, {pathText(path), reason::inner(std::move(cause))}});
  };
  ZipError error;
  std::error_code unknown;
  const std::uint64_t size = fs::file_size(path, unknown);
  zip_source_t* source = zip_source_file_create(path.c_str(), 0, 0, error.get());
  if (!source) fail(causeOfZip(error.get()));
  state_->archive.reset(zip_open_from_source(source, ZIP_RDONLY, error.get()));
  if (!state_->archive) {
    zip_source_free(source);
    fail(causeOfZip(error.get()));
  }
  if (auto cause = faultAmong(state_->archive.get(), unknown ? 0 : size); !cause.empty()) fail(std::move(cause));
}

Container::Container(std::string_view bytes, std::string_view name) : state_(std::make_unique<State>()) {
  const auto fail = [&name](reason::Reason cause) {
    throw FileError({fault::kCannotOpen, {reason::text(name), reason::inner(std::move(cause))}});
  };
  ZipError error;
  zip_source_t* source = zip_source_buffer_create(bytes.data(), bytes.size(), 0, error.get());
  if (!source) fail(causeOfZip(error.get()));
  state_->archive.reset(zip_open_from_source(source, ZIP_RDONLY, error.get()));
  if (!state_->archive) {
    zip_source_free(source);
    fail(causeOfZip(error.get()));
  }
  if (auto cause = faultAmong(state_->archive.get(), bytes.size()); !cause.empty()) fail(std::move(cause));
}

Container::~Container() = default;

bool Container::has(const std::string& entry) const {
  return zip_name_locate(state_->archive.get(), entry.c_str(), ZIP_FL_ENC_RAW) >= 0;
}

std::string Container::read(const std::string& entry, std::uint64_t most) const {
  zip_t* archive = state_->archive.get();
  const zip_int64_t at = zip_name_locate(archive, entry.c_str(), ZIP_FL_ENC_RAW);
  if (at < 0) throw FileError(fault::kNotInside);
  zip_stat_t about;
  zip_stat_init(&about);
  if (zip_stat_index(archive, static_cast<zip_uint64_t>(at), 0, &about) != 0) throw FileError(fault::kDamagedInside);
  if (about.size > most) throw FileError({fault::kTooLargeInside, {bytesCount(about.size), bytesCount(most)}});
  const std::unique_ptr<zip_file_t, decltype(&zip_fclose)> file(
      zip_fopen_index(archive, static_cast<zip_uint64_t>(at), 0), &zip_fclose);
  if (!file) throw FileError(fault::kDamagedInside);
  // What it says it takes is held against what comes; room is made as it comes.
  std::string bytes;
  std::size_t have = 0;
  for (zip_int64_t got = 1; got > 0; have += static_cast<std::size_t>(got)) {
    bytes.resize(static_cast<std::size_t>(std::min<std::uint64_t>(have + kPart, about.size + 1)));
    if (bytes.size() == have) throw FileError(fault::kDamagedInside);  // more than it said
    got = zip_fread(file.get(), bytes.data() + have, bytes.size() - have);
    if (got < 0) {
      const reason::Reason cause = causeOfZip(zip_file_get_error(file.get()));
      throw FileError(cause.id == fault::kContainerBroken ? reason::Reason(fault::kDamagedInside) : cause);
    }
  }
  if (have != about.size) throw FileError(fault::kDamagedInside);
  bytes.resize(have);
  return bytes;
}

void writeContainer(const fs::path& path, std::vector<ContainerEntry> entries, const std::vector<std::string>& kept) {
  checkPlace(path);
  const fs::path target = targetOf(path);
  const StagedOutput staged(target);
  std::exception_ptr failure;
  // Outlives the archive that takes entries from it.
  Archive former(nullptr, &zip_discard);
  if (!kept.empty() && isContainer(target)) former.reset(zip_open(target.c_str(), ZIP_RDONLY, nullptr));
  int code = 0;
  Archive archive(zip_open(staged.path().c_str(), ZIP_CREATE | ZIP_EXCL, &code), &zip_discard);
  if (!archive) failToWrite(path, causeOfZip(ZipError(code).get()));
  for (ContainerEntry& entry : entries) feedInto(path, archive.get(), std::move(entry), failure);
  for (const std::string& name : kept) {
    const zip_int64_t at = former ? zip_name_locate(former.get(), name.c_str(), ZIP_FL_ENC_RAW) : -1;
    if (at < 0) continue;
    if (isStored(former.get(), at)) {  // libzip copies no stored entry whose sum is wrong
      feedInto(path, archive.get(), asFarAsItGoes(former.get(), name, at), failure);
      continue;
    }
    add(path, archive.get(), name, zip_source_zip(archive.get(), former.get(), static_cast<zip_uint64_t>(at), 0, 0, -1),
        true);
  }
  if (zip_close(archive.get()) != 0) {
    if (failure) std::rethrow_exception(failure);
    failToWrite(path, archive.get());
  }
  archive.release();  // closed
  try {
    std::error_code none;
    const auto before = fs::status(target, none);
    if (!none && fs::is_regular_file(before)) fs::permissions(staged.path(), before.permissions(), none);
    syncToDisk(staged.path());
    staged.moveIntoPlace();
  } catch (const fs::filesystem_error& problem) {
    failToWrite(path, systemCause(problem.code().value()));
  }
}

}  // namespace zyga::files
