#pragma once

#include "baize/climate/weather.h"
#include "baize/green/club.h"
#include "session.h"

namespace baize::cli {

/// Prints the season model of one green's year: a sentence, works and observers;
/// with --csv its days, with --json all of it.
void tell_season_model(Session& session, const green::Records& records,
                       const climate::Weather& weather, const std::string& green, int year);

} // namespace baize::cli
