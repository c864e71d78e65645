#pragma once

#include "baize/services/photos_port.h"
#include "kind.h"

namespace baize::store_sqlite {

/// The photos of a club, and the visits and works that they say they belong to; without
/// DISTINCT, and with the plus, so that SQLite walks through the entries of photos only.
inline constexpr const char* kPhotosSql =
    "SELECT thing FROM entry WHERE club = ? AND kind = 'photo'";
inline constexpr const char* kPhotoOwnersSql =
    "SELECT visit FROM entry WHERE club = ? AND kind = 'photo' AND +visit IS NOT NULL";

services::ToldPhotos photos_told(Connection& db, std::int64_t club, const std::string& of);
/// The bytes kept under the id; absent: there are none.
std::optional<std::string> picture_under(Connection& db, std::int64_t club,
                                         const std::string& photo);
void keep_picture(Writing& to, const std::string& photo, const std::string& sha256,
                  const std::string& content);
/// How many pictures have another checksum than the one kept beside them.
std::int64_t unsound_photos(Connection& db);

} // namespace baize::store_sqlite
