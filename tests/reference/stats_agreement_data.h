#pragma once

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <cmath>
#include <fstream>
#include <string>
#include <vector>

namespace baize::stats_reference {

inline std::string data_file(const std::string& name) {
  return std::string(BAIZE_SOURCE_DIR) + "/tests/reference/data/statistics/" + name;
}

inline nlohmann::json read_json(const std::string& name) {
  std::ifstream in(data_file(name));
  EXPECT_TRUE(in) << name;
  return nlohmann::json::parse(in);
}

/// To the digits of a value given with ten significant figures or more.
inline void expect_close(double found, double given, double relative = 2e-11) {
  EXPECT_NEAR(found, given, relative * std::fabs(given)) << "given " << given;
}

} // namespace baize::stats_reference
