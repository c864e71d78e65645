#include "needed.h"

#include "baize/stats/distributions.h"

#include <algorithm>
#include <cmath>

namespace baize::compare::detail {

std::optional<int> works_needed(double variance, double median, double days_wanted) {
  const double d = 2 * std::asinh(days_wanted / (2 * median));
  const double level = stats::normal_quantile(0.975);
  const double power = stats::normal_quantile(0.8);
  const double works =
      2 * variance * (level + power) * (level + power) / (d * d) + level * level / 4;
  if (!(works <= 1000)) {
    return std::nullopt;
  }
  return std::max(2, static_cast<int>(std::ceil(works)));
}

} // namespace baize::compare::detail
