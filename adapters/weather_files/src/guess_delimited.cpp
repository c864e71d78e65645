#include "cells.h"
#include "dates.h"
#include "delimited.h"
#include "fields.h"
#include "header_names.h"
#include "text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace baize::weather_files {

namespace {

using services::WeatherMapping;

/// A line read as a header with one delimiter.
struct Header {
  char delimiter = ',';
  int line = 0;
  std::vector<std::string> cells;
  struct Found {
    std::size_t column;
    HeaderName name;
  };
  std::map<std::string, Found> found; ///< by our field; the first column of a name counts
  bool has(const char* field) const { return found.contains(field); }
  bool dated() const { return has("day"); }
  bool three_columns() const { return has("day") && has("month") && has("year"); }
  bool warm() const { return has("tmin_c") || has("tmax_c") || has("tmean_c"); }
};

Header header_of(std::string_view line, int number, char delimiter) {
  Header header;
  header.delimiter = delimiter;
  header.line = number;
  split(line, delimiter, header.cells);
  for (std::size_t i = 0; i < header.cells.size(); ++i) {
    if (auto name = header_name(header.cells[i])) {
      const std::string field = name->field;
      header.found.try_emplace(field, Header::Found{i, std::move(*name)});
    }
  }
  return header;
}

/// The line and delimiter that name the most of our fields; the earlier wins.
Header best_header(std::string_view content) {
  constexpr int kLinesLookedAt = 40;
  constexpr std::size_t kLongestLine = 10000;
  constexpr std::array kDelimiters{'\t', ';', ',', '|', ' '};
  Header best;
  for (Lines lines(content); lines.next() && lines.number() <= kLinesLookedAt;) {
    if (lines.line().size() > kLongestLine) {
      continue;
    }
    for (const char delimiter : kDelimiters) {
      Header header = header_of(lines.line(), lines.number(), delimiter);
      const bool usable = header.dated() && header.warm();
      const bool best_usable = best.dated() && best.warm();
      if (std::pair(usable, header.found.size()) > std::pair(best_usable, best.found.size())) {
        best = std::move(header);
      }
    }
  }
  return best;
}

/// What the rows below the header show.
struct Rows {
  DateWatch dates;
  bool comma = false;                    ///< a number with a decimal comma
  bool point = false;                    ///< a number with a decimal point
  std::map<std::string, double> highest; ///< by field, of the absolute values
};

void see_number(const std::string& field, std::string_view cell, Rows& rows) {
  if (says_missing(cell)) {
    return;
  }
  const auto point = cell_number(cell, '.');
  const auto comma = cell_number(cell, ',');
  if (!point && !comma) {
    return;
  }
  rows.point = rows.point || !comma;
  rows.comma = rows.comma || !point;
  double& highest = rows.highest[field];
  highest = std::max(highest, std::fabs(point ? *point : *comma));
}

Rows look(std::string_view content, const Header& header) {
  Rows rows;
  std::vector<std::string> cells;
  for (Lines lines(content); lines.next();) {
    if (lines.number() <= header.line) {
      continue;
    }
    split(lines.line(), header.delimiter, cells);
    for (const auto& [field, found] : header.found) {
      if (found.column >= cells.size()) {
        continue;
      }
      if (field == "day") {
        rows.dates.see(cells[found.column]);
      } else if (field_index(field)) {
        see_number(field, cells[found.column], rows);
      }
    }
  }
  return rows;
}

/// The unit that a column's name states; without one ours, unless its values
/// are past belief in it.
std::string unit_of(const Header::Found& found, const Field& field, const Rows& rows) {
  if (!found.name.unit.empty()) {
    return found.name.unit;
  }
  const auto highest = rows.highest.find(field.name);
  const bool past_belief = highest != rows.highest.end() && highest->second > field.most_believed;
  // Humidity as a share of one would be read as a drought.
  const bool a_share =
      std::string_view(field.unit) == "%" && highest != rows.highest.end() && highest->second <= 1;
  return past_belief || a_share ? std::string(kUnknownUnit) : field.unit;
}

void take_units(const Header& header, const Rows& rows, WeatherMapping& mapping) {
  bool fahrenheit = false;
  for (const Field& field : fields()) {
    const auto found = header.found.find(field.name);
    if (found == header.found.end()) {
      continue;
    }
    mapping.columns[field.name] = header.cells[found->second.column];
    mapping.unit[field.name] = unit_of(found->second, field, rows);
    fahrenheit = fahrenheit || found->second.name.unit == "F";
    if (found->second.name.height_m) {
      mapping.wind_height_m = found->second.name.height_m;
    }
  }
  // Where temperatures are in F, rain or wind without a unit may be in inches or mph.
  for (auto& [field, unit] : mapping.unit) {
    const bool stated = !header.found.at(field).name.unit.empty();
    if (fahrenheit && !stated && unit != "%") {
      unit = kUnknownUnit;
    }
  }
}

units::Refusal not_weather(std::string_view content, const char* lacks) {
  Lines lines(content);
  lines.next();
  return units::refuse("not_a_weather_file", "file", clipped(lines.line()),
                       std::string("a table of days with a line of column names; ") + lacks);
}

} // namespace

units::Result<WeatherMapping> guess_delimited(std::string_view content) {
  const Header header = best_header(content);
  if (!header.warm()) {
    return not_weather(content, "no column of temperature (tmin, tmax, mean) was found");
  }
  if (!header.dated()) {
    return not_weather(content, "no column of dates was found");
  }
  const Rows rows = look(content, header);
  WeatherMapping mapping;
  mapping.format = "delimited";
  mapping.delimiter = header.delimiter;
  mapping.header_lines = header.line;
  mapping.decimal = rows.comma && !rows.point ? ',' : '.';
  for (const char* part : {"year", "month", "day"}) {
    if (header.three_columns() || std::string_view(part) == "day") {
      mapping.columns[part] = header.cells[header.found.at(part).column];
    }
  }
  mapping.date_style = header.three_columns() ? name(DateStyle::three_columns) : rows.dates.style();
  if (mapping.date_style.empty()) {
    return not_weather(content, "the cells of its date column are no dates that can be read");
  }
  take_units(header, rows, mapping);
  return mapping;
}

} // namespace baize::weather_files
