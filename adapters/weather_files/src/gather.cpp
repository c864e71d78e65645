#include "gather.h"

#include "baize/units/number.h"
#include "fields.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace baize::weather_files {

namespace {

/// For messages: conversions leave digits that nobody wrote.
std::string shown(double value) {
  return units::write_number(std::round(value * 1000) / 1000);
}

bool empty(const climate::WeatherDay& day) {
  const auto all = fields();
  return std::none_of(all.begin(), all.end(),
                      [&day](const Field& field) { return (day.*field.value).has_value(); });
}

std::string two(const std::optional<double>& first, const std::optional<double>& second) {
  const auto one = [](const std::optional<double>& value) {
    return value ? shown(*value) : std::string("nothing");
  };
  return one(first) + " and " + one(second);
}

} // namespace

void Gather::note(Kept& kept, Note what, std::size_t field, std::string value) {
  notes_.push_back({kept.given.day, what, field, std::move(value)});
  kept.noted |= 1U << field;
}

void Gather::add(Row row) {
  const units::Day day = row.given.day;
  const auto [at, is_new] = days_.try_emplace(day);
  Kept& kept = at->second;
  if (!is_new) {
    repeated(kept, row.given);
    return;
  }
  kept.given = row.given;
  kept.checked = row.given;
  for (DayNote& one : row.notes) {
    kept.noted |= 1U << one.field;
    notes_.push_back(std::move(one));
  }
  check(kept);
}

void Gather::repeated(Kept& kept, const climate::WeatherDay& second) {
  const auto once = [&kept](Note what) {
    const unsigned bit = 1U << static_cast<unsigned>(what);
    const bool first = (kept.twice & bit) == 0;
    kept.twice |= bit;
    return first;
  };
  if (kept.given == second) {
    if (once(Note::row_twice)) {
      notes_.push_back({kept.given.day, Note::row_twice, 0, "given twice"});
    }
    return;
  }
  if (!once(Note::twice_differs)) {
    return;
  }
  for (std::size_t i = 0; i < fields().size(); ++i) {
    const auto member = fields()[i].value;
    if (kept.given.*member != second.*member) {
      notes_.push_back(
          {kept.given.day, Note::twice_differs, i, two(kept.given.*member, second.*member)});
    }
  }
}

void Gather::check(Kept& kept) {
  climate::WeatherDay& day = kept.checked;
  for (std::size_t i = 0; i < fields().size(); ++i) {
    const Field& field = fields()[i];
    auto& value = day.*field.value;
    if (value && !(*value >= field.lowest && *value <= field.highest)) {
      note(kept, Note::impossible, i, shown(*value));
      value.reset();
    }
  }
  if (day.tmin_c && day.tmax_c && *day.tmin_c > *day.tmax_c) {
    note(kept, Note::swapped, *field_index("tmin_c"), two(day.tmin_c, day.tmax_c));
    kept.noted |= 1U << *field_index("tmax_c");
    day.tmin_c.reset();
    day.tmax_c.reset();
  }
  if (!day.rain_mm) {
    day.rain_trace = false;
  }
  if (!day.wind_m_s) {
    day.wind_height_m.reset();
  }
}

void Gather::note_absent() {
  std::optional<units::Day> before;
  for (auto& [day, kept] : days_) {
    if (before) {
      for (units::Day gap = *before + 1; gap < day; ++gap) {
        notes_.push_back({gap, Note::no_row, 0, ""});
      }
    }
    before = day;
    for (std::size_t i = 0; i < fields().size(); ++i) {
      const bool wanted = (expected_ >> i & 1U) != 0 && (kept.noted >> i & 1U) == 0;
      if (wanted && !(kept.checked.*(fields()[i].value))) {
        notes_.push_back({day, Note::no_value, i, ""});
      }
    }
  }
}

services::WeatherReading Gather::finish(int rows, std::vector<units::Problem> remarks) {
  services::WeatherReading reading;
  reading.rows = rows;
  reading.remarks = std::move(remarks);
  note_absent();
  auto said = problems(std::move(notes_));
  reading.remarks.insert(reading.remarks.end(), std::make_move_iterator(said.begin()),
                         std::make_move_iterator(said.end()));
  for (auto& [day, kept] : days_) {
    if (!empty(kept.checked)) {
      reading.weather.emplace_hint(reading.weather.end(), day, kept.checked);
    }
  }
  if (reading.weather.empty()) {
    reading.problems.push_back(
        {"no_days", "file", "", "a file with at least one day and one value of weather", ""});
  }
  days_.clear();
  return reading;
}

} // namespace baize::weather_files
