#include "baize/speed/green_speed.h"

#include <algorithm>
#include <cmath>

namespace baize::speed {
namespace {

constexpr std::string_view kSpread =
    "The balls of one direction came to rest too far apart: roll that direction again.";
constexpr std::string_view kFew =
    "Fewer than three rolls in a direction: the error is the usual one, not this green's.";
constexpr std::string_view kOneWay =
    "Rolled in one direction only: slope cannot be told from speed.";
constexpr std::string_view kApart =
    "The two directions differ too much for their plain mean: the slope formula is used; look for "
    "a flatter place.";
constexpr std::string_view kModerate =
    "Moderate slope: downhill runs two to three times as far as uphill.";
constexpr std::string_view kSteep =
    "Steep slope: downhill runs more than three times as far as uphill; take the figure as a "
    "guide only.";

/// Takes up what unit conversions add, so that 15 ft over 5 ft is 3 and not above.
constexpr double kRounding = 1e-9;
constexpr int kFullRun = 3;
constexpr double kPriorWeight = 4; // degrees of freedom: those of three rolls each way

/// The measured rolls of one direction.
struct Side {
  RunSpeed speed;
  double squares = 0; ///< about the mean
};

std::optional<Side> side(const std::vector<green::Run>& runs, green::Direction direction,
                         const Options& options) {
  std::vector<double> metres;
  for (const green::Run& run : runs) {
    for (const green::Roll& roll : run.rolls) {
      if (run.direction == direction && roll.distance && roll.distance->metres > 0 &&
          std::isfinite(roll.distance->metres)) {
        metres.push_back(roll.distance->metres);
      }
    }
  }
  if (metres.empty()) {
    return std::nullopt;
  }
  // Sorted, so that the order of the rolls changes no digit.
  std::sort(metres.begin(), metres.end());
  Side found;
  found.speed.rolls = static_cast<int>(metres.size());
  double sum = 0;
  for (const double x : metres) {
    sum += x;
  }
  found.speed.mean_m = sum / found.speed.rolls;
  for (const double x : metres) {
    found.squares += (x - found.speed.mean_m) * (x - found.speed.mean_m);
  }
  found.speed.spread_m = metres.back() - metres.front();
  found.speed.within_tolerance = found.speed.spread_m <= options.run_spread_m + kRounding;
  return found;
}

/// One roll's variance: the prior, and what full runs add to it.
double roll_variance(const std::vector<Side>& sides, const Options& options) {
  double squares = kPriorWeight * options.roll_sd_m * options.roll_sd_m;
  double weight = kPriorWeight;
  for (const Side& one : sides) {
    if (one.speed.rolls >= kFullRun) {
      squares += one.squares;
      weight += one.speed.rolls - 1;
    }
  }
  return squares / weight;
}

/// The mean's lengthening by the balls that went over the line before.
double drift_bias(const std::vector<green::Run>& runs, const Options& options) {
  std::size_t balls = 0;
  for (const green::Run& run : runs) {
    balls += run.rolls.size();
  }
  return options.line_drift_m * (static_cast<double>(balls) - 1) / 2;
}

SlopeClass slope_class(double ratio) {
  if (ratio > 3 + kRounding) {
    return SlopeClass::steep;
  }
  return ratio >= 2 - kRounding ? SlopeClass::moderate : SlopeClass::gentle;
}

/// Both directions: means, slope formula, and which of them to use. `bias` is
/// that of each direction's mean.
void join(SpotSpeed& spot, double variance, double bias, const Options& options) {
  const bool out_is_up = spot.out->mean_m <= spot.back->mean_m;
  const RunSpeed& uphill = out_is_up ? *spot.out : *spot.back;
  const RunSpeed& downhill = out_is_up ? *spot.back : *spot.out;
  const double up = uphill.mean_m;
  const double down = downhill.mean_m;
  const double sum = up + down;
  spot.plain_mean_m = sum / 2;
  spot.slope_corrected_m = 2 * up * down / sum;
  spot.ratio = down / up;
  spot.slope_class = slope_class(*spot.ratio);
  spot.directions_apart = down - up > options.direction_gap_m + kRounding;
  spot.speed_m = spot.directions_apart ? *spot.slope_corrected_m : spot.plain_mean_m;
  const double by_up = spot.directions_apart ? 2 * (down / sum) * (down / sum) : 0.5;
  const double by_down = spot.directions_apart ? 2 * (up / sum) * (up / sum) : 0.5;
  const double random =
      variance * (by_up * by_up / uphill.rolls + by_down * by_down / downhill.rolls);
  const double shift = bias * (by_up + by_down);
  spot.standard_error_m = std::sqrt(random + shift * shift);
}

std::vector<std::string_view> warnings(const SpotSpeed& spot) {
  std::vector<std::string_view> found;
  const auto any = [&](auto holds) {
    return (spot.out && holds(*spot.out)) || (spot.back && holds(*spot.back));
  };
  if (any([](const RunSpeed& run) { return !run.within_tolerance; })) {
    found.push_back(kSpread);
  }
  if (any([](const RunSpeed& run) { return run.rolls < kFullRun; })) {
    found.push_back(kFew);
  }
  if (spot.one_direction_only) {
    found.push_back(kOneWay);
  }
  if (spot.directions_apart) {
    found.push_back(kApart);
  }
  if (spot.slope_class == SlopeClass::moderate) {
    found.push_back(kModerate);
  }
  if (spot.slope_class == SlopeClass::steep) {
    found.push_back(kSteep);
  }
  return found;
}

} // namespace

std::optional<SpotSpeed> spot_speed(const std::vector<green::Run>& runs, const Options& options) {
  const auto out = side(runs, green::Direction::out, options);
  const auto back = side(runs, green::Direction::back, options);
  if (!options.valid() || (!out && !back)) {
    return std::nullopt;
  }
  SpotSpeed spot;
  std::vector<Side> sides;
  for (const auto& [from, to] : {std::pair(&out, &spot.out), std::pair(&back, &spot.back)}) {
    if (*from) {
      *to = (*from)->speed;
      sides.push_back(**from);
    }
  }
  // In order of length, so that swapping out and back changes no digit.
  std::sort(sides.begin(), sides.end(), [](const Side& a, const Side& b) {
    return std::pair(a.speed.mean_m, a.squares) < std::pair(b.speed.mean_m, b.squares);
  });
  const double variance = roll_variance(sides, options);
  const double bias = drift_bias(runs, options);
  if (out && back) {
    join(spot, variance, bias, options);
  } else {
    const RunSpeed& only = sides.front().speed;
    spot.one_direction_only = true;
    spot.plain_mean_m = only.mean_m;
    spot.speed_m = only.mean_m;
    spot.standard_error_m = std::sqrt(variance / only.rolls + bias * bias);
  }
  spot.warnings = warnings(spot);
  return spot;
}

} // namespace baize::speed
