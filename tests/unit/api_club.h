#pragma once

#include "baize/climate/weather.h"
#include "baize/green/club.h"

/// Records made by rule, for tests and benchmarks: no two runs differ.
namespace made {

struct Size {
  int greens = 3;
  int years = 2;             ///< up to and with 2025
  int visits_each_year = 40; ///< at each green
};

/// A club "c/1" whose greens are "1", "2" ...; every green is cored each April
/// ("2024/1:coring") and recovers point by point; visits "v/1:0" ... have two
/// runs of three rolls.
baize::green::Records club(const Size& size = {});
/// A cool climate with a gap of three days in each June.
baize::climate::Weather weather(const Size& size = {});

} // namespace made
