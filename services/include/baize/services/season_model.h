#pragma once

#include "baize/climate/weather.h"
#include "baize/green/club.h"
#include "baize/season/project.h"

#include <string>

namespace baize::services {

/// One green's year as the season model sees it, beside what was measured.
struct SeasonModel {
  std::string club;
  std::string green;
  std::string green_name;
  int year = 0;
  std::string sentence; ///< the answer in plain words
  season::GreenYear estimates;
  std::vector<std::string> notes; ///< what the model left out or cannot tell at this green
};

/// The season model of the whole club up to `today`; works are pooled by their
/// label ("coring 13 mm"). Takes most of a second for a large club: keep it as
/// long as the records stand. Its summary says whether it may be used.
/// `watch` may stop it; it is then refused as "stopped".
season::SeasonFit season_fit(const green::Records& records, const climate::Weather& weather,
                             units::Day today, const stats::Watch& watch = {});

/// The year cut at the fit's last day, with a forecast of 60 days where the year
/// holds it. Refuses "no_such_green" and "no_such_year" as season_review, and what
/// the fit refused ("too_few_visits", "all_scores_equal").
units::Result<SeasonModel> season_model(const season::SeasonFit& fit, const green::Records& records,
                                        const std::string& green, int year);

} // namespace baize::services
