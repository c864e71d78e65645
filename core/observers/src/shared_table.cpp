#include "baize/observers/shared_table.h"

#include "baize/green/roll_score.h"
#include "places.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace baize::observers {
namespace {

using green::Run;
using green::Visit;

/// Visits of one session, one for each observer that took part.
struct Group {
  Session session;
  std::map<std::size_t, const Visit*> visits; ///< by the observer's place
};

std::vector<std::string> observers_of(const green::Records& records,
                                      const std::vector<const Visit*>& visits) {
  std::set<std::string> taking_part;
  for (const Visit* visit : visits) {
    taking_part.insert(visit->observer);
  }
  std::vector<std::string> ordered;
  for (const green::Observer& observer : records.observers) {
    if (taking_part.erase(observer.id) > 0) {
      ordered.push_back(observer.id);
    }
  }
  ordered.insert(ordered.end(), taking_part.begin(), taking_part.end());
  return ordered;
}

const Run* run_at(const Visit& visit, const std::string& spot, green::Direction direction) {
  const auto found = std::find_if(visit.runs.begin(), visit.runs.end(), [&](const Run& run) {
    return run.spot == spot && run.direction == direction;
  });
  return found == visit.runs.end() ? nullptr : &*found;
}

int scored_by(const SharedItem& item) {
  return static_cast<int>(std::count_if(item.scores.begin(), item.scores.end(),
                                        [](const auto& score) { return score.has_value(); }));
}

class Maker {
 public:
  explicit Maker(SharedTable& table) : table_(table) {}

  void add(const Group& group) {
    std::set<std::pair<std::string, green::Direction>> done;
    for (const auto& [place, visit] : group.visits) {
      for (const Run& run : visit->runs) {
        if (done.emplace(run.spot, run.direction).second) {
          add_run(group, run);
        }
      }
    }
    table_.sessions.push_back(group.session);
  }

 private:
  SharedItem item(const Run& run) const {
    SharedItem made;
    made.session = table_.sessions.size();
    made.spot = run.spot;
    made.direction = run.direction;
    made.scores.resize(table_.observers.size());
    return made;
  }

  void add_run(const Group& group, const Run& at) {
    std::map<int, SharedItem> rolls;
    std::map<std::size_t, green::ScoreSum> sums;
    int most = 0;
    for (const auto& [place, visit] : group.visits) {
      const Run* run = run_at(*visit, at.spot, at.direction);
      if (run == nullptr) {
        continue;
      }
      for (const green::Roll& roll : run->rolls) {
        if (roll.score) {
          SharedItem& ball = rolls.emplace(roll.order, item(at)).first->second;
          ball.order = roll.order;
          ball.scores[place] = *roll.score;
        }
      }
      if (const auto sum = green::score_sum(*run)) {
        sums.emplace(place, *sum);
        most = std::max(most, sum->rolls);
      }
    }
    for (auto& [order, ball] : rolls) {
      keep(table_.rolls, std::move(ball));
    }
    SharedItem whole = item(at);
    whole.balls = most;
    for (const auto& [place, sum] : sums) {
      if (sum.rolls == most) {
        whole.scores[place] = sum.mean();
      }
    }
    keep(table_.runs, std::move(whole));
  }

  static void keep(std::vector<SharedItem>& to, SharedItem item) {
    if (scored_by(item) >= 2) {
      to.push_back(std::move(item));
    }
  }

  SharedTable& table_;
};

} // namespace

SharedTable shared_table(const green::Records& records, units::Day today) {
  std::vector<const Visit*> visits;
  for (const Visit& visit : records.visits) {
    if (!visit.shared_rolls.empty() && !visit.observer.empty() && visit.day <= today) {
      visits.push_back(&visit);
    }
  }
  SharedTable table;
  table.observers = observers_of(records, visits);
  std::map<std::tuple<units::Day, std::string, std::string, std::string>, Group> groups;
  std::stable_sort(visits.begin(), visits.end(),
                   [](const Visit* a, const Visit* b) { return a->id < b->id; });
  for (const Visit* visit : visits) {
    Group& group = groups[{visit->day, visit->shared_rolls, visit->green, visit->half}];
    group.session = {visit->shared_rolls, visit->day, visit->green, visit->half, {}};
    group.visits.emplace(*place_of(table, visit->observer), visit);
  }
  Maker maker(table);
  for (auto& [key, group] : groups) {
    if (group.visits.size() < 2) {
      ++table.waiting;
      continue;
    }
    for (const auto& [place, visit] : group.visits) {
      group.session.visits.push_back(visit->id);
    }
    maker.add(group);
  }
  return table;
}

} // namespace baize::observers
