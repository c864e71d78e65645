#include "baize/trials/time_back.h"

#include "baize/stats/aft_frailty.h"
#include "baize/stats/distributions.h"
#include "baize/units/number.h"
#include "grid.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace baize::trials {
namespace {

/// The plots' days; plots without a visit after the treatment are left out.
std::vector<PlotBack> plots_back(const Plan& plan, const Values& values,
                                 const TimeBackOptions& options) {
  std::vector<PlotBack> plots;
  for (std::size_t i = 0; i < plan.plots.size(); ++i) {
    PlotBack back{plan.plots[i].number, treatment_name(plan.plots[i]), {}, true};
    bool seen = false;
    bool is_back = false;
    for (std::size_t d = 0; d < values.days.size() && !is_back; ++d) {
      const int since = values.days[d] - options.treated;
      const auto& value = values.by_day[d][i];
      if (since < 1 || !value) {
        continue;
      }
      seen = true;
      is_back = *value >= options.standard;
      (is_back ? back.days.right : back.days.left) = since;
      back.never_below = back.never_below && is_back;
    }
    if (seen) {
      plots.push_back(back);
    }
  }
  return plots;
}

/// Names of the treatments, or pairs, that have a time to estimate.
std::vector<std::string> timed(const Plan& plan, TimeBack& result) {
  std::vector<std::string> names;
  const auto others = plan.has_second() ? seconds(plan) : std::vector{std::string()};
  for (const std::string& first : treatments(plan)) {
    for (const std::string& second : others) {
      const std::string name = treatment_name(first, second);
      int below = 0;
      int back = 0;
      for (const PlotBack& plot : result.plots) {
        below += plot.treatment == name && !plot.never_below ? 1 : 0;
        back += plot.treatment == name && !plot.days.right_censored() ? 1 : 0;
      }
      auto& list = back == 0 ? result.never_back : below == 0 ? result.never_below : names;
      list.push_back(name);
    }
  }
  return names;
}

/// The plots of these treatments.
std::vector<PlotBack> of_treatments(const std::vector<PlotBack>& plots,
                                    const std::vector<std::string>& names) {
  std::vector<PlotBack> found;
  for (const PlotBack& plot : plots) {
    if (std::find(names.begin(), names.end(), plot.treatment) != names.end()) {
      found.push_back(plot);
    }
  }
  return found;
}

/// Of the plots within blocks; of one treatment alone, of its plots.
int degrees_of_freedom(const Plan& plan, std::size_t plots, std::size_t names) {
  const std::size_t taken = names + (plan.has_blocks() && names > 1 ? blocks(plan).size() - 1 : 0);
  return static_cast<int>(plots) - static_cast<int>(taken);
}

struct Model {
  stats::AftFit fit;
  bool blocks = false;
};

Model fit_model(const Plan& plan, const std::vector<PlotBack>& plots,
                const std::vector<std::string>& names) {
  std::vector<stats::AftObservation> observations;
  std::vector<int> clusters;
  for (const PlotBack& back : plots) {
    stats::AftObservation one{back.days, {}};
    for (std::size_t k = 1; k < names.size(); ++k) {
      one.covariates.push_back(back.treatment == names[k] ? 1 : 0);
    }
    observations.push_back(std::move(one));
    const auto plot = std::find_if(plan.plots.begin(), plan.plots.end(),
                                   [&](const Plot& p) { return p.number == back.plot; });
    clusters.push_back(plot->block);
  }
  stats::AftOptions options;
  options.distribution = stats::AftDistribution::log_logistic;
  if (plan.has_blocks()) {
    const auto frailty = stats::fit_aft_frailty(observations, clusters, {options});
    if (frailty.fit.summary.usable) {
      return {frailty.fit, frailty.cluster_sd > 0};
    }
  }
  return {stats::fit_aft(observations, options), false};
}

/// Median of treatment k; the logistic's own median is 0.
double median(const stats::AftFit& fit, std::size_t k) {
  return std::exp(fit.coefficients[0].value + (k > 0 ? fit.coefficients[k].value : 0));
}

/// Variance of sum over k of weight[k] times log median of treatment k.
double variance(const stats::AftFit& fit, const std::vector<double>& weight) {
  std::vector<double> gradient(fit.coefficients.size(), 0);
  for (std::size_t k = 0; k < weight.size(); ++k) {
    gradient[0] += weight[k];
    gradient[k] += k > 0 ? weight[k] : 0;
  }
  double sum = 0;
  for (std::size_t i = 0; i < gradient.size(); ++i) {
    for (std::size_t j = 0; j < gradient.size(); ++j) {
      sum += gradient[i] * fit.covariance[i][j] * gradient[j];
    }
  }
  return sum;
}

void add_treatments(const stats::AftFit& fit, const std::vector<std::string>& names, double t,
                    TimeBack& result) {
  for (std::size_t k = 0; k < names.size(); ++k) {
    std::vector<double> weight(names.size(), 0);
    weight[k] = 1;
    const double wide = std::exp(t * std::sqrt(variance(fit, weight)));
    TreatmentBack one{
        names[k], median(fit, k), {median(fit, k) / wide, median(fit, k) * wide}, 0, 0};
    for (const PlotBack& plot : result.plots) {
      one.plots += plot.treatment == names[k] ? 1 : 0;
      one.not_back += plot.treatment == names[k] && plot.days.right_censored() ? 1 : 0;
    }
    result.treatments.push_back(one);
  }
}

void add_differences(const stats::AftFit& fit, const std::vector<std::string>& names, double t,
                     TimeBack& result) {
  for (std::size_t a = 0; a < names.size(); ++a) {
    for (std::size_t b = a + 1; b < names.size(); ++b) {
      std::vector<double> weight(names.size(), 0);
      weight[a] = median(fit, a);
      weight[b] = -median(fit, b);
      const double error = std::sqrt(variance(fit, weight));
      const double days = median(fit, a) - median(fit, b);
      // The test is of the logarithms, where the model is linear.
      weight[a] = 1;
      weight[b] = -1;
      const double ratio = std::log(median(fit, a) / median(fit, b));
      const double p =
          2 * stats::t_upper(std::fabs(ratio) / std::sqrt(variance(fit, weight)), result.df);
      result.differences.push_back(
          {names[a], names[b], days, {days - t * error, days + t * error}, p});
    }
  }
}

} // namespace

