#pragma once

#include "baize/green/club.h"
#include "baize/units/length.h"
#include "baize/units/problem.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// One cell's text to a value and back. Every reader takes text that is not
/// empty; an empty cell is "not measured" and never gets here.
namespace baize::sheets {

/// How the cells of one column are written.
struct CellStyle {
  char decimal = '.';
  units::LengthUnit unit = units::LengthUnit::metre;
  bool day_first = false; ///< 3.4.2025, 03/04/2025 or 3-4-2025 instead of 2025-04-03
};

units::Result<std::string> read_value(std::string_view text, const CellStyle& style,
                                      const std::string* tag);
units::Result<double> read_value(std::string_view text, const CellStyle& style, const double* tag);
units::Result<int> read_value(std::string_view text, const CellStyle& style, const int* tag);
units::Result<bool> read_value(std::string_view text, const CellStyle& style, const bool* tag);
units::Result<units::Day> read_value(std::string_view text, const CellStyle& style,
                                     const units::Day* tag);
units::Result<units::Minute> read_value(std::string_view text, const CellStyle& style,
                                        const units::Minute* tag);
units::Result<units::MonthDay> read_value(std::string_view text, const CellStyle& style,
                                          const units::MonthDay* tag);
units::Result<units::Length> read_value(std::string_view text, const CellStyle& style,
                                        const units::Length* tag);
units::Result<green::Grass> read_value(std::string_view text, const CellStyle& style,
                                       const green::Grass* tag);
units::Result<green::Direction> read_value(std::string_view text, const CellStyle& style,
                                           const green::Direction* tag);
/// Seconds parted by spaces.
units::Result<std::vector<double>> read_value(std::string_view text, const CellStyle& style,
                                              const std::vector<double>* tag);

std::string write_value(const std::string& value, const CellStyle& style);
std::string write_value(double value, const CellStyle& style);
std::string write_value(int value, const CellStyle& style);
std::string write_value(bool value, const CellStyle& style);
std::string write_value(units::Day value, const CellStyle& style);
std::string write_value(units::Minute value, const CellStyle& style);
std::string write_value(units::MonthDay value, const CellStyle& style);
/// The shortest text that reads back as the very same length; where the unit
/// has none, the nearest (within 1e-12 m).
std::string write_value(units::Length value, const CellStyle& style);
std::string write_value(green::Grass value, const CellStyle& style);
std::string write_value(green::Direction value, const CellStyle& style);
std::string write_value(const std::vector<double>& value, const CellStyle& style);

/// Is there a value to write?
template <class T> bool present(const std::optional<T>& value) {
  return value.has_value();
}
inline bool present(const std::string& value) {
  return !value.empty();
}
inline bool present(const std::vector<double>& value) {
  return !value.empty();
}
template <class T> std::string write_value(const std::optional<T>& value, const CellStyle& style) {
  return value ? write_value(*value, style) : std::string();
}

} // namespace baize::sheets
