#pragma once

#include "baize/climate/weather.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>

namespace baize::weather_files {

/// What a file's column can give: one row a quantity.
struct Field {
  const char* name;
  std::optional<double> climate::WeatherDay::* value;
  const char* unit; ///< ours
  double lowest;    ///< values outside cannot be, and are left out
  double highest;
  /// Above this a value whose header states no unit is not believed to be in ours.
  double most_believed;
};

std::span<const Field> fields();
/// Index into fields().
std::optional<std::size_t> field_index(std::string_view name);

/// Their unit -> ours: ours = (theirs + add) * multiply.
struct Unit {
  const char* name; ///< as shown: "F", "in", "km/h"
  const char* ours;
  double add;
  double multiply;
};
std::span<const Unit> known_units();
const Unit* find_unit(std::string_view name);
inline constexpr std::string_view kUnknownUnit = "unknown";

/// A factor applied so that a tenth of 78 is 7.8 and not 7.800000000000001.
double scaled(double value, double factor);
double converted(double value, const Unit& unit);

} // namespace baize::weather_files
