#include "baize/consistency/figures.h"

#include "baize/green/roll_score.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace baize::consistency {
namespace {

int scored(const green::Visit& visit) {
  const auto sum = green::score_sum(visit.runs);
  return sum ? sum->rolls : 0;
}

/// Of each group of shared balls the visit that stands for it.
std::set<const green::Visit*> stand_ins(const std::vector<const green::Visit*>& visits) {
  using Key = std::tuple<std::string, units::Day, std::string, std::string>;
  std::map<Key, const green::Visit*> chosen;
  for (const green::Visit* visit : visits) {
    if (!visit->shared_rolls.empty()) {
      const auto [at, fresh] =
          chosen.emplace(Key{visit->shared_rolls, visit->day, visit->green, visit->half}, visit);
      const int before = scored(*at->second);
      const int now = scored(*visit);
      if (!fresh && (now > before || (now == before && visit->id < at->second->id))) {
        at->second = visit;
      }
    }
  }
  std::set<const green::Visit*> kept;
  for (const auto& [key, visit] : chosen) {
    kept.insert(visit);
  }
  return kept;
}

RunFigures figures_of(const green::Run& run) {
  RunFigures figures;
  figures.direction = run.direction;
  if (const auto sum = green::score_sum(run)) {
    figures.score = sum->mean();
  }
  double metres = 0;
  for (const green::Roll& roll : run.rolls) {
    if (roll.score) {
      figures.balls.push_back(*roll.score);
    }
    if (roll.distance) {
      metres += roll.distance->metres;
      ++figures.measured;
    }
  }
  if (figures.measured > 0) {
    figures.mean_m = metres / figures.measured;
  }
  return figures;
}

VisitFigures figures_of(const green::Visit& visit, std::size_t green) {
  VisitFigures figures;
  figures.visit = visit.id;
  figures.green = green;
  figures.day = visit.day;
  figures.at = visit.from ? visit.from : visit.to;
  if (const auto sum = green::score_sum(visit.runs)) {
    figures.score = sum->mean();
  }
  if (const auto speed = speed::visit_speed(visit.runs)) {
    figures.speed_m = speed->speed_m;
  }
  std::map<std::string, std::vector<green::Run>> by_spot;
  for (const green::Run& run : visit.runs) {
    by_spot[run.spot].push_back(run);
  }
  for (const auto& [spot, runs] : by_spot) {
    SpotFigures one{spot, {}, speed::spot_speed(runs)};
    for (const green::Run& run : runs) {
      one.runs.push_back(figures_of(run));
    }
    figures.spots.push_back(std::move(one));
  }
  return figures;
}

} // namespace

std::vector<VisitFigures> visit_figures(const green::Records& records, units::Period period) {
  std::map<std::string, std::size_t> places;
  for (const green::Green& green : records.greens) {
    places.emplace(green.id, places.size());
  }
  std::vector<const green::Visit*> visits;
  for (const green::Visit& visit : records.visits) {
    if (period.holds(visit.day) && places.contains(visit.green)) {
      visits.push_back(&visit);
    }
  }
  const auto kept = stand_ins(visits);
  std::vector<VisitFigures> all;
  for (const green::Visit* visit : visits) {
    if (visit->shared_rolls.empty() || kept.contains(visit)) {
      all.push_back(figures_of(*visit, places.at(visit->green)));
    }
  }
  std::sort(all.begin(), all.end(), [](const VisitFigures& a, const VisitFigures& b) {
    return std::tie(a.green, a.day, a.at, a.visit) < std::tie(b.green, b.day, b.at, b.visit);
  });
  return all;
}

} // namespace baize::consistency
