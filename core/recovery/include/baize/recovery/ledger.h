#pragma once

#include "baize/recovery/series.h"

#include <vector>

namespace baize::recovery {

/// What is known of one day. Never silently assumed.
enum class DayKind {
  measured_true,     ///< visited, at or above the standard
  measured_not,      ///< visited, below
  between_true,      ///< not visited; the nearest visits on both sides were true, no disruptive work between
  unmeasured,        ///< not visited, anything else
  closed             ///< closed to play
};

struct Ledger {
  units::Period period;
  std::vector<DayKind> days; ///< one for each day of the period
  int measured_true = 0;
  int measured_not = 0;
  int between_true = 0;
  int unmeasured = 0;
  int closed = 0;
  int open() const { return measured_true + measured_not + between_true + unmeasured; }
  /// True days if every unmeasured day (of both kinds) was not true, or was.
  int fewest_true() const { return measured_true; }
  int most_true() const { return measured_true + between_true + unmeasured; }
};

/// The period is cut at `record_end`: days to come are not in the ledger. A
/// closed day counts as closed even if somebody scored it. Visits outside the
/// period still count as neighbours.
Ledger true_days(const green::Records& records, const std::string& green, units::Period period,
                 units::Day record_end);

} // namespace baize::recovery
