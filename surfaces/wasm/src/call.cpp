#include "answers.h"
#include "reader.h"

#include <array>

namespace baize::wasm {

namespace {

/// More than a phone would ever hold in one visit or journal page; keeps what
/// reading takes inside a phone's memory.
constexpr std::size_t kLongestInput = std::size_t{4} * 1024 * 1024;

struct Function {
  std::string_view name;
  Answer (*answer)(const Read& takes);
};

#define BAIZE_ROW(name) Function{#name, &(name)},
constexpr std::array kFunctions{BAIZE_PHONE_FUNCTIONS(BAIZE_ROW)};
#undef BAIZE_ROW

#define BAIZE_NAME(name) std::string_view(#name),
constexpr std::array kNames{BAIZE_PHONE_FUNCTIONS(BAIZE_NAME)};
#undef BAIZE_NAME

const Function* find_function(std::string_view name) {
  for (const Function& one : kFunctions) {
    if (one.name == name) {
      return &one;
    }
  }
  return nullptr;
}

Answer answered(std::string_view name, std::string_view text) {
  const Function* function = find_function(name);
  if (function == nullptr) {
    return units::refuse("no_such_function", "function", shown(Read(std::string(name))),
                         "one of the functions of surfaces/wasm/functions.json");
  }
  if (text.size() > kLongestInput) {
    return units::refuse("input_too_long", "input", std::to_string(text.size()) + " bytes",
                         "at most 4194304 bytes");
  }
  const Read takes = Read::parse(text.begin(), text.end(), nullptr, false);
  if (takes.is_discarded()) {
    return units::refuse("not_json", "input", std::to_string(text.size()) + " bytes",
                         "one JSON value in UTF-8");
  }
  return function->answer(takes);
}

} // namespace

std::span<const std::string_view> names() {
  return kNames;
}

std::string call(std::string_view name, std::string_view text) {
  Json json = Json::object();
  if (Answer answer = answered(name, text)) {
    json["ok"] = std::move(*answer);
  } else {
    json["problem"] = problem_json(answer.error());
  }
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace baize::wasm
