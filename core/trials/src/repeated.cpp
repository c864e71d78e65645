#include "baize/trials/repeated.h"

#include "baize/stats/distributions.h"
#include "baize/stats/sphericity.h"
#include "strata.h"

#include <algorithm>

namespace baize::trials {
namespace {

/// Every plot once for each day: plots become a stratum, days a treatment.
stats::DesignedTrial with_days(const Plan& plan, const Values& values) {
  const stats::DesignedTrial one =
      designed(plan, std::vector<std::optional<double>>(plan.plots.size()));
  stats::DesignedTrial all;
  all.treatments = one.treatments;
  all.treatments.push_back({"day", {}});
  all.strata = one.strata;
  all.strata.push_back({"plots over all days", {}});
  for (auto* groupings : {&all.treatments, &all.strata}) {
    for (stats::Grouping& grouping : *groupings) {
      grouping.level.clear();
    }
  }
  for (std::size_t day = 0; day < values.days.size(); ++day) {
    for (std::size_t i = 0; i < plan.plots.size(); ++i) {
      all.y.push_back(values.by_day[day][i]);
      for (std::size_t k = 0; k < one.treatments.size(); ++k) {
        all.treatments[k].level.push_back(one.treatments[k].level[i]);
      }
      all.treatments.back().level.push_back(static_cast<int>(day));
      for (std::size_t k = 0; k < one.strata.size(); ++k) {
        all.strata[k].level.push_back(one.strata[k].level[i]);
      }
      all.strata.back().level.push_back(static_cast<int>(i));
    }
  }
  return all;
}

std::string plain_name(const std::string& term) {
  std::string name = term;
  for (auto at = name.find(':'); at != std::string::npos; at = name.find(':')) {
    name.replace(at, 1, " and ");
  }
  return name;
}

double corrected(double f, int df, int error_df, double epsilon) {
  return stats::f_upper(f, epsilon * df, epsilon * error_df);
}

} // namespace

Repeated analyse_repeated(const Plan& plan, const Values& values) {
  Repeated result;
  if (values.days.size() < 2) {
    result.summary = stats::refused({"too_few", "days", std::to_string(values.days.size()),
                                     "at least 2 to see a course through time", ""});
    return result;
  }
  const stats::DesignedTrial trial = with_days(plan, values);
  const stats::TrialAnova anova = stats::trial_anova(trial);
  result.summary = anova.summary;
  result.lost = anova.lost;
  if (!anova.summary.usable) {
    return result;
  }
  const std::size_t time = trial.treatments.size() - 1;
  const stats::Sphericity epsilon = stats::sphericity(trial, time);
  result.lower_bound = !epsilon.summary.usable;
  result.epsilon = result.lower_bound ? 1.0 / static_cast<double>(values.days.size() - 1)
                                      : epsilon.greenhouse_geisser;
  for (const stats::TrialStratum& stratum : anova.strata) {
    for (const stats::TrialTerm& term : stratum.terms) {
      if (term.f && term.p) {
        RepeatedTest test{plain_name(term.name), *term.f, term.df,
                          stratum.residual_df,   *term.p, *term.p};
        const bool with_time =
            std::find(term.factors.begin(), term.factors.end(), time) != term.factors.end();
        if (with_time) {
          test.p_corrected = corrected(test.f, test.df, test.error_df, result.epsilon);
        }
        result.tests.push_back(std::move(test));
      }
    }
  }
  return result;
}

} // namespace baize::trials
