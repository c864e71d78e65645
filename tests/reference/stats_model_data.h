#pragma once

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <fstream>
#include <string>

namespace baize::stats_reference {

inline std::ifstream open_model_data(const std::string& name) {
  std::ifstream in(std::string(BAIZE_SOURCE_DIR) + "/tests/reference/data/statistics/" + name);
  EXPECT_TRUE(in) << name;
  return in;
}

inline nlohmann::json model_json(const std::string& name) {
  auto in = open_model_data(name);
  return nlohmann::json::parse(in);
}

/// Equal to `digits` significant digits, as certified values are compared: the
/// relative error, or the absolute one where the true value is 0.
inline void expect_digits(double found, double truth, double digits, const std::string& what) {
  const double scale = truth == 0 ? 1 : std::fabs(truth);
  EXPECT_LE(std::fabs(found - truth), std::pow(10, -digits) * scale)
      << what << ": " << found << " for " << truth;
}

} // namespace baize::stats_reference
