#pragma once

#include "baize/answers/json.h"
#include "baize/services/season_checks.h"

namespace baize::answers {

/// Numbers are cut to a ten-thousandth.
Json to_json(const services::SeasonChecks& checks);

} // namespace baize::answers
