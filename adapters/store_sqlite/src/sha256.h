#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace baize::store_sqlite {

/// SHA-256 as FIPS 180-4 gives it, fed in pieces.
class Sha256 {
 public:
  void add(std::string_view bytes);
  /// 64 hexadecimal digits of all that was added; nothing may be added after.
  std::string hex();

 private:
  void block(const unsigned char* bytes);

  std::array<std::uint32_t, 8> state_{0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
                                      0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};
  std::array<unsigned char, 64> waiting_{};
  std::size_t held_ = 0;
  std::uint64_t length_ = 0;
};

std::string sha256(std::string_view bytes);

} // namespace baize::store_sqlite
