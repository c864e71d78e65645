#include "baize/recovery/series.h"

#include "baize/green/roll_score.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace baize::recovery {
namespace {

void widen(VisitScore& visit, double score, bool first) {
  visit.lowest = first ? score : std::min(visit.lowest, score);
  visit.highest = first ? score : std::max(visit.highest, score);
}

void add(VisitScore& visit, const green::Run& run) {
  const auto sum = green::score_sum(run);
  if (!sum) {
    return;
  }
  bool first = visit.rolls == 0;
  visit.total += sum->total;
  visit.rolls += sum->rolls;
  bool single = false;
  for (const green::Roll& roll : run.rolls) {
    if (roll.score) {
      widen(visit, *roll.score, first);
      first = false;
      single = true;
    }
  }
  if (!single) {
    widen(visit, sum->mean(), first);
  }
}

/// Balls that several observers scored. Sums of whole numbers while they scored
/// equally many, so that the mean is exact.
struct SharedBalls {
  double total = 0; ///< of every observer's mean times `rolls`
  int observers = 0;
};

/// Adds the shared balls' visits of one day to it, each group of them once.
void add_shared(DayScore& day, const std::vector<const VisitScore*>& shared) {
  std::map<std::string, int> rolls;
  for (const VisitScore* visit : shared) {
    int& most = rolls[visit->shared_rolls];
    most = std::max(most, visit->rolls);
  }
  std::map<std::string, SharedBalls> groups;
  for (const VisitScore* visit : shared) {
    SharedBalls& group = groups[visit->shared_rolls];
    group.total += visit->total * rolls[visit->shared_rolls] / visit->rolls;
    ++group.observers;
  }
  for (const auto& [id, group] : groups) {
    day.total += group.total / group.observers;
    day.rolls += rolls[id];
  }
}

bool earlier(const VisitScore& a, const VisitScore& b) {
  return std::tie(a.day, a.at, a.visit, a.observer, a.total, a.rolls) <
         std::tie(b.day, b.at, b.visit, b.observer, b.total, b.rolls);
}

} // namespace

std::vector<VisitScore> visit_scores(const green::Records& records, const std::string& green,
                                     const std::string& half) {
  const green::Green* place = green::find_green(records, green);
  std::vector<VisitScore> scores;
  for (const green::Visit& visit : records.visits) {
    if (visit.green != green) {
      continue;
    }
    VisitScore score;
    score.visit = visit.id;
    score.observer = visit.observer;
    score.shared_rolls = visit.shared_rolls;
    score.day = visit.day;
    score.at = visit.from ? visit.from : visit.to;
    for (const green::Run& run : visit.runs) {
      if (half.empty() || green::half_of(place, visit, run) == half) {
        add(score, run);
      }
    }
    if (score.rolls > 0) {
      score.score = score.total / score.rolls;
      scores.push_back(std::move(score));
    }
  }
  std::sort(scores.begin(), scores.end(), earlier);
  return scores;
}

std::vector<DayScore> day_scores(const std::vector<VisitScore>& visits) {
  std::vector<const VisitScore*> order;
  order.reserve(visits.size());
  for (const VisitScore& visit : visits) {
    order.push_back(&visit);
  }
  std::sort(order.begin(), order.end(),
            [](const VisitScore* a, const VisitScore* b) { return earlier(*a, *b); });
  std::vector<DayScore> days;
  std::vector<const VisitScore*> shared;
  for (auto at = order.begin(); at != order.end();) {
    DayScore& day = days.emplace_back(DayScore{(*at)->day, 0, 0, 0, {}});
    shared.clear();
    for (; at != order.end() && (*at)->day == day.day; ++at) {
      day.visits.push_back((*at)->visit);
      if ((*at)->shared_rolls.empty()) {
        day.total += (*at)->total;
        day.rolls += (*at)->rolls;
      } else {
        shared.push_back(*at);
      }
    }
    add_shared(day, shared);
    day.score = day.total / day.rolls;
  }
  return days;
}

} // namespace baize::recovery
