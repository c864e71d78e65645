#include "baize/observers/pair.h"

#include "baize/stats/kappa.h"
#include "pair_sums.h"
#include "places.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <utility>

namespace baize::observers {
namespace {

constexpr int kLowest = 1;
constexpr int kHighest = 10;

/// What one session adds to every figure.
struct Part {
  PairSums scores;
  Sums differences;
  stats::Table counts; ///< single balls only
};

struct Parts {
  std::vector<Part> of;
  PairSums all;
  stats::Table counts;
  double confidence = 0.95;

  PairSums scores(std::optional<std::size_t> left_out) const {
    return left_out ? all.without(of[*left_out].scores) : all;
  }
};

stats::Table no_counts() {
  return {static_cast<std::size_t>(kHighest - kLowest + 1),
          std::vector<double>(static_cast<std::size_t>(kHighest - kLowest + 1))};
}

struct Pair {
  const SharedItem* item = nullptr;
  double first = 0;
  double second = 0;
};

std::vector<Pair> pairs_of(const std::vector<SharedItem>& items, std::size_t first,
                           std::size_t second) {
  std::vector<Pair> pairs;
  for (const SharedItem& item : items) {
    if (item.scores[first] && item.scores[second]) {
      pairs.push_back({&item, *item.scores[first], *item.scores[second]});
    }
  }
  return pairs;
}

int balls_of(const std::vector<Pair>& pairs) {
  int balls = 0;
  for (const Pair& pair : pairs) {
    balls += pair.item->balls;
  }
  return balls;
}

void count(stats::Table& counts, const Pair& pair) {
  const auto row = static_cast<std::size_t>(pair.first) - kLowest;
  const auto column = static_cast<std::size_t>(pair.second) - kLowest;
  counts[row][column] += 1;
}

Parts parts_of(const std::vector<Pair>& pairs, bool of_runs, double confidence) {
  Parts parts;
  parts.confidence = confidence;
  parts.counts = no_counts();
  std::map<std::size_t, std::size_t> places;
  for (const Pair& pair : pairs) {
    const auto [at, fresh] = places.emplace(pair.item->session, parts.of.size());
    if (fresh) {
      parts.of.push_back({{}, {}, of_runs ? stats::Table{} : no_counts()});
    }
    Part& part = parts.of[at->second];
    part.scores.add(pair.first, pair.second);
    part.differences.add(pair.first - pair.second);
    parts.all.add(pair.first, pair.second);
    if (!of_runs) {
      count(part.counts, pair);
      count(parts.counts, pair);
    }
  }
  return parts;
}

/// The interval of bias + times sd from those of both: a deviation's lies further to
/// the right of it than to the left, and so must that of a limit (Zou 2013). No two
/// scores differ by more than 9, so none is above that in the long run.
stats::Interval joined(double limit, double times, const Estimate& bias, const Estimate& log_sd) {
  const double sd = std::exp(log_sd.value);
  double below = std::exp(log_sd.interval->low) - sd;
  const double most = std::max(sd, double{kHighest - kLowest});
  double above = std::min(std::exp(log_sd.interval->high), most) - sd;
  if (times < 0) {
    std::swap(below, above);
  }
  return {limit - std::hypot(bias.value - bias.interval->low, times * below),
          limit + std::hypot(bias.interval->high - bias.value, times * above)};
}

void limits(PairAgreement& found, const Parts& parts, double multiplier) {
  std::vector<Sums> sessions;
  sessions.reserve(parts.of.size());
  for (const Part& part : parts.of) {
    sessions.push_back(part.differences);
  }
  const auto whole = spread(sessions);
  std::vector<std::optional<Spread>> without;
  without.reserve(sessions.size());
  for (std::size_t i = 0; i < sessions.size(); ++i) {
    without.push_back(spread(sessions, i));
  }
  const auto figure = [&](const auto& value) {
    return by_session(
               parts.of.size(),
               [&](std::optional<std::size_t> left_out) -> std::optional<double> {
                 const auto& of = left_out ? without[*left_out] : whole;
                 return of ? std::optional(value(*of)) : std::nullopt;
               },
               parts.confidence)
        .value_or(Estimate{});
  };
  const Estimate log_sd = figure([](const Spread& of) {
    constexpr double kNothing = 1e-12; // what rounding leaves of a variance of 0
    return of.total > kNothing ? std::log(of.total) / 2 : -std::numeric_limits<double>::infinity();
  });
  const auto limit = [&](double times) {
    Estimate one = figure([&](const Spread& of) { return of.mean + times * std::sqrt(of.total); });
    if (log_sd.interval) {
      one.interval = joined(one.value, times, found.bias, log_sd);
    }
    return one;
  };
  found.bias = figure([](const Spread& of) { return of.mean; });
  found.lower_limit = limit(-multiplier);
  found.upper_limit = limit(multiplier);
  if (whole) {
    found.sd_within = std::sqrt(whole->within);
    found.sd_between = std::sqrt(whole->between);
    found.sd = std::sqrt(whole->total);
  }
}

std::optional<Estimate> kappa(const Parts& parts, stats::KappaWeights weights) {
  return by_session(
      parts.of.size(),
      [&](std::optional<std::size_t> left_out) -> std::optional<double> {
        stats::Table counts = parts.counts;
        for (std::size_t i = 0; left_out && i < counts.size(); ++i) {
          for (std::size_t j = 0; j < counts.size(); ++j) {
            counts[i][j] -= parts.of[*left_out].counts[i][j];
          }
        }
        const stats::Kappa found = stats::cohen_kappa(counts, weights);
        return found.summary.usable ? std::optional(found.value) : std::nullopt;
      },
      parts.confidence, -1, 1);
}

std::optional<Estimate> coefficient(const Parts& parts,
                                    std::optional<double> (*figure)(const PairSums&)) {
  return by_session(
      parts.of.size(),
      [&](std::optional<std::size_t> left_out) { return figure(parts.scores(left_out)); },
      parts.confidence, -1, 1);
}

void describe(PairAgreement& found, const std::vector<Pair>& pairs) {
  int equal = 0;
  int near = 0;
  for (const Pair& pair : pairs) {
    constexpr double kRounding = 1e-9;
    const double difference = pair.first - pair.second;
    equal += std::fabs(difference) < kRounding ? 1 : 0;
    near += std::fabs(difference) < 1 + kRounding ? 1 : 0;
    found.points.push_back({pair.item->session, (pair.first + pair.second) / 2, difference});
  }
  found.items = static_cast<int>(pairs.size());
  found.balls = balls_of(pairs);
  found.equal_share = static_cast<double>(equal) / found.items;
  found.within_one = static_cast<double>(near) / found.items;
}

} // namespace

std::optional<units::Problem> PairOptions::problem() const {
  if (auto bad = outside("multiplier", multiplier, 0, 10, "a number above 0 and below 10")) {
    return bad;
  }
  return outside("confidence", confidence, 0, 1, "a number above 0 and below 1");
}

PairAgreement pair_agreement(const SharedTable& table, const std::string& first,
                             const std::string& second, const PairOptions& options) {
  PairAgreement found;
  found.first = first;
  found.second = second;
  const auto refuse = [&](units::Problem problem) {
    found.summary = stats::refused(std::move(problem));
    return found;
  };
  if (const auto bad = options.problem()) {
    return refuse(*bad);
  }
  const auto one = place_of(table, first);
  const auto other = place_of(table, second);
  if (!one || !other) {
    return refuse(unknown_observer(one ? second : first));
  }
  if (*one == *other) {
    return refuse(
        {"shared_with_oneself", "observer", second, "another observer than the first", {}});
  }
  std::vector<Pair> pairs = pairs_of(table.rolls, *one, *other);
  const std::vector<Pair> runs = pairs_of(table.runs, *one, *other);
  found.of_runs = 2 * balls_of(pairs) < balls_of(runs);
  pairs = found.of_runs ? runs : pairs;
  const Parts parts = parts_of(pairs, found.of_runs, options.confidence);
  found.sessions = static_cast<int>(parts.of.size());
  if (parts.of.size() < 2) {
    return refuse(no_shared_rolls(parts.of.size()));
  }
  describe(found, pairs);
  limits(found, parts, options.multiplier);
  if (!found.of_runs) {
    found.kappa_quadratic = kappa(parts, stats::KappaWeights::quadratic);
    found.kappa_linear = kappa(parts, stats::KappaWeights::linear);
  }
  found.icc = coefficient(parts, icc_random_single);
  found.concordance = coefficient(parts, concordance_of);
  constexpr double kNoSpread = 1e-9;
  found.summary = found.sd > kNoSpread
                      ? stats::done()
                      : stats::degenerate({"all_equal",
                                           "differences",
                                           "all the same",
                                           "not all the same, since limits are drawn from "
                                           "their scatter",
                                           {}});
  return found;
}

} // namespace baize::observers
