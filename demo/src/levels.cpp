#include "levels.h"

#include "calendar.h"
#include "random.h"

#include <algorithm>
#include <set>

namespace baize::demo {
namespace {

/// Growth of the last month or so, 0 in frost to 1 in good growing weather.
std::vector<double> vigour(const std::vector<double>& growth) {
  std::vector<double> all;
  double mean = 0.1; // as January is
  for (const double today : growth) {
    mean += (std::min(1.0, today / 0.45) - mean) / 25;
    all.push_back(mean);
  }
  return all;
}

/// Points lost while annual meadow grass is in seed: a peak at 18 May, three weeks to each side.
double seeding(units::Day day) {
  const units::YearMonthDay date = units::year_month_day(day);
  const int apart = std::abs(units::day_of_year(day) -
                             units::day_of_year(units::make_day(date.year, 5, 18).value_or(day)));
  return apart < 21 ? 0.4 * (1 - apart / 21.0) : 0;
}

std::set<units::Day> rolled_days(const green::Records& records) {
  std::set<units::Day> days;
  for (const green::Work& work : records.works) {
    if (work.kind == "rolling") {
      days.insert(work.day);
    }
  }
  return days;
}

} // namespace

double loss_on(const Truth& truth, const std::string& green, const std::string& half,
               units::Day day) {
  double sum = 0;
  for (const WorkTruth& work : truth.works) {
    const int since = day - work.day;
    if (since >= 0 && since < static_cast<int>(work.loss.size()) && work.green == green) {
      const double share = work.half.empty() || work.half == half ? 1 : half.empty() ? 0.5 : 0;
      sum += share * work.loss[static_cast<std::size_t>(since)];
    }
  }
  return sum;
}

double Truth::level(const std::string& green, const std::string& half, units::Day day) const {
  const auto found = std::find_if(greens.begin(), greens.end(),
                                  [&](const GreenTruth& one) { return one.green == green; });
  if (found == greens.end() || !days.holds(day)) {
    return 0;
  }
  return found->undisturbed[static_cast<std::size_t>(day - days.first)] -
         loss_on(*this, green, half, day);
}

void walk_levels(DemoClub& club) {
  Truth& truth = club.truth;
  const auto strength = vigour(truth.growth);
  const auto rolled = rolled_days(club.records);
  for (std::size_t place = 0; place < truth.greens.size(); ++place) {
    GreenTruth& green = truth.greens[place];
    Chance level_chance(truth.seed, Purpose::level, {static_cast<std::int64_t>(place)});
    Chance speed_chance(truth.seed, Purpose::speed, {static_cast<std::int64_t>(place)});
    double walk = 0.15 * level_chance.normal();
    double pace = 0.05 * speed_chance.normal();
    for (std::size_t i = 0; i < truth.growth.size(); ++i) {
      const units::Day day = truth.days.first + static_cast<int>(i);
      walk += -walk / 150 + 0.02 * level_chance.normal();
      pace += -pace / 12 + 0.025 * speed_chance.normal();
      green.undisturbed.push_back(green.base_level + walk - 0.4 * (1 - strength[i]) -
                                  (green.seeds_in_may ? seeding(day) : 0));
      const double loss = loss_on(truth, green.green, {}, day);
      const double roller = rolled.contains(day) ? 0.13 : rolled.contains(day - 1) ? 0.06 : 0;
      green.speed_m.push_back(green.base_speed_m + pace + roller - 0.25 * (1 - strength[i]) -
                              0.2 * (truth.growth[i] - 0.5) - 0.1 * loss);
    }
  }
}

} // namespace baize::demo
