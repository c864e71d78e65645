#pragma once

#include "unit/journal_samples.h"

#include <openssl/sha.h>
#include <string>
#include <string_view>
#include <turbojpeg.h>
#include <vector>

// Pictures made on the spot, and entries that tell of them.
namespace photo_test {

using namespace journal_test;

/// A JPEG as a phone's canvas makes one: JFIF header, picture, nothing else.
inline std::string jpeg(int width = 32, int height = 24, int flags = 0) {
  std::vector<unsigned char> pixels(static_cast<std::size_t>(width) * height * 3);
  for (std::size_t i = 0; i < pixels.size(); ++i) {
    pixels[i] = static_cast<unsigned char>((i * 7) % 251);
  }
  unsigned char* bytes = nullptr;
  unsigned long size = 0;
  tjhandle handle = tjInitCompress();
  tjCompress2(handle, pixels.data(), width, 0, height, TJPF_RGB, &bytes, &size, TJSAMP_420, 80,
              flags);
  std::string made(reinterpret_cast<const char*>(bytes), size);
  tjFree(bytes);
  tjDestroy(handle);
  return made;
}

/// The same with a further part behind the start of the image (ITU-T T.81, B.1.1).
inline std::string with_part(const std::string& picture, unsigned char marker,
                             std::string_view content) {
  const std::size_t length = content.size() + 2;
  std::string part{'\xFF', static_cast<char>(marker), static_cast<char>(length / 256),
                   static_cast<char>(length % 256)};
  part += content;
  return picture.substr(0, 2) + part + picture.substr(2);
}

/// By OpenSSL, which the program itself does not use for it.
inline std::string sha256_of(std::string_view bytes) {
  unsigned char sum[SHA256_DIGEST_LENGTH];
  SHA256(reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size(), sum);
  std::string hex;
  for (const unsigned char byte : sum) {
    hex += "0123456789abcdef"[byte / 16];
    hex += "0123456789abcdef"[byte % 16];
  }
  return hex;
}

inline const std::string kPhoto = id(900041);

inline Value::Members photo_fields(const std::string& picture, const std::string& of = kVisit) {
  return {{"visit", text(of)},
          {"taken", text("2026-05-03T07:09:12.000Z")},
          {"sha256", text(sha256_of(picture))},
          {"bytes", number(static_cast<double>(picture.size()))}};
}
inline Entry photo(int number, Value::Members set, const std::vector<int>& over = {},
                   const std::string& thing = kPhoto) {
  return entry(number, Kind::photo, thing, std::move(set), over);
}

} // namespace photo_test
