// The plain intervals of recovery: how often do they hold the day on which the
// green's true level came back to the standard, when rolls scatter?
#include "baize/green/roll_score.h"
#include "baize/recovery/work_loss.h"
#include "baize/stats/random.h"
#include "studies.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace baize::evidence {
namespace {

constexpr units::Day kWork{20200};
constexpr double kUndisturbed = 8.8; ///< points
constexpr double kDepth = 2.5;
constexpr double kRate = 0.1; ///< a day

double level(int days_after) {
  return kUndisturbed - (days_after < 0 ? 0 : kDepth * std::exp(-kRate * days_after));
}

/// First day at the standard of 8: ln(2.5 / 0.8) / 0.1 = 11.4 days, so the 12th.
const int kTrueDay = static_cast<int>(std::ceil(std::log(kDepth / (kUndisturbed - 8)) / kRate));

green::Visit visit(int days_after, int rolls, double noise, stats::Random& chance) {
  green::Visit made;
  made.id = std::to_string(days_after + 100);
  made.green = "1";
  made.observer = "a";
  made.day = kWork + days_after;
  for (const green::Direction direction : {green::Direction::out, green::Direction::back}) {
    green::Run run{"1", direction, {}, {}, {}};
    for (int i = 1; i <= rolls / 2; ++i) {
      const double felt = level(days_after) + noise * chance.normal();
      const int score = std::clamp(static_cast<int>(std::lround(felt)), 1, 10);
      run.rolls.push_back({i, std::nullopt, std::nullopt, score});
    }
    made.runs.push_back(std::move(run));
  }
  return made;
}

double mean_of(const green::Visit& visit) {
  return green::score_sum(visit.runs)->mean();
}

struct Habit {
  int every = 4;
  bool missed_good = false; ///< after a good score every other visit is left out
};

green::Records club(const Habit& habit, double noise, stats::Random& chance) {
  green::Records records;
  records.greens.push_back({"1", "1st", green::Grass::cool, "", {}, {}, {}, {}});
  green::Work work;
  work.id = "w";
  work.kind = "coring";
  work.day = kWork;
  records.works.push_back(work);
  bool good = false;
  const int phase = static_cast<int>(chance.below(static_cast<std::size_t>(habit.every)));
  for (int day = -14 + phase; day <= 60; day += habit.every) {
    if (day == 0 || (habit.missed_good && good && chance.uniform() < 0.5)) {
      continue;
    }
    records.visits.push_back(visit(day, 6, noise, chance));
    good = mean_of(records.visits.back()) >= 8;
  }
  return records;
}

void rows(int worlds, const Habit& habit, double noise, Table& table) {
  struct Count {
    int held = 0;
    int early = 0;
    int late = 0;
    int open = 0;
    double width = 0;
  };
  std::array<Count, 3> counts{};
  for (int world = 0; world < worlds; ++world) {
    stats::Random chance(501, static_cast<std::uint64_t>(world));
    const auto losses = recovery::work_losses(club(habit, noise, chance), {}, "1", kWork + 60);
    for (std::size_t d = 0; d < counts.size(); ++d) {
      const auto& found = losses.front().recovery[d];
      if (!found.by_days) {
        ++counts[d].open;
      } else if (*found.by_days < kTrueDay) {
        ++counts[d].early;
      } else if (found.after_days >= kTrueDay) {
        ++counts[d].late;
      } else {
        ++counts[d].held;
      }
      counts[d].width += found.by_days ? *found.by_days - found.after_days : 0;
    }
  }
  static constexpr std::array kNames{"first day at the standard", "two visits running", "lasting"};
  for (std::size_t d = 0; d < counts.size(); ++d) {
    const Count& one = counts[d];
    const auto share = [&](int n) { return fmt::format("{:.1f} %", 100.0 * n / worlds); };
    table.rows.push_back(
        {fmt::format("every {} d{}, {}", habit.every,
                     habit.missed_good ? ", half missed once good" : "", kNames[d]),
         std::to_string(worlds), share(one.held), share(one.early), share(one.late),
         share(one.open), fmt::format("{:.1f}", one.width / std::max(1, worlds - one.open))});
  }
}

} // namespace

Study recovery_figures(int worlds) {
  Study study{
      "recovery_figures",
      "The plain intervals of recovery",
      fmt::format(
          "A green of {} points loses {} to a work and comes back by a tenth of the loss "
          "a day: its level is at the standard of 8 on day {}. Visits of six balls, whole "
          "scores; one roll scatters by 0.3, 0.6 or 0.9 points. An interval (last visit "
          "below, first visit back] has no nominal coverage. Its visits are facts; what the "
          "table asks is how often they bracket the day on which the level itself was back.",
          kUndisturbed, kDepth, kTrueDay),
      {},
      {}};
  for (const double noise : {0.3, 0.6, 0.9}) {
    Table table{fmt::format("One roll's scatter {} points", noise),
                {"visits", "worlds", "holds the true day", "all too early", "all too late",
                 "not ended", "width, days"},
                {}};
    for (const int every : {1, 2, 4, 7, 14}) {
      rows(worlds, {every, false}, noise, table);
    }
    rows(worlds, {4, true}, noise, table);
    study.tables.push_back(std::move(table));
  }
  study.findings = {
      "Near the standard a lucky visit ends the count too early, under every definition; daily "
      "visits do not help, they give luck more chances. \"Lasting\" errs to the late side where "
      "visits are many.",
      "Where rolls scatter little, whole scores call a level of 7.6 an 8: early again.",
      "So the plain interval says what was seen. For the day on which the green itself was back, "
      "and for how sure that is, read the season model, which weighs all visits together."};
  return study;
}

} // namespace baize::evidence
