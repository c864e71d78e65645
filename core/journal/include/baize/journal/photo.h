#pragma once

#include <string>

namespace baize::journal {

/// Bytes of a picture: 1.5 MiB.
inline constexpr int kMostPhotoBytes = 1536 * 1024;

/// A picture taken at a visit or of a work. Here is what its entries say of it;
/// its bytes are sent and kept apart, and must have the checksum that stands here.
struct Photo {
  std::string id;
  std::string visit;  ///< that it was taken at; empty where it is of a work
  std::string work;   ///< that it shows; empty where it is of a visit
  std::string taken;  ///< RFC 3339 in UTC, by the phone's clock
  std::string by;     ///< the observer's id; may be empty
  std::string sha256; ///< of its bytes: 64 hexadecimal digits in lower case
  int bytes = 0;      ///< 1 to kMostPhotoBytes
  std::string note;
};

} // namespace baize::journal
