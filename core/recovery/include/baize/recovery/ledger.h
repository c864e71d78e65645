#pragma once

#include "baize/recovery/series.h"

#include <vector>

namespace baize::recovery {

/// What is known of one day. Never silently assumed.
enum class DayKind {
  measured_true, ///< visited, at or above the standard of that day
  measured_not,  ///< visited, below
  between_true,  ///< not visited; the nearest visited days on both sides were true, also by
                 ///< this day's own standard, not further apart than kLongestBridge, with no
                 ///< disruptive work between
  unmeasured,    ///< not visited, anything else
  closed         ///< closed to play
};

/// Days between two true visits that may still be bridged. A green seldom loses and
/// regains its roll unseen within two weeks; over a winter it may. Common practice, no source.
inline constexpr int kLongestBridge = 14;

/// How many days of a period a green rolled true, as far as anybody knows. The
/// five counts add up to the days of the period.
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

/// The true days of one green. A visited day's score is the mean of all its
/// rolls (day_scores); it is true where that reaches standard_on(day).
///
/// The period is cut at `record_end`: days to come are not in the ledger, and a
/// period wholly to come gives no days. Visits and works after `record_end`
/// count as not known. A closed day counts as closed even if somebody scored it;
/// a closing of one half closes the green only on days when every other half is
/// closed too, and one without a last day lasts a day. Visits outside the period
/// still count as neighbours. A work counts as between when any of its days lies
/// from the left visited day on and before the right one: on the left day itself
/// it may have followed the visit. A green nobody visited, or that is not in the
/// records, has unmeasured days; nothing is refused.
Ledger true_days(const green::Records& records, const std::string& green, units::Period period,
                 units::Day record_end);

} // namespace baize::recovery
