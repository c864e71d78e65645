#pragma once

#include "baize/climate/growth.h"
#include "baize/recovery/ledger.h"
#include "baize/recovery/work_loss.h"
#include "baize/speed/green_speed.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::services {

/// One visit as a point of the year's picture.
struct VisitPoint {
  std::string visit;
  units::Day day;
  std::optional<units::Minute> at;
  std::string observer;
  std::string half;
  std::optional<double> score;
  std::optional<double> lowest; ///< lowest and highest roll
  std::optional<double> highest;
  int scored_rolls = 0;
  std::optional<speed::VisitSpeed> speed;
  int remarks = 0;
};

struct WorkTick {
  std::string work;
  std::string kind;
  std::string label; ///< "coring 13 mm"
  units::Day day;
  std::optional<units::Day> until;
  std::string half;
  green::WorkClass work_class = green::WorkClass::routine;
};

struct WeatherPoint {
  units::Day day;
  std::optional<double> growth;
  std::optional<double> rain_mm;
  std::optional<double> tmin_c;
  std::optional<double> tmax_c;
};

struct StandardPoint {
  units::Day from; ///< the standard holds from this day on
  double score = 8;
};

/// One green's year, ready to draw.
struct SeasonReview {
  std::string club;
  std::string green;
  std::string green_name;
  int year = 0;
  units::Period period; ///< the year, cut at today
  climate::GrowthOptions growth_options;
  std::vector<VisitPoint> visits;
  std::vector<WorkTick> works;
  std::vector<WeatherPoint> weather;
  std::vector<StandardPoint> standards;
  std::vector<green::Fixture> fixtures;
  recovery::Ledger ledger;
  std::vector<recovery::WorkLoss> losses; ///< of works whose day lies in the period
  int weather_days_missing = 0;
};

/// Works are followed up to `today`, also past the year's end. Fixtures are those
/// of the whole calendar year, works those that touch the period.
/// Refuses "no_such_green", and "no_such_year" outside 1600 to 2600 and for a
/// year that has not begun.
units::Result<SeasonReview> season_review(const green::Records& records,
                                          const climate::Weather& weather, const std::string& green,
                                          int year, units::Day today);

/// "coring 13 mm", "topdressing 2 mm": kind and its leading parameter.
std::string work_label(const green::Work& work);
using recovery::growth_options_for;

} // namespace baize::services
