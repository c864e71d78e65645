#pragma once

#include "baize/climate/weather.h"
#include "baize/demo/truth.h"
#include "baize/green/club.h"

#include <cstdint>

namespace baize::demo {

/// The seed of the demo club that the program shows.
inline constexpr std::uint64_t kDemoSeed = 19;

/// An invented club with 19 greens and three years of records. Its weather is
/// genuine (demo/weather), everything else is drawn from `truth`.
struct DemoClub {
  green::Records records;
  climate::Weather weather;
  Truth truth;
  units::Day today; ///< the last day of its records
};

/// Same seed, same club: whole-number chance, own normal deviates, no clock.
DemoClub make(std::uint64_t seed = kDemoSeed);

} // namespace baize::demo
