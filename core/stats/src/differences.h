#pragma once

#include <Eigen/Core>

#include <functional>
#include <vector>

/// Minimum and derivatives of smooth functions of a few numbers that can only be
/// evaluated. `bend` is for each argument the distance from 0 within which the
/// function bends; steps are in proportion to sqrt(argument^2 + bend^2).
namespace baize::stats::detail {

using Objective = std::function<double(const Eigen::VectorXd&)>;

struct Minimum {
  Eigen::VectorXd at;
  double value = 0;
  int iterations = 0;
  bool converged = false;
};
/// Quasi-Newton steps (Broyden, Fletcher, Goldfarb, Shanno; Nocedal J, Wright SJ
/// (2006) Numerical Optimization, 2nd ed., 6.1) with central differences, until a
/// step promises less than `tolerance`. The function may be infinite, not at `start`.
Minimum minimise(const Objective& objective, const Eigen::VectorXd& start,
                 const Eigen::VectorXd& bend, int max_iterations, double tolerance = 1e-10);

/// Several functions at once, with errors of the sixth order in the step.
using Functions = std::function<Eigen::VectorXd(const Eigen::VectorXd&)>;
struct Derivatives {
  Eigen::VectorXd value;
  std::vector<Eigen::VectorXd> first;               ///< by argument
  std::vector<std::vector<Eigen::VectorXd>> second; ///< by two arguments
};
Derivatives derivatives(const Functions& functions, const Eigen::VectorXd& at,
                        const Eigen::VectorXd& bend);

} // namespace baize::stats::detail
