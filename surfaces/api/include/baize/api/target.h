#pragma once

#include "baize/units/problem.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace baize::api {

/// A request target taken apart and decoded.
struct Target {
  std::string authority;             ///< of the absolute form "http://host/..."; else empty
  std::string path;                  ///< before decoding, without the query
  std::vector<std::string> segments; ///< "/a/b%2Fc" -> "a", "b/c"
  std::map<std::string, std::string> query;
};

/// Reads the origin form "/path?query" and the absolute form (RFC 9112, 3.2).
/// Decodes percent triplets once (RFC 3986, 2.1) and + in the query as a blank.
/// Refuses "bad_target": no leading slash, a character outside RFC 3986, a
/// triplet that is cut short or no hexadecimal, a zero byte, bytes that are no
/// UTF-8, a query parameter given twice.
units::Result<Target> parse_target(std::string_view text);

} // namespace baize::api
