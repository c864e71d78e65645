#include "baize/stats/interval.h"

#include "checks.h"

namespace baize::stats {

std::optional<units::Problem> ConfidenceOptions::problem() const {
  return outside_open("confidence", confidence, 0, 1, "a number above 0 and below 1");
}

} // namespace baize::stats
