#include "baize/season/check.h"

#include <algorithm>
#include <cmath>

namespace baize::season {
namespace {

constexpr double kBeyond = 2;
constexpr double kLeastSd = 0.9;
constexpr double kMostSd = 1.1;
constexpr double kMostOutside = 0.07;
constexpr double kLeastP = 0.01;
constexpr int kFits = 3;
constexpr int kFewestDraws = 50;

/// The share of one of several fits, as a share of all.
stats::Watch part(const stats::Watch& watch, int place) {
  if (!watch) {
    return {};
  }
  return [&watch, place](double done) { return watch((place + done) / kFits); };
}

std::optional<Clocks> clocks_of(const SeasonFit& fit, const green::Records& records,
                                const climate::Weather& weather, stats::Summary& summary,
                                const stats::Watch& watch) {
  const bool growth = fit.model.clock == Clock::growth_days;
  Options options = fit.options;
  if (!growth && options.clock == Clock::growth_days) {
    return std::nullopt; // the weather did not carry growth-days
  }
  options.clock = growth ? Clock::calendar_days : Clock::growth_days;
  options.draws = kFewestDraws; // only the likelihood is asked
  const SeasonFit other =
      fit_season(read_model(records, weather, fit.model.record_end, options), options, watch);
  summary = other.summary;
  if (!summary.usable || other.model.clock != options.clock) {
    return std::nullopt;
  }
  return growth ? Clocks{fit.log_likelihood, other.log_likelihood}
                : Clocks{other.log_likelihood, fit.log_likelihood};
}

double shift(const Estimate& from, const Estimate& to) {
  return from.standard_error > 0 ? (to.value - from.value) / from.standard_error : 0;
}

/// On the log scale, where a rate's draws lie evenly to both sides.
Estimate log_rate(const SeasonFit& fit, std::size_t method) {
  std::vector<double> logs;
  logs.reserve(fit.draws.size());
  for (const Draw& draw : fit.draws) {
    logs.push_back(std::log(draw.parameters.rate[method]));
  }
  return estimate_of(std::move(logs));
}

Leaning leaning_of(const SeasonFit& fit, double times, stats::Summary& summary,
                   const stats::Watch& watch) {
  Options options = fit.options;
  options.priors = options.priors.wider(times);
  const SeasonFit other = fit_season(fit.model, options, watch);
  summary = other.summary;
  Leaning leaning;
  leaning.times = times;
  for (std::size_t m = 0; m < other.methods.size(); ++m) {
    const MethodEstimate& method = fit.methods[m];
    leaning.methods.push_back({method.method, shift(method.depth, other.methods[m].depth),
                               shift(log_rate(fit, m), log_rate(other, m))});
    leaning.most = std::max({leaning.most, std::abs(leaning.methods.back().depth),
                             std::abs(leaning.methods.back().rate)});
  }
  return leaning;
}

} // namespace

Surprises surprises_of(const SeasonFit& fit) {
  Surprises found;
  std::vector<std::vector<double>> greens;
  double n = 0;
  double squares = 0;
  for (std::size_t g = 0; g < fit.model.greens.size(); ++g) {
    greens.push_back(innovations(fit.model, g, fit.parameters, fit.posterior));
    for (const double one : greens.back()) {
      n += 1;
      const double off = one - found.mean;
      found.mean += off / n;
      squares += off * (one - found.mean);
      found.outside += std::abs(one) > kBeyond ? 1 : 0;
    }
  }
  found.sd = n > 1 ? std::sqrt(squares / (n - 1)) : 0;
  found.outside = n > 0 ? found.outside / n : 0;
  found.in_line = stats::ljung_box(greens, {8, 2});
  found.like_chance = found.in_line.summary.usable && found.sd >= kLeastSd && found.sd <= kMostSd &&
                      found.outside <= kMostOutside && found.in_line.p > kLeastP;
  return found;
}

Checks check_season(const SeasonFit& fit, const green::Records& records,
                    const climate::Weather& weather, const stats::Watch& watch) {
  Checks checks;
  checks.summary = fit.summary;
  if (!fit.summary.usable) {
    return checks;
  }
  checks.surprises = surprises_of(fit);
  stats::Summary summary;
  checks.clocks = clocks_of(fit, records, weather, summary, part(watch, 0));
  int place = 1;
  for (const double times : {0.5, 2.0}) {
    if (summary.termination == stats::Termination::stopped) {
      break;
    }
    Leaning leaning = leaning_of(fit, times, summary, part(watch, place++));
    if (summary.usable) {
      checks.leaning.push_back(std::move(leaning));
    }
  }
  if (summary.termination == stats::Termination::stopped) {
    return Checks{summary, {}, {}, {}};
  }
  checks.summary = stats::done();
  return checks;
}

} // namespace baize::season
