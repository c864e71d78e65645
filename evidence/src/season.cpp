// Clubs drawn from the season model itself: do its intervals hold the truth?
#include "baize/season/bounded_score.h"
#include "baize/season/project.h"
#include "baize/stats/random.h"
#include "studies.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace baize::evidence {
namespace {

const units::Day kFirst{19723}; // 2024-01-01
constexpr int kDays = 365;
constexpr double kRollSd = 0.6;
constexpr std::array<double, 2> kRate{0.14, 0.24};
constexpr std::array<double, 2> kDepth{2.2, 1.0};

/// What differs from club to club. The intervals speak of such differences, so
/// worlds that had none would make them look too wide.
struct Nature {
  std::array<double, 2> rate{};
  double level_walk = 0;
  double visit_sd = 0;
  double observer = 0; ///< the first above the second, halved
  double line_sd = 0;
};

Nature draw_nature(stats::Random& random) {
  Nature nature;
  for (std::size_t m = 0; m < kRate.size(); ++m) {
    nature.rate[m] = kRate[m] * std::exp(0.3 * random.normal());
  }
  nature.level_walk = 0.02 * std::exp(0.5 * random.normal());
  nature.visit_sd = 0.15 * std::exp(0.4 * random.normal());
  nature.observer = 0.2 * random.normal();
  nature.line_sd = 0.10 * std::exp(0.4 * random.normal());
  return nature;
}

struct TrueGreen {
  std::vector<double> level; ///< with its losses, by day: rolls scatter about it
  std::vector<double> score; ///< mean of the whole scores up to 10 that it gets
  std::vector<double> depth;
  std::array<double, 2> line{}; ///< out, back: above the green
};

struct Club {
  green::Records records;
  climate::Weather weather;
  Nature nature;
  std::vector<TrueGreen> truth;
};

double growth_on(int day) {
  return climate::growth_potential(11 - 8 * std::cos(6.2831853 * (day - 20) / 365.0),
                                   climate::kCoolSeason);
}

struct WorkDay {
  int day;
  std::size_t method;
};
constexpr std::array<WorkDay, 4> kWorks{{{90, 0}, {160, 1}, {230, 0}, {285, 1}}};

void add_ground(Club& club) {
  for (int i = 0; i < kDays; ++i) {
    climate::WeatherDay day;
    day.day = kFirst + i;
    day.tmean_c = 11 - 8 * std::cos(6.2831853 * (i - 20) / 365.0);
    club.weather[day.day] = day;
  }
  for (const WorkDay& one : kWorks) {
    green::Work work;
    work.kind = one.method == 0 ? "coring" : "verticutting";
    work.day = kFirst + one.day;
    work.id = units::iso(work.day) + "/" + work.kind;
    work.at = units::Minute{480};
    club.records.works.push_back(work);
  }
}

TrueGreen draw_green(const Nature& nature, double level, stats::Random& random) {
  TrueGreen green;
  level += 0.2 * random.normal();
  for (double& line : green.line) {
    line = nature.line_sd * random.normal();
  }
  std::vector<double> rate;
  for (const WorkDay& work : kWorks) {
    green.depth.push_back(kDepth[work.method] * (1 + 0.25 * random.normal()));
    rate.push_back(nature.rate[work.method] * std::exp(0.12 * random.normal()));
  }
  std::array<double, 4> growth{};
  for (int day = 0; day < kDays; ++day) {
    level += nature.level_walk * random.normal();
    double score = level;
    for (std::size_t k = 0; k < kWorks.size(); ++k) {
      growth[k] += day > kWorks[k].day ? growth_on(day) : 0;
      if (day >= kWorks[k].day) {
        score -= green.depth[k] * std::exp(-rate[k] * growth[k]);
      }
    }
    green.level.push_back(score);
    green.score.push_back(season::bounded_score(score, std::hypot(kRollSd, nature.visit_sd)));
  }
  return green;
}

green::Visit draw_visit(const Nature& nature, const std::string& id, int day,
                        const TrueGreen& green, stats::Random& random) {
  green::Visit visit;
  visit.green = id;
  visit.day = kFirst + day;
  visit.from = units::Minute{510};
  visit.id = id + "/" + units::iso(visit.day);
  const bool first = random.below(2) == 0;
  visit.observer = first ? "first" : "second";
  const double shared = green.level[static_cast<std::size_t>(day)] +
                        (first ? 1 : -1) * nature.observer + nature.visit_sd * random.normal();
  for (const auto direction : {green::Direction::out, green::Direction::back}) {
    green::Run run;
    run.spot = "A";
    run.direction = direction;
    for (int ball = 1; ball <= 3; ++ball) {
      green::Roll roll;
      roll.order = ball;
      const double seen =
          shared + green.line[static_cast<std::size_t>(direction)] + kRollSd * random.normal();
      roll.score = std::clamp(static_cast<int>(std::lround(seen)), 1, 10);
      run.rolls.push_back(roll);
    }
    visit.runs.push_back(run);
  }
  return visit;
}

struct Habit {
  const char* name;
  int every;          ///< days
  bool skips;         ///< after a good score the next visit is left out three times in four
  double level = 7.4; ///< undisturbed, as the year begins
};

Club draw_club(const Habit& habit, std::uint64_t stream) {
  Club club;
  stats::Random random(20240101, stream);
  club.nature = draw_nature(random);
  add_ground(club);
  green::Standard standard;
  standard.score = habit.level - 0.4;
  club.records.standards.push_back(standard);
  for (const std::string id : {"1", "2", "3"}) {
    green::Green green;
    green.id = id;
    green.spots = {{"A", {}, ""}};
    club.records.greens.push_back(green);
    club.truth.push_back(draw_green(club.nature, habit.level, random));
    bool good = false;
    for (int day = static_cast<int>(random.below(static_cast<std::size_t>(habit.every)));
         day < kDays; day += habit.every) {
      if (habit.skips && good && random.below(4) != 0) {
        good = false;
        continue;
      }
      club.records.visits.push_back(draw_visit(club.nature, id, day, club.truth.back(), random));
      int sum = 0;
      for (const green::Run& run : club.records.visits.back().runs) {
        for (const green::Roll& roll : run.rolls) {
          sum += roll.score.value_or(0);
        }
      }
      good = sum >= 6 * habit.level;
    }
  }
  return club;
}

struct Row {
  Coverage score;
  Coverage depth;
  Coverage rate;
  Coverage observer;
  Coverage true_days;
};

void add(Coverage& coverage, const season::Estimate& one, double truth) {
  coverage.add(truth, one.value, {one.low, one.high});
}

void tally_green(Row& row, const season::SeasonFit& fit, const Club& club, std::size_t place) {
  const auto year = season::project(fit, club.records, club.records.greens[place].id, "",
                                    {kFirst, kFirst + (kDays - 1)}, {0});
  const TrueGreen& truth = club.truth[place];
  double true_days = 0;
  for (std::size_t i = 0; i < year.days.size(); ++i) {
    const season::DayEstimate& day = year.days[i];
    row.score.add(truth.score[i], day.score, {day.score_low, day.score_high});
    true_days += truth.score[i] >= day.standard ? 1 : 0;
  }
  add(row.true_days, year.true_days, true_days);
  for (const season::WorkEstimate& work : year.works) {
    for (std::size_t k = 0; k < kWorks.size(); ++k) {
      if (kFirst + kWorks[k].day == work.loss.day) {
        add(row.depth, work.depth, truth.depth[k]);
      }
    }
  }
}

void tally_club(Row& row, const Club& club) {
  season::Options options;
  const auto fit = season::fit_season(
      season::read_model(club.records, club.weather, kFirst + (kDays - 1), options), options);
  if (!fit.summary.usable) {
    for (Coverage* one : {&row.score, &row.depth, &row.rate, &row.observer, &row.true_days}) {
      one->refuse();
    }
    return;
  }
  for (std::size_t g = 0; g < fit.model.greens.size(); ++g) {
    tally_green(row, fit, club, g);
  }
  for (const season::MethodEstimate& method : fit.methods) {
    add(row.rate, method.rate, club.nature.rate[method.method == "coring" ? 0 : 1]);
  }
  for (const season::ObserverEstimate& one : fit.observers) {
    if (one.observer == "first") { // the second is its mirror image
      add(row.observer, one.above, club.nature.observer);
    }
  }
}

constexpr std::array<Habit, 7> kHabits{{{"every day", 1, false},
                                        {"every 2 days", 2, false},
                                        {"every 4 days", 4, false},
                                        {"every 7 days", 7, false},
                                        {"every 14 days", 14, false},
                                        {"every 4 days, fewer when it was good", 4, true},
                                        {"every 4 days, greens close to 10", 4, false, 9.2}}};

} // namespace

