#pragma once

#include <string>
#include <string_view>

namespace baize::pictures {

/// What walking over a JPEG file found.
struct Walk {
  bool whole = false;   ///< from the start of the image to its end, every part within the file
  std::string unwanted; ///< the first part that is not the picture; empty: none
};

/// Walks over the marker segments (ITU-T T.81, B.1.1; ITU-T T.871 for APP0) and
/// the coded data between them. Unwanted are application data (APPn), but for the
/// JFIF header in APP0 and Adobe's in APP14, which a decoder needs; comments; and
/// bytes after the end of the image.
Walk walk_over(std::string_view bytes);

} // namespace baize::pictures
