// Columns y, x1, x2, q, k, df, successes, trials: a regression, and figures of distributions.
#include "baize/stats/binomial.h"
#include "baize/stats/distributions.h"
#include "baize/stats/least_squares.h"
#include "baize/stats/studentized_range.h"
#include "peers/sheet_in.h"

#include <array>

int main() {
  using namespace baize;
  auto sheet = peers::read_sheet();
  const auto column = [&](const char* name) { return peers::numbers(sheet[name]); };
  const auto y = column("y");
  const auto x1 = column("x1");
  const auto x2 = column("x2");
  std::vector<stats::LeastSquaresRow> rows;
  for (std::size_t i = 0; i < y.size(); ++i) {
    rows.push_back({y[i], {x1[i], x2[i]}});
  }
  const auto fit = stats::least_squares(rows);
  for (std::size_t i = 0; i < fit.coefficients.size(); ++i) {
    const std::string name = "coefficient " + std::to_string(i);
    peers::say(name, fit.coefficients[i].value);
    peers::say(name + " error", fit.coefficients[i].standard_error);
    peers::say(name + " p", fit.coefficients[i].p);
  }
  peers::say("f", *fit.f);
  peers::say("f p", *fit.f_p);
  const auto q = column("q");
  const auto k = peers::whole_numbers(sheet["k"]);
  const auto df = column("df");
  const auto successes = peers::whole_numbers(sheet["successes"]);
  const auto trials = peers::whole_numbers(sheet["trials"]);
  for (std::size_t i = 0; i < q.size(); ++i) {
    const std::string at = " " + std::to_string(i);
    peers::say("range" + at, stats::studentized_range_upper(q[i], k[i], df[i]));
    peers::say("t" + at, stats::t_upper(q[i], df[i]));
    peers::say("chi" + at, stats::chi_squared_upper(q[i], df[i]));
    peers::say("F" + at, stats::f_upper(q[i], k[i], df[i]));
    peers::say("beta" + at, stats::beta_quantile(0.1 + 0.8 / (1 + q[i]), k[i], df[i]));
    const auto exact = stats::clopper_pearson(successes[i], trials[i]);
    const auto wilson = stats::wilson(successes[i], trials[i]);
    peers::say("exact low" + at, exact.interval.low);
    peers::say("exact high" + at, exact.interval.high);
    peers::say("wilson low" + at, wilson.interval.low);
    peers::say("wilson high" + at, wilson.interval.high);
  }
}
