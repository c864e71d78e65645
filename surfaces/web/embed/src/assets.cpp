#include "baize/assets/assets.h"

#include "table.h"

#include <algorithm>

namespace baize::assets {

namespace {
// Stands once in surfaces/web/report.html.
constexpr std::string_view kReportData = "BAIZE_REPORT_DATA";
} // namespace

std::span<const Asset> all() {
  return table();
}

const Asset* find(std::string_view path) {
  if (path == "/") {
    path = "/index.html";
  } else if (path == "/field/") {
    path = "/field/index.html";
  } else if (path == "/field") {
    path = "/field.html"; // leads to /field/
  }
  const auto files = table();
  const auto at = std::lower_bound(
      files.begin(), files.end(), path,
      [](const Asset& asset, std::string_view wanted) { return asset.path < wanted; });
  return at != files.end() && at->path == path ? &*at : nullptr;
}

std::optional<std::string> report_page(std::string_view json) {
  const Asset* page = find("/report.html");
  if (page == nullptr) {
    return std::nullopt;
  }
  const auto place = page->bytes.find(kReportData);
  if (place == std::string_view::npos) {
    return std::nullopt;
  }
  std::string filled(page->bytes.substr(0, place));
  filled.reserve(page->bytes.size() + json.size());
  for (const char letter : json) {
    if (letter == '<') {
      filled += "\\u003c";
    } else {
      filled += letter;
    }
  }
  filled += page->bytes.substr(place + kReportData.size());
  return filled;
}

} // namespace baize::assets
