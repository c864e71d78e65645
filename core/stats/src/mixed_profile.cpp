#include "baize/stats/mixed_profile.h"

#include "baize/stats/distributions.h"
#include "mixed_search.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <utility>

namespace baize::stats {
namespace {

using detail::MixedCriterion;
using detail::MixedDesign;
using detail::MixedValue;
using detail::Objective;
using Eigen::VectorXd;

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

/// How far a parameter held at a value lies from its estimate, in standard
/// deviations of the likelihood ratio: sqrt(-2 log L there - that at the best).
using Distance = std::function<double(double)>;

/// From `inside`, where the distance is below z, through `step`, doubled, to where
/// it is above; then false position with the Illinois rule. NaN where not found.
double find_end(const Distance& distance, double inside, double step, double z) {
  double outside = inside + step;
  double over = distance(outside) - z;
  double under = -z;
  for (int doublings = 0; over <= 0; ++doublings) {
    if (doublings == 30 || std::isnan(over)) {
      return kNaN;
    }
    inside = outside;
    under = over;
    step *= 2;
    outside += step;
    over = distance(outside) - z;
  }
  int side = 0;
  for (int tries = 0; tries < 100; ++tries) {
    const double next = std::isfinite(over) ? (inside * over - outside * under) / (over - under)
                                            : (inside + outside) / 2;
    const double value = distance(next) - z;
    if (std::isnan(value)) {
      return kNaN;
    }
    const bool done =
        std::fabs(value) < 1e-7 || std::fabs(outside - inside) <= 1e-12 * std::fabs(inside);
    if (done) {
      return next;
    }
    if (value > 0) {
      outside = next;
      over = value;
      under = side == 1 ? under / 2 : under;
      side = 1;
    } else {
      inside = next;
      under = value;
      over = side == -1 ? over / 2 : over;
      side = -1;
    }
  }
  return kNaN;
}

/// An end at which the parameter, which cannot be below 0, is 0, or one above.
double find_low(const Distance& distance, double estimate, double z) {
  if (!(estimate > 0) || distance(0) <= z) {
    return 0;
  }
  // Towards 0 the distance flattens, so the bracket is the whole of (0, estimate).
  return find_end(distance, estimate, -estimate, z);
}

/// A theta of 0 is a place of rest even where it is not the best.
VectorXd awake(VectorXd theta, const MixedDesign& design) {
  const VectorXd bend = detail::bends(design);
  for (const Eigen::Index entry : detail::diagonal(design)) {
    if (std::fabs(theta(entry)) < 0.3 * bend(entry)) {
      theta(entry) = 0.3 * bend(entry);
    }
  }
  return theta;
}

double minus_twice_log(const MixedCriterion& criterion, const MixedValue& at, double variance) {
  return at.finite
             ? criterion.log_dets(at) + criterion.count() * std::log(variance) + at.ss / variance
             : kInfinity;
}

/// -2 log likelihood at its best with the residual deviation held, in units of y.
double with_residual(MixedCriterion& criterion, const VectorXd& start, double sd, int iterations) {
  const MixedDesign& design = criterion.design();
  const double variance = sd * sd / (design.unit * design.unit);
  const Objective objective = [&](const VectorXd& theta) {
    return minus_twice_log(criterion, criterion.value(theta), variance);
  };
  const auto found =
      detail::minimise(objective, awake(start, design), detail::bends(design), iterations);
  return found.converged ? found.value + 2 * criterion.count() * std::log(design.unit) : kNaN;
}

/// The same with the first effect of term `place` held; the rest of its factor and
/// the residual deviation, in place of the held entry, are free.
double with_effect(MixedCriterion& criterion, const VectorXd& start, std::size_t place, double sd,
                   int iterations) {
  const MixedDesign& design = criterion.design();
  Eigen::Index entry = 0;
  std::size_t t = 0;
  for (; static_cast<std::size_t>(design.place[t]) != place; ++t) {
    entry += design.terms[t].thetas();
  }
  const double held = sd * design.terms[t].scale[0] / design.unit;
  const Objective objective = [&](const VectorXd& free) {
    const double residual = std::exp(free(entry));
    VectorXd theta = free;
    theta(entry) = held / residual;
    return minus_twice_log(criterion, criterion.value(theta), residual * residual);
  };
  VectorXd free = awake(start, design);
  VectorXd bend = detail::bends(design);
  const MixedValue at = criterion.value(free);
  free(entry) = at.finite ? 0.5 * std::log(at.ss / criterion.count()) : 0;
  bend(entry) = 1;
  const auto found = detail::minimise(objective, free, bend, iterations);
  return found.converged ? found.value + 2 * criterion.count() * std::log(design.unit) : kNaN;
}

/// The model without coefficient j, whose part of y at `value` is taken away.
MixedModel without(const MixedModel& model, std::size_t j, double value) {
  MixedModel out = model;
  const bool constant = model.constant && j == 0;
  const std::size_t column = j - (model.constant ? 1 : 0);
  for (std::size_t r = 0; r < out.y.size(); ++r) {
    out.y[r] -= value * (constant ? 1 : model.fixed[column][r]);
  }
  if (constant) {
    out.constant = false;
  } else {
    out.fixed.erase(out.fixed.begin() + static_cast<std::ptrdiff_t>(column));
  }
  return out;
}

double with_coefficient(const MixedModel& model, std::size_t j, double value, const VectorXd& start,
                        int iterations) {
  MixedDesign design;
  if (detail::make_design(without(model, j, value), design)) {
    return kNaN;
  }
  MixedCriterion criterion(design, false);
  const Objective objective = [&](const VectorXd& theta) { return criterion.profiled(theta); };
  const auto found =
      detail::minimise(objective, awake(start, design), detail::bends(design), iterations);
  return found.converged ? found.value + criterion.count() * (1 + 2 * std::log(design.unit)) : kNaN;
}

/// The model with effect k of a term put first, so that its deviation is one entry
/// of the factor.
MixedModel with_first(const MixedModel& model, std::size_t term, std::size_t k) {
  MixedModel out = model;
  RandomTerm& one = out.random[term];
  if (one.constant && k > 0) {
    one.slopes.insert(one.slopes.begin(), std::vector<double>(model.y.size(), 1));
    one.constant = false;
  }
  if (k > 0) {
    std::swap(one.slopes[0], one.slopes[k]);
  }
  return out;
}

class Profile {
 public:
  Profile(const MixedModel& model, const MixedFit& fit, const MixedOptions& options)
      : model_(model), fit_(fit), iterations_(options.max_iterations),
        z_(normal_quantile(0.5 + options.confidence / 2)),
        least_(fit.criterion - fit.observations * std::log(2 * std::acos(-1.0))) {}

