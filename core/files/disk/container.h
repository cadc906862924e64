#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/disk/file_error.h"

/// Several files in one: a zip container as the open standard ISO/IEC 21320-1:2015 has it (stored or deflated, neither
/// encrypted nor split, names in UTF-8), which every archive tool opens. What comes from others is not trusted.
namespace zyga::files {

/// What may be wrong with a container. Names of entries are Text, sizes Quantities in bytes.
namespace fault {

inline constexpr Id kContainerBroken{"container.broken"};
inline constexpr Id kContainerCrowded{"container.crowded", 2};    ///< entries it has, the most that are read
inline constexpr Id kContainerSwells{"container.swells", 1};      ///< bytes all entries together would take
inline constexpr Id kEntryOutside{"container.entry-outside", 1};  ///< entry
inline constexpr Id kEntryTwice{"container.entry-twice", 1};
inline constexpr Id kEntryEncrypted{"container.entry-encrypted", 1};
inline constexpr Id kEntryPacking{"container.entry-packing", 1};
inline constexpr Id kEntrySwells{"container.entry-swells", 2};  ///< entry, bytes it says it takes
// Of one entry, with the cause alone.
inline constexpr Id kNotInside{"container.not-inside"};
inline constexpr Id kTooLargeInside{"container.too-large-inside", 2};  ///< bytes it takes, the most that are read
inline constexpr Id kDamagedInside{"container.damaged-inside"};

}  // namespace fault

/// Whether a plain file begins as a container does; false as well where it cannot be read.
bool isContainer(const std::filesystem::path& path);

/// A container that is read. All names and sizes in it have been looked at: none leads out of it, none is there twice,
/// none swells beyond what its bytes can honestly hold.
class Container {
 public:
  /// Throws FileError that names the file, the entry and the cause.
  explicit Container(const std::filesystem::path& path);
  /// The same from bytes, which have to outlive it; `name` is what faults call it.
  Container(std::string_view bytes, std::string_view name);
  ~Container();
  Container(const Container&) = delete;
  Container& operator=(const Container&) = delete;

  bool has(const std::string& entry) const;
  /// Bytes of an entry. Throws FileError with the cause alone: not there, damaged, more than `most` bytes.
  std::string read(const std::string& entry, std::uint64_t most) const;

 private:
  struct State;
  std::unique_ptr<State> state_;
};

/// What goes into a container.
struct ContainerEntry {
  std::string name;
  std::uint64_t size = 0;
  std::function<std::string()> bytes;  ///< `size` of them; asked for when it is its turn, not kept
};

/// Writes entries in their order, the same bytes for the same entries. As writeWhole: the old file stays whole until
/// the new one is complete. `kept`: entries of the container that is there now which are taken over where it has them,
/// be they damaged: as they are packed, and stored ones by their bytes. Throws FileError, and what `bytes` throws.
void writeContainer(const std::filesystem::path& path, std::vector<ContainerEntry> entries,
                    const std::vector<std::string>& kept = {});

}  // namespace zyga::files
