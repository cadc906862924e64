#pragma once

#include <array>
#include <cstdint>
#include <cstring>
#include <span>
#include <string>
#include <type_traits>
#include <vector>

/// Values as bytes and back, for files that only this machine reads again.
namespace zyga::solid {

class ByteWriter {
 public:
  template <class T>
  void value(const T& v) {
    append(&v, sizeof(T));
  }
  template <class T>
  void list(const std::vector<T>& items) {
    value(static_cast<std::uint64_t>(items.size()));
    append(items.data(), items.size() * sizeof(T));
  }
  const std::vector<char>& bytes() const { return out_; }

 private:
  void append(const void* from, std::size_t size) {
    const char* bytes = static_cast<const char*>(from);
    out_.insert(out_.end(), bytes, bytes + size);
  }
  std::vector<char> out_;
};

/// Reads what ByteWriter wrote. Every size is checked against what is left before anything is reserved; false where it
/// does not fit.
class ByteReader {
 public:
  explicit ByteReader(std::span<const char> bytes) : bytes_(bytes) {}
  template <class T>
  bool value(T& v) {
    return take(&v, sizeof(T));
  }
  template <class T>
  bool list(std::vector<T>& items) {
    std::uint64_t count = 0;
    if (!value(count) || count > bytes_.size() / sizeof(T)) return false;
    items.resize(count);
    return take(items.data(), count * sizeof(T));
  }
  bool done() const { return bytes_.empty(); }

 private:
  bool take(void* to, std::size_t size) {
    if (bytes_.size() < size) return false;
    if (size > 0) std::memcpy(to, bytes_.data(), size);
    bytes_ = bytes_.subspan(size);
    return true;
  }
  std::span<const char> bytes_;
};

/// 128 bits that stand for some bytes: two sums over words of 64 bits, each mixed in by a multiplication (odd factors
/// from the fractions of sqrt 2 and sqrt 3) and a shift. Against accident, not against forgery.
class ContentDigest {
 public:
  void add(std::span<const char> bytes) {
    add(static_cast<std::uint64_t>(bytes.size()));
    while (bytes.size() >= sizeof(std::uint64_t)) {
      std::uint64_t word;
      std::memcpy(&word, bytes.data(), sizeof word);
      add(word);
      bytes = bytes.subspan(sizeof word);
    }
    std::uint64_t rest = 0;
    if (!bytes.empty()) std::memcpy(&rest, bytes.data(), bytes.size());
    add(rest);
  }
  template <class T>
  void addList(const std::vector<T>& items) {
    add({reinterpret_cast<const char*>(items.data()), items.size() * sizeof(T)});
  }
  void add(std::uint64_t word) {
    a_ = mixed(a_ ^ word, 0x6a09e667f3bcc909);
    b_ = mixed(b_ + word, 0xbb67ae8584caa73b);
  }

  std::uint64_t sum() const { return a_; }
  /// 32 hexadecimal digits.
  std::string text() const {
    std::string out;
    for (const std::uint64_t sum : {a_, b_})
      for (int shift = 60; shift >= 0; shift -= 4) out += "0123456789abcdef"[(sum >> shift) & 0xf];
    return out;
  }

 private:
  static std::uint64_t mixed(std::uint64_t x, std::uint64_t factor) {
    x *= factor;
    return x ^ (x >> 29);
  }
  std::uint64_t a_ = 0x3c6ef372fe94f82b, b_ = 0xa54ff53a5f1d36f1;
};

}  // namespace zyga::solid
