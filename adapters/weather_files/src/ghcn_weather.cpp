#include "baize/units/number.h"
#include "columns.h"
#include "gather.h"
#include "ghcn_parts.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace baize::weather_files {

namespace {

/// How one element's numbers become ours.
struct Rule {
  std::size_t field = 0;
  double scale = 0.1;
  const Unit* unit = nullptr;
};

/// The rule of every element of the file that a day has room for, by its index.
units::Result<std::vector<std::optional<Rule>>> rules(const GhcnElements& all,
                                                      const services::WeatherMapping& mapping) {
  std::vector<std::optional<Rule>> result;
  for (const std::string& name : all.names) {
    auto& rule = result.emplace_back();
    const auto field = ghcn_field(name);
    if (!field) {
      continue;
    }
    const char* ours = fields()[*field].name;
    const auto unit = unit_of(mapping, fields()[*field]);
    if (!unit) {
      return units::Refusal(unit.error());
    }
    // The archive's own tenths, where the mapping says nothing of the field.
    const auto scale = mapping.scale.find(ours);
    const bool said = mapping.unit.contains(ours);
    rule = Rule{*field, scale != mapping.scale.end() ? scale->second : (said ? 1 : 0.1), *unit};
  }
  return result;
}

std::string with_flag(double value, char flag) {
  return units::write_number(value) + " (flag " + flag + ")";
}

/// Puts an element into its day's row, or says why not.
void put(const Element& element, const Rule& rule, Row& row, Gather& gather) {
  auto& value = row.given.*(fields()[rule.field].value);
  const auto leave_out = [&](Note note, const std::string& text) {
    const auto said = [&](const DayNote& other) {
      return other.note == note && other.field == rule.field;
    };
    if (std::none_of(row.notes.begin(), row.notes.end(), said)) {
      row.notes.push_back({element.day, note, rule.field, text});
    }
  };
  gather.expect(rule.field);
  const double ours = converted(scaled(element.value, rule.scale), *rule.unit);
  if (element.quality != ' ') {
    leave_out(Note::failed_check, with_flag(std::round(ours * 1000) / 1000, element.quality));
    return;
  }
  const bool rain = rule.field == field_index("rain_mm");
  // A day without a record is not a day without rain.
  if (rain && element.measurement == 'P') {
    leave_out(Note::presumed_zero, with_flag(ours, 'P'));
    return;
  }
  const bool trace = rain && element.measurement == 'T';
  if (trace && ours != 0) {
    leave_out(Note::false_trace, with_flag(ours, 'T'));
    return;
  }
  if (value) {
    if (*value == ours) {
      leave_out(Note::twice_same, "given twice");
    } else {
      leave_out(Note::twice_differs,
                units::write_number(*value) + " and " + units::write_number(ours));
    }
    return;
  }
  value = ours;
  row.given.rain_trace = row.given.rain_trace || trace;
}

std::string joined(const std::vector<std::string>& names) {
  std::string text;
  for (std::size_t i = 0; i < std::min<std::size_t>(names.size(), 4); ++i) {
    text += (i == 0 ? "" : ", ") + names[i];
  }
  return names.size() > 4 ? text + " ..." : text;
}

} // namespace

services::WeatherReading weather_of(GhcnElements all, const services::WeatherMapping& mapping) {
  services::WeatherReading refused;
  refused.rows = all.rows;
  if (all.stations.size() > 1) {
    refused.problems.push_back({"more_than_one_station", "station", joined(all.stations),
                                "one station only; keep its rows and leave out the others", ""});
    return refused;
  }
  const auto by_element = rules(all, mapping);
  if (!by_element) {
    refused.problems.push_back(by_element.error());
    return refused;
  }
  // Rows by day: a .dly file has a line for each month and element.
  std::map<units::Day, Row> rows;
  for (const units::Day day : all.days) {
    rows[day].given.day = day;
  }
  Gather gather;
  for (const Element& element : all.elements) {
    if (const auto& rule = (*by_element)[element.name]) {
      put(element, *rule, rows[element.day], gather);
    }
  }
  for (auto& [day, row] : rows) {
    gather.add(std::move(row));
  }
  return gather.finish(all.rows, std::move(all.remarks));
}

} // namespace baize::weather_files
