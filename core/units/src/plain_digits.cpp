#include "plain_digits.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string_view>

namespace baize::units {
namespace {

constexpr int kFewestTried = 15; // every number of 15 digits reads back the same
constexpr int kAlwaysEnough = 17;
constexpr double kEveryWhole = 9007199254740992.0; // 2^53

struct Scientific {
  std::string digits; ///< without the point, without zeros at the end
  int exponent = 0;   ///< of the first digit
};

Scientific scientific(double magnitude) {
  std::array<char, 40> buffer{};
  for (int digits = kFewestTried; digits <= kAlwaysEnough; ++digits) {
    (void)std::snprintf(buffer.data(), buffer.size(), "%.*e", digits - 1, magnitude);
    if (std::strtod(buffer.data(), nullptr) == magnitude) {
      break;
    }
  }
  const std::string_view text(buffer.data());
  const auto mark = text.find('e');
  Scientific found;
  found.digits = std::string(text.substr(0, 1)) + std::string(text.substr(2, mark - 2));
  found.digits.resize(found.digits.find_last_not_of('0') + 1);
  found.exponent = static_cast<int>(std::strtol(buffer.data() + mark + 1, nullptr, 10));
  return found;
}

std::string laid_out(const Scientific& number) {
  const int count = static_cast<int>(number.digits.size());
  if (number.exponent < 0) {
    return "0." + std::string(static_cast<std::size_t>(-number.exponent - 1), '0') + number.digits;
  }
  const int whole = number.exponent + 1;
  if (whole >= count) {
    return number.digits + std::string(static_cast<std::size_t>(whole - count), '0');
  }
  const auto at = static_cast<std::size_t>(whole);
  return number.digits.substr(0, at) + "." + number.digits.substr(at);
}

} // namespace

std::string plain_digits(double value) {
  if (std::isnan(value)) {
    return "nan";
  }
  const std::string sign = std::signbit(value) ? "-" : "";
  const double magnitude = std::fabs(value);
  if (std::isinf(value)) {
    return sign + "inf";
  }
  if (magnitude == 0) {
    return sign + "0";
  }
  if (magnitude >= kEveryWhole) { // whole, and written out to its last digit
    std::array<char, 320> buffer{};
    (void)std::snprintf(buffer.data(), buffer.size(), "%.0f", magnitude);
    return sign + buffer.data();
  }
  return sign + laid_out(scientific(magnitude));
}

} // namespace baize::units
