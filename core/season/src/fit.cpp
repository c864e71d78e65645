#include "baize/season/fit.h"

#include "baize/stats/random.h"
#include "cannot_tell.h"
#include "rate_off.h"
#include "search.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <set>

namespace baize::season {
namespace {

constexpr double kSearchShare = 0.4;                        ///< of a fit's time, about
constexpr std::uint64_t kMethodStreams = 1'000'000'000'000; ///< apart from those of draws and paths
constexpr double kLeastDepth = 0.3; ///< points: a method's depths scatter at least as this one's

/// The scale of a method's depths, from a first look at the beliefs' own parameters.
std::vector<double> typical_depths(const Model& model, const Priors& priors,
                                   const ParameterScale& scale) {
  std::vector<double> typical(model.methods.size(), priors.depth.mean);
  const Posterior first =
      evaluate(model, priors, scale.parameters(Eigen::VectorXd::Zero(scale.size()), typical));
  if (first.usable) {
    const Eigen::VectorXd depths =
        first.shared.tail(static_cast<Eigen::Index>(model.methods.size()));
    for (std::size_t m = 0; m < typical.size(); ++m) {
      typical[m] = std::max(depths(static_cast<Eigen::Index>(m)), kLeastDepth);
    }
  }
  return typical;
}

Eigen::VectorXd normals(stats::Random& random, Eigen::Index size) {
  Eigen::VectorXd all(size);
  for (Eigen::Index i = 0; i < size; ++i) {
    all(i) = random.normal();
  }
  return all;
}

Draw draw_effects(const Posterior& posterior, const std::vector<RateOff>& off,
                  Parameters parameters, stats::Random& random) {
  Draw draw;
  draw.parameters = std::move(parameters);
  const Eigen::LLT<Eigen::MatrixXd> root(posterior.shared_covariance);
  draw.shared = posterior.shared + root.matrixL() * normals(random, posterior.shared.size());
  for (const GreenPosterior& green : posterior.greens) {
    draw.own.push_back(green.base + green.slope * draw.shared +
                       green.precision_root.transpose().triangularView<Eigen::Upper>().solve(
                           normals(random, green.base.size())));
  }
  for (std::size_t g = 0; g < off.size(); ++g) {
    draw.log_rate.emplace_back(off[g].mean + off[g].root * normals(random, off[g].mean.size()));
    draw.own[g] += off[g].response * draw.log_rate.back();
  }
  return draw;
}

/// What `value` makes of each.
template <class Items, class Value> Estimate over(const Items& items, const Value& value) {
  std::vector<double> all;
  all.reserve(items.size());
  for (const auto& item : items) {
    all.push_back(value(item));
  }
  return estimate_of(std::move(all));
}

/// Rates that the works of a method have on the mean. The likelihood lets its n
/// losses share one rate; as they scatter about it by log_rate_within, their mean
/// is off by that over the root of n.
std::vector<double> method_rates(const SeasonFit& fit, std::size_t method, int losses) {
  const double off = fit.options.priors.log_rate_within / std::sqrt(std::max(losses, 1));
  std::vector<double> rates;
  rates.reserve(fit.draws.size());
  for (std::size_t i = 0; i < fit.draws.size(); ++i) {
    stats::Random random(fit.options.seed, kMethodStreams * (method + 1) + i);
    rates.push_back(fit.draws[i].parameters.rate[method] * std::exp(off * random.normal()));
  }
  return rates;
}

void put_methods(SeasonFit& fit, const ParameterScale& scale) {
  const auto first =
      fit.posterior.shared.size() - static_cast<Eigen::Index>(fit.model.methods.size());
  for (std::size_t m = 0; m < fit.model.methods.size(); ++m) {
    MethodEstimate method;
    method.method = fit.model.methods[m];
    std::set<units::Day> days;
    for (const GreenModel& green : fit.model.greens) {
      for (const Loss& loss : green.losses) {
        if (loss.method == m) {
          ++method.losses;
          days.insert(loss.day);
        }
      }
    }
    method.work_days = static_cast<int>(days.size());
    const auto at = static_cast<Eigen::Index>(m);
    const std::vector<double> rates = method_rates(fit, m, method.losses);
    method.depth = over(fit.draws, [&](const Draw& draw) { return draw.shared(first + at); });
    method.rate = estimate_of(rates);
    method.half_life = over(rates, [](double rate) { return std::log(2.0) / rate; });
    const Estimate logs = over(rates, [](double rate) { return std::log(rate); });
    method.rate_determined = logs.standard_error < 0.8 * scale.sd(4 + at);
    fit.methods.push_back(std::move(method));
  }
}

void put_observers(SeasonFit& fit) {
  const Eigen::MatrixXd contrasts = observer_contrasts(fit.model.observers.size());
  for (std::size_t o = 0; o < fit.model.observers.size(); ++o) {
    ObserverEstimate observer;
    observer.observer = fit.model.observers[o];
    for (const GreenModel& green : fit.model.greens) {
      observer.looks += static_cast<int>(std::count_if(
          green.looks.begin(), green.looks.end(), [&](const Look& l) { return l.observer == o; }));
    }
    observer.above = over(fit.draws, [&](const Draw& draw) {
      return contrasts.row(static_cast<Eigen::Index>(o)).dot(draw.shared.head(contrasts.cols()));
    });
    fit.observers.push_back(std::move(observer));
  }
}

void put_estimates(SeasonFit& fit, const ParameterScale& scale) {
  fit.level_walk = over(fit.draws, [](const Draw& d) { return d.parameters.level_walk; });
  fit.visit_sd = over(fit.draws, [](const Draw& d) { return d.parameters.visit_sd; });
  fit.line_sd = over(fit.draws, [](const Draw& d) { return d.parameters.line_sd; });
  fit.depth_spread = over(fit.draws, [](const Draw& d) { return d.parameters.depth_spread; });
  const auto play = static_cast<Eigen::Index>(fit.model.observers.size()) - 1;
  fit.play = over(fit.draws, [&](const Draw& d) { return d.shared(play); });
  put_methods(fit, scale);
  put_observers(fit);
}

bool put_draws(SeasonFit& fit, const ParameterScale& scale, const Peak& peak,
               const stats::Watch& go_on) {
  const std::vector<RateOff> off = rates_off(fit);
  if (off.empty()) {
    return false;
  }
  for (int i = 0; i < fit.options.draws; ++i) {
    if (!go_on(kSearchShare + (1 - kSearchShare) * i / fit.options.draws)) {
      return false;
    }
    stats::Random random(fit.options.seed, static_cast<std::uint64_t>(i));
    const Parameters parameters = scale.parameters(
        peak.at + peak.root * normals(random, peak.at.size()), fit.parameters.typical_depth);
    const Posterior posterior = evaluate(fit.model, fit.options.priors, parameters);
    if (!posterior.usable) {
      return false;
    }
    fit.draws.push_back(draw_effects(posterior, off, parameters, random));
  }
  return true;
}

} // namespace

SeasonFit fit_season(Model model, const Options& options, const stats::Watch& watch) {
  SeasonFit fit;
  fit.model = std::move(model);
  fit.options = options;
  fit.summary = fit.model.summary;
  fit.notes = fit.model.notes;
  if (!fit.summary.usable) {
    return fit;
  }
  const ParameterScale scale(fit.model, options.priors);
  const std::vector<double> typical = typical_depths(fit.model, options.priors, scale);
  bool stopped = false;
  int asked = 0;
  const stats::Watch go_on = [&](double done) {
    stopped = stopped || (watch && !watch(done));
    return !stopped;
  };
  // The search's length is not known beforehand: its share only ever grows.
  const auto search_on = [&] {
    ++asked;
    return go_on(kSearchShare * asked / (asked + 100.0));
  };
  const Peak peak = find_peak(
      scale.size(),
      [&](const Eigen::VectorXd& at) {
        const Posterior there =
            evaluate(fit.model, options.priors, scale.parameters(at, typical), false);
        return there.usable ? there.log_likelihood + scale.log_prior(at) : std::nan("");
      },
      search_on);
  if (!stopped && peak.found) {
    fit.parameters = scale.parameters(peak.at, typical);
    fit.posterior = evaluate(fit.model, options.priors, fit.parameters);
    fit.log_likelihood = fit.posterior.log_likelihood;
    fit.penalised = peak.height;
  }
  if (stopped || !peak.found || !put_draws(fit, scale, peak, go_on)) {
    fit.draws.clear();
    fit.summary = stopped ? stats::stopped()
                          : stats::degenerate({"likelihood_not_finite",
                                               "scores",
                                               "",
                                               "scores and works that the model can follow",
                                               {}});
    return fit;
  }
  put_estimates(fit, scale);
  put_notes(fit);
  fit.summary = stats::converged(peak.evaluations);
  if (!peak.settled) {
    fit.summary.termination = stats::Termination::not_converged;
    fit.summary.message =
        "The search ended before it had settled; the estimates are near the best.";
  }
  return fit;
}

} // namespace baize::season
