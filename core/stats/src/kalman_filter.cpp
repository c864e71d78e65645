#include "baize/units/number.h"
#include "kalman_pass.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace baize::stats {
namespace detail {
namespace {

/// A direction counts as diffuse while its factor stands above rounding.
constexpr double kDiffuse = 1e-10;

struct Walker {
  Eigen::VectorXd mean;
  Eigen::MatrixXd covariance;
  Eigen::MatrixXd infinite; ///< empty once the start is known
  int unknown = 0;          ///< diffuse directions not yet learnt

  explicit Walker(const StateSpace& model) : mean(model.start_mean) {
    const Eigen::Index states = mean.size();
    covariance = model.start_covariance.size() == 0 ? Eigen::MatrixXd::Zero(states, states)
                                                    : model.start_covariance;
    unknown = static_cast<int>(std::count(model.diffuse.begin(), model.diffuse.end(), true));
    if (unknown > 0) {
      infinite = Eigen::MatrixXd::Zero(states, states);
      for (std::size_t i = 0; i < model.diffuse.size(); ++i) {
        const auto at = static_cast<Eigen::Index>(i);
        infinite(at, at) = model.diffuse[i] ? 1 : 0;
      }
    }
  }

  void predict(const StateStep& step) {
    if (step.transition.size() != 0) {
      mean = step.transition * mean;
      covariance = step.transition * covariance * step.transition.transpose();
      if (unknown > 0) {
        infinite = step.transition * infinite * step.transition.transpose();
      }
    }
    if (step.input.size() != 0) {
      mean += step.input;
    }
    if (step.state_noise.size() != 0) {
      covariance += step.state_noise;
    }
  }

  /// False where the model is certain of another value.
  bool update(const StateStep& step, Step& left) {
    left.error = *step.value - step.loading.dot(mean);
    const Eigen::VectorXd m = covariance * step.loading;
    left.variance = step.loading.dot(m) + step.noise;
    if (unknown > 0) {
      const Eigen::VectorXd wide = infinite * step.loading;
      left.infinite_var = step.loading.dot(wide);
      if (left.infinite_var > kDiffuse * step.loading.squaredNorm()) {
        learn(m, wide, left);
        return true;
      }
    }
    left.infinite_var = 0;
    if (!(left.variance > 0)) {
      // Nothing is left to learn; a value that agrees to rounding is no news.
      return std::fabs(left.error) <= 1e-12 * (1 + std::fabs(*step.value));
    }
    left.update = Update::ordinary;
    left.gain = m / left.variance;
    mean += left.gain * left.error;
    covariance -= left.gain * m.transpose();
    covariance = (covariance + covariance.transpose()).eval() / 2;
    return true;
  }

 private:
  void learn(const Eigen::VectorXd& m, const Eigen::VectorXd& wide, Step& left) {
    left.update = Update::diffuse;
    left.gain = wide / left.infinite_var;
    left.gain1 = (m - left.gain * left.variance) / left.infinite_var;
    mean += left.gain * left.error;
    covariance += left.variance * left.gain * left.gain.transpose() - left.gain * m.transpose() -
                  m * left.gain.transpose();
    infinite -= left.gain * wide.transpose();
    --unknown;
    if (unknown == 0) {
      infinite.resize(0, 0); // exactly nothing, not what rounding leaves
    }
  }
};

double log_density(const Step& step) {
  switch (step.update) {
  case Update::diffuse:
    return -0.5 * std::log(step.infinite_var);
  case Update::ordinary:
    return -0.5 * (std::log(2 * std::numbers::pi * step.variance) +
                   step.error * step.error / step.variance);
  case Update::none:
    break;
  }
  return 0;
}

void keep(const Walker& walker, const Step& left, bool measured, KalmanFilter& filter) {
  filter.states.push_back({walker.mean, walker.covariance, walker.unknown == 0});
  if (!measured) {
    filter.innovations.emplace_back();
    return;
  }
  const bool diffuse = left.update == Update::diffuse;
  filter.innovations.push_back(
      Innovation{left.error, diffuse ? left.infinite_var : left.variance, diffuse});
}

} // namespace

Pass pass(const StateSpace& model, bool keep_states, bool keep_steps) {
  Pass result;
  KalmanFilter& filter = result.filter;
  if (auto problem = model.problem()) {
    filter.summary = refused(*problem);
    return result;
  }
  Walker walker(model);
  for (std::size_t i = 0; i < model.steps.size(); ++i) {
    const StateStep& step = model.steps[i];
    if (i > 0) {
      walker.predict(step);
    }
    Step left;
    if (keep_steps) {
      left.mean = walker.mean;
      left.covariance = walker.covariance;
      left.infinite = walker.infinite;
    }
    if (step.value && !walker.update(step, left)) {
      filter.summary =
          degenerate({"value_contradicts", "value", units::write_number(*step.value),
                      "the value the model is certain of", "step " + std::to_string(i + 1)});
      return result;
    }
    filter.values += step.value ? 1 : 0;
    filter.diffuse_values += left.update == Update::diffuse ? 1 : 0;
    filter.log_likelihood += log_density(left);
    if (keep_states) {
      keep(walker, left, step.value.has_value(), filter);
    }
    if (keep_steps) {
      result.steps.push_back(std::move(left));
    }
  }
  if (walker.unknown > 0) {
    filter.summary = degenerate({"start_not_determined", "values", std::to_string(filter.values),
                                 "enough to tell every diffuse start", "the model"});
  } else if (!std::isfinite(filter.log_likelihood) || !walker.mean.allFinite() ||
             !walker.covariance.allFinite()) {
    filter.summary =
        degenerate({"not_finite", "log_likelihood", units::write_number(filter.log_likelihood),
                    "finite", "the model"});
  } else {
    filter.summary = done();
  }
  return result;
}

} // namespace detail

KalmanFilter kalman_filter(const StateSpace& model, bool keep_states) {
  return detail::pass(model, keep_states, false).filter;
}

} // namespace baize::stats
