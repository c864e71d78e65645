// Reads left, right, x1, x2, cluster (right empty: Inf) and the distribution's name as
// the argument; prints what every method of survival finds.
#include "baize/stats/aft_clusters.h"
#include "baize/stats/aft_frailty.h"
#include "baize/stats/aft_tests.h"
#include "baize/stats/kaplan_meier.h"
#include "baize/stats/turnbull.h"

#include <cstdio>
#include <iostream>
#include <limits>
#include <sstream>
#include <string>

namespace {

using namespace baize::stats;

struct Sheet {
  std::vector<AftObservation> rows;
  std::vector<int> clusters;
};

double number(const std::string& cell) {
  return cell == "Inf" ? std::numeric_limits<double>::infinity() : std::stod(cell);
}

Sheet read() {
  Sheet sheet;
  std::string line;
  std::getline(std::cin, line);
  while (std::getline(std::cin, line)) {
    std::istringstream parts(line);
    std::vector<std::string> cells;
    for (std::string cell; std::getline(parts, cell, '\t');) {
      cells.push_back(cell);
    }
    sheet.rows.push_back(
        {{number(cells[0]), number(cells[1])}, {number(cells[2]), number(cells[3])}});
    sheet.clusters.push_back(static_cast<int>(number(cells[4])));
  }
  return sheet;
}

void print(const std::string& name, double value) {
  std::printf("%s\t%.17g\n", name.c_str(), value);
}

void print(const std::string& name, const AftFit& fit) {
  print(name + "_usable", fit.summary.usable ? 1 : 0);
  print(name + "_loglik", fit.log_likelihood);
  print(name + "_scale", fit.scale);
  for (std::size_t i = 0; i < fit.coefficients.size(); ++i) {
    print(name + "_b" + std::to_string(i), fit.coefficients[i].value);
    print(name + "_e" + std::to_string(i), fit.coefficients[i].standard_error);
  }
}

void print_curves(const Sheet& sheet) {
  std::vector<CensoredTime> times;
  std::vector<FollowUp> ends;
  for (const AftObservation& one : sheet.rows) {
    times.push_back(one.time);
    ends.push_back(
        {one.time.left > 0 ? one.time.left : one.time.right, !one.time.right_censored()});
  }
  const auto curve = turnbull(times);
  print("turnbull_usable", curve.summary.usable ? 1 : 0);
  print("turnbull_loglik", curve.log_likelihood);
  print("turnbull_gap", curve.optimality_gap);
  const auto product = kaplan_meier(ends);
  print("km_steps", static_cast<double>(product.steps.size()));
  for (std::size_t i = 0; i < product.steps.size(); ++i) {
    print("km_s" + std::to_string(i), product.steps[i].survival);
    print("km_e" + std::to_string(i), product.steps[i].standard_error);
  }
}

} // namespace

int main(int argc, char** argv) {
  const std::string name = argc > 1 ? argv[1] : "weibull";
  const AftOptions options{name == "exponential" ? AftDistribution::exponential
                           : name == "weibull"   ? AftDistribution::weibull
                           : name == "lognormal" ? AftDistribution::log_normal
                                                 : AftDistribution::log_logistic};
  const Sheet sheet = read();
  const auto plain = fit_aft(sheet.rows, options);
  print("plain", plain);
  print("plain_log_scale_error", plain.log_scale_error);
  print("plain_lr", plain.likelihood_ratio);
  const auto quantile = aft_quantile(plain, {1, 0.5}, 0.3);
  print("plain_q", quantile ? quantile->time : -1);
  print("plain_q_error", quantile ? quantile->time * quantile->log_standard_error : -1);
  print("robust", fit_aft_clustered(sheet.rows, sheet.clusters, options));
  const auto frailty = fit_aft_frailty(sheet.rows, sheet.clusters, {options, 41});
  print("frailty", frailty.fit);
  print("frailty_sd", frailty.cluster_sd);
  print("score", aft_score_test(sheet.rows, 1, options).statistic);
  print("ratio", aft_likelihood_ratio_test(sheet.rows, 1, options).statistic);
  print_curves(sheet);
  return 0;
}
