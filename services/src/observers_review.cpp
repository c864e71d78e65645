#include "baize/services/observers_review.h"

#include "baize/green/roll_score.h"
#include "observers_words.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace baize::services {
namespace {

/// Scored visits of each observer, up to today.
std::map<std::string, int> scored_visits(const green::Records& records, units::Day today) {
  std::map<std::string, int> counts;
  for (const green::Visit& visit : records.visits) {
    if (!visit.observer.empty() && visit.day <= today && green::score_sum(visit.runs)) {
      ++counts[visit.observer];
    }
  }
  return counts;
}

/// Those who score, in the club's order, then by id.
std::vector<std::string> order_of(const green::Records& records,
                                  std::map<std::string, int> counts) {
  std::vector<std::string> order;
  for (const green::Observer& observer : records.observers) {
    if (counts.erase(observer.id) > 0) {
      order.push_back(observer.id);
    }
  }
  for (const auto& [id, count] : counts) {
    order.push_back(id);
  }
  return order;
}

std::vector<std::string> beside(const observers::SharedTable& table, std::size_t place) {
  std::set<std::size_t> others;
  for (const observers::SharedItem& run : table.runs) {
    for (std::size_t i = 0; run.scores[place] && i < run.scores.size(); ++i) {
      if (i != place && run.scores[i]) {
        others.insert(i);
      }
    }
  }
  std::vector<std::string> ids;
  ids.reserve(others.size());
  for (const std::size_t other : others) {
    ids.push_back(table.observers[other]);
  }
  return ids;
}

ObserverLine line_of(const observers::SharedTable& table, const std::string& id, int visits,
                     const Names& names) {
  ObserverLine line;
  line.observer = id;
  line.name = name_of(names, id);
  line.visits = visits;
  line.lean = observers::lean_of(table, id);
  const auto at = std::find(table.observers.begin(), table.observers.end(), id);
  if (at != table.observers.end()) {
    line.beside = beside(table, static_cast<std::size_t>(at - table.observers.begin()));
  }
  line.sentence = lean_sentence(line, names);
  line.correction = observers::correction(line.lean);
  return line;
}

std::vector<AgreementPoint> gathered(const std::vector<observers::PairPoint>& points) {
  constexpr double kPlaces = 1e6; // halves and thirds meet again after rounding
  std::map<std::pair<long, long>, AgreementPoint> found;
  for (const observers::PairPoint& point : points) {
    AgreementPoint& one =
        found[{std::lround(point.mean * kPlaces), std::lround(point.difference * kPlaces)}];
    one.mean = point.mean;
    one.difference = point.difference;
    ++one.items;
  }
  std::vector<AgreementPoint> all;
  all.reserve(found.size());
  for (const auto& [key, point] : found) {
    all.push_back(point);
  }
  return all;
}

PairLine pair_line(observers::PairAgreement agreement, double half_width, const Names& names) {
  PairLine line;
  line.points = gathered(agreement.points);
  agreement.points.clear();
  line.sentence = pair_sentence(agreement, names);
  if (agreement.summary.usable && agreement.items > 0) {
    observers::NeededOptions wanted;
    wanted.sd = agreement.sd;
    wanted.half_width = half_width;
    wanted.balls = std::clamp(
        static_cast<int>(std::lround(static_cast<double>(agreement.items) / agreement.sessions)), 1,
        99);
    wanted.likeness = agreement.sd_between * agreement.sd_between / (agreement.sd * agreement.sd);
    const observers::Needed needed = observers::needed(wanted);
    line.needed = needed.summary.usable ? std::optional(needed) : std::nullopt;
  }
  line.agreement = std::move(agreement);
  return line;
}

void add_pairs(ObserversReview& review, const observers::SharedTable& table, const Names& names) {
  for (std::size_t i = 0; i < table.observers.size(); ++i) {
    for (std::size_t j = i + 1; j < table.observers.size(); ++j) {
      observers::PairAgreement agreement =
          observers::pair_agreement(table, table.observers[i], table.observers[j]);
      if (agreement.sessions > 0) {
        review.pairs.push_back(pair_line(std::move(agreement), review.half_width, names));
      }
    }
  }
}

} // namespace

ObserversReview observers_review(const green::Records& records, units::Day today) {
  ObserversReview review;
  review.club = records.club.id;
  Names names;
  for (const green::Observer& observer : records.observers) {
    names.emplace(observer.id, observer.name);
  }
  const observers::SharedTable table = observers::shared_table(records, today);
  review.sessions = static_cast<int>(table.sessions.size());
  review.waiting = table.waiting;
  for (const observers::SharedItem& run : table.runs) {
    review.balls += run.balls;
  }
  const auto visits = scored_visits(records, today);
  for (const std::string& id : order_of(records, visits)) {
    review.observers.push_back(line_of(table, id, visits.at(id), names));
  }
  add_pairs(review, table, names);
  observers::NearbyOptions near;
  near.days = review.nearby_days;
  for (observers::NearbyPair& pair : observers::nearby_pairs(records, today, near)) {
    std::string sentence = nearby_sentence(pair, names, near.days);
    review.nearby.push_back({std::move(pair), std::move(sentence)});
  }
  review.alpha_ordinal = observers::group_alpha(table, stats::AlphaMetric::ordinal);
  review.alpha_interval = observers::group_alpha(table, stats::AlphaMetric::interval);
  review.sentence = headline(review);
  return review;
}

} // namespace baize::services
