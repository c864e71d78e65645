#include "baize/pictures/jpeg.h"

#include "segments.h"

#include <algorithm>
#include <memory>
#include <optional>
#include <string>
#include <turbojpeg.h>

namespace baize::pictures {

namespace {

units::Refusal not_a_jpeg(std::string found) {
  return units::refuse("not_a_jpeg", "picture", std::move(found),
                       "a JPEG picture, whole from its first byte to its last");
}

/// What the header says; absent: the library cannot read it.
std::optional<services::PictureSize> size_of(std::string_view bytes) {
  struct Destroy {
    void operator()(void* handle) const { tjDestroy(handle); }
  };
  const std::unique_ptr<void, Destroy> handle(tjInitDecompress());
  services::PictureSize size;
  int sampling = 0;
  int colours = 0;
  const auto* first = reinterpret_cast<const unsigned char*>(bytes.data());
  const bool read =
      handle != nullptr && tjDecompressHeader3(handle.get(), first, bytes.size(), &size.width,
                                               &size.height, &sampling, &colours) == 0;
  return read && size.width > 0 && size.height > 0 ? std::optional(size) : std::nullopt;
}

} // namespace

units::Result<services::PictureSize> Jpeg::look(std::string_view bytes) const {
  const Walk walk = walk_over(bytes);
  if (!walk.whole) {
    return not_a_jpeg(std::to_string(bytes.size()) + " bytes");
  }
  if (!walk.unwanted.empty()) {
    return units::refuse("picture_tells_more", "picture", walk.unwanted,
                         "the picture alone, without what a camera writes beside it (where, when "
                         "and with what it was taken)");
  }
  const auto size = size_of(bytes);
  if (!size) {
    return not_a_jpeg("a header that cannot be read");
  }
  if (std::max(size->width, size->height) > services::kMostPixels) {
    return units::refuse("picture_too_large", "picture",
                         std::to_string(size->width) + " by " + std::to_string(size->height),
                         "at most " + std::to_string(services::kMostPixels) + " pixels a side");
  }
  return *size;
}

} // namespace baize::pictures
