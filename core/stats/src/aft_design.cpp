#include "aft_design.h"

#include "checks.h"

#include <cmath>
#include <string>

namespace baize::stats::detail {

using units::Problem;

std::optional<Problem> bad_observations(const std::vector<AftObservation>& observations) {
  const std::size_t covariates = observations.empty() ? 0 : observations.front().covariates.size();
  if (auto problem = too_few("observations", observations.size(), covariates + 3)) {
    return problem;
  }
  std::vector<CensoredTime> times;
  times.reserve(observations.size());
  for (std::size_t i = 0; i < observations.size(); ++i) {
    const AftObservation& one = observations[i];
    const auto place = [i] { return "observation " + std::to_string(i + 1); };
    auto problem = lengths_differ("covariates", one.covariates.size(), covariates);
    problem = problem ? problem : not_finite("covariates", one.covariates);
    if (problem) {
      problem->place = place();
      return problem;
    }
    if (one.time.exact() && one.time.left == 0) {
      return Problem{"time_out_of_range", "time", "0 exactly", "above 0 where it is exact",
                     place()};
    }
    times.push_back(one.time);
  }
  return bad_time(times);
}

void count_kinds(const std::vector<AftObservation>& observations, AftFit& fit) {
  fit.observations = static_cast<int>(observations.size());
  for (const AftObservation& one : observations) {
    if (one.time.exact()) {
      ++fit.exact;
    } else if (one.time.right_censored()) {
      ++fit.right_censored;
    } else if (one.time.left == 0) {
      ++fit.left_censored;
    } else {
      ++fit.interval_censored;
    }
  }
}

Design standard_design(const std::vector<AftObservation>& observations) {
  const auto rows = static_cast<Eigen::Index>(observations.size());
  const auto covariates = static_cast<Eigen::Index>(observations.front().covariates.size());
  Design design{Eigen::MatrixXd::Ones(rows, covariates + 1), Eigen::VectorXd::Zero(covariates + 1),
                Eigen::VectorXd::Ones(covariates + 1)};
  for (Eigen::Index j = 1; j <= covariates; ++j) {
    for (Eigen::Index i = 0; i < rows; ++i) {
      design.columns(i, j) =
          observations[static_cast<std::size_t>(i)].covariates[static_cast<std::size_t>(j - 1)];
    }
    auto column = design.columns.col(j);
    const double largest = column.cwiseAbs().maxCoeff();
    design.mean(j) = column.mean();
    column.array() -= design.mean(j);
    const double spread = std::sqrt(column.squaredNorm() / static_cast<double>(rows));
    design.unit(j) = spread > rounding_of(largest) ? spread : 0;
    column /= spread > 0 ? spread : 1;
  }
  return design;
}

std::optional<Problem> singular(const Design& design) {
  Eigen::MatrixXd q = design.columns;
  for (Eigen::Index j = 0; j < q.cols(); ++j) {
    for (int twice = 0; twice < 2; ++twice) {
      for (Eigen::Index k = 0; k < j; ++k) {
        q.col(j) -= q.col(k).dot(q.col(j)) * q.col(k);
      }
    }
    const double left = q.col(j).squaredNorm() / static_cast<double>(q.rows());
    if (design.unit(j) == 0 || left < 1e-10) {
      return Problem{"singular_design", "covariate", std::to_string(j),
                     "neither the same everywhere nor a sum of the covariates before it", ""};
    }
    q.col(j).normalize();
  }
  return std::nullopt;
}

} // namespace baize::stats::detail
