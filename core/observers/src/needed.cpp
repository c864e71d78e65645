#include "baize/observers/needed.h"

#include "baize/stats/distributions.h"
#include "places.h"

#include <cmath>

namespace baize::observers {
namespace {

std::optional<units::Problem> first_of(std::initializer_list<std::optional<units::Problem>> all) {
  for (const auto& problem : all) {
    if (problem) {
      return problem;
    }
  }
  return std::nullopt;
}

/// The least whole n with z s sqrt(1/n + m^2 / (2 (n - 1))) <= w. With 1/n put for
/// 1/(n - 1) the answer is at most m^2 / (2 + m^2) < 1 too small, so two steps end it.
double for_limits(double ratio, double multiplier) {
  const double m2 = multiplier * multiplier / 2;
  const auto width = [&](double n) { return ratio * std::sqrt(1 / n + m2 / (n - 1)); };
  double n = std::fmax(2, std::floor(ratio * ratio * (1 + m2)));
  while (width(n) > 1) {
    n += 1;
  }
  return n;
}

} // namespace

std::optional<units::Problem> NeededOptions::problem() const {
  constexpr const char* kToTen = "a number above 0 and below 10";
  auto bad =
      first_of({outside("sd", sd, 0, 10, kToTen), outside("half_width", half_width, 0, 10, kToTen),
                outside("multiplier", multiplier, 0, 10, kToTen),
                outside("confidence", confidence, 0, 1, "a number above 0 and below 1")});
  if (bad) {
    return bad;
  }
  if (balls < 1 || balls > 99) {
    return units::Problem{
        "option_out_of_range", "balls", std::to_string(balls), "from 1 to 99", {}};
  }
  return likeness == 0 || likeness == 1 ? std::nullopt
                                        : outside("likeness", likeness, 0, 1, "from 0 to 1");
}

Needed needed(const NeededOptions& options) {
  Needed found;
  if (const auto bad = options.problem()) {
    found.summary = stats::refused(*bad);
    return found;
  }
  const double z = stats::normal_quantile(1 - (1 - options.confidence) / 2);
  const double ratio = z * options.sd / options.half_width;
  found.design_effect = 1 + (options.balls - 1) * options.likeness;
  constexpr double kMost = 1e6;
  if (ratio * ratio * (1 + options.multiplier * options.multiplier) * found.design_effect > kMost) {
    found.summary = stats::refused({"too_large",
                                    "balls",
                                    "more than a million",
                                    "a wider half_width: nobody rolls so many",
                                    {}});
    return found;
  }
  constexpr double kRounding = 1e-9;
  const double for_bias = std::ceil(ratio * ratio - kRounding);
  const auto whole = [&](double n) {
    return static_cast<int>(std::ceil(n * found.design_effect - kRounding));
  };
  const auto sessions = [&](int balls) { return (balls + options.balls - 1) / options.balls; };
  found.balls_for_bias = whole(for_bias);
  found.balls_for_limits = whole(for_limits(ratio, options.multiplier));
  found.sessions_for_bias = sessions(found.balls_for_bias);
  found.sessions_for_limits = sessions(found.balls_for_limits);
  found.summary = stats::done();
  return found;
}

} // namespace baize::observers
