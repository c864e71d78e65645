#include "baize/scan_code/scan_code.h"

#include <fmt/format.h>

#include <iterator>
#include <memory>
#include <qrencode.h>

namespace baize::scan_code {

namespace {

constexpr int kMargin = 4;

/// One row: runs of dark squares as rectangles of a path.
void draw_row(std::string& path, const unsigned char* row, int width, int y) {
  for (int x = 0; x < width;) {
    int end = x;
    while (end < width && (row[end] & 1U) != 0) {
      ++end;
    }
    if (end > x) {
      fmt::format_to(std::back_inserter(path), "M{} {}h{}v1H{}z", x + kMargin, y + kMargin, end - x,
                     x + kMargin);
    }
    x = end > x ? end : x + 1;
  }
}

} // namespace

units::Result<std::string> svg(const std::string& text) {
  const std::unique_ptr<QRcode, void (*)(QRcode*)> code(
      QRcode_encodeString8bit(text.c_str(), 0, QR_ECLEVEL_M), QRcode_free);
  if (code == nullptr) {
    return units::refuse("too_long_to_scan", "text", std::to_string(text.size()) + " bytes",
                         "some hundred bytes at most");
  }
  std::string path;
  for (int y = 0; y < code->width; ++y) {
    draw_row(path, code->data + static_cast<std::ptrdiff_t>(y) * code->width, code->width, y);
  }
  return fmt::format(R"(<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {0} {0}" )"
                     R"(shape-rendering="crispEdges"><path fill="#fff" d="M0 0h{0}v{0}H0z"/>)"
                     R"(<path d="{1}"/></svg>)",
                     code->width + 2 * kMargin, path);
}

} // namespace baize::scan_code
