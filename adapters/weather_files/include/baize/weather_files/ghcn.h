#pragma once

#include "baize/units/day.h"
#include "baize/units/problem.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace baize::weather_files {

/// One value of GHCN-Daily as the file gives it: the file's unit, flags and all.
/// Missing values (-9999) are not listed.
struct Element {
  units::Day day;
  std::uint32_t station = 0; ///< index into GhcnElements::stations
  std::uint32_t name = 0;    ///< index into GhcnElements::names: TMAX, PRCP ...
  double value = 0;
  char measurement = ' '; ///< MFLAG: T trace, P missing presumed zero ...
  char quality = ' ';     ///< QFLAG: blank passed every check, any letter failed one
  char source = ' ';      ///< SFLAG
};

/// Every value of a file in its order, and what could not be read, by line.
struct GhcnElements {
  std::vector<std::string> stations;
  std::vector<std::string> names;
  std::vector<Element> elements;
  std::vector<units::Day> days; ///< of rows whose elements may all be missing
  std::vector<units::Problem> remarks;
  int rows = 0;
};

/// The fixed-width file: one line a station, month and element (format text of
/// GHCN-Daily, section III). Tenths of mm and of degrees C.
GhcnElements read_ghcn_dly(std::string_view content);
/// The by-station table with a column for each element, with or without *_ATTRIBUTES.
GhcnElements read_ghcn_wide(std::string_view content);
/// station, yyyymmdd, element, value, MFLAG, QFLAG, SFLAG, time; a header line or none.
GhcnElements read_ghcn_long(std::string_view content);

} // namespace baize::weather_files
