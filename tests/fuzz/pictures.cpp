// Bytes that say they are a picture: taken with a size within the limits, or
// refused in one sentence. What is taken ends with the end of the image, and without
// its last byte it is none.
#include "baize/pictures/jpeg.h"
#include "must.h"

#include <algorithm>
#include <cstdint>
#include <string_view>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace baize;
  const std::string_view bytes(reinterpret_cast<const char*>(data), size);
  const pictures::Jpeg jpeg;
  const auto looked = jpeg.look(bytes);
  if (!looked) {
    must(!looked.error().code.empty() && !looked.error().rule.empty());
    return 0;
  }
  must(std::min(looked->width, looked->height) > 0);
  must(std::max(looked->width, looked->height) <= services::kMostPixels);
  must(bytes.substr(bytes.size() - 2) == "\xff\xd9");
  must(!jpeg.look(bytes.substr(0, bytes.size() - 1)));
  return 0;
}
