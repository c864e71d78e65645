#include "day_notes.h"

#include "baize/units/number.h"
#include "fields.h"

#include <algorithm>
#include <tuple>

namespace baize::weather_files {

namespace {

struct Wording {
  const char* code;
  const char* field; ///< null: the note's own field
  const char* rule;
};

Wording wording(Note note) {
  switch (note) {
  case Note::no_row:
    return {"no_row", "row", "one for every day; nothing is filled in"};
  case Note::no_value:
    return {"no_value", nullptr, "given for every day; nothing is filled in"};
  case Note::unreadable:
    return {"unreadable", nullptr, "a number; the value is left out"};
  case Note::failed_check:
    return {"failed_check", nullptr,
            "a value that passed the station's quality checks; it is left out"};
  case Note::presumed_zero:
    return {"presumed_zero", nullptr,
            "measured; a missing value that was presumed zero is left out"};
  case Note::false_trace:
    return {"false_trace", nullptr, "0 where it is flagged as a trace; the value is left out"};
  case Note::impossible:
    return {"impossible", nullptr, ""};
  case Note::swapped:
    return {"swapped", "tmin_c and tmax_c", "the lower one first; both are left out"};
  case Note::row_twice:
    return {"day_twice", "day", "given once; the second row says the same and is left out"};
  case Note::twice_same:
    return {"day_twice", nullptr, "given once; the second says the same and is left out"};
  case Note::twice_differs:
    return {"day_twice_differs", nullptr, "given once; the first is kept, the second left out"};
  }
  return {"", nullptr, ""};
}

std::string range_rule(const Field& field) {
  return units::write_number(field.lowest) + " to " + units::write_number(field.highest) + " " +
         field.unit + "; the value is left out";
}

/// Up to three different values of a run, so that a stuck instrument shows itself.
void add_value(std::vector<std::string>& values, const std::string& value) {
  if (values.size() <= 3 && std::find(values.begin(), values.end(), value) == values.end()) {
    values.push_back(value);
  }
}

std::string joined(const std::vector<std::string>& values) {
  std::string text;
  for (std::size_t i = 0; i < values.size(); ++i) {
    text += (i == 0 ? "" : ", ") + (i < 3 ? values[i] : "...");
  }
  return text;
}

units::Problem problem(const DayNote& first, units::Day last,
                       const std::vector<std::string>& values) {
  const Wording words = wording(first.note);
  const Field& field = fields()[first.field];
  units::Problem result{
      words.code, words.field != nullptr ? words.field : field.name, joined(values),
      first.note == Note::impossible ? range_rule(field) : words.rule, units::iso(first.day)};
  if (last != first.day) {
    result.place += " to " + units::iso(last);
  }
  return result;
}

} // namespace

std::vector<units::Problem> problems(std::vector<DayNote> notes) {
  std::sort(notes.begin(), notes.end(), [](const DayNote& a, const DayNote& b) {
    return std::tie(a.note, a.field, a.day, a.value) < std::tie(b.note, b.field, b.day, b.value);
  });
  std::vector<std::pair<DayNote, units::Problem>> runs;
  for (std::size_t i = 0; i < notes.size();) {
    std::vector<std::string> values;
    std::size_t j = i;
    do {
      add_value(values, notes[j].value);
      ++j;
    } while (j < notes.size() && notes[j].note == notes[i].note &&
             notes[j].field == notes[i].field && notes[j].day - notes[j - 1].day <= 1);
    DayNote key = notes[i];
    runs.emplace_back(key, problem(notes[i], notes[j - 1].day, values));
    i = j;
  }
  std::sort(runs.begin(), runs.end(), [](const auto& a, const auto& b) {
    return std::tie(a.first.day, a.first.note, a.first.field) <
           std::tie(b.first.day, b.first.note, b.first.field);
  });
  std::vector<units::Problem> result;
  result.reserve(runs.size());
  for (auto& run : runs) {
    result.push_back(std::move(run.second));
  }
  return result;
}

} // namespace baize::weather_files
