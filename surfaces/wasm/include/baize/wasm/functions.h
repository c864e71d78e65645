#pragma once

#include <span>
#include <string>
#include <string_view>

/// The functions of surfaces/wasm/functions.json: one place for their names, from
/// which the registry here and the exports of the module are made.
#define BAIZE_PHONE_FUNCTIONS(EACH)                                                                \
  EACH(offer)                                                                                      \
  EACH(contradicts)                                                                                \
  EACH(place_of_mark)                                                                              \
  EACH(run_summary)                                                                                \
  EACH(spot_summary)                                                                               \
  EACH(check_visit)                                                                                \
  EACH(fold)                                                                                       \
  EACH(parse_length)                                                                               \
  EACH(show_length)                                                                                \
  EACH(fields)

namespace baize::wasm {

/// Their names, in the order above.
std::span<const std::string_view> names();

/// Calls a function with its JSON text and gives its answer as JSON text:
/// {"ok": ...} or {"problem": {code, field, value, rule, sentence}}. Never
/// throws, whatever the bytes are. Refuses "no_such_function", "input_too_long"
/// above 4 MiB, "not_json", "wrong_type", "missing_value", "not_a_known_word",
/// and what the function itself refuses. Numbers are written with the fewest
/// digits that read back the same.
std::string call(std::string_view name, std::string_view text);

} // namespace baize::wasm
