#pragma once

#include <optional>
#include <string_view>

namespace baize::weather_files {

/// A cell that says nothing was measured: empty, NA, -9999 and the like.
bool says_missing(std::string_view cell);
/// "T" or "trace": rain too little to measure.
bool says_trace(std::string_view cell);
/// A number with the file's decimal mark; a leading plus sign is allowed.
std::optional<double> cell_number(std::string_view cell, char decimal);

} // namespace baize::weather_files
