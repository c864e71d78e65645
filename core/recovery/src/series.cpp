#include "baize/recovery/series.h"

#include "baize/green/roll_score.h"

#include <algorithm>
#include <tuple>

namespace baize::recovery {
namespace {

const std::string& half_of_spot(const green::Green* green, const std::string& spot) {
  static const std::string none;
  if (green == nullptr) {
    return none;
  }
  const auto found = std::find_if(green->spots.begin(), green->spots.end(),
                                  [&](const green::Spot& s) { return s.id == spot; });
  return found == green->spots.end() ? none : found->half;
}

/// Where the spot lies is a fact of the ground, so it goes before what the visit says.
bool made_in(const std::string& half, const green::Green* green, const green::Visit& visit,
             const green::Run& run) {
  if (half.empty()) {
    return true;
  }
  const std::string& of_spot = half_of_spot(green, run.spot);
  return of_spot.empty() ? visit.half == half : of_spot == half;
}

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
    score.day = visit.day;
    score.at = visit.from ? visit.from : visit.to;
    for (const green::Run& run : visit.runs) {
      if (made_in(half, place, visit, run)) {
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
  for (const VisitScore* visit : order) {
    if (days.empty() || days.back().day != visit->day) {
      days.push_back({visit->day, 0, 0, 0, {}});
    }
    DayScore& day = days.back();
    day.total += visit->total;
    day.rolls += visit->rolls;
    day.score = day.total / day.rolls;
    day.visits.push_back(visit->visit);
  }
  return days;
}

} // namespace baize::recovery
