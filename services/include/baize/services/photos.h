#pragma once

#include "baize/journal/photo.h"
#include "baize/services/photos_port.h"
#include "baize/services/pictures_port.h"
#include "baize/units/day.h"

#include <string>
#include <vector>

namespace baize::services {

/// A photo as its entries tell it.
struct PhotoLine {
  journal::Photo photo;
  bool here = false;   ///< its bytes have come
  units::Day day{};    ///< of its visit or work
  std::string green{}; ///< of its visit, or of its work where that is of one green only
};

/// Photos of a visit or a work `of`, or with `of` empty every photo of the club, in
/// the order in which they were taken. Left out: what was taken out, itself or with
/// its visit or work, and what is not told whole. Refuses "no_such_club".
units::Result<std::vector<PhotoLine>> photos_of(PhotoStore& store, const std::string& club,
                                                const std::string& of);

/// Keeps the bytes of a photo whose entry has come before; on disk when this
/// returns. The same bytes again change nothing. Refuses what Pictures::look and
/// PhotoStore::keep_picture refuse, and "no_such_photo": no entry speaks of it.
units::Result<void> keep_photo(PhotoStore& store, const Pictures& pictures, const std::string& club,
                               const std::string& photo, const std::string& content,
                               const Author& author);

/// The bytes of a photo. Refuses "no_such_photo" (none, or taken out) and
/// "no_such_picture" (its phone has not sent them yet).
units::Result<std::string> picture_of(PhotoStore& store, const std::string& club,
                                      const std::string& photo);

} // namespace baize::services
