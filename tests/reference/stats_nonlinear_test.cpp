// NIST Statistical Reference Datasets, nonlinear regression: twenty sets, each from
// both starts (certified values read in a stored copy).
#include "baize/stats/nonlinear_least_squares.h"
#include "reference/stats_model_data.h"

#include <functional>
#include <string>
#include <vector>

namespace baize::stats_reference {
namespace {

using Values = std::vector<double>;

double cubics(const Values& b, double x) {
  return (b[0] + x * (b[1] + x * (b[2] + x * b[3]))) / (1 + x * (b[4] + x * (b[5] + x * b[6])));
}
double three_exponentials(const Values& b, double x) {
  return b[0] * std::exp(-b[1] * x) + b[2] * std::exp(-b[3] * x) + b[4] * std::exp(-b[5] * x);
}
double saturating(const Values& b, double x) {
  return b[0] * (1 - std::exp(-b[1] * x));
}
double fading(const Values& b, double x) {
  return std::exp(-b[0] * x) / (b[1] + b[2] * x);
}

/// Digits that the certified values are met to: parameters, their standard errors, and
/// the residual sum of squares. The residuals of Lanczos1, 1e-14, are the rounding of
/// its data to double.
struct Set {
  std::string name;
  std::function<double(const Values&, double)> curve;
  double digits;
  double error_digits;
  double residual_digits = 9.5;
};

const Set kSets[] = {
    {"Misra1a", saturating, 9.5, 9},
    {"Misra1b",
     [](const Values& b, double x) { return b[0] * (1 - std::pow(1 + b[1] * x / 2, -2)); }, 9.5, 9},
    {"Misra1c",
     [](const Values& b, double x) { return b[0] * (1 - std::pow(1 + 2 * b[1] * x, -0.5)); }, 9.5,
     9},
    {"Misra1d", [](const Values& b, double x) { return b[0] * b[1] * x / (1 + b[1] * x); }, 9.5, 9},
    {"BoxBOD", saturating, 9.5, 9},
    {"Chwirut1", fading, 9.5, 9},
    {"Chwirut2", fading, 9.5, 9},
    {"DanWood", [](const Values& b, double x) { return b[0] * std::pow(x, b[1]); }, 9.5, 9},
    {"Eckerle4",
     [](const Values& b, double x) {
       return b[0] / b[1] * std::exp(-0.5 * std::pow((x - b[2]) / b[1], 2));
     },
     9.5, 9},
    {"Hahn1", cubics, 9.5, 9},
    {"Kirby2",
     [](const Values& b, double x) {
       return (b[0] + x * (b[1] + x * b[2])) / (1 + x * (b[3] + x * b[4]));
     },
     9.5, 9},
    {"Lanczos1", three_exponentials, 9.5, 2.5, 2.5},
    {"Lanczos3", three_exponentials, 8, 7.5},
    {"MGH09",
     [](const Values& b, double x) {
       return b[0] * (x * x + x * b[1]) / (x * x + x * b[2] + b[3]);
     },
     9, 9},
    {"MGH10", [](const Values& b, double x) { return b[0] * std::exp(b[1] / (x + b[2])); }, 9.5, 9},
    {"MGH17",
     [](const Values& b, double x) {
       return b[0] + b[1] * std::exp(-x * b[3]) + b[2] * std::exp(-x * b[4]);
     },
     9, 8.5},
    {"Rat42", [](const Values& b, double x) { return b[0] / (1 + std::exp(b[1] - b[2] * x)); }, 9.5,
     9},
    {"Rat43",
     [](const Values& b, double x) {
       return b[0] / std::pow(1 + std::exp(b[1] - b[2] * x), 1 / b[3]);
     },
     9.5, 9},
    {"Roszman1",
     [](const Values& b, double x) {
       return b[0] - b[1] * x - std::atan(b[2] / (x - b[3])) / 3.141592653589793;
     },
     9, 9},
    {"Thurber", cubics, 9.5, 9},
};

class NistNonlinear : public testing::TestWithParam<Set> {};

TEST_P(NistNonlinear, MeetsTheCertifiedValues) {
  const Set& set = GetParam();
  const auto data = model_json("nist_strd/nonlinear/" + set.name + ".json");
  Values y;
  Values x;
  for (const auto& cells : data.at("data")) {
    y.push_back(cells[0]);
    x.push_back(cells[1]);
  }
  for (const char* start : {"start1", "start2"}) {
    const std::string what = set.name + " " + start;
    const auto found = stats::nonlinear_least_squares(
        y, [&](const Values& b, std::size_t row) { return set.curve(b, x[row]); },
        data.at(start).get<Values>());
    ASSERT_TRUE(found.summary.usable) << what << ": " << found.summary.message;
    ASSERT_EQ(found.parameters.size(), data.at("certified").size());
    for (std::size_t k = 0; k < found.parameters.size(); ++k) {
      const std::string which = what + " b" + std::to_string(k + 1);
      expect_digits(found.parameters[k].value, data.at("certified")[k], set.digits, which);
      expect_digits(found.parameters[k].standard_error, data.at("certified_sd")[k],
                    set.error_digits, which + " error");
    }
    expect_digits(found.residual_ss, data.at("residual_ss"), set.residual_digits,
                  what + " residual");
    EXPECT_EQ(found.residual_df, static_cast<int>(y.size() - found.parameters.size()));
  }
}

INSTANTIATE_TEST_SUITE_P(Sets, NistNonlinear, testing::ValuesIn(kSets),
                         [](const auto& tested) { return tested.param.name; });

} // namespace
} // namespace baize::stats_reference
