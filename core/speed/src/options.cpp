#include "baize/speed/green_speed.h"
#include "baize/units/number.h"

namespace baize::speed {

std::optional<units::Problem> Options::problem() const {
  struct Bound {
    const char* field;
    double value;
    bool zero_allowed;
  };
  constexpr double kMost = 10;
  for (const Bound& bound :
       {Bound{"run_spread_m", run_spread_m, false},
        Bound{"direction_gap_m", direction_gap_m, false}, Bound{"roll_sd_m", roll_sd_m, false},
        Bound{"line_drift_m", line_drift_m, true}}) {
    const bool low_enough = bound.zero_allowed ? bound.value >= 0 : bound.value > 0;
    if (!low_enough || !(bound.value <= kMost)) {
      return units::Problem{"option_out_of_range",
                            bound.field,
                            units::write_number(bound.value),
                            bound.zero_allowed ? "a number from 0 to 10 m"
                                               : "a number above 0 and up to 10 m",
                            {}};
    }
  }
  return std::nullopt;
}

} // namespace baize::speed
