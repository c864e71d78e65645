#pragma once

#include "baize/units/day.h"
#include "baize/units/problem.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace baize::weather_files {

/// What can be said about a day of weather.
enum class Note : std::uint8_t {
  no_row,        ///< a date between the first and the last without a row
  no_value,      ///< a row without this value
  unreadable,    ///< something that is no number
  failed_check,  ///< the station's own quality check
  presumed_zero, ///< a missing value the station's archive presumed zero
  false_trace,   ///< flagged as a trace of rain, but not 0
  impossible,    ///< outside what the earth's weather can be
  swapped,       ///< tmin above tmax
  row_twice,     ///< a second row of the day that says the same
  twice_same,    ///< one value given twice
  twice_differs
};

struct DayNote {
  units::Day day;
  Note note = Note::no_value;
  std::size_t field = 0; ///< index into fields(); of no meaning for no_row, swapped and row_twice
  std::string value;     ///< as found
};

/// As sentences: neighbouring days with the same note become one, "2003-01-04 to
/// 2003-01-19"; ordered by first day, then note, then field.
std::vector<units::Problem> problems(std::vector<DayNote> notes);

} // namespace baize::weather_files
