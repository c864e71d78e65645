#include "baize/units/length.h"

#include "baize/units/number.h"

#include <array>
#include <cmath>
#include <optional>
#include <utility>

namespace baize::units {
namespace {

constexpr std::array<std::pair<LengthUnit, std::string_view>, 4> kNames{{
    {LengthUnit::metre, "m"},
    {LengthUnit::centimetre, "cm"},
    {LengthUnit::foot, "ft"},
    {LengthUnit::foot_inch, "ft_in"},
}};

std::optional<double> not_below_zero(std::string_view text, char decimal) {
  const auto number = parse_number(text, decimal);
  if (!number || std::signbit(*number)) {
    return std::nullopt;
  }
  return *number;
}

/// 9'6", 9' 6.5", 9-6 and 9'.
std::optional<double> feet_and_inches(std::string_view text, char decimal) {
  const auto mark = text.find_first_of("'-");
  if (mark == std::string_view::npos) {
    return std::nullopt;
  }
  const auto whole_feet = parse_whole(text.substr(0, mark));
  if (!whole_feet || *whole_feet < 0 || text.front() == '-') {
    return std::nullopt;
  }
  const bool quoted = text[mark] == '\'';
  std::string_view rest = text.substr(mark + 1);
  if (quoted && rest.empty()) {
    return *whole_feet * kMetresPerFoot;
  }
  if (quoted && rest.starts_with(' ')) {
    rest.remove_prefix(1);
  }
  if (rest.ends_with('"')) {
    rest.remove_suffix(1);
  }
  const auto inches = not_below_zero(rest, decimal);
  if (!inches || *inches >= 12) {
    return std::nullopt;
  }
  // One multiplication of whole inches, so that 9'0" and 9' are the same number.
  return (*whole_feet * 12 + *inches) * kMetresPerInch;
}

std::string_view example(LengthUnit unit) {
  switch (unit) {
  case LengthUnit::metre:
    return "a length in metres such as 3.11";
  case LengthUnit::centimetre:
    return "a length in centimetres such as 311";
  case LengthUnit::foot:
    return "a length in feet such as 10.2";
  case LengthUnit::foot_inch:
    break;
  }
  return "feet and inches such as 10'2\" or 10-2, with the inches below 12";
}

/// Takes off what binary fractions add (3.115 m is not 311.49999999999994 cm),
/// so that rounding goes as it would on paper.
double tidy(double value) {
  constexpr double kFine = 1e9;
  if (!(std::fabs(value) < 1e6)) {
    return value; // no such length: the product must not overflow
  }
  return std::round(value * kFine) / kFine;
}

} // namespace

Result<LengthUnit> parse_length_unit(std::string_view text) {
  for (const auto& [unit, known] : kNames) {
    if (known == text) {
      return unit;
    }
  }
  return refuse("no_such_unit", "unit", std::string(text), "m, cm, ft or ft_in");
}

std::string_view name(LengthUnit unit) {
  for (const auto& [known, text] : kNames) {
    if (known == unit) {
      return text;
    }
  }
  return "m";
}

Result<Length> parse_length(std::string_view text, LengthUnit unit, char decimal) {
  std::optional<double> metres;
  if (unit == LengthUnit::foot_inch) {
    metres = feet_and_inches(text, decimal);
  } else if (const auto number = not_below_zero(text, decimal)) {
    metres = unit == LengthUnit::metre        ? from_metres(*number).metres
             : unit == LengthUnit::centimetre ? from_centimetres(*number).metres
                                              : from_feet(*number).metres;
  }
  if (!metres || !std::isfinite(*metres)) {
    return refuse("not_a_length", "", std::string(text), std::string(example(unit)));
  }
  return Length{*metres};
}

std::string show(Length length, LengthUnit unit, char decimal) {
  switch (unit) {
  case LengthUnit::metre:
    return show_number(tidy(length.metres), 2, decimal) + " m";
  case LengthUnit::centimetre:
    return show_number(tidy(centimetres(length)), 0, decimal) + " cm";
  case LengthUnit::foot:
    return show_number(tidy(feet(length)), 1, decimal) + " ft";
  case LengthUnit::foot_inch:
    break;
  }
  const double inches = std::round(tidy(std::fabs(length.metres) / kMetresPerInch));
  const double whole_feet = std::floor(inches / 12);
  const bool below = length.metres < 0 && inches > 0;
  return (below ? "-" : "") + show_number(whole_feet, 0) + "'" +
         show_number(inches - 12 * whole_feet, 0) + "\"";
}

} // namespace baize::units
