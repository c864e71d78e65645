#include "fields.h"

#include <cmath>

namespace baize::journal {

Fields::Fields(const Thing& thing, std::vector<units::Problem>& problems)
    : thing_(thing), problems_(problems) {
  flag("removed");
}

void Fields::note(std::string code, std::string field, std::string value, std::string rule) {
  problems_.push_back({std::move(code), std::move(field), std::move(value), std::move(rule),
                       std::string(name(thing_.kind)) + " " + thing_.id});
}

void Fields::wrong(std::string_view field, const Value& value, const char* rule) {
  note("wrong_type", std::string(field), shown(value), rule);
}

const Value* Fields::look(std::string_view field) {
  known_.emplace(field);
  return thing_.find(field);
}

std::optional<std::string> Fields::maybe_text(std::string_view field) {
  const Value* value = look(field);
  if (value == nullptr) {
    return std::nullopt;
  }
  if (value->text() == nullptr) {
    wrong(field, *value, "a text");
    return std::nullopt;
  }
  return *value->text();
}

std::string Fields::text(std::string_view field) {
  return maybe_text(field).value_or("");
}

std::optional<double> Fields::number(std::string_view field) {
  const Value* value = look(field);
  if (value == nullptr) {
    return std::nullopt;
  }
  if (value->number() == nullptr || !std::isfinite(*value->number())) {
    wrong(field, *value, "a number");
    return std::nullopt;
  }
  return *value->number();
}

std::optional<int> Fields::whole(std::string_view field) {
  constexpr double kLargest = 1e9; // fits an int; every range is narrower
  const auto value = number(field);
  if (!value) {
    return std::nullopt;
  }
  if (std::trunc(*value) != *value || std::abs(*value) > kLargest) {
    note("not_a_whole_number", std::string(field), shown(Value{*value}), "a whole number");
    return std::nullopt;
  }
  return static_cast<int>(*value);
}

std::optional<bool> Fields::flag(std::string_view field) {
  const Value* value = look(field);
  if (value == nullptr) {
    return std::nullopt;
  }
  if (value->flag() == nullptr) {
    wrong(field, *value, "true or false");
    return std::nullopt;
  }
  return *value->flag();
}

template <class T>
std::optional<T> Fields::parsed(std::string_view field,
                                units::Result<T> (*parse)(std::string_view text)) {
  const auto written = maybe_text(field);
  if (!written) {
    return std::nullopt;
  }
  const auto read = parse(*written);
  if (!read) {
    note(read.error().code, std::string(field), shown(Value{*written}), read.error().rule);
    return std::nullopt;
  }
  return *read;
}

std::optional<units::Day> Fields::day(std::string_view field) {
  return parsed(field, units::parse_iso_day);
}

std::optional<units::Minute> Fields::minute(std::string_view field) {
  return parsed(field, units::parse_minute);
}

void Fields::instant(std::string_view field) {
  const auto written = maybe_text(field);
  if (written && !parse_instant(*written)) {
    note("not_an_instant", std::string(field), shown(Value{*written}),
         "a time in UTC written YYYY-MM-DDTHH:MM:SS.mmmZ");
  }
}

std::optional<green::Direction> Fields::direction(std::string_view field) {
  const auto written = maybe_text(field);
  if (!written) {
    return std::nullopt;
  }
  const auto direction = green::find_direction(*written);
  if (!direction) {
    note("not_a_known_word", std::string(field), shown(Value{*written}), "out or back");
  }
  return direction;
}

std::vector<std::string> Fields::texts(std::string_view field) {
  std::vector<std::string> all;
  const Value* value = look(field);
  if (value == nullptr) {
    return all;
  }
  if (value->list() == nullptr) {
    wrong(field, *value, "a list of texts");
    return all;
  }
  for (const Value& one : *value->list()) {
    if (one.text() == nullptr) {
      wrong(field, one, "a text");
    } else {
      all.push_back(*one.text());
    }
  }
  return all;
}

void Fields::present(std::string_view field) {
  if (look(field) == nullptr) {
    note("missing_" + std::string(field), std::string(field), "", "given");
  }
}

void Fields::finish() {
  for (const Field& field : thing_.fields) {
    if (!known_.contains(field.name)) {
      note("unknown_field", shown(Value{field.name}), shown(field.value()),
           "a field of a " + std::string(name(thing_.kind)));
    }
  }
}

} // namespace baize::journal
