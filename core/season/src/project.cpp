#include "baize/season/project.h"

#include "baize/recovery/ledger.h"
#include "baize/season/bounded_score.h"
#include "baize/units/number.h"
#include "level_path.h"
#include "work_estimates.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace baize::season {
namespace {

constexpr int kFollowed = 150; ///< days past the last reported one, for works' returns
constexpr double kNormal95 = 1.959963984540054;
constexpr std::uint64_t kPathStreams = 1'000'000; ///< apart from the streams of the fit

/// Sums over draws of one day.
struct DaySums {
  double score = 0;
  double score_squares = 0;
  double level = 0;
  double level_squares = 0;
  int reached = 0;
};

class Projection {
 public:
  Projection(const SeasonFit& fit, const green::Records& records, std::size_t place,
             const std::string& half, units::Period period, int forecast_days)
      : fit_(fit), green_(fit.model.greens[place]), place_(place), period_(period),
        roll_sd_(std::hypot(unrounded(fit.model.roll_sd), fit.parameters.visit_sd)) {
    const units::Day end = fit.model.record_end;
    units::Day last = std::min(period.last, end);
    if (period.holds(end)) {
      last = end + forecast_days;
    }
    reported_ = std::max(last - period.first + 1, 0);
    losses_ = loss_days(fit.model, place, {period.first, last + kFollowed});
    sums_.resize(static_cast<std::size_t>(losses_.days.days()));
    std::map<double, double> levels; // of each standard that some day has
    for (units::Day day = losses_.days.first; day <= losses_.days.last; ++day) {
      standards_.push_back(green::standard_on(records.standards, green_.green, day));
      const auto [known, is_new] = levels.try_emplace(standards_.back());
      if (is_new) {
        known->second = level_of_score(known->first, roll_sd_);
      }
      needed_.push_back(known->second);
    }
    const recovery::Ledger ledger = recovery::true_days(records, green_.green, period, end);
    closed_.assign(sums_.size(), false);
    for (std::size_t i = 0; i < ledger.days.size(); ++i) {
      closed_[i] = ledger.days[i] == recovery::DayKind::closed;
      year_.open_days += closed_[i] ? 0 : 1;
    }
    counted_ = ledger.days.size();
    shares_.resize(static_cast<Eigen::Index>(losses_.losses.size()));
    for (std::size_t j = 0; j < losses_.losses.size(); ++j) {
      shares_(static_cast<Eigen::Index>(j)) =
          half_share(green_, green_.losses[losses_.losses[j]].half, half);
    }
    mean_losses_ = Eigen::MatrixXd::Zero(losses_.growth.rows(), losses_.growth.cols());
    year_.green = green_.green;
    year_.half = half;
  }

  GreenYear run() {
    WorkDraws works(fit_, place_, losses_, needed_);
    const LevelPaths paths(fit_.model, place_, losses_.days);
    DrawnLosses lost(green_, losses_, place_);
    for (std::size_t i = 0; i < fit_.draws.size(); ++i) {
      stats::Random random(fit_.options.seed, kPathStreams * (place_ + 1) + i);
      const Draw& draw = fit_.draws[i];
      const std::vector<double> level = paths.draw(draw, random);
      lost.draw(draw);
      add(level, lost);
      works.add(draw, level, lost);
    }
    year_.works = works.estimates();
    finish();
    return std::move(year_);
  }

 private:
  void add(const std::vector<double>& level, const DrawnLosses& lost) {
    lost.add_to(mean_losses_);
    const Eigen::VectorXd total = lost.total(shares_);
    double true_days = 0;
    std::optional<int> back;
    const int end = fit_.model.record_end - losses_.days.first;
    for (std::size_t i = 0; i < sums_.size(); ++i) {
      const double score = level[i] - total(static_cast<Eigen::Index>(i));
      DaySums& sums = sums_[i];
      sums.score += score;
      sums.score_squares += score * score;
      sums.level += level[i];
      sums.level_squares += level[i] * level[i];
      const bool reached = score >= needed_[i];
      sums.reached += reached ? 1 : 0;
      true_days += reached && i < counted_ && !closed_[i] ? 1 : 0;
      if (reached && !back && static_cast<int>(i) > end) {
        back = static_cast<int>(i) - end;
      }
    }
    true_days_.push_back(true_days);
    back_.push_back(back);
  }

