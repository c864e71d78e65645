#pragma once

#include "baize/services/weather_port.h"
#include "day_notes.h"

#include <map>
#include <string>
#include <vector>

namespace baize::weather_files {

/// One row of a file: a day, what it gives in our units, and what was left out of it.
struct Row {
  climate::WeatherDay given;
  std::vector<DayNote> notes;
};

/// Puts rows together to a reading: the checks that every format shares live
/// here. Rows may come in any order.
class Gather {
 public:
  /// A field that the file gives at all, so that a day without it is worth a remark.
  void expect(std::size_t field) { expected_ |= 1U << field; }
  void add(Row row);
  /// Gaps, missing values, and everything noted, as sentences behind `remarks`.
  /// Without a single day: the problem "no_days".
  services::WeatherReading finish(int rows, std::vector<units::Problem> remarks);

 private:
  struct Kept {
    climate::WeatherDay given;   ///< as the row gave it, to compare a second row with
    climate::WeatherDay checked; ///< less what cannot be
    unsigned noted = 0;          ///< a bit a field whose absence is explained already
    unsigned twice = 0; ///< a bit a note, so that a day repeated a thousand times is said once
  };
  void repeated(Kept& kept, const climate::WeatherDay& second);
  void check(Kept& kept);
  void note(Kept& kept, Note what, std::size_t field, std::string value);
  void note_absent();

  std::map<units::Day, Kept> days_;
  std::vector<DayNote> notes_;
  unsigned expected_ = 0;
};

} // namespace baize::weather_files
