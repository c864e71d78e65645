#include "segments.h"

#include <optional>
#include <utility>

namespace baize::pictures {

namespace {

// Markers of ITU-T T.81, table B.1: the byte after 0xFF.
constexpr unsigned char kStart = 0xD8;
constexpr unsigned char kEnd = 0xD9;
constexpr unsigned char kScan = 0xDA;
constexpr unsigned char kComment = 0xFE;
constexpr unsigned char kFirstApp = 0xE0;
constexpr unsigned char kAdobe = 0xEE;
constexpr unsigned char kLastApp = 0xEF;
constexpr unsigned char kFill = 0xFF;

bool is_restart(unsigned char byte) {
  return byte >= 0xD0 && byte <= 0xD7;
}

bool begins(std::string_view text, std::string_view start) {
  return text.substr(0, start.size()) == start;
}

class Walker {
 public:
  explicit Walker(std::string_view bytes) : bytes_(bytes) {}

  Walk walk() {
    Walk walk;
    if (marker() != kStart) {
      return walk;
    }
    for (auto next = marker(); next; next = marker()) {
      if (*next == kEnd) {
        note(walk, at_ == bytes_.size() ? "" : "bytes after the end of the picture");
        walk.whole = true;
        return walk;
      }
      const auto content = segment();
      if (!content) {
        return walk;
      }
      note(walk, name_of(*next, *content));
      if (*next == kScan) {
        pass_coded_data();
      }
    }
    return walk;
  }

 private:
  static void note(Walk& walk, std::string found) {
    if (walk.unwanted.empty()) {
      walk.unwanted = std::move(found);
    }
  }

  /// Empty for a part of the picture itself.
  static std::string name_of(unsigned char marker, std::string_view content) {
    if (marker == kComment) {
      return "a comment";
    }
    const bool app = marker >= kFirstApp && marker <= kLastApp;
    const bool needed = (marker == kFirstApp && begins(content, {"JFIF\0", 5})) ||
                        (marker == kAdobe && begins(content, "Adobe"));
    if (!app || needed) {
      return {};
    }
    const int number = marker - kFirstApp;
    return (begins(content, "Exif") ? "Exif in APP" : "APP") + std::to_string(number);
  }

  unsigned char byte(std::size_t at) const { return static_cast<unsigned char>(bytes_[at]); }

  /// The next marker, which may stand behind fill bytes; absent: none stands here.
  std::optional<unsigned char> marker() {
    if (at_ >= bytes_.size() || byte(at_) != kFill) {
      return std::nullopt;
    }
    while (at_ < bytes_.size() && byte(at_) == kFill) {
      ++at_;
    }
    if (at_ >= bytes_.size() || byte(at_) == 0) {
      return std::nullopt;
    }
    return byte(at_++);
  }

  /// What follows a marker: two bytes of length, which count themselves.
  std::optional<std::string_view> segment() {
    constexpr std::size_t kLength = 2;
    if (bytes_.size() - at_ < kLength) {
      return std::nullopt;
    }
    const std::size_t length = byte(at_) * 256U + byte(at_ + 1);
    if (length < kLength || length > bytes_.size() - at_) {
      return std::nullopt;
    }
    const auto content = bytes_.substr(at_ + kLength, length - kLength);
    at_ += length;
    return content;
  }

  /// Up to the next marker that is no restart; in coded data 0xFF is followed by 0.
  void pass_coded_data() {
    while (at_ + 1 < bytes_.size()) {
      const unsigned char next = byte(at_ + 1);
      if (byte(at_) == kFill && next != 0 && !is_restart(next)) {
        return;
      }
      ++at_;
    }
  }

  std::string_view bytes_;
  std::size_t at_ = 0;
};

} // namespace

Walk walk_over(std::string_view bytes) {
  return Walker(bytes).walk();
}

} // namespace baize::pictures
