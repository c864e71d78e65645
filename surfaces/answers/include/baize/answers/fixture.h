#pragma once

#include "baize/answers/json.h"
#include "baize/green/club.h"

namespace baize::answers {

Json to_json(const green::Fixture& fixture);

} // namespace baize::answers
