#include "baize/season/priors.h"

#include <array>

namespace baize::season {

Priors Priors::wider(double times) const {
  Priors all = *this;
  for (Prior* prior :
       std::array{&all.observer, &all.play, &all.depth, &all.log_rate, &all.log_level_walk,
                  &all.log_visit_sd, &all.log_line_sd, &all.log_depth_spread}) {
    *prior = prior->wider(times);
  }
  all.log_rate_between *= times;
  all.log_rate_within *= times;
  return all;
}

} // namespace baize::season
