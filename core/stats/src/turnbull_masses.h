#pragma once

#include <Eigen/Core>

#include <vector>

namespace baize::stats::detail {

/// `count` times whose intervals hold the support sets first to last (both in).
struct Covering {
  int first = 0;
  int last = 0;
  int count = 0;
};

struct Masses {
  std::vector<double> mass;
  double log_likelihood = 0;
  double gap = 0;
  int iterations = 0;
  bool converged = false;
};

/// Maximises sum of count log(mass covered) over masses of 0 or more that add up
/// to 1, on `sets` support sets.
Masses maximise_masses(const std::vector<Covering>& rows, int sets, int max_iterations,
                       double tolerance);

} // namespace baize::stats::detail
