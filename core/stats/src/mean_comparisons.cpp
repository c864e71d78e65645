#include "baize/stats/mean_comparisons.h"

#include "baize/stats/distributions.h"
#include "baize/stats/studentized_range.h"
#include "checks.h"

#include <algorithm>
#include <map>
#include <utility>

namespace baize::stats {
namespace {

using units::Problem;

constexpr double kRoot2 = 1.4142135623730951;

std::optional<Problem> bad_pairs(std::size_t means, const std::vector<PairDifference>& pairs) {
  const std::size_t wanted = means * (means - 1) / 2;
  std::vector<std::pair<std::size_t, std::size_t>> seen;
  for (const PairDifference& pair : pairs) {
    const std::string place =
        "means " + std::to_string(pair.first + 1) + " and " + std::to_string(pair.second + 1);
    if (!std::isfinite(pair.difference)) {
      return Problem{"not_finite", "difference", units::write_number(pair.difference),
                     "a finite number", place};
    }
    if (!(pair.standard_error > 0 && std::isfinite(pair.standard_error) && pair.df >= 1)) {
      return Problem{"standard_error_out_of_range", "standard error",
                     units::write_number(pair.standard_error) + " with df " +
                         units::write_number(pair.df),
                     "above 0 and finite, with 1 degree of freedom or more", place};
    }
    if (pair.first < pair.second && pair.second < means) {
      seen.emplace_back(pair.first, pair.second);
    }
  }
  std::sort(seen.begin(), seen.end());
  const bool twice = std::adjacent_find(seen.begin(), seen.end()) != seen.end();
  if (twice || seen.size() != wanted || pairs.size() != wanted) {
    return Problem{"pairs_incomplete", "pairs", std::to_string(pairs.size()),
                   "every pair of means once, " + std::to_string(wanted), ""};
  }
  return std::nullopt;
}

/// Critical differences in standard errors, one for each number of degrees of freedom.
class Critical {
 public:
  Critical(const MeanComparisonOptions& options, std::size_t means)
      : options_(options), means_(static_cast<int>(means)) {}
  double operator()(double df) {
    const auto [at, fresh] = known_.try_emplace(df, 0);
    if (fresh) {
      at->second = options_.method == PairMethod::tukey
                       ? studentized_range_critical(options_.alpha, means_, df) / kRoot2
                       : t_quantile(1 - options_.alpha / 2, df);
    }
    return at->second;
  }
  double p(double t, double df) const {
    return options_.method == PairMethod::tukey
               ? studentized_range_upper(kRoot2 * std::fabs(t), means_, df)
               : 2 * t_upper(std::fabs(t), df);
  }

 private:
  MeanComparisonOptions options_;
  int means_;
  std::map<double, double> known_;
};

bool alike(const std::vector<PairDifference>& pairs) {
  return std::all_of(pairs.begin(), pairs.end(), [&](const PairDifference& pair) {
    return std::fabs(pair.standard_error / pairs[0].standard_error - 1) < 1e-9 &&
           std::fabs(pair.df / pairs[0].df - 1) < 1e-9;
  });
}

} // namespace

std::optional<Problem> MeanComparisonOptions::problem() const {
  return outside_open("alpha", alpha, 0, 1, "above 0 and below 1");
}

MeanComparisons compare_means(const std::vector<double>& means,
                              const std::vector<PairDifference>& pairs,
                              const MeanComparisonOptions& options) {
  MeanComparisons result;
  auto problem = options.problem();
  problem = problem ? problem : too_few("means", means.size(), 2);
  problem = problem ? problem : not_finite("means", means);
  if (!problem && means.size() > 200) {
    problem = Problem{"too_many", "means", std::to_string(means.size()), "at most 200", ""};
  }
  problem = problem ? problem : bad_pairs(means.size(), pairs);
  if (problem) {
    result.summary = refused(*problem);
    return result;
  }
  Critical critical(options, means.size());
  std::vector<std::pair<std::size_t, std::size_t>> apart;
  result.summary = done();
  for (const PairDifference& pair : pairs) {
    const double p = critical.p(pair.difference / pair.standard_error, pair.df);
    const double half = critical(pair.df) * pair.standard_error;
    const bool significant = std::fabs(pair.difference) >= half;
    result.pairs.push_back({pair.first,
                            pair.second,
                            pair.difference,
                            pair.standard_error,
                            pair.df,
                            p,
                            {pair.difference - half, pair.difference + half},
                            significant});
    if (significant) {
      apart.emplace_back(pair.first, pair.second);
    }
    const Summary finite = done_if_finite({p, half});
    result.summary = finite.usable ? result.summary : finite;
  }
  if (alike(pairs)) {
    result.least_difference = critical(pairs[0].df) * pairs[0].standard_error;
  }
  result.letters = compact_letters(means, apart);
  if (result.letters.empty() && result.summary.usable) {
    result.summary = refused({"too_many", "letters", "more than 52", "at most 52", ""});
  }
  return result;
}

} // namespace baize::stats
