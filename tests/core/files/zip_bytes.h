#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace zyga::files::example {

/// An entry of a zip container as it is written here, honest or not: what is stored, and what is said of it.
struct ZipEntry {
  std::string name, bytes;
  std::uint16_t method = 0, flags = 0;
  std::uint32_t saidSize = 0;  ///< unpacked; 0: that of the bytes
};

inline std::uint32_t crc32Of(const std::string& bytes) {
  std::uint32_t crc = ~0u;
  for (const char c : bytes) {
    crc ^= static_cast<unsigned char>(c);
    for (int bit = 0; bit < 8; ++bit) crc = crc >> 1 ^ (crc & 1 ? 0xEDB88320u : 0u);
  }
  return ~crc;
}

inline void put(std::string& out, std::uint64_t value, int bytes) {
  for (int i = 0; i < bytes; ++i) out += static_cast<char>(value >> 8 * i & 0xff);
}

/// A zip container (APPNOTE 6.3.9: local headers, central directory, its end), stored, byte by byte.
inline std::string zipBytes(const std::vector<ZipEntry>& entries) {
  std::string out, directory;
  for (const ZipEntry& entry : entries) {
    const std::size_t at = out.size();
    std::string same;
    put(same, 20, 2);
    put(same, entry.flags, 2);
    put(same, entry.method, 2);
    put(same, 0, 2);
    put(same, 0x21, 2);  // 1980-01-01
    put(same, crc32Of(entry.bytes), 4);
    put(same, entry.bytes.size(), 4);
    put(same, entry.saidSize ? entry.saidSize : entry.bytes.size(), 4);
    put(same, entry.name.size(), 2);
    put(same, 0, 2);
    out += "PK\3\4" + same + entry.name + entry.bytes;
    directory += "PK\1\2";
    put(directory, 20, 2);
    directory += same;
    put(directory, 0, 2);
    put(directory, 0, 2);
    put(directory, 0, 2);
    put(directory, 0, 4);
    put(directory, at, 4);
    directory += entry.name;
  }
  const std::size_t start = out.size();
  out += directory + "PK\5\6";
  put(out, 0, 4);
  put(out, entries.size(), 2);
  put(out, entries.size(), 2);
  put(out, directory.size(), 4);
  put(out, start, 4);
  put(out, 0, 2);
  return out;
}

}  // namespace zyga::files::example