std::optional<units::Problem> TimeBackOptions::problem() const {
  if (!(confidence > 0 && confidence < 1)) {
    return units::Problem{"option_out_of_range", "confidence", units::write_number(confidence),
                          "above 0 and below 1", ""};
  }
  if (!std::isfinite(standard)) {
    return units::Problem{"option_out_of_range", "standard", units::write_number(standard),
                          "a finite number", ""};
  }
  return std::nullopt;
}

TimeBack time_back(const Plan& plan, const Values& values, const TimeBackOptions& options) {
  TimeBack result;
  if (const auto problem = options.problem()) {
    result.summary = stats::refused(*problem);
    return result;
  }
  result.plots = plots_back(plan, values, options);
  if (result.plots.empty()) {
    result.summary =
        stats::refused({"too_few", "visits after the treatment", "0", "at least 1", ""});
    return result;
  }
  const auto names = timed(plan, result);
  const auto modelled = of_treatments(result.plots, names);
  if (names.empty()) {
    result.summary =
        stats::degenerate({"all_censored", "plots", "never below the standard, or never back",
                           "some that fell below it and came back", ""});
    return result;
  }
  const int df = degrees_of_freedom(plan, modelled.size(), names.size());
  if (df < 1) {
    result.summary = stats::refused({"too_few", "plots seen after the treatment",
                                     std::to_string(modelled.size()),
                                     "more than treatments and blocks together", ""});
    return result;
  }
  const Model model = fit_model(plan, modelled, names);
  result.summary = model.fit.summary;
  result.blocks = model.blocks;
  result.df = df;
  if (!model.fit.summary.usable) {
    return result;
  }
  const double t = stats::t_quantile(0.5 + options.confidence / 2, result.df);
  add_treatments(model.fit, names, t, result);
  add_differences(model.fit, names, t, result);
  return result;
}

} // namespace baize::trials
