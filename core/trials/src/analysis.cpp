#include "baize/trials/analysis.h"

#include "baize/stats/area_under_curve.h"
#include "baize/units/number.h"

namespace baize::trials {
namespace {

/// Visits on the day of the treatment come before it: it is done after the first look.
Values after(const Values& values, const std::optional<units::Day>& treated) {
  Values later = values;
  later.days.clear();
  later.by_day.clear();
  for (std::size_t d = 0; d < values.days.size(); ++d) {
    if (!treated || values.days[d] > *treated) {
      later.days.push_back(values.days[d]);
      later.by_day.push_back(values.by_day[d]);
    }
  }
  return later;
}

std::vector<std::optional<double>> heights(const Values& values, Analysis& analysis) {
  if (values.days.size() == 1) {
    return values.by_day.front();
  }
  std::vector<std::optional<double>> heights;
  for (std::size_t i = 0; i < values.by_day.front().size(); ++i) {
    std::vector<double> times;
    std::vector<double> readings;
    for (std::size_t d = 0; d < values.days.size(); ++d) {
      if (values.by_day[d][i]) {
        times.push_back(values.days[d] - values.days.front());
        readings.push_back(*values.by_day[d][i]);
      }
    }
    const bool both_ends = values.by_day.front()[i] && values.by_day.back()[i];
    analysis.area_lost += both_ends ? 0 : 1;
    analysis.interpolated += both_ends ? static_cast<int>(values.days.size() - times.size()) : 0;
    const auto area = stats::area_under_curve(times, readings);
    heights.push_back(both_ends && area.summary.usable ? std::optional(area.mean_height)
                                                       : std::nullopt);
  }
  return heights;
}

} // namespace

std::optional<units::Problem> AnalysisOptions::problem() const {
  return TimeBackOptions{{}, standard, confidence}.problem();
}

Analysis analyse(const Plan& plan, const Values& all, const AnalysisOptions& options) {
  Analysis result;
  result.quantity = all.quantity;
  result.records = all.records;
  const Values values = after(all, options.treated);
  auto problem = options.problem();
  if (!problem && values.days.empty()) {
    problem = units::Problem{"too_few", "days", "0", "at least one visit after the treatment", ""};
  }
  if (problem) {
    result.summary = stats::refused(*problem);
    return result;
  }
  result.overall = analyse_values(plan, heights(values, result), options.confidence);
  result.summary = result.overall.summary;
  for (std::size_t d = 0; d < all.days.size(); ++d) {
    result.days.push_back({all.days[d], analyse_values(plan, all.by_day[d], options.confidence)});
  }
  result.repeated = analyse_repeated(plan, values);
  if (options.treated) {
    result.back = time_back(plan, all, {*options.treated, options.standard, options.confidence});
  }
  if (result.summary.usable) {
    result.checks =
        check_assumptions(plan, result.overall.values, result.overall.strata.back().residual_df);
  }
  return result;
}

} // namespace baize::trials
