#pragma once

#include "baize/units/problem.h"

#include <string>
#include <string_view>

namespace baize::units {

/// Reads a finite number written with `decimal` as its mark; no thousands
/// marks, no spaces, no exponent. Refuses with code "not_a_number".
Result<double> parse_number(std::string_view text, char decimal = '.');
/// Reads a whole number. Refuses 7.5 with code "not_a_whole_number".
Result<int> parse_whole(std::string_view text);
/// The shortest text that reads back as the same number; never an exponent.
std::string write_number(double value, char decimal = '.');
/// Rounded half away from zero to `places` decimals, with trailing zeros kept.
std::string show_number(double value, int places, char decimal = '.');

} // namespace baize::units
