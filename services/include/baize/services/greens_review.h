#pragma once

#include "baize/services/season_review.h"

namespace baize::services {

/// How the last three scored days compare with the three before: steady within
/// kTrendPoints, unknown with fewer than six scored days.
inline constexpr double kTrendPoints = 0.3;
enum class Trend { unknown, better, steady, worse };

/// One green at a glance.
struct GreenCard {
  std::string green;
  std::string name;
  std::string grass_mix;
  std::optional<units::Day> last_visit;
  std::optional<int> days_since_visit;
  std::optional<double> score;            ///< of the last scored day
  std::optional<speed::VisitSpeed> speed; ///< of the last measured visit
  std::optional<units::Day> speed_day;
  double standard = 8;
  std::optional<bool> at_standard;
  Trend trend = Trend::unknown;
  std::optional<double> trend_points; ///< mean of the last three scored days less the three before
  std::string last_work;              ///< id of the last disruptive work, or empty
  std::string last_work_label;
  std::optional<int> days_since_work;
  bool fast_but_not_true = false; ///< speed at or above the club's median, score below the standard
  int measured_true = 0;          ///< this calendar year so far
  int fewest_true = 0;
  int most_true = 0;
  int open_days = 0;
  std::vector<double> recent_scores; ///< up to twelve last scored days, oldest first
};

struct GreensReview {
  std::string club;
  std::string club_name;
  units::Day today;
  std::vector<int> years; ///< years with any visit, newest first
  std::vector<GreenCard> greens;
  std::optional<double> median_speed_m;
  std::string headline; ///< one plain sentence
};

/// Visits and works after `today` are left out.
GreensReview greens_review(const green::Records& records, const climate::Weather& weather,
                           units::Day today);

} // namespace baize::services
