#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace baize::weather_files {

/// What a column's name says: "Tmin (°F)" is tmin_c in F.
struct HeaderName {
  std::string field; ///< one of fields(), or day, month, year
  std::string unit;  ///< as in known_units(), "unknown" where one is stated that we do not
                     ///< know, empty where none is stated
  std::optional<double> height_m; ///< wind only: "wind_10m"
};

std::optional<HeaderName> header_name(std::string_view text);

} // namespace baize::weather_files
