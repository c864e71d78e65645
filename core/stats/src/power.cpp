#include "baize/stats/power.h"

#include "baize/stats/boost_policy.h"
#include "baize/stats/distributions.h"
#include "checks.h"

#include <boost/math/distributions/non_central_f.hpp>
#include <boost/math/distributions/non_central_t.hpp>

#include <algorithm>
#include <limits>

namespace baize::stats {
namespace {

using units::Problem;
namespace bm = boost::math;

constexpr double kFewest = 2;
constexpr double kMost = 1e7;

double noncentral_t_upper(double t, double df, double shift) {
  return bm::cdf(bm::complement(bm::non_central_t_distribution<double, MathPolicy>(df, shift), t));
}

double noncentral_f_upper(double f, double df1, double df2, double lambda) {
  return bm::cdf(
      bm::complement(bm::non_central_f_distribution<double, MathPolicy>(df1, df2, lambda), f));
}

double reached(const TTestPlan& plan, double n) {
  const double df = plan.paired ? n - 1 : 2 * (n - 1);
  const double shift = std::fabs(plan.difference) / plan.sd * std::sqrt(plan.paired ? n : n / 2);
  const double t = t_quantile(1 - plan.alpha / (plan.two_sided ? 2 : 1), df);
  // The wrong side by the mirrored distribution, as its own upper tail.
  const double wrong = plan.two_sided ? noncentral_t_upper(t, df, -shift) : 0;
  return noncentral_t_upper(t, df, shift) + std::max(0.0, wrong);
}

double reached(const AnovaPlan& plan, double n) {
  const double df1 = plan.groups - 1;
  const double df2 = plan.groups * (n - 1);
  const double f = f_quantile(1 - plan.alpha, df1, df2);
  return noncentral_f_upper(f, df1, df2, plan.groups * n * plan.effect * plan.effect);
}

double reached(const SharesPlan& plan, double n) {
  const double both = plan.first + plan.second;
  const double alike = std::sqrt(both * (1 - both / 2));
  const double apart = std::sqrt(plan.first * (1 - plan.first) + plan.second * (1 - plan.second));
  const double z = normal_quantile(1 - plan.alpha / (plan.two_sided ? 2 : 1));
  const double shift = std::sqrt(n) * std::fabs(plan.first - plan.second);
  if (apart == 0) { // from 0 to 1: certain where it is beyond the limit
    return shift > z * alike ? 1 : 0;
  }
  const double wrong = plan.two_sided ? normal_cdf((-shift - z * alike) / apart) : 0;
  return normal_cdf((shift - z * alike) / apart) + wrong;
}

template <class Plan> Power power_by(const Plan& plan, double n) {
  Power result;
  auto problem = plan.problem();
  if (!problem && !(n >= kFewest && n <= kMost)) {
    problem = Problem{"n_out_of_range", "n", units::write_number(n), "from 2 to 10000000", ""};
  }
  if (problem) {
    result.summary = refused(*problem);
    return result;
  }
  result.power = std::clamp(reached(plan, n), 0.0, 1.0);
  result.summary = done_if_finite({result.power});
  return result;
}

template <class Plan> SampleSize size_by(const Plan& plan, double power) {
  SampleSize result;
  auto problem = plan.problem();
  problem =
      problem ? problem : outside_open("power", power, plan.alpha, 1, "above alpha and below 1");
  if (problem) {
    result.summary = refused(*problem);
    return result;
  }
  double high = kFewest;
  while (high < kMost && reached(plan, high) < power) {
    high *= 2;
  }
  if (high >= kMost) {
    result.summary = degenerate({"out_of_reach", "power", units::write_number(power),
                                 "a power that fewer than 10000000 reach", ""});
    return result;
  }
  // Power grows with n, so halving finds it; 60 halvings leave no digit open.
  double low = std::max(kFewest, high / 2);
  for (int i = 0; i < 60 && reached(plan, low) < power; ++i) {
    const double middle = (low + high) / 2;
    (reached(plan, middle) < power ? low : high) = middle;
  }
  result.exact = high == kFewest ? kFewest : high;
  // The last digit of an exact whole number must not cost another plot.
  result.n = static_cast<int>(std::ceil(result.exact - 1e-9 * result.exact));
  result.power = std::clamp(reached(plan, result.n), 0.0, 1.0);
  result.summary = done_if_finite({result.exact, result.power});
  return result;
}

std::optional<Problem> bad_alpha(double alpha) {
  return outside_open("alpha", alpha, 0, 1, "above 0 and below 1");
}

} // namespace

std::optional<Problem> TTestPlan::problem() const {
  constexpr double kInfinity = std::numeric_limits<double>::infinity();
  if (difference == 0 || !std::isfinite(difference)) {
    return Problem{"option_out_of_range", "difference", units::write_number(difference),
                   "a finite number other than 0", ""};
  }
  auto problem = outside_open("sd", sd, 0, kInfinity, "above 0 and finite");
  return problem ? problem : bad_alpha(alpha);
}

std::optional<Problem> AnovaPlan::problem() const {
  auto problem = outside_open("groups", groups, 1, 201, "a whole number from 2 to 200");
  problem = problem ? problem : outside_open("effect", effect, 0, 1e6, "above 0, below 1000000");
  return problem ? problem : bad_alpha(alpha);
}

std::optional<Problem> SharesPlan::problem() const {
  const char* fields[] = {"first", "second"};
  const double values[] = {first, second};
  for (int i = 0; i < 2; ++i) {
    if (!(values[i] >= 0 && values[i] <= 1)) {
      return Problem{"option_out_of_range", fields[i], units::write_number(values[i]),
                     "from 0 to 1", ""};
    }
  }
  if (first == second) {
    return Problem{"option_out_of_range", "second", units::write_number(second),
                   "another share than the first", ""};
  }
  return bad_alpha(alpha);
}

Power power_of(const TTestPlan& plan, double n) {
  return power_by(plan, n);
}
Power power_of(const AnovaPlan& plan, double n) {
  return power_by(plan, n);
}
Power power_of(const SharesPlan& plan, double n) {
  return power_by(plan, n);
}

SampleSize sample_size(const TTestPlan& plan, double power) {
  return size_by(plan, power);
}
SampleSize sample_size(const AnovaPlan& plan, double power) {
  return size_by(plan, power);
}
SampleSize sample_size(const SharesPlan& plan, double power) {
  return size_by(plan, power);
}

} // namespace baize::stats
