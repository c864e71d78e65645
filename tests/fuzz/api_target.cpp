// A whole request: first line the method, second the target, third the entity
// tag, then the body. Whatever comes, the answer is one of the interface's own.
#include "../unit/api_club.h"
#include "../unit/api_fakes.h"
#include "must.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <string>

namespace {

std::string line(std::string& rest) {
  const std::string one = rest.substr(0, rest.find('\n'));
  rest.erase(0, one.size() + 1);
  return one;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const made::World world(made::club({1, 1, 6}), made::weather({1, 1, 6}));
  std::string rest(reinterpret_cast<const char*>(data), size);
  baize::api::Request request;
  request.method = line(rest);
  request.target = line(rest);
  request.if_none_match = line(rest);
  request.body = rest;
  request.host = "localhost";
  request.content_type = "application/json";
  const auto response = baize::api::answer(world.context, request);
  must(response.status >= 200 && response.status < 600);
  if (response.content_type == "application/json") {
    const auto json = nlohmann::json::parse(response.body, nullptr, false);
    must(json.is_object());
    must(response.status < 400 || response.status == 422 || json.contains("sentence"));
  }
  // Asked again without a tag, a GET says the same: nothing of it was kept.
  if (request.method == "GET" && response.status == 200) {
    must(baize::api::answer(world.context, request).body == response.body);
  }
  return 0;
}
