#include "baize/stats/state_space.h"

#include "baize/units/number.h"

#include <cmath>
#include <string>

namespace baize::stats {
namespace {

using units::Problem;

std::string place(std::size_t step) {
  return "step " + std::to_string(step + 1);
}

Problem sizes(const std::string& field, Eigen::Index rows, const std::string& rule,
              const std::string& where) {
  return {"sizes_disagree", field, std::to_string(rows) + " rows", rule, where};
}

bool absent_or(const Eigen::MatrixXd& m, Eigen::Index states) {
  return m.size() == 0 || (m.rows() == states && m.cols() == states);
}

std::optional<Problem> covariance(const Eigen::MatrixXd& m, const std::string& field,
                                  Eigen::Index states, const std::string& where) {
  if (!absent_or(m, states)) {
    return sizes(field, m.rows(), "square, of as many rows as there are states", where);
  }
  if (!m.allFinite()) {
    return Problem{"not_finite", field, "not finite", "finite", where};
  }
  for (Eigen::Index i = 0; i < m.rows(); ++i) {
    if (m(i, i) < 0) {
      return Problem{"negative_variance", field, units::write_number(m(i, i)), "0 or more", where};
    }
  }
  return std::nullopt;
}

std::optional<Problem> of_step(const StateStep& step, Eigen::Index states,
                               const std::string& where) {
  const std::string square = "square, of as many rows as there are states";
  const std::string column = "one number for each state";
  if (!absent_or(step.transition, states)) {
    return sizes("transition", step.transition.rows(), square, where);
  }
  if (step.input.size() != 0 && step.input.size() != states) {
    return sizes("input", step.input.size(), column, where);
  }
  if (step.loading.size() != states) {
    return sizes("loading", step.loading.size(), column, where);
  }
  if (!step.transition.allFinite() || !step.input.allFinite() || !step.loading.allFinite()) {
    return Problem{"not_finite", "transition, input or loading", "not finite", "finite", where};
  }
  if (!std::isfinite(step.noise) || step.noise < 0) {
    return Problem{"negative_variance", "noise", units::write_number(step.noise),
                   "a finite variance of 0 or more", where};
  }
  if (step.value && !std::isfinite(*step.value)) {
    return Problem{"not_finite", "value", units::write_number(*step.value),
                   "finite, or empty where nothing was measured", where};
  }
  return covariance(step.state_noise, "state_noise", states, where);
}

} // namespace

std::optional<Problem> StateSpace::problem() const {
  const Eigen::Index states = start_mean.size();
  if (states == 0 || steps.empty()) {
    return Problem{"no_steps", "steps", std::to_string(steps.size()),
                   "at least one step and one state", "the model"};
  }
  if (!start_mean.allFinite()) {
    return Problem{"not_finite", "start_mean", "not finite", "finite", "the model"};
  }
  if (auto found = covariance(start_covariance, "start_covariance", states, "the model")) {
    return found;
  }
  if (!diffuse.empty() && static_cast<Eigen::Index>(diffuse.size()) != states) {
    return sizes("diffuse", static_cast<Eigen::Index>(diffuse.size()), "one mark for each state",
                 "the model");
  }
  for (std::size_t i = 0; i < diffuse.size(); ++i) {
    const auto at = static_cast<Eigen::Index>(i);
    if (diffuse[i] && start_covariance.size() != 0 &&
        (start_covariance.row(at).any() || start_covariance.col(at).any())) {
      return Problem{"sizes_disagree", "start_covariance", "a row that is not 0",
                     "0 where the state is diffuse", "state " + std::to_string(i + 1)};
    }
  }
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (auto found = of_step(steps[i], states, place(i))) {
      return found;
    }
  }
  return std::nullopt;
}

} // namespace baize::stats
