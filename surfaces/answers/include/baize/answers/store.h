#pragma once

#include "baize/answers/json.h"
#include "baize/services/store_port.h"

namespace baize::answers {

/// {clubs: [...]}.
Json to_json(const std::vector<services::ClubName>& clubs);
/// {revisions: [...]}, each with its contents as JSON; contents that are no JSON
/// object (the store holds none) are shown as {"text": ...}.
Json to_json(const std::vector<services::Revision>& revisions);
Json to_json(const services::Receipt& receipt);

} // namespace baize::answers
