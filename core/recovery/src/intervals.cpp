#include "intervals.h"

#include <algorithm>

namespace baize::recovery {
namespace {

/// Is the visited day good under the definition, looked at alone?
bool good(const Aftermath& after, Definition definition, std::size_t i) {
  return definition == Definition::own_level ? reaches(after.days[i].score, *after.own_level)
                                             : after.true_day[i];
}

/// Last visited day before place `end` that was below, or days.size().
std::size_t last_below(const Aftermath& after, Definition definition, std::size_t end) {
  for (std::size_t i = end; i > 0; --i) {
    if (!good(after, definition, i - 1)) {
      return i - 1;
    }
  }
  return after.days.size();
}

void add_visits(RecoveryInterval& interval, const DayScore& day) {
  interval.visits.insert(interval.visits.end(), day.visits.begin(), day.visits.end());
}

/// The day beyond the first one back that the definition also needs.
std::size_t witness(const Aftermath& after, Definition definition, std::size_t back) {
  if (definition == Definition::two_running) {
    return back + 1;
  }
  return definition == Definition::lasting ? after.days.size() - 1 : back;
}

std::optional<double> growth_between(const Aftermath& after, units::Day to,
                                     const climate::Weather& weather,
                                     const climate::GrowthOptions& options) {
  const auto growth = climate::growth_days(weather, after.work, to, options);
  return growth.complete() ? std::optional(growth.sum) : std::nullopt;
}

RecoveryInterval interval_of(const Aftermath& after, Definition definition) {
  RecoveryInterval interval;
  interval.definition = definition;
  interval.last_below = after.work;
  if (definition == Definition::own_level && !after.own_level) {
    interval.censoring = Censoring::not_asked;
    return interval;
  }
  const std::size_t none = after.days.size();
  const std::size_t back = first_back(after, definition);
  const std::size_t below = last_below(after, definition, back);
  if (below != none) {
    interval.last_below = after.days[below].day;
    add_visits(interval, after.days[below]);
    for (std::size_t i = 0; i < below; ++i) {
      interval.gaps_below.push_back(after.days[i + 1].day - after.days[i].day);
    }
  }
  if (back == none) {
    interval.censoring = after.horizon_reason;
  } else {
    interval.first_back = after.days[back].day;
    add_visits(interval, after.days[back]);
    if (const std::size_t also = witness(after, definition, back); also != back) {
      add_visits(interval, after.days[also]);
    }
  }
  return interval;
}

} // namespace

std::size_t first_back(const Aftermath& after, Definition definition) {
  const std::size_t none = after.days.size();
  if (definition == Definition::own_level && !after.own_level) {
    return none;
  }
  if (definition == Definition::lasting) {
    const std::size_t below = last_below(after, definition, none);
    return below == none ? 0 : below + 1; // no day at all: 0 is days.size()
  }
  const bool pair = definition == Definition::two_running;
  for (std::size_t i = 0; i + (pair ? 1 : 0) < none; ++i) {
    if (good(after, definition, i) && (!pair || good(after, definition, i + 1))) {
      return i;
    }
  }
  return none;
}

std::array<RecoveryInterval, 4> recovery_intervals(const Aftermath& after,
                                                   const climate::Weather& weather,
                                                   const climate::GrowthOptions& growth) {
  std::array<RecoveryInterval, 4> all;
  for (std::size_t i = 0; i < kDefinitions.size(); ++i) {
    RecoveryInterval interval = interval_of(after, kDefinitions[i]);
    interval.after_days = interval.last_below - after.work;
    interval.after_growth_days = growth_between(after, interval.last_below, weather, growth);
    if (interval.first_back) {
      interval.by_days = *interval.first_back - after.work;
      interval.by_growth_days = growth_between(after, *interval.first_back, weather, growth);
    }
    all[i] = std::move(interval);
  }
  return all;
}

} // namespace baize::recovery
