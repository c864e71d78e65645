#pragma once

#include <optional>
#include <vector>

namespace baize::recovery {

/// Days that visits to a green were apart while it was below, but for one time in ten:
/// the smallest gap that nine of ten do not exceed (nearest rank). `gaps`: days between
/// visited days, in any order. Absent with fewer than three, which make no custom.
std::optional<int> usual_gap(std::vector<int> gaps);

/// Days after the work by which it was back, were visits missed only because the roll
/// was good again: then the next one at the usual gap after the last seen below,
/// `after_days`, would have been good. Absent where no visit was below (`after_days` is
/// 0), and where `by_days` came no later than usual: nothing was missed. It is a second
/// reading of the records, for they do not tell why nobody came.
std::optional<int> by_if_good(int after_days, int by_days, std::optional<int> usual);

} // namespace baize::recovery
