#pragma once

#include "baize/units/day.h"

#include <optional>
#include <string>
#include <string_view>

namespace baize::weather_files {

enum class DateStyle { iso, yyyymmdd, day_month_year, month_day_year, three_columns };

std::optional<DateStyle> date_style(std::string_view name);
const char* name(DateStyle style);

/// A day in one cell. iso takes -, / and . between its parts and a midnight
/// behind them (2003-01-04T00:00); day_month_year and month_day_year likewise.
/// Years have four digits. Absent where it is none; three_columns is none here.
std::optional<units::Day> parse_date(DateStyle style, std::string_view text);
/// From three cells.
std::optional<units::Day> parse_date(std::string_view year, std::string_view month,
                                     std::string_view day);

/// Watches the cells of a date column and says which style they prove.
class DateWatch {
 public:
  void see(std::string_view text);
  /// Name of a style; "unknown" where the order of day and month is not proved or
  /// proved both ways; empty where most cells are no dates.
  std::string style() const;

 private:
  int seen_ = 0;
  int iso_ = 0;
  int plain_ = 0;     ///< eight digits
  int year_last_ = 0; ///< 04/01/2003
  int first_above_12_ = 0;
  int second_above_12_ = 0;
};

} // namespace baize::weather_files
