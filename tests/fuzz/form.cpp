// The body of a form: read or refused; what is read comes back the same when
// written and read again, and holds nothing that was not asked for.
#include "baize/api/form.h"

#include "must.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdint>
#include <string>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string body(reinterpret_cast<const char*>(data), size);
  const std::vector<std::string_view> names{"name", "password", "role", "days"};
  const auto form = baize::api::read_form(body, names);
  if (!form) {
    must(form.error().code == "bad_json" || form.error().code == "bad_form");
    must(!form.error().rule.empty());
    return 0;
  }
  for (const auto& [name, value] : *form) {
    must(std::find(names.begin(), names.end(), name) != names.end());
    must(value.size() <= baize::api::kLongestFormText);
  }
  const auto again = baize::api::read_form(nlohmann::json(*form).dump(), names);
  must(again && *again == *form);
  return 0;
}
