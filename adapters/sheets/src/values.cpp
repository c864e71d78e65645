#include "values.h"

#include "baize/units/number.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace baize::sheets {
namespace {

/// One of a few words.
template <class T, std::size_t N>
units::Result<T> one_of(std::string_view text,
                        const std::array<std::pair<std::string_view, T>, N>& words) {
  std::string rule;
  for (const auto& [word, value] : words) {
    if (word == text) {
      return value;
    }
    rule += rule.empty() ? "" : " or ";
    rule += word;
  }
  return units::refuse("not_a_known_word", "", std::string(text), rule);
}

template <class T, std::size_t N>
std::string word_of(T value, const std::array<std::pair<std::string_view, T>, N>& words) {
  for (const auto& [word, known] : words) {
    if (known == value) {
      return std::string(word);
    }
  }
  return {};
}

constexpr std::array<std::pair<std::string_view, bool>, 2> kYesNo{{{"yes", true}, {"no", false}}};
constexpr std::array<std::pair<std::string_view, green::Grass>, 2> kGrass{
    {{"cool", green::Grass::cool}, {"warm", green::Grass::warm}}};
constexpr std::array<std::pair<std::string_view, green::Direction>, 2> kDirection{
    {{"out", green::Direction::out}, {"back", green::Direction::back}}};

/// 3.4.2025, 03/04/2025, 3-4-2025: the day first, the year in four digits.
units::Result<units::Day> day_first(std::string_view text) {
  std::array<int, 3> parts{};
  std::string_view rest = text;
  char mark = 0;
  bool good = true;
  for (std::size_t i = 0; i < parts.size() && good; ++i) {
    const auto end = std::min(rest.find_first_not_of("0123456789"), rest.size());
    good = i < 2 ? (end == 1 || end == 2) && end < rest.size() : end == 4 && end == rest.size();
    parts.at(i) = good ? *units::parse_whole(rest.substr(0, end)) : 0;
    if (good && i < 2) {
      good = std::string_view("./-").find(rest[end]) != std::string_view::npos &&
             (mark == 0 || mark == rest[end]);
      mark = rest[end];
      rest.remove_prefix(end + 1);
    }
  }
  if (!good) {
    return units::refuse("not_a_day", "day", std::string(text),
                         "a day written day first, DD.MM.YYYY");
  }
  return units::make_day(parts[2], parts[1], parts[0]);
}

double in_unit(units::Length value, units::LengthUnit unit) {
  switch (unit) {
  case units::LengthUnit::centimetre:
    return units::centimetres(value);
  case units::LengthUnit::foot:
    return units::feet(value);
  case units::LengthUnit::foot_inch:
  case units::LengthUnit::metre:
    break;
  }
  return value.metres;
}

/// `places` decimals of the unit, without trailing zeros.
std::string rounded(units::Length value, const CellStyle& style, int places) {
  const bool split = style.unit == units::LengthUnit::foot_inch;
  double shown = in_unit(value, style.unit);
  std::string head;
  if (split) {
    const double inches = value.metres / units::kMetresPerInch;
    double feet = std::floor(inches / 12);
    const double step = std::pow(10.0, -places) / 2;
    feet += inches - feet * 12 >= 12 - step ? 1 : 0; // 11.99 inches rounded up are a foot
    shown = std::max(0.0, inches - feet * 12);
    head = units::write_number(feet) + "'";
  }
  std::string text = units::show_number(shown, places, style.decimal);
  if (places > 0) {
    text.erase(text.find_last_not_of('0') + 1);
    text.erase(text.find_last_not_of(style.decimal) + 1);
  }
  return split ? head + text + '"' : text;
}

} // namespace

units::Result<std::string> read_value(std::string_view text, const CellStyle& /*style*/,
                                      const std::string* /*tag*/) {
  return std::string(text);
}

units::Result<double> read_value(std::string_view text, const CellStyle& style,
                                 const double* /*tag*/) {
  return units::parse_number(text, style.decimal);
}