  Interval coefficient(std::size_t j) const {
    const auto& one = fit_.coefficients[j];
    const VectorXd start = start_of(without(model_, j, one.value));
    const Distance distance = [&](double value) {
      return from_best(with_coefficient(model_, j, value, start, iterations_));
    };
    const double step = 1.2 * z_ * one.standard_error;
    return {find_end(distance, one.value, -step, z_), find_end(distance, one.value, step, z_)};
  }

  Interval effect(std::size_t term, std::size_t k) const {
    MixedDesign design;
    if (detail::make_design(with_first(model_, term, k), design)) {
      return {kNaN, kNaN};
    }
    MixedCriterion criterion(design, false);
    const VectorXd start = detail::search_theta(criterion, iterations_).theta;
    const Distance distance = [&](double sd) {
      return from_best(with_effect(criterion, start, term, sd, iterations_));
    };
    const double estimate = fit_.random[term].sd[k];
    const auto at = std::find(design.place.begin(), design.place.end(), static_cast<int>(term));
    const detail::Grouping& one = design.terms[at - design.place.begin()];
    const double unit =
        fit_.residual_sd / one.scale[0] / std::sqrt(static_cast<double>(one.largest));
    return {find_low(distance, estimate, z_),
            find_end(distance, estimate, std::max(0.6 * estimate, unit), z_)};
  }

  Interval residual() const {
    MixedDesign design;
    if (detail::make_design(model_, design)) {
      return {kNaN, kNaN};
    }
    MixedCriterion criterion(design, false);
    const VectorXd start = detail::search_theta(criterion, iterations_).theta;
    // In logarithms, so that the search for the low end cannot leave its range.
    const Distance distance = [&](double log_sd) {
      return from_best(with_residual(criterion, start, std::exp(log_sd), iterations_));
    };
    const double estimate = std::log(fit_.residual_sd);
    const double step = 1.2 * z_ / std::sqrt(2.0 * fit_.observations);
    return {std::exp(find_end(distance, estimate, -step, z_)),
            std::exp(find_end(distance, estimate, step, z_))};
  }

 private:
  double from_best(double value) const {
    return std::isnan(value) ? kNaN : std::sqrt(std::max(0.0, value - least_));
  }
  VectorXd start_of(const MixedModel& model) const {
    MixedDesign design;
    if (detail::make_design(model, design)) {
      return {};
    }
    MixedCriterion criterion(design, false);
    return detail::start_theta(design,
                               [&](const VectorXd& theta) { return criterion.profiled(theta); });
  }

  const MixedModel& model_;
  const MixedFit& fit_;
  int iterations_;
  double z_;
  double least_; ///< -2 log likelihood at the best, without rows log 2 pi
};

} // namespace

MixedProfile profile_mixed(const MixedModel& model, const MixedOptions& options) {
  MixedOptions full = options;
  full.restricted = false;
  full.group_effects = false;
  const MixedFit fit = fit_mixed(model, full);
  MixedProfile out;
  out.summary = fit.summary;
  if (!fit.summary.usable) {
    return out;
  }
  const Profile profile(model, fit, options);
  bool found = true;
  const auto keep = [&](const Interval& interval) {
    found = found && std::isfinite(interval.low) && std::isfinite(interval.high);
    return interval;
  };
  for (std::size_t j = 0; j < fit.coefficients.size(); ++j) {
    out.coefficients.push_back(keep(profile.coefficient(j)));
  }
  for (std::size_t t = 0; t < fit.random.size(); ++t) {
    out.random.emplace_back();
    for (std::size_t k = 0; k < fit.random[t].sd.size(); ++k) {
      out.random.back().push_back(keep(profile.effect(t, k)));
    }
  }
  out.residual_sd = keep(profile.residual());
  if (!found) {
    out.summary = {
        Termination::not_converged, "An end of an interval was not found.", {}, 0, false};
  }
  return out;
}

} // namespace baize::stats
