#pragma once

#include <string>

namespace phone {

/// RFC 4648, with padding.
inline std::string base64(const std::string& bytes) {
  static const std::string kLetters =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  std::string text;
  for (std::size_t i = 0; i < bytes.size(); i += 3) {
    unsigned group = 0;
    for (std::size_t k = 0; k < 3; ++k) {
      const unsigned byte = i + k < bytes.size() ? static_cast<unsigned char>(bytes[i + k]) : 0;
      group = group << 8U | byte;
    }
    for (std::size_t k = 0; k < 4; ++k) {
      const bool there = i + k <= bytes.size();
      text += there ? kLetters[group >> (18U - 6U * k) & 63U] : '=';
    }
  }
  return text;
}

} // namespace phone
