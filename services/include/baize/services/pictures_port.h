#pragma once

#include "baize/units/problem.h"

#include <string_view>

namespace baize::services {

/// Pixels a side beyond which no picture is taken; a phone sends 1600 at most.
inline constexpr int kMostPixels = 4000;

struct PictureSize {
  int width = 0;
  int height = 0;
};

/// Looks at the bytes of pictures, from outside. Safe from many threads.
class Pictures {
 public:
  Pictures() = default;
  Pictures(const Pictures&) = delete;
  Pictures& operator=(const Pictures&) = delete;
  virtual ~Pictures() = default;

  /// The size of a JPEG picture that is whole and holds nothing but the picture.
  /// Refuses "not_a_jpeg", "picture_too_large" (more than kMostPixels a side) and
  /// "picture_tells_more" (what cameras write beside a picture: the place, the
  /// time, the device; or bytes after its end).
  virtual units::Result<PictureSize> look(std::string_view bytes) const = 0;
};

} // namespace baize::services
