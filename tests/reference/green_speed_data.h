#pragma once

#include <nlohmann/json.hpp>

#include <fstream>
#include <string>

namespace reference {

inline nlohmann::json green_speed(const std::string& file) {
  std::ifstream in(std::string(BAIZE_SOURCE_DIR "/tests/reference/data/green_speed/") + file);
  return nlohmann::json::parse(in);
}

} // namespace reference
