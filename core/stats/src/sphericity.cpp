#include "baize/stats/sphericity.h"

#include "baize/stats/distributions.h"
#include "checks.h"
#include "trial_layout.h"

#include <algorithm>

namespace baize::stats {
namespace {

using detail::Column;
using units::Problem;

std::optional<Problem> not_repeated(const DesignedTrial& trial, std::size_t time,
                                    const TrialAnova& anova) {
  if (time >= trial.treatments.size()) {
    return Problem{"no_such_factor", "time", std::to_string(time), "a place of a treatment", ""};
  }
  if (anova.lost > 0) {
    return Problem{"lost_plots", "y", std::to_string(anova.lost) + " missing",
                   "there at every time", ""};
  }
  Problem problem{"not_repeated", "layout", "without units measured once at every time",
                  "units in the last stratum, each with one value at every time", ""};
  if (trial.strata.empty() || anova.strata.size() != trial.strata.size() + 1) {
    return problem;
  }
  const auto units = detail::partition(trial.strata.back().level);
  const auto times = detail::partition(trial.treatments[time].level);
  const auto both = detail::crossed(units, times);
  if (both.classes() != trial.y.size() || both.classes() != units.classes() * times.classes()) {
    return problem;
  }
  for (const TrialTerm& term : anova.strata.back().terms) {
    if (std::find(term.factors.begin(), term.factors.end(), time) == term.factors.end()) {
      return problem;
    }
  }
  return std::nullopt;
}

/// tr(S)^2 / ((k - 1) tr(S^2)) with S the cross products of the times' residuals:
/// they have mean 0 in every unit, so no contrasts need to be chosen.
double epsilon_of(const detail::Layout& layout, const Column& y, const detail::Partition& units,
                  const detail::Partition& times) {
  const Column left = residual_of(layout, layout.strata.size() - 1, y);
  std::vector<Column> rows(units.classes(), Column(times.classes(), 0));
  for (std::size_t i = 0; i < left.size(); ++i) {
    rows[units.of[i]][times.of[i]] = left[i];
  }
  long double trace = 0;
  long double squares = 0;
  for (std::size_t a = 0; a < times.classes(); ++a) {
    for (std::size_t b = 0; b < times.classes(); ++b) {
      long double sum = 0;
      for (const Column& row : rows) {
        sum += row[a] * row[b];
      }
      trace += a == b ? sum : 0;
      squares += sum * sum;
    }
  }
  return static_cast<double>(trace * trace / ((times.classes() - 1) * squares));
}

} // namespace

Sphericity sphericity(const DesignedTrial& trial, std::size_t time, const TrialOptions& options) {
  Sphericity result;
  const TrialAnova anova = trial_anova(trial, options);
  result.summary = anova.summary;
  if (!anova.summary.usable) {
    return result;
  }
  if (auto problem = not_repeated(trial, time, anova)) {
    result.summary = refused(*problem);
    return result;
  }
  const TrialStratum& last = anova.strata.back();
  const auto units = detail::partition(trial.strata.back().level);
  const auto times = detail::partition(trial.treatments[time].level);
  const auto steps = static_cast<double>(times.classes() - 1);
  const double between = last.residual_df / steps;
  if (last.residual_df <= 0 || !(last.residual_ms > 0) || between <= 1) {
    result.summary = degenerate({"no_residual", "layout", "too few units treated alike",
                                 "two or more degrees of freedom for error between units", ""});
    return result;
  }
  const auto layout = detail::trial_layout(trial, options);
  Column y(anova.y.begin(), anova.y.end());
  const double epsilon = epsilon_of(*layout, y, units, times);
  result.greenhouse_geisser = std::clamp(epsilon, 1 / steps, 1.0);
  const double under = steps * (between - steps * epsilon);
  result.huynh_feldt = under > 0 ? std::clamp(((between + 1) * steps * epsilon - 2) / under,
                                              result.greenhouse_geisser, 1.0)
                                 : 1;
  for (const TrialTerm& term : last.terms) {
    const double f = term.f.value_or(0);
    const auto p = [&](double e) { return f_upper(f, e * term.df, e * last.residual_df); };
    result.tests.push_back(
        {term.name, f, p(1), p(result.greenhouse_geisser), p(result.huynh_feldt)});
  }
  return result;
}

} // namespace baize::stats
