#include "green_model.h"

#include "baize/green/roll_score.h"
#include "baize/season/bounded_score.h"
#include "weigh.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace baize::season {
namespace {

constexpr double kNotYet = -1;   ///< growth-days of a loss that has not come
constexpr double kHighest = 8.5; ///< a run's mean up to which 10 cuts next to nothing off
constexpr double kLowest = 2.5;

struct Seen {
  const green::Visit* visit = nullptr;
  std::optional<units::Minute> at;
};

std::vector<Seen> visits_of(const green::Records& records, const std::string& green,
                            units::Period days) {
  std::vector<Seen> all;
  for (const green::Visit& visit : records.visits) {
    if (visit.green == green && days.holds(visit.day) && green::score_sum(visit.runs)) {
      all.push_back({&visit, visit.from ? visit.from : visit.to});
    }
  }
  std::sort(all.begin(), all.end(), [](const Seen& a, const Seen& b) {
    return std::tie(a.visit->day, a.at, a.visit->id) < std::tie(b.visit->day, b.at, b.visit->id);
  });
  return all;
}

enum class Order { before, after, unclear };

Order order_of(const Seen& seen, const TimedLoss& loss) {
  if (seen.visit->day != loss.loss.day) {
    return seen.visit->day < loss.loss.day ? Order::before : Order::after;
  }
  if (!seen.at || !loss.timed || (*seen.at >= loss.begins && *seen.at <= loss.ends)) {
    return Order::unclear;
  }
  return *seen.at < loss.begins ? Order::before : Order::after;
}

double played(const Seen& seen, const Options& options) {
  const double minutes = seen.at ? seen.at->of_day - options.play_from_minute : 0;
  return std::clamp(minutes / (60 * options.play_hours), 0.0, 1.0);
}

/// Sums over the scored rolls of a run.
struct Rolls {
  int scored = 0;
  double sum = 0;
  double squares = 0;
  int at_ten = 0;
  int at_one = 0;
};

Rolls rolls_of(const green::Run& run) {
  Rolls rolls;
  for (const green::Roll& roll : run.rolls) {
    if (roll.score) {
      ++rolls.scored;
      rolls.sum += *roll.score;
      rolls.squares += static_cast<double>(*roll.score) * *roll.score;
      rolls.at_ten += *roll.score == kTop ? 1 : 0;
      rolls.at_one += *roll.score == kBottom ? 1 : 0;
    }
  }
  return rolls;
}

void add_scatter(const Rolls& rolls, Scatter& scatter) {
  if (rolls.scored < 2) {
    return;
  }
  const double mean = rolls.sum / rolls.scored;
  RollScatter& to = mean >= kLowest && mean <= kHighest ? scatter.inside : scatter.outside;
  to.add({rolls.squares - rolls.sum * mean, rolls.scored, 1});
}

/// Of a run of which only the total is known, all that a total can tell.
void put_bounds(RunMean& run, const Rolls& rolls) {
  run.at_ten = rolls.at_ten;
  run.at_one = rolls.at_one;
  if (rolls.scored == 0) {
    run.at_ten = run.score == kTop ? static_cast<int>(run.scored) : 0;
    run.at_one = run.score == kBottom ? static_cast<int>(run.scored) : 0;
  }
}

/// One row a run and a look, in the making.
class Gathering {
 public:
  Gathering(GreenModel& model, const std::vector<TimedLoss>& losses, const GrowthCurve& curve)
      : model_(model), losses_(losses), curve_(curve) {}

  void add(const Seen& seen, const green::Green& green, Look look, Scatter& scatter) {
    const std::size_t place = model_.looks.size();
    std::vector<double> since;
    since.reserve(losses_.size());
    for (const TimedLoss& loss : losses_) {
      since.push_back(order_of(seen, loss) == Order::after
                          ? curve_.between(loss.loss.last, seen.visit->day)
                          : kNotYet);
    }
    for (const green::Run& run : seen.visit->runs) {
      const auto sum = green::score_sum(run);
      if (!sum) {
        continue;
      }
      const Rolls single = rolls_of(run);
      add_scatter(single, scatter);
      const std::string line =
          run.spot + (run.direction == green::Direction::out ? " out" : " back");
      const double rolls = sum->rolls;
      model_.runs.push_back(
          {place, lines_.place(line), sum->mean(), rolls, sum->mean(), rolls, 0, 0});
      put_bounds(model_.runs.back(), single);
      const std::string& half = green::half_of(&green, *seen.visit, run);
      std::vector<double> share;
      share.reserve(losses_.size());
      for (std::size_t k = 0; k < losses_.size(); ++k) {
        share.push_back(since[k] < 0 ? 0 : half_share(model_, losses_[k].loss.half, half));
      }
      shares_.push_back(std::move(share));
    }
    growth_.push_back(std::move(since));
    model_.looks.push_back(std::move(look));
  }

  void finish() {
    const auto looks = static_cast<Eigen::Index>(model_.looks.size());
    const auto runs = static_cast<Eigen::Index>(model_.runs.size());
    const auto losses = static_cast<Eigen::Index>(losses_.size());
    model_.lines = lines_.all;
    model_.growth = Eigen::MatrixXd(looks, losses);
    model_.run_share = Eigen::MatrixXd(runs, losses);
    for (Eigen::Index i = 0; i < looks; ++i) {
      for (Eigen::Index k = 0; k < losses; ++k) {
        model_.growth(i, k) = growth_[static_cast<std::size_t>(i)][static_cast<std::size_t>(k)];
      }
    }
    for (Eigen::Index r = 0; r < runs; ++r) {
      for (Eigen::Index k = 0; k < losses; ++k) {
        model_.run_share(r, k) = shares_[static_cast<std::size_t>(r)][static_cast<std::size_t>(k)];
      }
    }
    weigh(model_);
  }

 private:
  GreenModel& model_;
  const std::vector<TimedLoss>& losses_;
  const GrowthCurve& curve_;
  Names lines_;
  std::vector<std::vector<double>> growth_;
  std::vector<std::vector<double>> shares_;
};

} // namespace

void RollScatter::add(const RollScatter& more) {
  squares += more.squares;
  rolls += more.rolls;
  runs += more.runs;
}

double half_share(const GreenModel& green, const std::string& loss_half, const std::string& half) {
  if (loss_half.empty() || loss_half == half) {
    return 1;
  }
  if (!half.empty()) {
    return 0;
  }
  return 1.0 / static_cast<double>(std::max<std::size_t>(green.halves.size(), 2));
}

GreenModel gather_green(const green::Records& records, const green::Green& green,
                        units::Period days, const GrowthCurve& curve, const Options& options,
                        Names& observers, Names& methods, Scatter& scatter, int& unclear) {
  GreenModel model;
  model.green = green.id;
  model.halves = green.halves;
  const std::vector<Seen> visits = visits_of(records, green.id, days);
  if (visits.empty()) {
    return model;
  }
  const auto losses =
      losses_of(records, green, {visits.front().visit->day, days.last}, options, methods);
  for (const TimedLoss& loss : losses) {
    model.losses.push_back(loss.loss);
  }
  Gathering rows(model, losses, curve);
  for (const Seen& seen : visits) {
    const bool left_out = std::any_of(losses.begin(), losses.end(), [&](const TimedLoss& loss) {
      return order_of(seen, loss) == Order::unclear;
    });
    if (left_out) {
      ++unclear;
      continue;
    }
    rows.add(seen, green,
             {seen.visit->day, seen.visit->id, observers.place(seen.visit->observer),
              played(seen, options), 0, 0},
             scatter);
  }
  rows.finish();
  return model;
}

} // namespace baize::season
