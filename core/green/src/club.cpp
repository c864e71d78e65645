#include "baize/green/club.h"

#include <algorithm>

namespace baize::green {
namespace {

bool in_season(const Standard& standard, units::Day day) {
  if (!standard.from && !standard.to) {
    return true;
  }
  const auto date = units::year_month_day(day);
  const units::MonthDay today{date.month, date.day};
  const units::MonthDay from = standard.from.value_or(units::MonthDay{1, 1});
  const units::MonthDay to = standard.to.value_or(units::MonthDay{12, 31});
  return from <= to ? from <= today && today <= to : today >= from || today <= to;
}

/// The most particular rule wins: green and season, green, season, neither.
int particularity(const Standard& standard) {
  return (standard.green.empty() ? 0 : 2) + (standard.from || standard.to ? 1 : 0);
}

} // namespace

double standard_on(const std::vector<Standard>& standards, const std::string& green,
                   units::Day day) {
  const Standard* best = nullptr;
  for (const Standard& standard : standards) {
    const bool applies =
        (standard.green.empty() || standard.green == green) && in_season(standard, day);
    if (!applies) {
      continue;
    }
    // Of two that are equally particular the stricter holds, so that the
    // order in which they were written down changes nothing.
    const int gain = best == nullptr ? 1 : particularity(standard) - particularity(*best);
    if (gain > 0 || (gain == 0 && standard.score > best->score)) {
      best = &standard;
    }
  }
  return best == nullptr ? kDefaultStandard : best->score;
}

const Green* find_green(const Records& records, const std::string& id) {
  const auto found = std::find_if(records.greens.begin(), records.greens.end(),
                                  [&](const Green& green) { return green.id == id; });
  return found == records.greens.end() ? nullptr : &*found;
}

const std::string& half_of(const Green* green, const Visit& visit, const Run& run) {
  if (green != nullptr) {
    const auto spot = std::find_if(green->spots.begin(), green->spots.end(),
                                   [&](const Spot& one) { return one.id == run.spot; });
    if (spot != green->spots.end() && !spot->half.empty()) {
      return spot->half;
    }
  }
  return visit.half;
}

std::vector<units::Period> disrupted_days(const Records& records, const std::string& green,
                                          const std::string& half) {
  std::vector<units::Period> days;
  for (const Work& work : records.works) {
    if (class_of(work) == WorkClass::disruptive && touches(work, green, half)) {
      days.push_back({work.day, work.until.value_or(work.day)});
    }
  }
  return days;
}

bool disrupted_between(const std::vector<units::Period>& works, units::Day one, units::Day other) {
  const auto [from, to] = std::minmax(one, other);
  // Names of their own: clang sees captures of the same name as shadows.
  return std::any_of(works.begin(), works.end(), [begin = from, end = to](const auto& work) {
    return work.first <= end && begin <= work.last;
  });
}

} // namespace baize::green
