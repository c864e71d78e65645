#include "aft_likelihood.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <tuple>

namespace baize::stats::detail {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

} // namespace

StandardTimes standard_times(const std::vector<AftObservation>& observations) {
  StandardTimes times;
  double count = 0;
  double sum = 0;
  double squares = 0;
  times.low.reserve(observations.size());
  times.high.reserve(observations.size());
  times.count.assign(observations.size(), 1);
  for (const AftObservation& one : observations) {
    times.low.push_back(one.time.left > 0 ? std::log(one.time.left) : -kInfinity);
    times.high.push_back(one.time.exact() ? times.low.back() : std::log(one.time.right));
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

DistinctRows distinct_rows(const StandardTimes& times, const Eigen::MatrixXd& design) {
  const auto before = [&](std::size_t i, std::size_t k) {
    if (times.low[i] != times.low[k] || times.high[i] != times.high[k]) {
      return std::tie(times.low[i], times.high[i]) < std::tie(times.low[k], times.high[k]);
    }
    const auto x = design.row(static_cast<Eigen::Index>(i));
    const auto y = design.row(static_cast<Eigen::Index>(k));
    return std::lexicographical_compare(x.begin(), x.end(), y.begin(), y.end());
  };
  std::vector<std::size_t> order(times.low.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(), before);
  DistinctRows out{{{}, {}, {}, times.centre, times.unit, times.jacobian}, {}};
  std::vector<Eigen::Index> kept;
  for (const std::size_t i : order) {
    if (!kept.empty() && !before(static_cast<std::size_t>(kept.back()), i)) {
      out.times.count.back() += times.count[i];
      continue;
    }
    kept.push_back(static_cast<Eigen::Index>(i));
    out.times.low.push_back(times.low[i]);
    out.times.high.push_back(times.high[i]);
    out.times.count.push_back(times.count[i]);
  }
  out.design = design(kept, Eigen::all);
  return out;
}

AftLikelihood::AftLikelihood(const StandardTimes& times, const Eigen::MatrixXd& design,
                             AftDistribution distribution)
    : times_(times), design_(design), distribution_(distribution),
      fixed_rate_(distribution == AftDistribution::exponential) {}

AftRow AftLikelihood::row(Eigen::Index i) const {
  const auto place = static_cast<std::size_t>(i);
  return {times_.low[place], times_.high[place]};
}

double AftLikelihood::count(Eigen::Index i) const {
  return times_.count[static_cast<std::size_t>(i)];
}

AftSlopes AftLikelihood::slopes(const Eigen::VectorXd& at) const {
  const Eigen::Index last = design_.cols();
  const Eigen::VectorXd centre = design_ * at.head(last);
  const AftRate rate(at(last), times_.unit);
  AftSlopes out{times_.jacobian, Eigen::VectorXd::Zero(size()),
                Eigen::MatrixXd::Zero(size(), size())};
  for (Eigen::Index i = 0; i < centre.size(); ++i) {
    const AftTerm term = aft_term(distribution_, row(i), centre(i), rate);
    const double times = count(i);
    out.value += times * term.value;
    for (Eigen::Index a = 0; a < last; ++a) {
      const double x = times * design_(i, a);
      out.gradient(a) += term.c * x;
      out.information(last, a) -= term.cr * x;
      for (Eigen::Index b = 0; b <= a; ++b) { // in matrices of two or three a product costs more
        out.information(a, b) -= term.cc * x * design_(i, b);
      }
    }
    out.gradient(last) += times * term.r;
    out.information(last, last) -= times * term.rr;
  }
  out.information = Eigen::MatrixXd(out.information.selfadjointView<Eigen::Lower>());
  if (fixed_rate_) {
    out.gradient.conservativeResize(last);
    out.information.conservativeResize(last, last);
  }
  return out;
}

double AftLikelihood::reach(const Eigen::VectorXd& at, const Eigen::VectorXd& move) const {
  const Eigen::Index last = design_.cols();
  const Eigen::VectorXd centre = design_ * at.head(last);
  const Eigen::VectorXd further = design_ * move.head(last);
  const double faster = fixed_rate_ ? 0 : move(last);
  double least = 1;
  for (Eigen::Index i = 0; i < centre.size(); ++i) {
    const AftRow ends = row(i);
    for (const double y : {ends.low, ends.high}) {
      const double change = std::fabs(faster * y - further(i));
      if (std::isfinite(y) && least * change > 2 + std::fabs(at(last) * y - centre(i))) {
        least = (2 + std::fabs(at(last) * y - centre(i))) / change;
      }
    }
  }
  return least;
}

Eigen::MatrixXd AftLikelihood::scores(const Eigen::VectorXd& at) const {
  const Eigen::Index last = design_.cols();
  const Eigen::VectorXd centre = design_ * at.head(last);
  const AftRate rate(at(last), times_.unit);
  Eigen::MatrixXd out(centre.size(), fixed_rate_ ? last : size());
  for (Eigen::Index i = 0; i < centre.size(); ++i) {
    const AftTerm term = aft_term(distribution_, row(i), centre(i), rate);
    out.row(i).head(last) = term.c * design_.row(i);
    if (!fixed_rate_) {
      out(i, last) = term.r;
    }
  }
  return out;
}

} // namespace baize::stats::detail
