#include "work_estimates.h"

#include <algorithm>
#include <cmath>

namespace baize::season {
namespace {

constexpr int kDaysOfLoss = 400; ///< over which a loss is added up

std::optional<int> day_of_share(const std::vector<std::optional<int>>& sorted, double share) {
  const auto place =
      static_cast<std::size_t>(std::lround(share * static_cast<double>(sorted.size() - 1)));
  return sorted[place];
}

} // namespace

Return return_of(std::vector<std::optional<int>> days, int followed) {
  Return found;
  found.followed = followed;
  if (days.empty()) {
    return found;
  }
  std::sort(days.begin(), days.end(),
            [](const auto& a, const auto& b) { return a && (!b || *a < *b); });
  const auto back = std::count_if(days.begin(), days.end(), [](const auto& d) { return !!d; });
  found.share = static_cast<double>(back) / static_cast<double>(days.size());
  found.median = day_of_share(days, 0.5);
  found.low = day_of_share(days, 0.025);
  found.high = day_of_share(days, 0.975);
  return found;
}

WorkDraws::WorkDraws(const SeasonFit& fit, std::size_t place, const LossDays& losses,
                     const std::vector<double>& standards)
    : fit_(fit), place_(place), losses_(losses), standards_(standards), all_(losses.losses.size()) {
  const GreenModel& green = fit.model.greens[place];
  const GrowthCurve& curve = fit.model.curves[green.curve];
  for (std::size_t j = 0; j < all_.size(); ++j) {
    const Loss& loss = green.losses[losses.losses[j]];
    One& one = all_[j];
    Eigen::VectorXd shares(static_cast<Eigen::Index>(all_.size()));
    for (std::size_t i = 0; i < all_.size(); ++i) {
      shares(static_cast<Eigen::Index>(i)) =
          half_share(green, green.losses[losses.losses[i]].half, loss.half);
    }
    one.surface = surface_of(shares);
    one.growth.resize(kDaysOfLoss + 1);
    for (int day = 0; day <= kDaysOfLoss; ++day) {
      one.growth(day) = curve.between(loss.last, loss.day + day);
    }
  }
}

std::size_t WorkDraws::surface_of(const Eigen::VectorXd& shares) {
  const auto known = std::find(surfaces_.begin(), surfaces_.end(), shares);
  const auto place = static_cast<std::size_t>(known - surfaces_.begin());
  if (known == surfaces_.end()) {
    surfaces_.push_back(shares);
  }
  return place;
}

void WorkDraws::add(const Draw& draw, const std::vector<double>& level, const DrawnLosses& lost) {
  std::vector<Eigen::VectorXd> totals;
  totals.reserve(surfaces_.size());
  for (const Eigen::VectorXd& shares : surfaces_) {
    totals.push_back(lost.total(shares));
  }
  for (std::size_t j = 0; j < all_.size(); ++j) {
    add_one(j, draw, level, totals[all_[j].surface]);
  }
}

void WorkDraws::add_one(std::size_t j, const Draw& draw, const std::vector<double>& level,
                        const Eigen::VectorXd& lost) {
  constexpr double kNothingLeft = 12; ///< below exp(-12) of its depth a day adds nothing
  One& one = all_[j];
  const std::size_t k = losses_.losses[j];
  const Loss& loss = fit_.model.greens[place_].losses[k];
  const double depth = draw.own[place_](static_cast<Eigen::Index>(k));
  const double rate = draw.rate(place_, k, loss.method);
  const double tolerance = fit_.options.tolerance;
  const double growth_back = depth > tolerance ? std::log(depth / tolerance) / rate : 0;
  const auto* const growth = one.growth.data();
  const auto* const end = growth + one.growth.size();
  const auto* const back = std::lower_bound(growth, end, growth_back);
  const Eigen::Index seen = std::upper_bound(growth, end, kNothingLeft / rate) - growth;
  const double score_days = depth * (-rate * one.growth.head(seen)).array().exp().sum();
  one.depth.push_back(depth);
  one.rate.push_back(rate);
  one.half_life.push_back(std::log(2.0) / rate);
  one.score_days.push_back(score_days);
  one.growth_days_back.push_back(growth_back);
  one.within_tolerance.push_back(back == end ? std::nullopt
                                             : std::optional<int>(static_cast<int>(back - growth)));
  std::optional<int> at_standard;
  // A work from before the followed days may have been back before them.
  const int start = loss.day - losses_.days.first;
  for (int i = start; start >= 0 && i < losses_.days.days() && !at_standard; ++i) {
    const double score = level[static_cast<std::size_t>(i)] - lost(i);
    if (score >= standards_[static_cast<std::size_t>(i)]) {
      at_standard = losses_.days.first + i - loss.day;
    }
  }
  one.at_standard.push_back(at_standard);
}

int WorkDraws::followed(std::size_t j) const {
  const units::Day day = fit_.model.greens[place_].losses[losses_.losses[j]].day;
  return day < losses_.days.first ? 0 : losses_.days.last - day;
}

std::vector<WorkEstimate> WorkDraws::estimates() const {
  std::vector<WorkEstimate> works;
  for (std::size_t j = 0; j < all_.size(); ++j) {
    const One& one = all_[j];
    WorkEstimate work;
    work.loss = fit_.model.greens[place_].losses[losses_.losses[j]];
    work.depth = estimate_of(one.depth);
    work.rate = estimate_of(one.rate);
    work.half_life = estimate_of(one.half_life);
    work.score_days = estimate_of(one.score_days);
    work.growth_days_back = estimate_of(one.growth_days_back);
    work.within_tolerance = return_of(one.within_tolerance, kDaysOfLoss);
    work.at_standard = return_of(one.at_standard, followed(j));
    works.push_back(std::move(work));
  }
  return works;
}

} // namespace baize::season
