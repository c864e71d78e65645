#pragma once

#include "baize/units/problem.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace baize::api {

inline constexpr std::size_t kLongestFormText = 2048;

/// Reads a flat JSON object of texts and whole numbers, which come as text;
/// nothing else may be in it. Refuses "bad_json" (not JSON in UTF-8) and
/// "bad_form" (JSON of another shape, a member whose name is none of `names`,
/// a member twice, a text over 2048 bytes).
units::Result<std::map<std::string, std::string>>
read_form(std::string_view body, const std::vector<std::string_view>& names);

} // namespace baize::api
