#include "aft_newton.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <limits>

namespace baize::stats::detail {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

struct Slopes {
  double value = 0;
  Eigen::VectorXd gradient;
  Eigen::MatrixXd information; ///< minus the second derivatives
};

class Likelihood {
 public:
  Likelihood(const StandardTimes& times, const Eigen::MatrixXd& design,
             AftDistribution distribution)
      : times_(times), design_(design), distribution_(distribution),
        fixed_rate_(distribution == AftDistribution::exponential) {}

  bool fixed_rate() const { return fixed_rate_; }
  Eigen::Index size() const { return design_.cols() + 1; }

  /// `at`: the ratios and, last, the rate.
  double value(const Eigen::VectorXd& at) const {
    const Eigen::VectorXd mean = design_ * at.head(design_.cols());
    const double rate = at(design_.cols());
    double sum = times_.jacobian;
    for (std::size_t i = 0; i < times_.low.size(); ++i) {
      const double centre = mean(static_cast<Eigen::Index>(i));
      const double a = rate * times_.low[i] - centre;
      if (times_.low[i] == times_.high[i]) {
        sum += exact_term(distribution_, a).value + std::log(rate / times_.unit);
      } else if (informs(i)) {
        sum += between_term(distribution_, a, rate * times_.high[i] - centre).value;
      }
    }
    return sum;
  }

  Slopes slopes(const Eigen::VectorXd& at) const {
    Slopes out{value(at), Eigen::VectorXd::Zero(size()), Eigen::MatrixXd::Zero(size(), size())};
    const Eigen::Index last = design_.cols();
    const Eigen::VectorXd mean = design_ * at.head(last);
    const double rate = at(last);
    Eigen::VectorXd low(size());
    Eigen::VectorXd high(size());
    for (std::size_t i = 0; i < times_.low.size(); ++i) {
      const auto row = static_cast<Eigen::Index>(i);
      const double a = rate * times_.low[i] - mean(row);
      const double b = rate * times_.high[i] - mean(row);
      low.head(last) = -design_.row(row).transpose();
      high.head(last) = low.head(last);
      // At an infinite end all derivatives are 0; infinity must not meet them.
      low(last) = std::isfinite(times_.low[i]) ? times_.low[i] : 0;
      high(last) = std::isfinite(times_.high[i]) ? times_.high[i] : 0;
      if (times_.low[i] == times_.high[i]) {
        const Exact term = exact_term(distribution_, a);
        out.gradient += term.d * low;
        out.information -= term.dd * low * low.transpose();
        out.gradient(last) += 1 / rate;
        out.information(last, last) += 1 / (rate * rate);
      } else if (informs(i)) {
        const Between term = between_term(distribution_, a, b);
        out.gradient += term.da * low + term.db * high;
        out.information -= term.daa * low * low.transpose() + term.dbb * high * high.transpose() +
                           term.dab * (low * high.transpose() + high * low.transpose());
      }
    }
    if (fixed_rate_) {
      out.gradient.conservativeResize(last);
      out.information.conservativeResize(last, last);
    }
    return out;
  }

 private:
  /// A time between 0 and infinity says nothing.
  bool informs(std::size_t i) const {
    return std::isfinite(times_.low[i]) || std::isfinite(times_.high[i]);
  }

