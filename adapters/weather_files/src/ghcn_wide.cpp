#include "dates.h"
#include "fields.h"
#include "ghcn_parts.h"
#include "text.h"

#include <algorithm>
#include <cmath>

namespace baize::weather_files {

namespace {

/// Where an element's value stands, and its flags where the table has them.
struct Column {
  std::size_t value;
  std::optional<std::size_t> flags;
  std::uint32_t name;
};

std::optional<std::size_t> place(const std::vector<std::string>& header, const std::string& name) {
  const auto found = std::find(header.begin(), header.end(), name);
  if (found == header.end()) {
    return std::nullopt;
  }
  return static_cast<std::size_t>(found - header.begin());
}

/// Every column that can be an element: four capitals or digits, and no name of
/// the station's own columns.
std::vector<Column> element_columns(const std::vector<std::string>& header, ElementList& list) {
  std::vector<Column> columns;
  for (std::size_t i = 0; i < header.size(); ++i) {
    const std::string& name = header[i];
    if (name.size() == 4 && name != "DATE" && name != "NAME") {
      columns.push_back({i, place(header, name + "_ATTRIBUTES"), list.name(name)});
    }
  }
  return columns;
}

Element with_flags(Element element, std::string_view attributes) {
  std::vector<std::string> flags = split(attributes, ',');
  flags.resize(std::max<std::size_t>(flags.size(), 3));
  element.measurement = flags[0].empty() ? ' ' : flags[0].front();
  element.quality = flags[1].empty() ? ' ' : flags[1].front();
  element.source = flags[2].empty() ? ' ' : flags[2].front();
  return element;
}

struct Table {
  std::vector<std::string> header;
  std::vector<Column> columns;
  std::size_t station = 0;
  std::size_t date = 0;
};

void read_row(const Table& table, const std::vector<std::string>& cells, int number,
              ElementList& list) {
  const auto day = parse_date(DateStyle::iso, cells[table.date]);
  if (!day) {
    list.notes.add(number, "no_such_day", "DATE", cells[table.date],
                   "a day that exists, as 2003-01-04; the row is left out");
    return;
  }
  list.row();
  list.day(*day);
  const std::uint32_t station = list.station(cells[table.station]);
  for (const Column& column : table.columns) {
    const std::string& text = cells[column.value];
    if (text.empty()) {
      continue;
    }
    const auto value = ghcn_number(text);
    if (!value) {
      list.notes.add(number, "unreadable", table.header[column.value], text,
                     "a number; the value is left out");
    } else if (*value != kGhcnMissing) {
      const Element plain{*day, station, column.name, *value, ' ', ' ', ' '};
      list.add(column.flags ? with_flags(plain, cells[*column.flags]) : plain);
    }
  }
}

/// What the numbers of the whole table show about their units.
struct Shown {
  double highest_temperature = 0; ///< of the absolute values
  bool temperature_point = false; ///< some temperature has a decimal point
  bool rain_point = false;
};

Shown look(const GhcnElements& all) {
  Shown shown;
  for (const Element& element : all.elements) {
    const auto field = ghcn_field(all.names[element.name]);
    if (!field || element.quality != ' ') {
      continue;
    }
    const bool whole = element.value == std::floor(element.value);
    if (std::string_view(fields()[*field].unit) == "C") {
      shown.highest_temperature = std::max(shown.highest_temperature, std::fabs(element.value));
      shown.temperature_point = shown.temperature_point || !whole;
    } else if (all.names[element.name] == "PRCP") {
      shown.rain_point = shown.rain_point || !whole;
    }
  }
  return shown;
}

enum class Scale { tenths, metric, us, unknown };

Scale scale_of(const Shown& shown) {
  // No place on earth has passed 56.7 degrees C or 134 degrees F (World
  // Meteorological Organization archive of extremes; from memory).
  constexpr double kNoCelsius = 60;
  constexpr double kNoFahrenheit = 140;
  const bool too_hot_for_celsius = shown.highest_temperature > kNoCelsius;
  if (!shown.temperature_point && !shown.rain_point) {
    return shown.highest_temperature > kNoFahrenheit ? Scale::tenths : Scale::unknown;
  }
  if (shown.highest_temperature > kNoFahrenheit) {
    return Scale::unknown;
  }
  if (too_hot_for_celsius) {
    return Scale::us;
  }
  return shown.temperature_point ? Scale::metric : Scale::unknown;
}

const char* us_unit(std::string_view ours) {
  if (ours == "C") {
    return "F";
  }
  return ours == "mm" ? "in" : "mph";
}

} // namespace

GhcnElements read_ghcn_wide(std::string_view content) {
  ElementList list;
  Table table;
  std::vector<std::string> cells;
  for (Lines lines(content); lines.next();) {
    if (blank(lines.line())) {
      continue;
    }
    split(lines.line(), ',', cells);
    if (table.header.empty()) {
      if (!is_wide_header(cells)) {
        list.notes.add(lines.number(), "no_header", "line", lines.line(),
                       "a header with STATION, DATE and an element such as TMAX");
        continue;
      }
      table.header = cells;
      table.columns = element_columns(cells, list);
      table.station = *place(cells, "STATION");
      table.date = *place(cells, "DATE");
      continue;
    }
    if (cells.size() != table.header.size()) {
      list.notes.add(lines.number(), lines.ended() ? "cells" : "cut_short", "line",
                     std::to_string(cells.size()) + " cells",
                     std::to_string(table.header.size()) +
                         " cells, as the header has; the row is left out");
      continue;
    }
    read_row(table, cells, lines.number(), list);
  }
  return list.take();
}

services::WeatherMapping wide_mapping(std::string_view content) {
  const GhcnElements all = read_ghcn_wide(content);
  services::WeatherMapping mapping = fixed_mapping("ghcn_wide", all);
  mapping.header_lines = 1;
  mapping.date_style = "iso";
  const Scale scale = scale_of(look(all));
  if (scale == Scale::tenths) {
    return mapping;
  }
  mapping.scale.clear();
  for (auto& [field, unit] : mapping.unit) {
    if (scale == Scale::unknown) {
      unit = kUnknownUnit;
    } else if (scale == Scale::us) {
      unit = us_unit(unit);
    }
  }
  return mapping;
}

} // namespace baize::weather_files
