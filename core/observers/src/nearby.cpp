#include "baize/observers/nearby.h"

#include "baize/green/roll_score.h"
#include "places.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <set>
#include <tuple>

namespace baize::observers {
namespace {

struct Scored {
  const green::Visit* visit = nullptr;
  double mean = 0;
};

using Ground = std::pair<std::string, std::string>; ///< green, half
using Names = std::pair<std::string, std::string>;

struct Match {
  int apart = 0;
  const Scored* first = nullptr;
  const Scored* second = nullptr;
};

/// Differences of a pair of observers, by green.
using ByGreen = std::map<std::string, Sums>;

std::map<Ground, std::vector<Scored>> scored_visits(const green::Records& records,
                                                    units::Day today) {
  std::map<Ground, std::vector<Scored>> all;
  for (const green::Visit& visit : records.visits) {
    if (visit.observer.empty() || visit.day > today) {
      continue;
    }
    if (const auto sum = green::score_sum(visit.runs)) {
      all[{visit.green, visit.half}].push_back({&visit, sum->mean()});
    }
  }
  for (auto& [ground, visits] : all) {
    std::sort(visits.begin(), visits.end(), [](const Scored& a, const Scored& b) {
      return std::tie(a.visit->day, a.visit->id) < std::tie(b.visit->day, b.visit->id);
    });
  }
  return all;
}

bool same_balls(const green::Visit& a, const green::Visit& b) {
  return !a.shared_rolls.empty() && a.shared_rolls == b.shared_rolls;
}

/// Matches on one ground, by pair of observers in the alphabet's order.
std::map<Names, std::vector<Match>> matches(const std::vector<Scored>& visits,
                                            const std::vector<units::Period>& works, int days) {
  std::map<Names, std::vector<Match>> found;
  for (std::size_t i = 0; i < visits.size(); ++i) {
    for (std::size_t j = i + 1; j < visits.size(); ++j) {
      const green::Visit& a = *visits[i].visit;
      const green::Visit& b = *visits[j].visit;
      if (b.day - a.day > days) {
        break;
      }
      if (a.observer == b.observer || same_balls(a, b) ||
          green::disrupted_between(works, a.day, b.day)) {
        continue;
      }
      const bool turned = b.observer < a.observer;
      found[turned ? Names{b.observer, a.observer} : Names{a.observer, b.observer}].push_back(
          {b.day - a.day, turned ? &visits[j] : &visits[i], turned ? &visits[i] : &visits[j]});
    }
  }
  return found;
}

/// The nearest first, and each visit once.
void take(std::vector<Match> some, const std::string& green, ByGreen& to) {
  std::stable_sort(some.begin(), some.end(),
                   [](const Match& a, const Match& b) { return a.apart < b.apart; });
  std::set<const Scored*> used;
  for (const Match& match : some) {
    if (!used.contains(match.first) && !used.contains(match.second)) {
      used.insert(match.first);
      used.insert(match.second);
      to[green].add(match.first->mean - match.second->mean);
    }
  }
}

NearbyPair pair_of(const Names& names, const ByGreen& by_green, bool turned, double confidence) {
  NearbyPair pair;
  pair.first = turned ? names.second : names.first;
  pair.second = turned ? names.first : names.second;
  std::vector<Sums> greens;
  Sums all;
  for (const auto& [green, sums] : by_green) {
    greens.push_back({sums.n, turned ? -sums.sum : sums.sum, sums.squares});
    all.n += sums.n;
    all.sum += greens.back().sum;
    all.squares += sums.squares;
  }
  pair.pairs = static_cast<int>(all.n);
  pair.greens = static_cast<int>(greens.size());
  pair.sd = all.n < 2
                ? 0
                : std::sqrt(std::max(0.0, all.squares - all.sum * all.sum / all.n) / (all.n - 1));
  pair.bias = mean_by_session(greens, confidence).value_or(Estimate{});
  return pair;
}

} // namespace

std::optional<units::Problem> NearbyOptions::problem() const {
  if (days < 0 || days > 14) {
    return units::Problem{"option_out_of_range", "days", std::to_string(days), "from 0 to 14", {}};
  }
  return outside("confidence", confidence, 0, 1, "a number above 0 and below 1");
}

std::vector<NearbyPair> nearby_pairs(const green::Records& records, units::Day today,
                                     const NearbyOptions& options) {
  if (!options.valid()) {
    return {};
  }
  std::map<Names, ByGreen> gathered;
  for (const auto& [ground, visits] : scored_visits(records, today)) {
    const auto works = green::disrupted_days(records, ground.first, ground.second);
    for (auto& [names, some] : matches(visits, works, options.days)) {
      take(std::move(some), ground.first, gathered[names]);
    }
  }
  std::map<std::string, std::size_t> places;
  for (const green::Observer& observer : records.observers) {
    places.emplace(observer.id, places.size());
  }
  const auto rank = [&](const std::string& name) {
    const auto found = places.find(name);
    return std::pair(found == places.end() ? places.size() : found->second, name);
  };
  std::vector<NearbyPair> pairs;
  pairs.reserve(gathered.size());
  for (const auto& [names, by_green] : gathered) {
    pairs.push_back(
        pair_of(names, by_green, rank(names.second) < rank(names.first), options.confidence));
  }
  std::sort(pairs.begin(), pairs.end(), [&](const NearbyPair& a, const NearbyPair& b) {
    return std::pair(rank(a.first), rank(a.second)) < std::pair(rank(b.first), rank(b.second));
  });
  return pairs;
}

} // namespace baize::observers
