// Digits found by trial are those of std::to_chars.
#include "plain_digits.h"

#include <gtest/gtest.h>

#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <limits>

namespace {

using baize::units::plain_digits;

std::string by_to_chars(double value) {
  std::array<char, 400> buffer{};
  const auto end =
      std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed);
  return {buffer.data(), end.ptr};
}

TEST(PlainDigits, OnCasesByHand) {
  EXPECT_EQ(plain_digits(0), "0");
  EXPECT_EQ(plain_digits(-0.0), "-0");
  EXPECT_EQ(plain_digits(3.11), "3.11");
  EXPECT_EQ(plain_digits(-0.005), "-0.005");
  EXPECT_EQ(plain_digits(120), "120");
  EXPECT_EQ(plain_digits(0.1 + 0.2), "0.30000000000000004");
  EXPECT_EQ(plain_digits(9007199254740993.0), "9007199254740992");
  EXPECT_EQ(plain_digits(std::numeric_limits<double>::infinity()), "inf");
  EXPECT_EQ(plain_digits(-std::numeric_limits<double>::infinity()), "-inf");
  EXPECT_EQ(plain_digits(std::nan("")), "nan");
}

TEST(PlainDigits, AreThoseOfTheStandardLibrary) {
  std::uint64_t state = 1;
  for (int i = 0; i < 200000; ++i) {
    state = state * 6364136223846793005ULL + 1442695040888963407ULL; // Knuth's MMIX generator
    double value = 0;
    std::memcpy(&value, &state, sizeof value);
    if (i % 2 == 0) { // lengths, times and scores
      value = static_cast<double>(state >> 40U) / 1e5 - 50;
    }
    if (std::isfinite(value) && (std::fabs(value) > 1e-300 || value == 0)) {
      ASSERT_EQ(plain_digits(value), by_to_chars(value));
    }
  }
}

} // namespace
