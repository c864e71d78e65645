#include "baize/stats/ljung_box.h"

#include "baize/stats/distributions.h"
#include "baize/units/number.h"
#include "checks.h"

#include <cmath>

namespace baize::stats {
namespace {

struct Values {
  double n = 0;
  double mean = 0;
  double squares = 0;
};

Values values_of(const std::vector<std::vector<double>>& series) {
  Values values;
  for (const auto& one : series) {
    for (const double value : one) {
      values.n += 1;
      values.mean += (value - values.mean) / values.n;
    }
  }
  for (const auto& one : series) {
    for (const double value : one) {
      values.squares += (value - values.mean) * (value - values.mean);
    }
  }
  return values;
}

/// Products at one lag, and how many.
struct Products {
  double sum = 0;
  double n = 0;
};

Products products_at(const std::vector<std::vector<double>>& series, std::size_t lag, double mean) {
  Products products;
  for (const auto& one : series) {
    for (std::size_t t = lag; t < one.size(); ++t) {
      products.sum += (one[t] - mean) * (one[t - lag] - mean);
      products.n += 1;
    }
  }
  return products;
}

} // namespace

std::optional<units::Problem> LjungBoxOptions::problem() const {
  constexpr int kMost = 100;
  if (lags < 1 || lags > kMost) {
    return units::Problem{"option_out_of_range",
                          "lags",
                          units::write_number(lags),
                          "a whole number from 1 to 100",
                          {}};
  }
  if (fitted < 0 || fitted >= lags) {
    return units::Problem{"option_out_of_range",
                          "fitted",
                          units::write_number(fitted),
                          "a whole number from 0 to one less than the lags",
                          {}};
  }
  return std::nullopt;
}

LjungBox ljung_box(const std::vector<std::vector<double>>& series, const LjungBoxOptions& options) {
  LjungBox found;
  if (const auto problem = options.problem()) {
    found.summary = refused(*problem);
    return found;
  }
  for (const auto& one : series) {
    if (const auto problem = not_finite("series", one)) {
      found.summary = refused(*problem);
      return found;
    }
  }
  const Values values = values_of(series);
  found.values = static_cast<int>(values.n);
  const auto lags = static_cast<std::size_t>(options.lags);
  if (const auto problem =
          too_few("number of values", static_cast<std::size_t>(found.values), 2 * lags + 1)) {
    found.summary = refused(*problem);
    return found;
  }
  if (!(values.squares > 0)) {
    found.summary = degenerate({"all_equal", "series", units::write_number(values.mean),
                                "values that differ: equal ones have no autocorrelation", ""});
    return found;
  }
  double sum = 0;
  for (std::size_t lag = 1; lag <= lags; ++lag) {
    const Products products = products_at(series, lag, values.mean);
    const double r = products.sum / values.squares;
    found.autocorrelation.push_back(r);
    sum += products.n > 0 ? r * r / products.n : 0;
  }
  found.statistic = values.n * (values.n + 2) * sum;
  found.df = options.lags - options.fitted;
  found.p = chi_squared_upper(found.statistic, found.df);
  found.summary = done();
  return found;
}

} // namespace baize::stats
