#include "baize/demo/demo_club.h"

#include "calendar.h"
#include "ground.h"
#include "levels.h"
#include "measures.h"
#include "rounds.h"
#include "weather.h"

namespace baize::demo {

DemoClub make(std::uint64_t seed) {
  DemoClub club;
  club.weather = demo_weather();
  Truth& truth = club.truth;
  truth.seed = seed;
  truth.days = {club.weather.begin()->first, club.weather.rbegin()->first};
  truth.growth = growth_of(club.weather, truth.days);
  truth.roll_sd = 0.6;
  truth.distance_sd_m = 0.05;
  truth.after_play = 0.6;
  club.today = truth.days.last;
  lay_ground(club);
  do_works(club);
  walk_levels(club);
  walk_rounds(club);
  take_readings(club);
  return club;
}

} // namespace baize::demo
