#include "baize/units/number.h"

#include "plain_digits.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdlib>

namespace baize::units {
namespace {

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}

/// -?digits, or -?digits? mark digits: "7", "7.5", ".5", but neither "7." nor "1e3".
bool plain_decimal(std::string_view text, char mark) {
  if (text.starts_with('-')) {
    text.remove_prefix(1);
  }
  const auto at = text.find(mark);
  const std::string_view whole = text.substr(0, at);
  if (!std::all_of(whole.begin(), whole.end(), is_digit)) {
    return false;
  }
  if (at == std::string_view::npos) {
    return !whole.empty();
  }
  const std::string_view part = text.substr(at + 1);
  return !part.empty() && std::all_of(part.begin(), part.end(), is_digit);
}

/// `text` is a plain decimal with '.' here, so nothing is left over. An
/// overflow comes out as not finite.
double read_decimal(const std::string& text) {
#if defined(__cpp_lib_to_chars)
  double value = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
  if (read.ec == std::errc{}) {
    return value;
  }
#endif
  // A library without from_chars for double (WebAssembly, where the locale is
  // always "C"), or digits beyond the range: from_chars does not say whether
  // it was too great or too near zero, strtod does.
  return std::strtod(text.c_str(), nullptr);
}

std::string fewest_digits(double value) {
#if defined(__cpp_lib_to_chars)
  // The longest: the smallest denormal, "-0." and 324 digits, then 17 more.
  std::array<char, 400> buffer{};
  const auto end =
      std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed);
  return {buffer.data(), end.ptr};
#else
  return plain_digits(value); // WebAssembly: see there
#endif
}

/// Adds one to the last digit of a row of digits and marks, carrying leftwards.
void round_up(std::string& digits) {
  for (auto at = digits.size(); at-- > 0;) {
    if (digits[at] == '9') {
      digits[at] = '0';
    } else if (is_digit(digits[at])) {
      ++digits[at];
      return;
    }
  }
  digits.insert(digits.begin(), '1');
}

} // namespace

Result<double> parse_number(std::string_view text, char decimal) {
  const auto refused = [&] {
    return refuse("not_a_number", "", std::string(text),
                  std::string("a number such as 7") + decimal + "5");
  };
  if (!plain_decimal(text, decimal)) {
    return refused();
  }
  std::string dotted(text);
  std::replace(dotted.begin(), dotted.end(), decimal, '.');
  const double value = read_decimal(dotted);
  if (!std::isfinite(value)) {
    return refused();
  }
  return value;
}

Result<int> parse_whole(std::string_view text) {
  int value = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
  if (read.ec != std::errc{} || read.ptr != text.data() + text.size()) {
    return refuse("not_a_whole_number", "", std::string(text), "a whole number");
  }
  return value;
}

std::string write_number(double value, char decimal) {
  std::string text = fewest_digits(value);
  std::replace(text.begin(), text.end(), '.', decimal);
  return text == "-0" ? "0" : text;
}

std::string show_number(double value, int places, char decimal) {
  // Worked on the shortest decimal text, so that 2.675 becomes 2.68 as on
  // paper, although the double nearest to it lies a little below.
  std::string text = write_number(std::fabs(value));
  if (!std::isfinite(value)) {
    return text;
  }
  auto mark = text.find('.');
  if (mark == std::string::npos) {
    mark = text.size();
    text += '.';
  }
  const auto wanted = mark + 1 + static_cast<std::size_t>(std::max(places, 0));
  const bool up = text.size() > wanted && text[wanted] >= '5';
  text.resize(wanted, '0');
  if (up) {
    round_up(text);
  }
  const bool nothing = text.find_first_not_of("0.") == std::string::npos;
  if (places <= 0) {
    text.pop_back();
  }
  std::replace(text.begin(), text.end(), '.', decimal);
  return std::signbit(value) && !nothing ? "-" + text : text;
}

} // namespace baize::units
