#include "wording.h"

#include "baize/units/number.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace baize::services {

std::string counted(int number, std::string_view one, std::string_view many) {
  if (number == 1) {
    return fmt::format("1 {}", one);
  }
  return many.empty() ? fmt::format("{} {}s", number, one) : fmt::format("{} {}", number, many);
}

std::string plain(units::Day day) {
  static constexpr std::array<std::string_view, 12> kMonths{
      "January", "February", "March",     "April",   "May",      "June",
      "July",    "August",   "September", "October", "November", "December"};
  const units::YearMonthDay date = units::year_month_day(day);
  return fmt::format("{} {} {}", date.day, kMonths[static_cast<std::size_t>(date.month - 1)],
                     date.year);
}

std::string range(double low, double high, int places) {
  const std::string from = units::show_number(low, places);
  const std::string to = units::show_number(high, places);
  return from == to ? from : from + " to " + to;
}

std::string percent(int part, int whole) {
  if (whole <= 0) {
    return "0 %";
  }
  auto rounded = static_cast<int>(std::lround(100.0 * part / whole));
  if (part > 0 && part < whole) {
    rounded = std::clamp(rounded, 1, 99);
  }
  return fmt::format("{} %", rounded);
}

std::string_view was(int number) {
  return number == 1 ? "was" : "were";
}

} // namespace baize::services
