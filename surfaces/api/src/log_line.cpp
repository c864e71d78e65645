#include "baize/api/log_line.h"

#include "baize/answers/json.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace baize::api {

namespace {

std::string plain(std::string text) {
  std::replace_if(text.begin(), text.end(), [](char c) { return c <= ' ' || c > '~'; }, '?');
  return text.empty() ? "-" : text;
}

} // namespace

std::string log_line(const std::string& now, const Answered& answered) {
  return fmt::format("{} {} {} {} {} {} {:.1f} {}", now, plain(answered.address),
                     plain(answered.method), plain(answered.path), answered.status, answered.bytes,
                     answered.ms, plain(answered.id));
}

std::string log_json(const std::string& now, const Answered& answered) {
  answers::Json line;
  line["at"] = now;
  line["id"] = answered.id;
  line["address"] = answered.address;
  line["method"] = plain(answered.method);
  line["path"] = plain(answered.path);
  line["route"] = answered.route.empty() ? "none" : std::string(answered.route);
  line["status"] = answered.status;
  line["bytes"] = answered.bytes;
  constexpr double kTenths = 10;
  line["ms"] = std::round(answered.ms * kTenths) / kTenths;
  return line.dump();
}

} // namespace baize::api
