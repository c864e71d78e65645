// Any bytes to every function of the core on the phone: an answer that is JSON,
// ok or one problem with a code and a sentence; the same again for the same bytes.
#include "baize/wasm/functions.h"

#include <nlohmann/json.hpp>

#include <cstdint>
#include <cstdlib>

namespace {

using nlohmann::json;

void want(bool good) {
  if (!good) {
    std::abort();
  }
}

void answers_well(std::string_view name, std::string_view takes) {
  const std::string text = baize::wasm::call(name, takes);
  const json answer = json::parse(text, nullptr, false);
  want(answer.is_object() && answer.size() == 1);
  if (!answer.contains("ok")) {
    const json& problem = answer["problem"];
    want(problem.size() == 5 && !problem["code"].get<std::string>().empty());
    want(problem["sentence"].get<std::string>().ends_with("."));
  }
  want(baize::wasm::call(name, takes) == text);
}

} // namespace

// The first byte picks the function.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) {
    return 0;
  }
  const auto names = baize::wasm::names();
  const std::string_view takes(reinterpret_cast<const char*>(data) + 1, size - 1);
  answers_well(names[data[0] % names.size()], takes);
  return 0;
}
