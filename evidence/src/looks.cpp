#include "looks.h"

#include "baize/recovery/missed_visits.h"

#include <cmath>
#include <limits>

namespace baize::evidence {

Seen seen(double time, const Looks& looks, int horizon, stats::Random& chance) {
  int last_below = 0;
  const auto until = [&](double by) { return stats::CensoredTime{double(last_below), by}; };
  for (int day = static_cast<int>(std::ceil(looks.every * chance.uniform())); day <= horizon;
       day += looks.every) {
    if (day < time) {
      last_below = day;
    } else if (chance.uniform() >= looks.missed_good) {
      const auto by = recovery::by_if_good(last_below, day, looks.every);
      return {until(day), until(by.value_or(day)), by.has_value()};
    }
  }
  const stats::CensoredTime open = until(std::numeric_limits<double>::infinity());
  return {open, open};
}

} // namespace baize::evidence
