#include "columns.h"

#include "text.h"

#include <algorithm>
#include <charconv>

namespace baize::weather_files {

namespace {

units::Result<std::size_t> column_of(const services::WeatherMapping& mapping,
                                     const std::vector<std::string>& header,
                                     const std::string& field) {
  const auto named = mapping.columns.find(field);
  if (named == mapping.columns.end()) {
    return units::refuse("no_such_column", field, "", "given a column, e.g. " + field + "=Name");
  }
  const std::string& name = named->second;
  if (name.starts_with('#')) {
    std::size_t number = 0;
    const auto read = std::from_chars(name.data() + 1, name.data() + name.size(), number);
    if (read.ec == std::errc{} && read.ptr == name.data() + name.size() && number >= 1 &&
        number <= header.size()) {
      return number - 1;
    }
  }
  const auto found = std::find(header.begin(), header.end(), name);
  if (found == header.end()) {
    return units::refuse("no_such_column", field, clipped(name),
                         "one of the names in the header line, or #1 to #" +
                             std::to_string(header.size()));
  }
  return static_cast<std::size_t>(found - header.begin());
}

std::optional<units::Problem> take_date(const services::WeatherMapping& mapping,
                                        const std::vector<std::string>& header, Columns& columns) {
  const auto style = date_style(mapping.date_style);
  if (!style) {
    return units::Problem{"date_order_not_known", "date", mapping.date_style,
                          "stated by you: date=day_month_year or date=month_day_year, since no "
                          "day in the file proves the order",
                          ""};
  }
  columns.date = *style;
  const auto take = [&](const char* field, std::size_t& to) -> std::optional<units::Problem> {
    const auto column = column_of(mapping, header, field);
    if (!column) {
      return column.error();
    }
    to = *column;
    return std::nullopt;
  };
  auto problem = take("day", columns.day);
  if (!problem && *style == DateStyle::three_columns) {
    problem = take("month", columns.month);
    if (!problem) {
      problem = take("year", columns.year);
    }
  }
  return problem;
}

} // namespace

units::Result<const Unit*> unit_of(const services::WeatherMapping& mapping, const Field& field) {
  const auto named = mapping.unit.find(field.name);
  const std::string name = named == mapping.unit.end() ? field.unit : named->second;
  const Unit* unit = find_unit(name);
  if (unit == nullptr || std::string_view(unit->ours) != field.unit) {
    const std::string ours = field.name;
    return units::refuse("unit_not_known", "unit." + ours, clipped(name),
                         "stated by you, e.g. unit." + ours + "=" + field.unit + " (with scale." +
                             ours + "=0.1 where the numbers are tenths)");
  }
  return unit;
}

units::Result<Columns> columns_of(const services::WeatherMapping& mapping,
                                  const std::vector<std::string>& header) {
  Columns columns;
  columns.cells = header.size();
  if (auto problem = take_date(mapping, header, columns)) {
    return units::Refusal(*problem);
  }
  for (const auto& [name, column_name] : mapping.columns) {
    if (name == "day" || name == "month" || name == "year") {
      continue;
    }
    const auto field = field_index(name);
    if (!field) {
      return units::refuse("no_such_field", clipped(name), clipped(column_name),
                           "left out, since a day of weather has no such field");
    }
    const auto column = column_of(mapping, header, name);
    if (!column) {
      return units::Refusal(column.error());
    }
    const auto unit = unit_of(mapping, fields()[*field]);
    if (!unit) {
      return units::Refusal(unit.error());
    }
    const auto scale = mapping.scale.find(name);
    columns.values.push_back(
        {*column, *field, scale == mapping.scale.end() ? 1 : scale->second, *unit});
  }
  return columns;
}

} // namespace baize::weather_files
