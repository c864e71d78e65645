#pragma once

#include "baize/answers/json.h"
#include "baize/services/season_model.h"

namespace baize::answers {

/// The green's year, and what the whole club's fit says of methods and observers.
/// Numbers are cut to a ten-thousandth: the draws behind them say no more.
Json to_json(const services::SeasonModel& model, const season::SeasonFit& fit);

} // namespace baize::answers
