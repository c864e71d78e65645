#pragma once

#include "baize/green/club.h"
#include "baize/speed/green_speed.h"

namespace baize::services {

struct VisitLine {
  std::string visit;
  std::string green;
  std::string green_name;
  std::string half;
  std::string observer;
  units::Day day;
  std::optional<units::Minute> at;
  int rolls = 0;
  std::optional<double> score;
  std::optional<speed::VisitSpeed> speed;
  int remarks = 0;
  green::Source source;
};

struct VisitQuery {
  std::string green; ///< empty: all
  std::optional<units::Period> days;
  int offset = 0;
  int limit = 100; ///< 1 to 1000
};

struct VisitPage {
  int total = 0;
  int offset = 0;
  std::vector<VisitLine> visits; ///< newest first
};
/// Refuses "no_such_green", "limit_out_of_range" and "offset_out_of_range".
units::Result<VisitPage> visit_page(const green::Records& records, const VisitQuery& query);

/// One spot of a visit with its speed worked out in steps.
struct SpotDetail {
  std::string spot;
  std::optional<speed::SpotSpeed> speed;
};

struct VisitDetail {
  green::Visit visit;
  std::string green_name;
  std::optional<double> score;
  int scored_rolls = 0;
  std::optional<speed::VisitSpeed> speed; ///< over its spots
  std::vector<SpotDetail> spots;
  std::vector<units::Problem> remarks;
};
/// Refuses "no_such_visit".
units::Result<VisitDetail> visit_detail(const green::Records& records, const std::string& visit);

} // namespace baize::services
