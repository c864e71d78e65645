#include "inflate.h"

#include <algorithm>
#include <limits>
#include <zlib.h>

namespace baize::api {

namespace {

units::Refusal bad() {
  return units::refuse("bad_gzip", "body", "", "one whole member of gzip (RFC 1952)");
}

/// Ends zlib's work at the end of the scope.
struct Stream : z_stream {
  Stream() : z_stream{} {
    constexpr int kGzip = 16; // gzip's header and checksum, nothing else
    good = inflateInit2(this, MAX_WBITS + kGzip) == Z_OK;
  }
  Stream(const Stream&) = delete;
  Stream& operator=(const Stream&) = delete;
  ~Stream() {
    if (good) {
      inflateEnd(this);
    }
  }
  bool good = false;
};

} // namespace

units::Result<std::string> inflated(std::string_view body, std::size_t most) {
  Stream stream;
  if (!stream.good || body.size() > std::numeric_limits<uInt>::max()) {
    return bad();
  }
  std::string in(body); // zlib asks for bytes it may write to, and does not
  stream.next_in = reinterpret_cast<Bytef*>(in.data());
  stream.avail_in = static_cast<uInt>(in.size());
  std::string out;
  std::size_t filled = 0;
  for (int told = Z_OK; told != Z_STREAM_END;) {
    if (filled > most) {
      return units::refuse("body_too_long", "body", "more than " + std::to_string(most) + " bytes",
                           "shorter for this path, once it is unpacked");
    }
    constexpr std::size_t kStep = 65536;
    out.resize(std::max(filled + kStep, std::min(2 * filled, most + 1)));
    const std::size_t room = out.size() - filled;
    stream.next_out = reinterpret_cast<Bytef*>(out.data() + filled);
    stream.avail_out = static_cast<uInt>(room);
    told = inflate(&stream, Z_NO_FLUSH);
    filled = out.size() - stream.avail_out;
    const bool stuck = told == Z_BUF_ERROR || (told == Z_OK && stream.avail_out != 0);
    if ((told != Z_OK && told != Z_STREAM_END) || stuck) {
      return bad();
    }
  }
  if (stream.avail_in != 0) {
    return bad();
  }
  out.resize(filled);
  if (filled > most) {
    return units::refuse("body_too_long", "body", std::to_string(filled) + " bytes",
                         "shorter for this path, once it is unpacked");
  }
  return out;
}

} // namespace baize::api
