#pragma once

#include "baize/green/roll.h"
#include "baize/units/length.h"
#include "baize/units/problem.h"

#include <optional>
#include <string_view>
#include <vector>

namespace baize::speed {

/// The tolerances of the release ramp's protocol and what is known of its error.
/// 8 in: the ramp's instruction booklet (from memory). 18 in: common practice, no
/// source. The errors: common practice, no source.
struct Options {
  double run_spread_m = 0.2032;    ///< three balls within 8 in
  double direction_gap_m = 0.4572; ///< plain mean to be trusted below 18 in
  double roll_sd_m = 0.10;     ///< one roll's standard deviation, where rolls are too few to tell
  double line_drift_m = 0.005; ///< each repeated roll of one line runs that much further
  /// "option_out_of_range" where a number is not finite or makes no sense.
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// Class by downhill over uphill: below 2 gentle, 2 to 3 moderate, above 3 steep
/// (course rating manual, green-speed slope formula; Brede AD 1990, Green Section
/// Record 28(6):10-12).
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
  double plain_mean_m = 0;                 ///< mean of the two directions' means
  std::optional<double> slope_corrected_m; ///< 2UD/(U+D), when both directions are there
  double speed_m = 0; ///< the one to use: corrected beyond the direction gap, else plain
  double standard_error_m = 0;
  std::optional<double> ratio; ///< downhill over uphill
  std::optional<SlopeClass> slope_class;
  bool one_direction_only = false;
  bool directions_apart = false;          ///< differ by more than the gap: find a flatter place
  std::vector<std::string_view> warnings; ///< sentences, empty when all is well
};

/// Absent where no roll of the spot's runs has a distance above 0, and where the
/// options are not valid. Runs may be of one spot only. Swapping out and back
/// changes nothing but their places.
///
/// Standard error. One roll's variance is pooled from the prior and the spot's own
/// rolls: s2 = (4 sd^2 + SS) / (4 + df), where sd is Options::roll_sd_m, SS and df
/// are the sum of squares about each direction's mean and its degrees of freedom,
/// from directions of three rolls or more. The prior's weight of 4 is that of one
/// full spot, so at three and three rolls both count alike; with fewer than three
/// rolls the prior stands alone. Directions' errors s2/n go through the mean, or
/// through the slope formula by its slopes 2D^2/(U+D)^2 and 2U^2/(U+D)^2. The
/// drift of a line rolled N times makes its mean too long by drift (N-1)/2; the
/// figure is not corrected, that bias is added in quadrature. What is common to
/// every reading of one ramp is not in it: about 12 in between ramps and users
/// has been reported (abstract, Science and Golf).
std::optional<SpotSpeed> spot_speed(const std::vector<green::Run>& runs, const Options& = {});

/// All spots of a visit: mean over spots, errors added in quadrature. Absent as
/// spot_speed is. `steep` where any spot is.
struct VisitSpeed {
  double speed_m = 0;
  double standard_error_m = 0;
  int spots = 0;
  bool steep = false;
  std::vector<std::string_view> warnings;
};
std::optional<VisitSpeed> visit_speed(const std::vector<green::Run>& runs, const Options& = {});

/// Can two readings be told apart? The interval is normal, 1.96 standard errors
/// of the difference; each standard error leans on a prior, so a t quantile would
/// claim a count of rolls that is not its only source. The drift's bias, which two
/// visits share, is counted in both: rather too wide than too narrow.
struct Change {
  double difference_m = 0; ///< second less first
  double low_m = 0;        ///< 95 % interval
  double high_m = 0;
  bool real = false; ///< zero lies outside the interval
};
Change change(const VisitSpeed& first, const VisitSpeed& second);

} // namespace baize::speed