units::Result<int> read_value(std::string_view text, const CellStyle& /*style*/,
                              const int* /*tag*/) {
  return units::parse_whole(text);
}

units::Result<bool> read_value(std::string_view text, const CellStyle& /*style*/,
                               const bool* /*tag*/) {
  return one_of(text, kYesNo);
}

units::Result<units::Day> read_value(std::string_view text, const CellStyle& style,
                                     const units::Day* /*tag*/) {
  return style.day_first ? day_first(text) : units::parse_iso_day(text);
}

units::Result<units::Minute> read_value(std::string_view text, const CellStyle& /*style*/,
                                        const units::Minute* /*tag*/) {
  return units::parse_minute(text);
}

units::Result<units::MonthDay> read_value(std::string_view text, const CellStyle& /*style*/,
                                          const units::MonthDay* /*tag*/) {
  return units::parse_month_day(text);
}

units::Result<units::Length> read_value(std::string_view text, const CellStyle& style,
                                        const units::Length* /*tag*/) {
  return units::parse_length(text, style.unit, style.decimal);
}

units::Result<green::Grass> read_value(std::string_view text, const CellStyle& /*style*/,
                                       const green::Grass* /*tag*/) {
  return one_of(text, kGrass);
}

units::Result<green::Direction> read_value(std::string_view text, const CellStyle& /*style*/,
                                           const green::Direction* /*tag*/) {
  return one_of(text, kDirection);
}

units::Result<std::vector<double>> read_value(std::string_view text, const CellStyle& style,
                                              const std::vector<double>* /*tag*/) {
  std::vector<double> values;
  while (!text.empty()) {
    const auto end = std::min(text.find(' '), text.size());
    if (end > 0) {
      const auto value = units::parse_number(text.substr(0, end), style.decimal);
      if (!value) {
        return units::refuse("not_seconds", "", std::string(text.substr(0, end)),
                             "seconds parted by spaces");
      }
      values.push_back(*value);
    }
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return values;
}

std::string write_value(const std::string& value, const CellStyle& /*style*/) {
  return value;
}

std::string write_value(double value, const CellStyle& style) {
  return units::write_number(value, style.decimal);
}

std::string write_value(int value, const CellStyle& /*style*/) {
  return std::to_string(value);
}

std::string write_value(bool value, const CellStyle& /*style*/) {
  return word_of(value, kYesNo);
}

std::string write_value(units::Day value, const CellStyle& style) {
  if (!style.day_first) {
    return units::iso(value);
  }
  const auto [year, month, day] = units::year_month_day(value);
  return fmt::format("{:02}.{:02}.{:04}", day, month, year);
}

std::string write_value(units::Minute value, const CellStyle& /*style*/) {
  return units::iso(value);
}

std::string write_value(units::MonthDay value, const CellStyle& /*style*/) {
  return units::iso(value);
}

std::string write_value(units::Length value, const CellStyle& style) {
  if (style.unit == units::LengthUnit::metre) {
    return units::write_number(value.metres, style.decimal);
  }
  constexpr int kMostPlaces = 15;
  constexpr double kNear = 1e-12;
  std::string nearest;
  for (int places = 0; places <= kMostPlaces; ++places) {
    std::string text = rounded(value, style, places);
    const auto back = units::parse_length(text, style.unit, style.decimal);
    if (back && *back == value) {
      return text;
    }
    if (nearest.empty() && back && std::fabs(back->metres - value.metres) < kNear) {
      nearest = std::move(text);
    }
  }
  return nearest.empty() ? rounded(value, style, kMostPlaces) : nearest;
}

std::string write_value(green::Grass value, const CellStyle& /*style*/) {
  return word_of(value, kGrass);
}

std::string write_value(green::Direction value, const CellStyle& /*style*/) {
  return word_of(value, kDirection);
}

std::string write_value(const std::vector<double>& value, const CellStyle& style) {
  std::string text;
  for (const double seconds : value) {
    text += (text.empty() ? "" : " ") + units::write_number(seconds, style.decimal);
  }
  return text;
}

} // namespace baize::sheets
