#pragma once

#include "baize/green/roll.h"
#include "baize/units/length.h"

#include <optional>
#include <string_view>
#include <vector>

namespace baize::speed {

/// The tolerances of the release ramp's protocol and what is known of its error.
struct Options {
  double run_spread_m = 0.2032;      ///< three balls within 8 in
  double direction_gap_m = 0.4572;   ///< plain mean to be trusted below 18 in
  double roll_sd_m = 0.10;           ///< one roll's standard deviation, where rolls are too few to tell
  double line_drift_m = 0.005;       ///< each repeated roll of one line runs that much further
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Class by downhill over uphill: below 2 gentle, 2 to 3 moderate, above 3 steep.
enum class SlopeClass { gentle, moderate, steep };

/// One direction: mean of its measured distances.
struct RunSpeed {
  double mean_m = 0;
  double spread_m = 0; ///< longest less shortest
  int rolls = 0;
  bool within_tolerance = true;
};

/// Green speed at a spot from the two directions, with both kept.
struct SpotSpeed {
  std::optional<RunSpeed> out;
  std::optional<RunSpeed> back;
  double plain_mean_m = 0;                ///< mean of the two directions' means
  std::optional<double> slope_corrected_m; ///< 2UD/(U+D), when both directions are there
  double speed_m = 0;        ///< the one to use: corrected beyond the direction gap, else plain
  double standard_error_m = 0;
  std::optional<double> ratio;            ///< downhill over uphill
  std::optional<SlopeClass> slope_class;
  bool one_direction_only = false;
  bool directions_apart = false; ///< differ by more than the gap: find a flatter place
  std::vector<std::string_view> warnings; ///< sentences, empty when all is well
};

/// Absent where no roll of the spot's runs has a distance. Runs may be of one
/// spot only. Swapping out and back changes nothing but their places.
std::optional<SpotSpeed> spot_speed(const std::vector<green::Run>& runs, const Options& = {});

/// All spots of a visit: mean over spots, errors added in quadrature.
struct VisitSpeed {
  double speed_m = 0;
  double standard_error_m = 0;
  int spots = 0;
  bool steep = false;
  std::vector<std::string_view> warnings;
};
std::optional<VisitSpeed> visit_speed(const std::vector<green::Run>& runs, const Options& = {});

/// Can two readings be told apart?
struct Change {
  double difference_m = 0; ///< second less first
  double low_m = 0;        ///< 95 % interval
  double high_m = 0;
  bool real = false;       ///< zero lies outside the interval
};
Change change(const VisitSpeed& first, const VisitSpeed& second);

} // namespace baize::speed
