#include "baize/recovery/work_loss.h"
#include "baize/units/number.h"
#include "bound.h"
#include "green_model.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>

namespace baize::season {
namespace {

constexpr int kFewestVisits = 10;
constexpr int kFewestDays = 3;        ///< of a green
constexpr int kDaysToCome = 400;      ///< of the growth curve, for forecasts
constexpr double kUsualRollSd = 0.65; ///< where only totals were written down; common practice
constexpr int kFewestRuns = 20;       ///< to tell the rolls' scatter

units::Period days_of(const green::Records& records, units::Day record_end) {
  units::Period days{record_end, record_end};
  for (const green::Visit& visit : records.visits) {
    days.first = std::min(days.first, visit.day);
  }
  return days;
}

int visited_days(const GreenModel& green) {
  std::set<units::Day> days;
  for (const Look& look : green.looks) {
    days.insert(look.day);
  }
  return static_cast<int>(days.size());
}

void put_curves(Model& model, const climate::Weather& weather, units::Period days,
                const Options& options) {
  // The year before the first visit counts too: a work may lie in it.
  const units::Period wide{days.first - 366, days.last + kDaysToCome};
  model.clock = options.clock;
  const GrowthCurve known(weather, climate::kCoolSeason, days, Clock::growth_days);
  const int missing = known.missing(days.last);
  if (options.clock == Clock::growth_days && 2 * missing > days.days()) {
    model.clock = Clock::calendar_days;
    model.notes.push_back("The weather has no temperature on " + units::write_number(missing) +
                          " of " + units::write_number(days.days()) +
                          " days, so the losses run on calendar days, not on growth.");
  }
  for (const green::Grass grass : {green::Grass::cool, green::Grass::warm}) {
    model.curves.emplace_back(weather, recovery::growth_options_for(grass), wide, model.clock);
  }
}

void put_roll_sd(Model& model, const Scatter& all) {
  RollScatter scatter = all.inside;
  if (scatter.runs < kFewestRuns) {
    scatter.add(all.outside);
  }
  if (scatter.runs < kFewestRuns) {
    model.roll_sd = kUsualRollSd;
    model.notes.push_back("Too few single rolls were written down to see how they scatter; " +
                          units::write_number(kUsualRollSd) + " points are assumed.");
    return;
  }
  // Whole numbers cannot scatter less than their rounding does.
  model.roll_sd = std::sqrt(std::max(scatter.squares / (scatter.rolls - scatter.runs), 1.0 / 12));
  model.roll_sd_rolls = scatter.rolls;
}

void note_bounds(Model& model) {
  double scored = 0;
  double at_bound = 0;
  for (const GreenModel& green : model.greens) {
    for (const RunMean& run : green.runs) {
      scored += run.scored;
      at_bound += run.at_ten + run.at_one;
    }
  }
  constexpr double kMany = 0.1;
  if (at_bound > kMany * scored) {
    model.notes.push_back(units::write_number(at_bound) + " of " + units::write_number(scored) +
                          " rolls were scored 10 or 1. How far beyond they were nobody wrote "
                          "down, so good greens are known less well.");
  }
}

bool all_equal(const Model& model) {
  const double first = model.greens.front().runs.front().mean;
  return std::all_of(model.greens.begin(), model.greens.end(), [&](const GreenModel& green) {
    return std::all_of(green.runs.begin(), green.runs.end(),
                       [&](const RunMean& run) { return run.mean == first; });
  });
}

/// What keeps `model` from being fitted, where something does.
std::optional<units::Problem> too_little(const Model& model) {
  std::size_t looks = 0;
  for (const GreenModel& green : model.greens) {
    looks += green.looks.size();
  }
  if (looks < kFewestVisits) {
    return units::Problem{"too_few_visits",
                          "visits",
                          units::write_number(static_cast<double>(looks)),
                          "at least 10 scored visits, on greens with 3 visited days or more",
                          {}};
  }
  if (all_equal(model)) {
    return units::Problem{"all_scores_equal",
                          "score",
                          units::write_number(model.greens.front().runs.front().mean),
                          "scores that differ: equal ones tell nothing of levels or losses",
                          {}};
  }
  return std::nullopt;
}

} // namespace

Model read_model(const green::Records& records, const climate::Weather& weather,
                 units::Day record_end, const Options& options) {
  Model model;
  model.record_end = record_end;
  if (const auto problem = options.problem()) {
    model.summary = stats::refused(*problem);
    return model;
  }
  const units::Period days = days_of(records, record_end);
  put_curves(model, weather, days, options);
  Names observers;
  Names methods;
  Scatter scatter;
  int unclear = 0;
  for (const green::Green& green : records.greens) {
    const std::size_t curve = green.grass == green::Grass::warm ? 1 : 0;
    Names observers_so_far = observers;
    Names methods_so_far = methods;
    Scatter scatter_so_far = scatter;
    GreenModel one = gather_green(records, green, days, model.curves[curve], options,
                                  observers_so_far, methods_so_far, scatter_so_far, unclear);
    one.curve = curve;
    if (visited_days(one) < kFewestDays) {
      model.notes.push_back("Green " + green.id +
                            " is left out: " + units::write_number(visited_days(one)) +
                            " visited days, at least 3 are needed.");
      continue;
    }
    observers = std::move(observers_so_far);
    methods = std::move(methods_so_far);
    scatter = scatter_so_far;
    model.greens.push_back(std::move(one));
  }
  model.observers = observers.all;
  model.methods = methods.all;
  if (unclear > 0) {
    model.notes.push_back(
        units::write_number(unclear) +
        " visits on the day of a work are left out: no times say which came first.");
  }
  if (const auto problem = too_little(model)) {
    model.summary = stats::degenerate(*problem);
    return model;
  }
  put_roll_sd(model, scatter);
  for (GreenModel& green : model.greens) {
    open_bounds(green, model.roll_sd);
    green.fixed = fixed_columns(green, model.observers.size());
  }
  note_bounds(model);
  model.summary = stats::done();
  return model;
}

} // namespace baize::season