Study season(int worlds) {
  Study study{"season",
              "The season model",
              "Clubs drawn from the model itself: three greens, one year, four works of two "
              "methods, two observers, six rolls a visit, whole scores. Rates, the walk of the "
              "level, what a visit's rolls share and the observers differ from club to club, and "
              "each loss has a rate of its own. In the last row but one three visits of four are "
              "left out after a good score. In the last the level is 9.2, where every third roll "
              "or so is scored 10. The standard lies 0.4 below the level. Intervals of one club's "
              "days go together, so "
              "the share of daily scores is known less well than its range says.",
              {},
              {}};
  const auto table = [](const char* of) {
    return Table{of, Coverage::header("visits", "intervals"), {}};
  };
  study.tables = {table("A day's score, points"), table("A work's depth, points"),
                  table("A method's rate, per growth-day"),
                  table("The first of two observers above their mean, points"),
                  table("A green's true days, days")};
  std::uint64_t stream = 0;
  for (const Habit& habit : kHabits) {
    Row row;
    for (int i = 0; i < worlds; ++i) {
      tally_club(row, draw_club(habit, stream++));
    }
    const std::array all{&row.score, &row.depth, &row.rate, &row.observer, &row.true_days};
    for (std::size_t i = 0; i < all.size(); ++i) {
      study.tables[i].rows.push_back(all[i]->row(habit.name));
    }
  }
  study.findings = {
      "All shares lie between 93 and 97 % but one: the observer where visits come every 4 days, a "
      "row of 1,000 whose own range reaches 93.7 %. Drawn once more from another seed, 1,500 such "
      "worlds gave 94.7 % (93.5 to 95.8)."};
  return study;
}

} // namespace baize::evidence
