#pragma once

#include "baize/units/problem.h"

#include <compare>
#include <string>
#include <string_view>

namespace baize::units {

/// A length. Metres inside, always; other units exist only at the edges.
struct Length {
  double metres = 0;
  friend auto operator<=>(const Length&, const Length&) = default;
};

inline constexpr double kMetresPerFoot = 0.3048; // exact by definition
inline constexpr double kMetresPerInch = 0.0254; // exact by definition

constexpr Length from_metres(double m) {
  return {m};
}
constexpr Length from_centimetres(double cm) {
  return {cm / 100};
}
constexpr Length from_feet(double ft) {
  return {ft * kMetresPerFoot};
}
constexpr Length from_inches(double in) {
  return {in * kMetresPerInch};
}
constexpr double feet(Length l) {
  return l.metres / kMetresPerFoot;
}
constexpr double centimetres(Length l) {
  return l.metres * 100;
}

enum class LengthUnit { metre, centimetre, foot, foot_inch };

/// "m", "cm", "ft", "ft_in": as they stand in a column's name, e.g. distance_cm.
Result<LengthUnit> parse_length_unit(std::string_view text);
std::string_view name(LengthUnit unit);

/// Reads a number in the stated unit. Foot_inch takes 9'6", 9' 6.5", 9-6 and
/// plain feet with an inch part (9'); the inch part must be below 12.
/// `decimal` is '.' or ','. Refuses anything else: "not_a_length".
Result<Length> parse_length(std::string_view text, LengthUnit unit, char decimal = '.');

/// For people: 10'2", 3.11 m, 311 cm, 10.2 ft. Feet-inches to the nearest inch,
/// metres to 0.01, centimetres to 1, feet to 0.1.
std::string show(Length length, LengthUnit unit, char decimal = '.');

} // namespace baize::units
