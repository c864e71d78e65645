#include "baize/weather_files/mapping.h"

#include "baize/units/number.h"
#include "dates.h"
#include "fields.h"
#include "text.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace baize::weather_files {

namespace {

using services::WeatherMapping;
using Done = std::optional<units::Problem>;

constexpr std::array kDelimiters{std::pair{"tab", '\t'}, std::pair{"comma", ','},
                                 std::pair{"semicolon", ';'}, std::pair{"bar", '|'},
                                 std::pair{"space", ' '}};
constexpr std::array<std::string_view, 4> kFormats{"ghcn_dly", "ghcn_wide", "ghcn_long",
                                                   "delimited"};

units::Problem cannot(const std::string& setting, const std::string& value,
                      const std::string& rule) {
  return {"setting_out_of_range", clipped(setting), clipped(value), rule, ""};
}

std::string delimiter_name(char delimiter) {
  for (const auto& [name, mark] : kDelimiters) {
    if (mark == delimiter) {
      return name;
    }
  }
  return std::string(1, delimiter);
}

Done set_format(WeatherMapping& mapping, const std::string& value) {
  if (std::find(kFormats.begin(), kFormats.end(), value) == kFormats.end()) {
    return cannot("format", value, "ghcn_dly, ghcn_wide, ghcn_long or delimited");
  }
  mapping.format = value;
  return std::nullopt;
}

Done set_delimiter(WeatherMapping& mapping, const std::string& value) {
  for (const auto& [name, mark] : kDelimiters) {
    if (value == name || value == std::string(1, mark)) {
      mapping.delimiter = mark;
      return std::nullopt;
    }
  }
  return cannot("delimiter", value, "tab, comma, semicolon, bar or space");
}

Done set_decimal(WeatherMapping& mapping, const std::string& value) {
  if (value != "." && value != ",") {
    return cannot("decimal", value, "a point or a comma");
  }
  mapping.decimal = value.front();
  return std::nullopt;
}

Done set_header_lines(WeatherMapping& mapping, const std::string& value) {
  const auto lines = units::parse_whole(value);
  if (!lines || *lines < 0 || *lines > 1000) {
    return cannot("header_lines", value, "a whole number from 0 to 1000");
  }
  mapping.header_lines = *lines;
  return std::nullopt;
}

Done set_date(WeatherMapping& mapping, const std::string& value) {
  if (!date_style(value) && value != "unknown") {
    return cannot("date", value, "iso, yyyymmdd, day_month_year, month_day_year or three_columns");
  }
  mapping.date_style = value;
  return std::nullopt;
}

Done set_wind_height(WeatherMapping& mapping, const std::string& value) {
  const auto height = units::parse_number(value);
  if (!height || *height < 0.5 || *height > 100) {
    return cannot("wind_height_m", value, "0.5 to 100 m");
  }
  mapping.wind_height_m = *height;
  return std::nullopt;
}

struct Setting {
  std::string_view name;
  Done (*set)(WeatherMapping&, const std::string&);
};
constexpr std::array kSettings{
    Setting{"format", set_format},   Setting{"delimiter", set_delimiter},
    Setting{"decimal", set_decimal}, Setting{"header_lines", set_header_lines},
    Setting{"date", set_date},       Setting{"wind_height_m", set_wind_height}};

units::Problem no_such(const std::string& setting) {
  return {"no_such_setting", "setting", clipped(setting),
          "format, delimiter, decimal, header_lines, date, wind_height_m, a field such as tmin_c, "
          "or scale. or unit. with a field",
          ""};
}

Done set_scale(WeatherMapping& mapping, const std::string& field, const std::string& value) {
  const auto factor = units::parse_number(value);
  if (!factor || *factor < 1e-6 || *factor > 1e6) {
    return cannot("scale." + field, value, "a factor above zero, such as 0.1");
  }
  mapping.scale[field] = *factor;
  return std::nullopt;
}

Done set_unit(WeatherMapping& mapping, const std::string& field, const std::string& value) {
  const std::string_view ours = fields()[*field_index(field)].unit;
  std::string known;
  for (const Unit& unit : known_units()) {
    if (ours != unit.ours) {
      continue;
    }
    if (value == unit.name) {
      mapping.unit[field] = value;
      return std::nullopt;
    }
    known += (known.empty() ? "" : ", ") + std::string(unit.name);
  }
  if (value == kUnknownUnit) {
    mapping.unit[field] = value;
    return std::nullopt;
  }
  return cannot("unit." + field, value, "one of " + known);
}

void set_column(WeatherMapping& mapping, const std::string& field, const std::string& column) {
  if (column.empty()) {
    mapping.columns.erase(field);
    mapping.scale.erase(field);
    mapping.unit.erase(field);
    return;
  }
  mapping.columns[field] = column;
  if (const auto index = field_index(field)) {
    mapping.unit.try_emplace(field, fields()[*index].unit);
  }
}

Done apply(WeatherMapping& mapping, const std::string& setting, const std::string& value) {
  for (const Setting& one : kSettings) {
    if (setting == one.name) {
      return one.set(mapping, value);
    }
  }
  const auto dot = setting.find('.');
  const std::string field = dot == std::string::npos ? setting : setting.substr(dot + 1);
  const bool date_part = field == "day" || field == "month" || field == "year";
  if (dot == std::string::npos && (date_part || field_index(field))) {
    set_column(mapping, field, value);
    return std::nullopt;
  }
  if (setting.starts_with("scale.") && field_index(field)) {
    return set_scale(mapping, field, value);
  }
  if (setting.starts_with("unit.") && field_index(field)) {
    return set_unit(mapping, field, value);
  }
  return no_such(setting);
}

} // namespace

std::vector<std::string> show(const WeatherMapping& mapping) {
  std::vector<std::string> lines{
      "format=" + mapping.format, "delimiter=" + delimiter_name(mapping.delimiter),
      std::string("decimal=") + mapping.decimal,
      "header_lines=" + std::to_string(mapping.header_lines), "date=" + mapping.date_style};
  if (mapping.wind_height_m) {
    lines.push_back("wind_height_m=" + units::write_number(*mapping.wind_height_m));
  }
  const auto add = [&lines](std::string_view prefix, const std::string& field,
                            const std::string& value) {
    std::string line(prefix);
    line.append(field).append("=").append(value);
    lines.push_back(std::move(line));
  };
  for (const auto& [field, column] : mapping.columns) {
    add("", field, column);
  }
  for (const auto& [field, unit] : mapping.unit) {
    add("unit.", field, unit);
  }
  for (const auto& [field, factor] : mapping.scale) {
    add("scale.", field, units::write_number(factor));
  }
  return lines;
}

units::Result<WeatherMapping> corrected(WeatherMapping mapping,
                                        const std::vector<std::string>& corrections) {
  for (const std::string& correction : corrections) {
    const auto equals = correction.find('=');
    if (equals == std::string::npos) {
      return units::refuse("not_a_setting", "setting", clipped(correction),
                           "written as name=value, e.g. tmin_c=MinTemp");
    }
    if (auto problem = apply(mapping, std::string(trim(correction.substr(0, equals))),
                             correction.substr(equals + 1))) {
      return units::Refusal(*problem);
    }
  }
  return mapping;
}

} // namespace baize::weather_files
