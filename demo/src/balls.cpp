#include "balls.h"

#include "calendar.h"
#include "random.h"

#include <algorithm>
#include <cmath>

namespace baize::demo {
namespace {

constexpr double kReleaseSpeed = 1.83; // m/s at the foot of the ramp: 6.00 ft/s, from memory
constexpr double kGravity = 9.81;
constexpr int kBalls = 3;
constexpr int kMownAt = 6 * 60;

double rain_on(const climate::Weather& weather, units::Day day) {
  const auto found = weather.find(day);
  return found == weather.end() ? 0 : found->second.rain_mm.value_or(0);
}

/// Share of a full day's play that has gone over the green by then.
double played(units::Day day, int minute) {
  const double day_share = weekday(day) >= 5 ? 1 : in_season(day) ? 0.75 : 0.35;
  return day_share * std::clamp((minute - 9 * 60) / (8 * 60.0), 0.0, 1.0);
}

bool rolled_on(const DemoClub& club, units::Day day) {
  return in_season(day) && day >= club.truth.days.first && (weekday(day) == 1 || weekday(day) == 4);
}

/// Distance a ball runs up (positive) or down a slope where it runs `flat` on
/// the level: v^2 / (2 g (mu + slope)) with mu = v^2 / (2 g flat).
double on_slope(double flat, double slope) {
  const double friction = kReleaseSpeed * kReleaseSpeed / (2 * kGravity * flat);
  return kReleaseSpeed * kReleaseSpeed / (2 * kGravity * (friction + slope));
}

double to_centimetre(double metres) {
  return static_cast<double>(std::lround(metres * 100)) / 100;
}

/// To the nearest half hour.
double half_hours(int minutes) {
  return static_cast<double>(std::lround(minutes / 30.0)) / 2;
}

double flat_speed(const Truth& truth, const Stop& stop, const green::Conditions& conditions) {
  const auto& green = truth.greens[static_cast<std::size_t>(stop.place)];
  double speed = green.speed_m[static_cast<std::size_t>(stop.day - truth.days.first)];
  speed -= 0.006 * std::min(conditions.hours_since_mowing.value_or(24), 48.0);
  const std::string dew = conditions.dew.value_or("none");
  return speed - (dew == "heavy" ? 0.12 : dew == "light" ? 0.05 : 0);
}

} // namespace

green::Conditions conditions_at(const DemoClub& club, const Stop& stop) {
  Chance chance(club.truth.seed, Purpose::round, {stop.day.since_epoch, stop.minute / 60});
  green::Conditions at;
  const int since_mown = in_season(stop.day) ? stop.minute - kMownAt
                                             : weekday(stop.day) * 24 * 60 + stop.minute - kMownAt;
  if (since_mown > 0) {
    at.hours_since_mowing = half_hours(since_mown);
  }
  if (rolled_on(club, stop.day)) {
    at.hours_since_rolling = half_hours(stop.minute - kMownAt);
  }
  const double wet = rain_on(club.weather, stop.day) + rain_on(club.weather, stop.day - 1) / 2;
  at.surface = wet > 8 ? "wet" : wet > 1.5 ? "moist" : "dry";
  const double wind = chance.uniform();
  at.wind = wind < 0.5 ? "calm" : wind < 0.92 ? "breeze" : "strong";
  const double dew = chance.uniform();
  at.dew = stop.minute > 10 * 60 || dew < 0.35 ? "none" : dew < 0.8 ? "light" : "heavy";
  return at;
}

std::vector<Line> roll_balls(const DemoClub& club, const Stop& stop,
                             const green::Conditions& conditions) {
  const Truth& truth = club.truth;
  const GreenTruth& green = truth.greens[static_cast<std::size_t>(stop.place)];
  Chance chance(truth.seed, Purpose::visit, {stop.day.since_epoch, stop.place, stop.minute});
  const double flat = flat_speed(truth, stop, conditions);
  const double play = truth.after_play * played(stop.day, stop.minute);
  std::vector<Line> lines;
  for (const SpotTruth& spot : green.spots) {
    if (!stop.half.empty() && spot.half != stop.half) {
      continue;
    }
    const double level = truth.level(green.green, spot.half, stop.day) + spot.level_offset - play;
    for (const green::Direction direction : {green::Direction::out, green::Direction::back}) {
      const double sign = direction == green::Direction::out ? 1 : -1;
      Line line{&spot, direction, {}};
      for (int ball = 0; ball < kBalls; ++ball) {
        const double drift = 0.005 * (ball + (sign < 0 ? kBalls : 0)); // the line is rolled in
        const double distance =
            on_slope(flat, sign * spot.slope) + drift + truth.distance_sd_m * chance.normal();
        line.balls.push_back({level + sign * spot.direction + truth.roll_sd * chance.normal(),
                              to_centimetre(std::max(distance, 0.5))});
      }
      lines.push_back(std::move(line));
    }
  }
  return lines;
}

} // namespace baize::demo
