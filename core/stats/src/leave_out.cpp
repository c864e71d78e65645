#include "baize/stats/leave_out.h"

#include <cmath>

namespace baize::stats {

double leave_one_out_error(std::span<const double> without, std::span<const double> alike) {
  const auto items = [&](std::size_t i) { return alike.empty() ? 1 : alike[i]; };
  double n = 0;
  double sum = 0;
  for (std::size_t i = 0; i < without.size(); ++i) {
    n += items(i);
    sum += items(i) * without[i];
  }
  double squares = 0;
  for (std::size_t i = 0; i < without.size(); ++i) {
    const double off = without[i] - sum / n;
    squares += items(i) * off * off;
  }
  return n < 2 ? 0 : std::sqrt((n - 1) / n * squares);
}

} // namespace baize::stats
