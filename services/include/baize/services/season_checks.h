#pragma once

#include "baize/climate/weather.h"
#include "baize/season/check.h"

#include <string>

namespace baize::services {

/// How far the season model of a club may be trusted, each finding in a sentence.
struct SeasonChecks {
  std::string club;
  season::Checks checks;
  std::string surprises; ///< "The model's surprises look like chance ..."
  std::string clocks;    ///< "Greens came back with growth rather than with days ..."
  std::string leaning;   ///< "With beliefs half or twice as wide ..."
};

/// Sentence of what is cheap to say, for every answer of the model.
std::string surprises_sentence(const season::Surprises& surprises);

/// Three further fits, as long as the first each; `watch` may stop them. Refuses what
/// the fit refused, and "stopped".
units::Result<SeasonChecks> season_checks(const season::SeasonFit& fit,
                                          const green::Records& records,
                                          const climate::Weather& weather,
                                          const stats::Watch& watch = {});

} // namespace baize::services
