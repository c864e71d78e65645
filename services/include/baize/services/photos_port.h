#pragma once

#include "baize/journal/entry.h"
#include "baize/services/store_port.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace baize::services {

/// What is told of photos, and of which of them the bytes are here.
struct ToldPhotos {
  std::vector<journal::Entry> entries;
  std::set<std::string> here; ///< ids of photos
};

/// Keeps the bytes of photos beside the entries that speak of them: only ever
/// added, never changed or removed.
class PhotoStore {
 public:
  PhotoStore() = default;
  PhotoStore(const PhotoStore&) = delete;
  PhotoStore& operator=(const PhotoStore&) = delete;
  virtual ~PhotoStore() = default;

  /// Every entry of photos that belong or ever belonged to a visit or work `of`, and
  /// of that visit or work; with `of` empty those of all photos and of what they
  /// belong to. Refuses "no_such_club".
  virtual units::Result<ToldPhotos> photos_told(const std::string& club, const std::string& of) = 0;
  /// Every entry of one photo. Refuses "no_such_club".
  virtual units::Result<std::vector<journal::Entry>> photo_told(const std::string& club,
                                                                const std::string& photo) = 0;
  /// Keeps a picture, on disk when this returns; the same again changes nothing.
  /// Refuses "photo_not_as_told" where its SHA-256 is not `sha256`, "photo_differs"
  /// where other bytes are kept under the id, and "no_such_club".
  virtual units::Result<void> keep_picture(const std::string& club, const std::string& photo,
                                           const std::string& sha256, const std::string& content,
                                           const Author& author) = 0;
  /// Absent: its bytes have not come. Refuses "no_such_club".
  virtual units::Result<std::optional<std::string>> picture(const std::string& club,
                                                            const std::string& photo) = 0;
};

} // namespace baize::services
