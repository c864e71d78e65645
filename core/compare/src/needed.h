#pragma once

#include <optional>

namespace baize::compare::detail {

/// Works of each method that would show, four times in five, that one takes
/// `days_wanted` longer around a median of `median` days, at the 0.95 level, where a
/// work's log median has `variance`. Absent above 1000.
std::optional<int> works_needed(double variance, double median, double days_wanted);

} // namespace baize::compare::detail
