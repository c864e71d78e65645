#include "baize/observers/lean.h"

#include "baize/stats/distributions.h"
#include "baize/stats/least_squares.h"
#include "places.h"

#include <algorithm>
#include <map>

namespace baize::observers {
namespace {

constexpr double kDaysInAYear = 365.25;

/// Differences of one session and their balls.
struct Gap {
  units::Day day;
  Sums sums;
  int balls = 0;
};

/// Own score less the mean of the others', by session in the table's order.
std::vector<Gap> gaps_of(const SharedTable& table, std::size_t observer) {
  std::map<std::size_t, Gap> gaps;
  for (const SharedItem& run : table.runs) {
    if (!run.scores[observer]) {
      continue;
    }
    double others = 0;
    int count = 0;
    for (std::size_t i = 0; i < run.scores.size(); ++i) {
      if (i != observer && run.scores[i]) {
        others += *run.scores[i];
        ++count;
      }
    }
    if (count > 0) {
      Gap& gap = gaps[run.session];
      gap.day = table.sessions[run.session].day;
      gap.sums.add(*run.scores[observer] - others / count);
      gap.balls += run.balls;
    }
  }
  std::vector<Gap> ordered;
  ordered.reserve(gaps.size());
  for (const auto& [session, gap] : gaps) {
    ordered.push_back(gap);
  }
  return ordered;
}

Estimate bias_of(const std::vector<Gap>& gaps, double confidence) {
  std::vector<Sums> sessions;
  sessions.reserve(gaps.size());
  for (const Gap& gap : gaps) {
    sessions.push_back(gap.sums);
  }
  return mean_by_session(sessions, confidence).value_or(Estimate{});
}

int balls_of(const std::vector<Gap>& gaps) {
  int balls = 0;
  for (const Gap& gap : gaps) {
    balls += gap.balls;
  }
  return balls;
}

std::vector<QuarterLean> quarters_of(const std::vector<Gap>& gaps, double confidence) {
  std::map<std::pair<int, int>, std::vector<Gap>> by_quarter;
  for (const Gap& gap : gaps) {
    const units::YearMonthDay date = units::year_month_day(gap.day);
    by_quarter[{date.year, (date.month + 2) / 3}].push_back(gap);
  }
  std::vector<QuarterLean> quarters;
  quarters.reserve(by_quarter.size());
  for (const auto& [key, some] : by_quarter) {
    quarters.push_back({key.first, key.second, static_cast<int>(some.size()), balls_of(some),
                        bias_of(some, confidence)});
  }
  return quarters;
}

std::optional<Trend> trend_of(const std::vector<Gap>& gaps, double confidence) {
  std::vector<stats::LeastSquaresRow> rows;
  rows.reserve(gaps.size());
  for (const Gap& gap : gaps) {
    rows.push_back({gap.sums.sum / gap.sums.n, {(gap.day - gaps.front().day) / kDaysInAYear}});
  }
  const stats::LeastSquaresFit fit = stats::least_squares(rows);
  if (!fit.summary.usable || fit.residual_df < 1) {
    return std::nullopt;
  }
  const stats::LinearCoefficient& slope = fit.coefficients[1];
  const double half =
      stats::t_quantile(1 - (1 - confidence) / 2, fit.residual_df) * slope.standard_error;
  return Trend{
      slope.value, slope.standard_error, {slope.value - half, slope.value + half}, slope.p};
}

} // namespace

std::optional<Estimate> correction(const Lean& lean) {
  if (!lean.summary.usable || !lean.bias.interval) {
    return std::nullopt;
  }
  return Estimate{-lean.bias.value, lean.bias.se,
                  stats::Interval{-lean.bias.interval->high, -lean.bias.interval->low}};
}

Lean lean_of(const SharedTable& table, const std::string& observer, double confidence) {
  Lean lean;
  lean.observer = observer;
  if (auto bad = outside("confidence", confidence, 0, 1, "a number above 0 and below 1")) {
    lean.summary = stats::refused(*bad);
    return lean;
  }
  const auto place = place_of(table, observer);
  if (!place) {
    lean.summary = stats::refused(unknown_observer(observer));
    return lean;
  }
  const std::vector<Gap> gaps = gaps_of(table, *place);
  lean.sessions = static_cast<int>(gaps.size());
  lean.balls = balls_of(gaps);
  if (gaps.size() < 2) {
    lean.summary = stats::refused(no_shared_rolls(gaps.size()));
    return lean;
  }
  lean.bias = bias_of(gaps, confidence);
  lean.quarters = quarters_of(gaps, confidence);
  lean.trend = trend_of(gaps, confidence);
  lean.summary = stats::done();
  return lean;
}

} // namespace baize::observers
