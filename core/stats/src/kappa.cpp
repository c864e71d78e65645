#include "baize/stats/kappa.h"

#include "baize/stats/distributions.h"
#include "baize/stats/leave_out.h"
#include "checks.h"

#include <algorithm>

namespace baize::stats {
namespace {

std::optional<units::Problem> trouble(const char* field, const Table& table, std::size_t size) {
  for (std::size_t i = 0; i < table.size(); ++i) {
    const std::string place = "row " + std::to_string(i + 1);
    if (table.size() != size || table[i].size() != size) {
      return units::Problem{"not_square", field, std::to_string(table[i].size()) + " columns",
                            "a square of " + std::to_string(size) + " by " + std::to_string(size),
                            place};
    }
    if (auto bad = not_finite(field, table[i])) {
      bad->place = place + ", " + bad->place;
      return bad;
    }
    for (const double cell : table[i]) {
      if (cell < 0) {
        return units::Problem{"below_zero", field, units::write_number(cell), "0 or more", place};
      }
    }
  }
  return std::nullopt;
}

std::optional<units::Problem> trouble(const Table& counts, const Table& disagreement,
                                      const ConfidenceOptions& options) {
  if (const auto bad = options.problem()) {
    return bad;
  }
  if (const auto bad = too_few("number of categories", counts.size(), 2)) {
    return bad;
  }
  if (const auto bad = lengths_differ("disagreement", disagreement.size(), counts.size())) {
    return bad;
  }
  if (const auto bad = trouble("counts", counts, counts.size())) {
    return bad;
  }
  if (const auto bad = trouble("disagreement", disagreement, counts.size())) {
    return bad;
  }
  for (std::size_t i = 0; i < counts.size(); ++i) {
    if (disagreement[i][i] != 0) {
      return units::Problem{"diagonal_not_zero", "disagreement",
                            units::write_number(disagreement[i][i]),
                            "0 where both give the same answer", "row " + std::to_string(i + 1)};
    }
  }
  return std::nullopt;
}

/// Proportions and agreement weights w = 1 - v / largest v.
struct Work {
  Table p;
  Table w;
  std::vector<double> row, column;           ///< margins of p
  std::vector<double> row_mean, column_mean; ///< of w by the other's margin
};

Work prepare(const Table& counts, const Table& disagreement, double n) {
  const std::size_t size = counts.size();
  double largest = 0;
  for (const auto& one : disagreement) {
    largest = std::max(largest, largest_of(one));
  }
  Work work{counts,
            disagreement,
            std::vector<double>(size),
            std::vector<double>(size),
            std::vector<double>(size),
            std::vector<double>(size)};
  for (std::size_t i = 0; i < size; ++i) {
    for (std::size_t j = 0; j < size; ++j) {
      work.p[i][j] /= n;
      work.w[i][j] = 1 - disagreement[i][j] / largest;
      work.row[i] += work.p[i][j];
      work.column[j] += work.p[i][j];
    }
  }
  for (std::size_t i = 0; i < size; ++i) {
    for (std::size_t j = 0; j < size; ++j) {
      work.row_mean[i] += work.column[j] * work.w[i][j];
      work.column_mean[j] += work.row[i] * work.w[i][j];
    }
  }
  return work;
}

void estimate(const Work& work, Kappa& kappa) {
  const std::size_t size = work.p.size();
  kappa.observed = 0;
  kappa.expected = 0;
  for (std::size_t i = 0; i < size; ++i) {
    for (std::size_t j = 0; j < size; ++j) {
      kappa.observed += work.p[i][j] * work.w[i][j];
      kappa.expected += work.row[i] * work.column[j] * work.w[i][j];
    }
  }
  kappa.value = (kappa.observed - kappa.expected) / (1 - kappa.expected);
}

/// A sum of squares less the square of the mean; what only rounding leaves is 0.
double spread(double square, double mean) {
  const double left = square - mean * mean;
  return left <= rounding_of(square) ? 0 : left;
}

void add_errors(const Work& work, Kappa& kappa) {
  const double chance = 1 - kappa.expected;
  const double lack = 1 - kappa.observed;
  double sum = 0;
  double null_sum = 0;
  double mean = 0;
  double null_mean = 0;
  for (std::size_t i = 0; i < work.p.size(); ++i) {
    for (std::size_t j = 0; j < work.p.size(); ++j) {
      const double margins = work.row_mean[i] + work.column_mean[j];
      const double term = work.w[i][j] * chance - margins * lack;
      const double null_term = work.w[i][j] - margins;
      sum += work.p[i][j] * term * term;
      mean += work.p[i][j] * term;
      null_sum += work.row[i] * work.column[j] * null_term * null_term;
      null_mean += work.row[i] * work.column[j] * null_term;
    }
  }
  // The mean of the terms is the paper's (po pe - 2 pe + po).
  kappa.se = std::sqrt(spread(sum, mean) / kappa.n) / (chance * chance);
  kappa.null_se = std::sqrt(spread(null_sum, null_mean) / kappa.n) / chance;
}

int answers(const std::vector<double>& margin) {
  return static_cast<int>(
      std::count_if(margin.begin(), margin.end(), [](double p) { return p > 0; }));
}

bool one_answer(const std::vector<double>& margin) {
  return answers(margin) < 2;
}

/// Would the observer be left with one answer, were one item of this margin left out?
bool decides(const std::vector<double>& margin, std::size_t place, double n) {
  return answers(margin) == 2 && std::lround(n * margin[place]) == 1;
}

/// The standard error by leaving one item out at a time, or nothing. Without an item of
/// cell i, j the sums of agreement, found and by chance, change by what it had in them.
std::optional<double> jackknife_error(const Table& counts, const Work& work, const Kappa& kappa) {
  const double n = kappa.n;
  std::vector<double> without;
  std::vector<double> alike;
  for (std::size_t i = 0; i < counts.size(); ++i) {
    for (std::size_t j = 0; j < counts.size(); ++j) {
      const double items = counts[i][j];
      if (items == 0) {
        continue;
      }
      if (items != std::floor(items) || decides(work.row, i, n) || decides(work.column, j, n)) {
        return std::nullopt;
      }
      const double w = work.w[i][j];
      const double observed = (n * kappa.observed - w) / (n - 1);
      const double expected =
          (n * n * kappa.expected - n * (work.row_mean[i] + work.column_mean[j]) + w) /
          ((n - 1) * (n - 1));
      without.push_back((observed - expected) / (1 - expected));
      alike.push_back(items);
    }
  }
  return leave_one_out_error(without, alike);
}

void add_interval(const Table& counts, const Work& work, double confidence, Kappa& kappa) {
  const double slope = 1 - kappa.value * kappa.value; // of tanh
  const auto error = jackknife_error(counts, work, kappa);
  if (!error || !(*error > 0) || !(slope > 0)) {
    return;
  }
  const double half = t_quantile((1 + confidence) / 2, kappa.n - 1) * *error / slope;
  const double centre = std::atanh(kappa.value);
  kappa.interval = Interval{std::tanh(centre - half), std::tanh(centre + half)};
}

} // namespace

units::Result<Table> cross_table(std::span<const int> first, std::span<const int> second,
                                 int lowest, int highest) {
  if (const auto bad = lengths_differ("second", second.size(), first.size())) {
    return units::Refusal(*bad);
  }
  if (highest < lowest || highest - lowest >= 1000) {
    return units::refuse("option_out_of_range", "highest", std::to_string(highest),
                         "from the lowest score, " + std::to_string(lowest) +
                             ", to less than 1000 above it");
  }
  const auto size = static_cast<std::size_t>(highest - lowest) + 1;
  Table table(size, std::vector<double>(size, 0));
  for (std::size_t i = 0; i < first.size(); ++i) {
    for (const int score : {first[i], second[i]}) {
      if (score < lowest || score > highest) {
        return units::Refusal(
            units::Problem{"score_out_of_range", "score", std::to_string(score),
                           "from " + std::to_string(lowest) + " to " + std::to_string(highest),
                           "pair " + std::to_string(i + 1)});
      }
    }
    table[static_cast<std::size_t>(first[i] - lowest)]
         [static_cast<std::size_t>(second[i] - lowest)] += 1;
  }
  return table;
}

Kappa weighted_kappa(const Table& counts, const Table& disagreement,
                     const ConfidenceOptions& options) {
  Kappa kappa;
  if (const auto bad = trouble(counts, disagreement, options)) {
    kappa.summary = refused(*bad);
    return kappa;
  }
  for (const auto& row : counts) {
    for (const double cell : row) {
      kappa.n += cell;
    }
  }
  if (kappa.n < 2) {
    kappa.summary =
        refused({"too_few", "number of items", units::write_number(kappa.n), "at least 2", ""});
    return kappa;
  }
  const Work work = prepare(counts, disagreement, kappa.n);
  const bool first = one_answer(work.row);
  if (first || one_answer(work.column)) {
    kappa.summary =
        degenerate({"all_equal", first ? "first observer" : "second observer",
                    "one and the same answer throughout",
                    "at least two different answers, since chance is judged by them", ""});
    return kappa;
  }
  estimate(work, kappa);
  add_errors(work, kappa);
  add_interval(counts, work, options.confidence, kappa);
  kappa.summary =
      done_if_finite({kappa.value, kappa.observed, kappa.expected, kappa.se, kappa.null_se});
  return kappa;
}

Kappa cohen_kappa(const Table& counts, KappaWeights weights, const ConfidenceOptions& options) {
  Table disagreement(counts.size(), std::vector<double>(counts.size(), 0));
  for (std::size_t i = 0; i < counts.size(); ++i) {
    for (std::size_t j = 0; j < counts.size(); ++j) {
      const double apart = std::fabs(static_cast<double>(i) - static_cast<double>(j));
      disagreement[i][j] = weights == KappaWeights::none     ? (i == j ? 0 : 1)
                           : weights == KappaWeights::linear ? apart
                                                             : apart * apart;
    }
  }
  return weighted_kappa(counts, disagreement, options);
}

} // namespace baize::stats
