#pragma once

#include "baize/stats/aft_frailty.h"
#include "covariates.h"

namespace baize::compare::detail {

/// Medians of the methods with what their differences need.
struct Times {
  stats::Summary summary;
  stats::AftFrailtyFit fit;
  std::vector<double> log_median;
  std::vector<double> log_error;
  int df = 0;
  double reach = 0;   ///< how many errors an interval reaches
  double stretch = 1; ///< of every error, for the works' spread comes out too small
};

enum class Unit { days, days_if_good, growth_days };

/// `columns`: covariates, none for growth-days.
Times fit_times(const Table& table, Unit unit, const std::vector<Covariate>& columns, int df,
                const CompareOptions& options);

Figure median_of(const Times& times, std::size_t method);
/// Error of the difference of log medians, stretched.
double error_of_difference(const Times& times, std::size_t first, std::size_t second);
/// Second less first, in the unit of the times.
Figure difference_of(const Times& times, std::size_t first, std::size_t second);
Figure ratio_of(const Times& times, std::size_t first, std::size_t second);
double p_of(const Times& times, std::size_t first, std::size_t second);

} // namespace baize::compare::detail
