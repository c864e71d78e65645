#include "baize/answers/json.h"

namespace baize::answers {

std::string text(const Json& json) {
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string laid_out(const Json& json) {
  return json.dump(2, ' ', false, Json::error_handler_t::replace);
}

Json list(const std::vector<std::string>& items) {
  return Json(items);
}

Json list(const std::vector<std::string_view>& items) {
  return Json(items);
}

Json list(const std::vector<int>& items) {
  return Json(items);
}

Json list(const std::vector<double>& items) {
  Json all = Json::array();
  for (const double item : items) {
    if (std::isfinite(item)) {
      all.push_back(item);
    }
  }
  return all;
}

Json to_json(const units::Period& period) {
  return Object().put("first", period.first).put("last", period.last).done();
}

} // namespace baize::answers
