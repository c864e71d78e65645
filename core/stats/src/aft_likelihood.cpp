#include "aft_likelihood.h"

#include <cmath>
#include <limits>

namespace baize::stats::detail {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

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

AftLikelihood::AftLikelihood(const StandardTimes& times, const Eigen::MatrixXd& design,
                             AftDistribution distribution)
    : times_(times), design_(design), distribution_(distribution),
      fixed_rate_(distribution == AftDistribution::exponential) {}

AftRow AftLikelihood::row(Eigen::Index i) const {
  const auto place = static_cast<std::size_t>(i);
  return {times_.low[place], times_.high[place], times_.unit};
}

double AftLikelihood::value(const Eigen::VectorXd& at) const {
  const Eigen::VectorXd centre = design_ * at.head(design_.cols());
  double sum = times_.jacobian;
  for (Eigen::Index i = 0; i < centre.size(); ++i) {
    sum += aft_value(distribution_, row(i), centre(i), at(design_.cols()));
  }
  return sum;
}

AftSlopes AftLikelihood::slopes(const Eigen::VectorXd& at) const {
  const Eigen::Index last = design_.cols();
  const Eigen::VectorXd centre = design_ * at.head(last);
  AftSlopes out{times_.jacobian, Eigen::VectorXd::Zero(size()),
                Eigen::MatrixXd::Zero(size(), size())};
  for (Eigen::Index i = 0; i < centre.size(); ++i) {
    const AftTerm term = aft_term(distribution_, row(i), centre(i), at(last));
    const auto x = design_.row(i).transpose();
    out.value += term.value;
    out.gradient.head(last) += term.c * x;
    out.gradient(last) += term.r;
    out.information.topLeftCorner(last, last).noalias() -= (term.cc * x) * x.transpose();
    out.information.col(last).head(last) -= term.cr * x;
    out.information(last, last) -= term.rr;
  }
  out.information.row(last).head(last) = out.information.col(last).head(last).transpose();
  if (fixed_rate_) {
    out.gradient.conservativeResize(last);
    out.information.conservativeResize(last, last);
  }
  return out;
}

Eigen::MatrixXd AftLikelihood::scores(const Eigen::VectorXd& at) const {
  const Eigen::Index last = design_.cols();
  const Eigen::VectorXd centre = design_ * at.head(last);
  Eigen::MatrixXd out(centre.size(), fixed_rate_ ? last : size());
  for (Eigen::Index i = 0; i < centre.size(); ++i) {
    const AftTerm term = aft_term(distribution_, row(i), centre(i), at(last));
    out.row(i).head(last) = term.c * design_.row(i);
    if (!fixed_rate_) {
      out(i, last) = term.r;
    }
  }
  return out;
}

} // namespace baize::stats::detail
