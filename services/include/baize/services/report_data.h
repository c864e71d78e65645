#pragma once

#include "baize/services/greens_review.h"
#include "baize/services/work_review.h"

#include <string>
#include <vector>

namespace baize::services {

/// The ledgers of all greens added up, in green-days: 19 greens open on one day
/// are 19 green-days.
struct LedgerTotals {
  int greens = 0;
  int measured_true = 0;
  int measured_not = 0;
  int between_true = 0;
  int unmeasured = 0;
  int closed = 0;
  int open() const { return measured_true + measured_not + between_true + unmeasured; }
  int fewest_true() const { return measured_true; }
  int most_true() const { return measured_true + between_true + unmeasured; }
};

/// What the report's figures rest on.
struct ReportBasis {
  int visits = 0;
  int observers = 0;      ///< who made them
  int scored_rolls = 0;   ///< a run kept as a total counts its balls
  int measured_rolls = 0; ///< with a distance
  int weather_days = 0;   ///< days of the period with a temperature
  int weather_days_missing = 0;
};

/// Everything the printed report of one club and year needs.
struct ReportData {
  std::string club;
  std::string club_name;
  int year = 0;
  units::Period period;    ///< the year, cut at today
  bool year_ended = false; ///< false: today lies in the year and the report is of a part of it
  units::Day today;        ///< works are followed up to here, also past the year's end
  GreensReview greens;     ///< as of the period's last day
  std::vector<SeasonReview> seasons; ///< one for each green, in walking order
  std::vector<WorkReview> works;     ///< the year's disruptive works, oldest first
  LedgerTotals totals;
  ReportBasis basis;
  std::vector<std::string> sentences; ///< for the committee, most important first
  std::vector<std::string> methods;   ///< how the figures were computed, a sentence each
};

/// Refuses "no_such_year" outside 1600 to 2600 and for a year that has not begun.
units::Result<ReportData> report_data(const green::Records& records,
                                      const climate::Weather& weather, int year, units::Day today);

} // namespace baize::services
