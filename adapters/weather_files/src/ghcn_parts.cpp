#include "ghcn_parts.h"

#include "baize/units/number.h"
#include "fields.h"
#include "text.h"

#include <algorithm>
#include <array>
#include <utility>

namespace baize::weather_files {

namespace {

struct Name {
  const char* element;
  const char* field;
};

/// Elements of GHCN-Daily that a day of weather has room for (format text,
/// section III; ADPT from later versions of it). Evaporation (EVAP) is water lost
/// from a pan, not reference evapotranspiration, and is not taken.
constexpr std::array kNames{Name{"TMIN", "tmin_c"},   Name{"TMAX", "tmax_c"},
                            Name{"TAVG", "tmean_c"},  Name{"PRCP", "rain_mm"},
                            Name{"AWND", "wind_m_s"}, Name{"ADPT", "dew_point_c"}};

bool digits(std::string_view text) {
  return !text.empty() &&
         std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

bool element_name(std::string_view text) {
  return text.size() == 4 && std::all_of(text.begin(), text.end(), [](char c) {
           return (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
         });
}

} // namespace

std::uint32_t ElementList::index(Known& known, std::vector<std::string>& list,
                                 std::string_view name) {
  const auto found = known.find(name);
  if (found != known.end()) {
    return found->second;
  }
  const auto number = static_cast<std::uint32_t>(list.size());
  list.emplace_back(name);
  known.emplace(name, number);
  return number;
}

GhcnElements ElementList::take() {
  result_.remarks = notes.take();
  return std::move(result_);
}

std::optional<double> ghcn_number(std::string_view text) {
  const auto value = units::parse_number(trim(text));
  return value ? std::optional(*value) : std::nullopt;
}

bool is_wide_header(const std::vector<std::string>& cells) {
  const auto has = [&cells](std::string_view name) {
    return std::find(cells.begin(), cells.end(), name) != cells.end();
  };
  return has("STATION") && has("DATE") &&
         std::any_of(kNames.begin(), kNames.end(),
                     [&has](const Name& name) { return has(name.element); });
}

bool is_long_row(const std::vector<std::string>& cells) {
  return cells.size() >= 4 && cells[0].size() == 11 && cells[1].size() == 8 && digits(cells[1]) &&
         element_name(cells[2]) && ghcn_number(cells[3]);
}

bool is_dly_line(std::string_view line) {
  return line.size() >= 29 && digits(line.substr(11, 6)) && element_name(line.substr(17, 4)) &&
         line.substr(0, 11).find(',') == std::string_view::npos &&
         ghcn_number(line.substr(21, 5)).has_value();
}

const char* ghcn_name(std::string_view our_field) {
  const auto found = std::find_if(kNames.begin(), kNames.end(), [our_field](const Name& name) {
    return our_field == name.field;
  });
  return found == kNames.end() ? nullptr : found->element;
}

std::optional<std::size_t> ghcn_field(std::string_view element) {
  const auto found = std::find_if(kNames.begin(), kNames.end(),
                                  [element](const Name& name) { return element == name.element; });
  return found == kNames.end() ? std::nullopt : field_index(found->field);
}

services::WeatherMapping fixed_mapping(const std::string& format, const GhcnElements& elements) {
  services::WeatherMapping mapping;
  mapping.format = format;
  mapping.header_lines = 0;
  mapping.date_style = "yyyymmdd";
  for (const std::string& element : elements.names) {
    if (const auto field = ghcn_field(element)) {
      const Field& ours = fields()[*field];
      mapping.columns[ours.name] = element;
      mapping.scale[ours.name] = 0.1;
      mapping.unit[ours.name] = ours.unit;
    }
  }
  return mapping;
}

} // namespace baize::weather_files