  const StandardTimes& times_;
  const Eigen::MatrixXd& design_;
  AftDistribution distribution_;
  bool fixed_rate_;
};

/// Errors beyond this on the standard scale mean that the data do not say: the
/// optimum lies at infinity.
constexpr double kGreatestVariance = 1e6;
constexpr double kGreatestRate = 1e8;
constexpr double kTolerance = 1e-12; ///< of the gain a further step promises

/// The longest step of 1 or less that keeps the rate above a tenth of itself.
double longest(const Eigen::VectorXd& at, const Eigen::VectorXd& move) {
  const double rate = at(at.size() - 1);
  const double change = move.size() == at.size() ? move(move.size() - 1) : 0;
  return change < 0 ? std::min(1.0, 0.9 * rate / -change) : 1;
}

Eigen::VectorXd moved(const Eigen::VectorXd& at, const Eigen::VectorXd& move, double length) {
  Eigen::VectorXd next = at;
  next.head(move.size()) += length * move;
  return next;
}

void finish(const Likelihood& likelihood, const Eigen::VectorXd& at, Optimum& out) {
  const Slopes slopes = likelihood.slopes(at);
  const Eigen::Index last = at.size() - 1;
  out.ratio = at.head(last);
  out.rate = at(last);
  out.log_likelihood = slopes.value;
  const Eigen::Index size = slopes.gradient.size();
  const Eigen::LLT<Eigen::MatrixXd> factor(slopes.information);
  if (factor.info() != Eigen::Success) {
    out.end = Optimum::End::not_determined;
    return;
  }
  out.covariance = factor.solve(Eigen::MatrixXd::Identity(size, size));
  Eigen::VectorXd variances = out.covariance.diagonal();
  if (!likelihood.fixed_rate()) {
    variances(last) /= out.rate * out.rate; // of its logarithm
  }
  if (!variances.allFinite() || variances.maxCoeff() > kGreatestVariance) {
    out.end = Optimum::End::not_determined;
  }
}

} // namespace

StandardTimes standard_times(const std::vector<AftObservation>& observations) {
  StandardTimes times;
  double count = 0;
  double sum = 0;
  double squares = 0;
  for (const AftObservation& one : observations) {
    times.low.push_back(one.time.left > 0 ? std::log(one.time.left) : -kInfinity);
    times.high.push_back(std::log(one.time.right));
    if (one.time.exact()) {
      times.jacobian -= times.low.back();
    }
  }
  const auto each = [&](const auto& use) {
    for (std::size_t i = 0; i < times.low.size(); ++i) {
      for (const double y : {times.low[i], times.high[i]}) {
        if (std::isfinite(y)) {
          use(y);
        }
      }
    }
  };
  each([&](double y) {
    sum += y;
    ++count;
  });
  times.centre = sum / count;
  each([&](double y) { squares += (y - times.centre) * (y - times.centre); });
  times.unit = squares > 0 ? std::sqrt(squares / count) : 1;
  for (auto* ends : {&times.low, &times.high}) {
    for (double& y : *ends) {
      y = (y - times.centre) / times.unit;
    }
  }
  return times;
}

Optimum maximise_aft(const StandardTimes& times, const Eigen::MatrixXd& design,
                     const AftOptions& options) {
  const Likelihood likelihood(times, design, options.distribution);
  double farthest = 1;
  for (std::size_t i = 0; i < times.low.size(); ++i) {
    for (const double y : {times.low[i], times.high[i]}) {
      farthest = std::isfinite(y) ? std::max(farthest, std::fabs(y)) : farthest;
    }
  }
  Eigen::VectorXd at = Eigen::VectorXd::Zero(likelihood.size());
  // A start from which no time lies in a far tail.
  at(at.size() - 1) = likelihood.fixed_rate() ? times.unit : 3 / farthest;
  Optimum out;
  while (out.iterations < options.max_iterations && out.end == Optimum::End::not_converged) {
    ++out.iterations;
    const Slopes slopes = likelihood.slopes(at);
    const Eigen::VectorXd move = slopes.information.ldlt().solve(slopes.gradient);
    const double gain = slopes.gradient.dot(move);
    if (!std::isfinite(gain) || at(at.size() - 1) > kGreatestRate) {
      out.end = Optimum::End::not_determined;
      return out;
    }
    double length = longest(at, move);
    // Close to the top rounding hides the gain; there the full step is right.
    while (gain > 1e-9 && length > 1e-12 &&
           !(likelihood.value(moved(at, move, length)) >= slopes.value + 1e-4 * length * gain)) {
      length /= 2;
    }
    at = moved(at, move, length);
    if (std::fabs(gain) <= kTolerance) {
      out.end = Optimum::End::converged;
    }
  }
  finish(likelihood, at, out);
  return out;
}

} // namespace baize::stats::detail
