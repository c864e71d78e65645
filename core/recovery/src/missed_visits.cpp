#include "baize/recovery/missed_visits.h"

#include <algorithm>

namespace baize::recovery {

std::optional<int> usual_gap(std::vector<int> gaps) {
  constexpr std::size_t kFewest = 3;
  if (gaps.size() < kFewest) {
    return std::nullopt;
  }
  const std::size_t rank = (9 * gaps.size() + 9) / 10; // from 1, rounded up
  const auto at = gaps.begin() + static_cast<std::ptrdiff_t>(rank - 1);
  std::nth_element(gaps.begin(), at, gaps.end());
  return *at;
}

std::optional<int> by_if_good(int after_days, int by_days, std::optional<int> usual) {
  if (!usual || after_days == 0 || by_days - after_days <= *usual) {
    return std::nullopt;
  }
  return after_days + *usual;
}

} // namespace baize::recovery
