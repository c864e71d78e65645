#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace baize::assets {

/// A file of the pages, inside the program.
struct Asset {
  std::string_view path;         ///< "/index.html", "/assets/index-Dv8mszBN.css"
  std::string_view content_type; ///< "text/html; charset=utf-8"
  std::string_view bytes;
  std::string_view etag; ///< with its quotes; made from the bytes
};

/// Every file, by path in byte order. Without built pages: index.html alone,
/// which says so.
std::span<const Asset> all();

/// The file at this path, "/" and "/field/" being their index.html and "/field"
/// the page that leads there; null where there is none.
const Asset* find(std::string_view path);

/// The report as one file: the page that the build made, with `json` put in its
/// place. `json` is one JSON value of the shape ReportData in
/// surfaces/api/openapi.yaml; a "<" in it is written \u003c, so that no text
/// can end the element it stands in. Absent when the pages were not built in.
std::optional<std::string> report_page(std::string_view json);

} // namespace baize::assets
