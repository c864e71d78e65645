#include "baize/stats/censored_time.h"

#include "baize/units/number.h"

#include <string>

namespace baize::stats {

std::optional<units::Problem> bad_time(const std::vector<CensoredTime>& times) {
  for (std::size_t i = 0; i < times.size(); ++i) {
    const auto& [left, right] = times[i];
    if (!std::isfinite(left) || left < 0 || !(right >= left)) {
      return units::Problem{"time_out_of_range", "time",
                            units::write_number(left) + " to " + units::write_number(right),
                            "from 0 or more, finite, to the same time or a later one",
                            "time " + std::to_string(i + 1)};
    }
  }
  return std::nullopt;
}

} // namespace baize::stats