  DayEstimate day_at(std::size_t i) const {
    const auto n = static_cast<double>(fit_.draws.size());
    const DaySums& sums = sums_[i];
    const auto within = [&](double points) { return bounded_score(points, roll_sd_); };
    const auto sd = [&](double sum, double squares) {
      return kNormal95 * std::sqrt(std::max(squares / n - sum / n * (sum / n), 0.0));
    };
    DayEstimate day;
    day.day = losses_.days.first + static_cast<int>(i);
    day.to_come = day.day > fit_.model.record_end;
    day.closed = closed_[i];
    day.standard = standards_[i];
    const double score = sd(sums.score, sums.score_squares);
    day.score = within(sums.score / n);
    day.score_low = within(sums.score / n - score);
    day.score_high = within(sums.score / n + score);
    const double level = sd(sums.level, sums.level_squares);
    day.undisturbed = within(sums.level / n);
    day.undisturbed_low = within(sums.level / n - level);
    day.undisturbed_high = within(sums.level / n + level);
    day.chance = sums.reached / n;
    for (Eigen::Index j = 0; j < shares_.size(); ++j) {
      day.losses.push_back(shares_(j) * mean_losses_(static_cast<Eigen::Index>(i), j) / n);
    }
    return day;
  }

  void finish() {
    for (int i = 0; i < reported_; ++i) {
      year_.days.push_back(day_at(static_cast<std::size_t>(i)));
    }
    year_.true_days = estimate_of(true_days_);
    year_.average_play = fit_.play.value / 2;
    const int end = fit_.model.record_end - losses_.days.first;
    const bool known = period_.holds(fit_.model.record_end) && end >= 0;
    if (known &&
        2 * sums_[static_cast<std::size_t>(end)].reached < static_cast<int>(fit_.draws.size())) {
      year_.forecast = return_of(back_, static_cast<int>(sums_.size()) - 1 - end);
    }
    year_.summary = stats::done();
  }

  const SeasonFit& fit_;
  const GreenModel& green_;
  std::size_t place_;
  units::Period period_;
  int reported_ = 0;
  LossDays losses_;
  std::vector<DaySums> sums_;
  double roll_sd_ = 0; ///< of a roll about its day, with what its visit shares
  std::vector<double> standards_;
  std::vector<double> needed_; ///< level that rolls to the day's standard
  std::vector<bool> closed_;
  std::size_t counted_ = 0; ///< days of the ledger
  Eigen::VectorXd shares_;
  Eigen::MatrixXd mean_losses_;
  std::vector<double> true_days_;
  std::vector<std::optional<int>> back_;
  GreenYear year_;
};

} // namespace

std::optional<units::Problem> ProjectOptions::problem() const {
  constexpr int kFarthest = 200;
  if (forecast_days < 0 || forecast_days > kFarthest) {
    return units::Problem{"option_out_of_range",
                          "forecast_days",
                          units::write_number(forecast_days),
                          "a whole number from 0 to 200",
                          {}};
  }
  return std::nullopt;
}

GreenYear project(const SeasonFit& fit, const green::Records& records, const std::string& green,
                  const std::string& half, units::Period period, const ProjectOptions& options) {
  GreenYear year;
  year.green = green;
  year.half = half;
  year.summary = fit.summary;
  if (!fit.summary.usable) {
    return year;
  }
  if (const auto problem = options.problem()) {
    year.summary = stats::refused(*problem);
    return year;
  }
  const auto& greens = fit.model.greens;
  const auto found = std::find_if(greens.begin(), greens.end(),
                                  [&](const GreenModel& one) { return one.green == green; });
  if (found == greens.end()) {
    year.summary = stats::refused(
        {"no_such_green", "green", green, "a green with scored visits on at least 3 days", {}});
    return year;
  }
  const auto place = static_cast<std::size_t>(found - greens.begin());
  return Projection(fit, records, place, half, period, options.forecast_days).run();
}

} // namespace baize::season
