#include "cells.h"
#include "columns.h"
#include "delimited.h"
#include "gather.h"
#include "line_notes.h"
#include "text.h"

#include <utility>

namespace baize::weather_files {

namespace {

std::optional<units::Day> day_of(const Columns& columns, const std::vector<std::string>& cells) {
  if (columns.date == DateStyle::three_columns) {
    return parse_date(cells[columns.year], cells[columns.month], cells[columns.day]);
  }
  return parse_date(columns.date, cells[columns.day]);
}

std::string date_text(const Columns& columns, const std::vector<std::string>& cells) {
  if (columns.date == DateStyle::three_columns) {
    return cells[columns.year] + " " + cells[columns.month] + " " + cells[columns.day];
  }
  return cells[columns.day];
}

Row row_of(const Columns& columns, const services::WeatherMapping& mapping,
           const std::vector<std::string>& cells, units::Day day) {
  Row row;
  row.given.day = day;
  for (const ValueColumn& column : columns.values) {
    const std::string& cell = cells[column.column];
    auto& value = row.given.*(fields()[column.field].value);
    const bool rain = fields()[column.field].value == &climate::WeatherDay::rain_mm;
    if (says_missing(cell)) {
      continue;
    }
    if (rain && says_trace(cell)) {
      value = 0;
      row.given.rain_trace = true;
    } else if (const auto number = cell_number(cell, mapping.decimal)) {
      value = converted(scaled(*number, column.scale), *column.unit);
    } else {
      row.notes.push_back({day, Note::unreadable, column.field, clipped(cell)});
    }
  }
  if (row.given.wind_m_s) {
    row.given.wind_height_m = mapping.wind_height_m;
  }
  return row;
}

/// Empty cells behind the last one carry nothing.
bool fits(const std::vector<std::string>& cells, std::size_t wanted) {
  if (cells.size() < wanted) {
    return false;
  }
  for (std::size_t i = wanted; i < cells.size(); ++i) {
    if (!cells[i].empty()) {
      return false;
    }
  }
  return true;
}

struct Reader {
  const services::WeatherMapping& mapping;
  Columns columns;
  Gather gather;
  LineNotes notes;
  int rows = 0;
  int left_out = 0;

  void line(const Lines& at, std::vector<std::string>& cells) {
    ++rows;
    split(at.line(), mapping.delimiter, cells);
    if (!fits(cells, columns.cells)) {
      ++left_out;
      const bool cut = !at.ended() && cells.size() < columns.cells;
      notes.add(
          at.number(), cut ? "cut_short" : "cells", "line", std::to_string(cells.size()) + " cells",
          std::to_string(columns.cells) + " cells, as the first line has; the row is left out");
      return;
    }
    const auto day = day_of(columns, cells);
    if (!day) {
      ++left_out;
      notes.add(at.number(), "no_such_day", "day", date_text(columns, cells),
                "a day that exists, written as " + mapping.date_style + "; the row is left out");
      return;
    }
    if (!at.ended()) {
      notes.add(at.number(), "no_line_end", "line", "the last one without a line end",
                "ended; if the file was cut off, its last number may lack digits");
    }
    gather.add(row_of(columns, mapping, cells, *day));
  }
};

units::Problem at_header(units::Problem problem, int line) {
  problem.place = "line " + std::to_string(line);
  return problem;
}

std::optional<units::Problem> settings_problem(const services::WeatherMapping& mapping) {
  if (mapping.decimal != '.' && mapping.decimal != ',') {
    return units::Problem{"no_such_setting", "decimal", std::string(1, mapping.decimal),
                          "a point or a comma", ""};
  }
  if (mapping.header_lines < 0) {
    return units::Problem{"no_such_setting", "header_lines", std::to_string(mapping.header_lines),
                          "zero or more", ""};
  }
  return std::nullopt;
}

services::WeatherReading refused(units::Problem problem) {
  services::WeatherReading reading;
  reading.problems.push_back(std::move(problem));
  return reading;
}

} // namespace

services::WeatherReading read_delimited(std::string_view content,
                                        const services::WeatherMapping& mapping) {
  if (auto problem = settings_problem(mapping)) {
    return refused(*problem);
  }
  Lines lines(content);
  std::vector<std::string> cells;
  // The names stand in the last of the header lines; without any, columns go by number.
  bool more = lines.next();
  while (more && (lines.number() < mapping.header_lines ||
                  (mapping.header_lines == 0 && blank(lines.line())))) {
    more = lines.next();
  }
  if (!more) {
    return refused({"no_days", "file", "", "a file with rows of days below its header lines", ""});
  }
  split(lines.line(), mapping.delimiter, cells);
  auto columns = columns_of(mapping, cells);
  if (!columns) {
    return refused(at_header(columns.error(), lines.number()));
  }
  Reader reader{mapping, std::move(*columns), {}, {}, 0, 0};
  for (const ValueColumn& column : reader.columns.values) {
    reader.gather.expect(column.field);
  }
  for (more = mapping.header_lines == 0 || lines.next(); more; more = lines.next()) {
    if (!blank(lines.line())) {
      reader.line(lines, cells);
    }
  }
  if (2 * reader.left_out > reader.rows) {
    auto reading = refused(
        {"rows_not_read", "rows",
         std::to_string(reader.left_out) + " of " + std::to_string(reader.rows) + " not readable",
         "rows of days under this mapping; see the remarks by line", ""});
    reading.remarks = reader.notes.take();
    reading.rows = reader.rows;
    return reading;
  }
  return reader.gather.finish(reader.rows, reader.notes.take());
}

} // namespace baize::weather_files
