// The figures against their definitions, read literally: for each day the question is asked anew
// over all records, slowly, with none of the library's own steps but scores and classes.
#include "laws/recovery_given.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <map>

namespace baize::laws {
namespace {

using recovery::Definition;
using recovery::WorkLoss;

/// Score by day, pooled over rolls, of visits after a work up to its horizon.
std::map<int, double> scored_days(const green::Records& records, const WorkLoss& loss) {
  std::map<int, std::pair<double, int>> sums;
  for (const auto& visit : recovery::visit_scores(records, "7", loss.half)) {
    if (visit.day > loss.day && visit.day <= loss.horizon) {
      auto& [total, rolls] = sums[visit.day - loss.day];
      total += visit.score * visit.rolls;
      rolls += visit.rolls;
    }
  }
  std::map<int, double> scores;
  for (const auto& [day, sum] : sums) {
    scores[day] = sum.first / sum.second;
  }
  return scores;
}

/// Does `day` satisfy the definition? Quantifiers over the days, as one would say them.
bool satisfies(const std::map<int, bool>& good, Definition definition, int day) {
  if (!good.at(day)) {
    return false;
  }
  const auto next = good.upper_bound(day);
  if (definition == Definition::two_running) {
    return next != good.end() && next->second;
  }
  return definition != Definition::lasting ||
         std::all_of(next, good.end(), [](const auto& later) { return later.second; });
}

void check(const green::Records& records, const WorkLoss& loss) {
  const auto scores = scored_days(records, loss);
  for (const auto& interval : loss.recovery) {
    if (interval.censoring == recovery::Censoring::not_asked) {
      RC_ASSERT(!loss.before.has_value());
      continue;
    }
    std::map<int, bool> good;
    for (const auto& [day, score] : scores) {
      const double wanted = interval.definition == Definition::own_level
                                ? *loss.before
                                : green::standard_on(records.standards, "7", loss.day + day);
      good[day] = score > wanted - 1e-6;
    }
    std::optional<int> back;
    for (const auto& [day, unused] : good) {
      if (!back && satisfies(good, interval.definition, day)) {
        back = day;
      }
    }
    int below = 0;
    for (const auto& [day, is_good] : good) {
      below = !is_good && day < back.value_or(kDays + 1) ? day : below;
    }
    RC_ASSERT(interval.by_days == back);
    RC_ASSERT(interval.after_days == below);
    RC_ASSERT((interval.censoring == recovery::Censoring::none) == back.has_value());
    RC_ASSERT(back || interval.censoring == loss.horizon_reason);
  }
}

/// No times, so that a visit on a work's own day is on neither side.
green::Records without_times(green::Records records) {
  for (green::Visit& visit : records.visits) {
    visit.from.reset();
  }
  return records;
}

RC_GTEST_PROP(RecoveryMeaning, IntervalsSayWhatTheirDefinitionsSay, ()) {
  const auto records = without_times(*any_records());
  for (const WorkLoss& loss : losses_of(records)) {
    check(records, loss);
  }
}

RC_GTEST_PROP(RecoveryMeaning, HorizonIsTheDayBeforeTheNextWork, ()) {
  const auto records = *any_records();
  for (const WorkLoss& loss : losses_of(records)) {
    units::Day horizon = kLast;
    for (const green::Work& work : records.works) {
      const bool here = work.greens.empty() || work.greens.front() == "7";
      const bool same = work.half.empty() || loss.half.empty() || work.half == loss.half;
      const bool disruptive = work.kind == "coring" || work.kind == "verticutting";
      if (here && same && disruptive && work.day > loss.day) {
        horizon = std::min(horizon, work.day - 1);
      }
    }
    RC_ASSERT(loss.horizon == horizon);
  }
}

RC_GTEST_PROP(RecoveryMeaning, LedgerDaysSayWhatTheirKindsSay, ()) {
  const auto records = *any_records();
  const auto standard = [&](units::Day d) { return green::standard_on(records.standards, "7", d); };
  std::map<units::Day, double> score;
  for (const auto& day : recovery::day_scores(recovery::visit_scores(records, "7"))) {
    score[day.day] = day.score;
  }
  const auto ledger = recovery::true_days(records, "7", {kFirst, kLast}, kLast);
  const auto covers = [](const green::Work& w, units::Day d) {
    return (w.greens.empty() || w.greens.front() == "7") && w.day <= d &&
           d <= w.until.value_or(w.day);
  };
  for (units::Day day = kFirst; day <= kLast; ++day) {
    const auto closed = [&](const std::string& half) {
      return std::any_of(records.works.begin(), records.works.end(), [&](const green::Work& w) {
        return w.kind == "closed" && covers(w, day) && (w.half.empty() || w.half == half);
      });
    };
    const auto kind = ledger.days[static_cast<std::size_t>(day - kFirst)];
    const auto right = score.lower_bound(day);
    if (closed("north") && closed("south")) {
      RC_ASSERT(kind == recovery::DayKind::closed);
    } else if (right != score.end() && right->first == day) {
      RC_ASSERT((kind == recovery::DayKind::measured_true) ==
                recovery::reaches(right->second, standard(day)));
    } else {
      bool between = right != score.begin() && right != score.end();
      const auto left = between ? std::prev(right) : right;
      between = between && right->first - left->first <= 14 &&
                left->second > standard(left->first) - 1e-6 &&
                right->second > standard(right->first) - 1e-6 &&
                std::min(left->second, right->second) > standard(day) - 1e-6;
      for (units::Day d = between ? left->first : day; between && d < right->first; ++d) {
        between = std::none_of(records.works.begin(), records.works.end(), [&](const auto& w) {
          return covers(w, d) && (w.kind == "coring" || w.kind == "verticutting");
        });
      }
      RC_ASSERT(kind ==
                (between ? recovery::DayKind::between_true : recovery::DayKind::unmeasured));
    }
  }
}

} // namespace
} // namespace baize::laws
