#pragma once

#include "baize/units/day.h"
#include "baize/units/length.h"

#include <nlohmann/json.hpp>

#include <cmath>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace baize::answers {

/// Keys stay in the order they were put in, so the same result gives the same bytes.
using Json = nlohmann::ordered_json;

/// The JSON text, without blanks. Bytes that are no UTF-8 (a note typed in an
/// old code page) become the replacement character; nothing is refused here.
std::string text(const Json& json);
/// The same laid out for people, two blanks a step.
std::string laid_out(const Json& json);

/// An object built field by field. What is not known is left out: an empty
/// optional, and a number that is not finite, add no field at all.
class Object {
 public:
  Object& put(const char* key, bool value) { return set(key, value); }
  Object& put(const char* key, int value) { return set(key, value); }
  Object& put(const char* key, std::int64_t value) { return set(key, value); }
  Object& put(const char* key, double value) {
    return std::isfinite(value) ? set(key, value) : *this;
  }
  Object& put(const char* key, const char* value) { return set(key, std::string(value)); }
  Object& put(const char* key, const std::string& value) { return set(key, value); }
  Object& put(const char* key, std::string_view value) { return set(key, std::string(value)); }
  Object& put(const char* key, units::Day value) { return set(key, units::iso(value)); }
  Object& put(const char* key, units::Minute value) { return set(key, units::iso(value)); }
  /// Metres; the key ends in _m.
  Object& put(const char* key, units::Length value) { return put(key, value.metres); }
  template <class T> Object& put(const char* key, const std::optional<T>& value) {
    return value ? put(key, *value) : *this;
  }
  template <class T>
  Object& put(const char* key, const std::optional<T>& value,
              Json (*write)(const std::type_identity_t<T>&)) {
    return value ? set(key, write(*value)) : *this;
  }
  Object& nest(const char* key, Json value) { return set(key, std::move(value)); }

  Json done() { return std::move(json_); }

 private:
  template <class T> Object& set(const char* key, T&& value) {
    json_[key] = std::forward<T>(value);
    return *this;
  }
  Json json_ = Json::object();
};

template <class T>
Json list(const std::vector<T>& items, Json (*write)(const std::type_identity_t<T>&)) {
  Json all = Json::array();
  for (const T& item : items) {
    all.push_back(write(item));
  }
  return all;
}
Json list(const std::vector<std::string>& items);
Json list(const std::vector<std::string_view>& items);
Json list(const std::vector<int>& items);
/// Numbers that are not finite are left out.
Json list(const std::vector<double>& items);

Json to_json(const units::Period& period);

} // namespace baize::answers
