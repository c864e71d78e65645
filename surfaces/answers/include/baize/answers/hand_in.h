#pragma once

#include "baize/answers/json.h"
#include "baize/services/field_kit.h"
#include "baize/services/hand_in.h"

#include <string>
#include <string_view>

namespace baize::answers {

std::string_view word(services::ThingState state);
/// The receipt that a phone waits for; only after it has it read `kept` may it
/// take these entries for safe.
Json to_json(const services::HandInReceipt& receipt, const std::string& server_time);
Json to_json(const services::EntriesPage& page);
Json to_json(const std::vector<journal::Conflict>& conflicts);
Json to_json(const services::FieldKit& kit);

} // namespace baize::answers
