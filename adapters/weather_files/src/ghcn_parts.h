#pragma once

#include "baize/services/weather_port.h"
#include "baize/weather_files/ghcn.h"
#include "line_notes.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace baize::weather_files {

/// Collects elements; names and stations are kept once.
class ElementList {
 public:
  std::uint32_t station(std::string_view name) { return index(stations_, result_.stations, name); }
  std::uint32_t name(std::string_view name) { return index(names_, result_.names, name); }
  void add(const Element& element) { result_.elements.push_back(element); }
  void day(units::Day day) { result_.days.push_back(day); }
  void row() { ++result_.rows; }
  LineNotes notes;
  GhcnElements take();

 private:
  using Known = std::map<std::string, std::uint32_t, std::less<>>;
  static std::uint32_t index(Known& known, std::vector<std::string>& list, std::string_view name);
  GhcnElements result_;
  Known stations_;
  Known names_;
};

/// Value as the archive writes it, blanks around it allowed; absent: no number.
std::optional<double> ghcn_number(std::string_view text);
inline constexpr double kGhcnMissing = -9999;

/// The column names of a wide table's header line, or nothing where it is none:
/// it needs STATION, DATE and at least one element that we use.
bool is_wide_header(const std::vector<std::string>& cells);
/// station, eight digits, four capitals, a number: a row of the long table.
bool is_long_row(const std::vector<std::string>& cells);
bool is_dly_line(std::string_view line);

/// The archive's name of one of our fields, or null.
const char* ghcn_name(std::string_view our_field);
/// Index into fields() of an element's name.
std::optional<std::size_t> ghcn_field(std::string_view element);

/// Elements as weather. The mapping's scale and unit count (the archive's own
/// tenths where it has none).
services::WeatherReading weather_of(GhcnElements all, const services::WeatherMapping& mapping);

/// Mapping of the wide table: which elements it has, and whether its numbers are
/// tenths, metric or US units ("unknown" where the values prove none).
services::WeatherMapping wide_mapping(std::string_view content);
/// Mapping of a fixed format: tenths throughout.
services::WeatherMapping fixed_mapping(const std::string& format, const GhcnElements& elements);

} // namespace baize::weather_files
