#pragma once

#include "baize/compare/look.h"
#include "baize/stats/aft.h"
#include "baize/stats/turnbull.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::compare {

struct CompareOptions {
  stats::AftDistribution distribution = stats::AftDistribution::log_logistic;
  double level = 0.95;    ///< of every interval; above 0.5, below 1
  double days_wanted = 3; ///< a difference worth seeing, for the works needed; above 0
  /// "option_out_of_range".
  std::optional<units::Problem> problem() const;
  bool valid() const { return !problem(); }
};

/// A figure with its interval; none where one work gives no spread.
struct Figure {
  double value = 0;
  std::optional<double> low;
  std::optional<double> high;
};

/// Why a method has no median.
enum class NoMedian {
  none,       ///< it has one
  never_back, ///< nothing was seen back
  never_below ///< nothing was seen below: back before the first look
};

struct MethodFigures {
  std::string method;
  int works = 0;    ///< work days: the number that counts
  int looks = 0;    ///< greens and halves looked at
  int censored = 0; ///< looks without a day back
  NoMedian no_median = NoMedian::none;
  std::optional<Figure> days; ///< median until back, at the reference of the covariates
  int missed = 0;             ///< looks after which visits were missed: they have days_if_good
  /// Median, had visits been missed only because the roll was good again; absent where
  /// none were missed after any method.
  std::optional<Figure> days_if_good;
  std::optional<Figure> growth_days; ///< median
  std::optional<Figure> depth;       ///< mean over works of the mean over greens
  std::optional<Figure> score_days;  ///< likewise; a least where losses_open is above 0
  int losses_open = 0;
  std::optional<double> growth; ///< mean growth potential after its works
  stats::Turnbull curve;        ///< of days, every look by itself
};

/// How far a difference may be put down to the methods. The first that fits.
enum class Evidence {
  one_work,     ///< one of them was done once only: the day and the method are one
  before_after, ///< all works of one lie before all works of the other
  repeated,     ///< each was done more than once, the days mixed or shared
  randomised    ///< repeated, and a trial gave each green its method by lot
};

/// Second less first.
struct PairFigures {
  std::string first;
  std::string second;
  std::optional<Figure> days;  ///< at the geometric mean of both medians
  std::optional<Figure> ratio; ///< by how much days stretch
  std::optional<Figure> growth_days;
  std::optional<Figure> depth;
  std::optional<Figure> score_days;
  double p = 1;            ///< two-sided, of no difference in days
  bool told_apart = false; ///< each done more than once, and the interval of days leaves 0 out
  /// Works of each that would show a difference of days_wanted four times in five.
  std::optional<int> works_needed;
  int shared_days = 0; ///< days on which both were done
  Evidence evidence = Evidence::one_work;
};

/// What days were adjusted for, or why not.
struct Adjustment {
  std::string name; ///< growth, score_before, grass
  bool used = false;
  std::string reason;                          ///< where it was not used
  std::optional<double> reference;             ///< the value at which medians are given
  std::optional<stats::AftCoefficient> effect; ///< of log days
};

struct DistributionTried {
  stats::AftDistribution distribution;
  double log_likelihood = 0;
};

/// Methods beside one another, by interval-censored accelerated failure time
/// regression of the days until back with a normal effect of each work (all greens of
/// one method, day and club). Errors are those of fit_aft_frailty times
/// sqrt(works / df), with t on df degrees, df = works less methods less covariates that
/// do not vary within works: with equal counts, exact times and normal errors that is
/// the t interval on the works' means. Depth and score-days: means of the works' means,
/// their spread pooled over methods, t on works less methods; a method's own interval
/// ends at 0 below.
///
/// Growth potential after the work (its logarithm), score before and grass are taken in
/// where known for nine looks of ten, where they vary, and where df stays 3 or more.
/// Growth-days are compared without covariates, where known for half of the looks.
/// Where visits were missed after some look, the regression of days is done once more
/// with days_if_good; the figures of pairs stay those of the days as recorded.
/// A method without a median is left out of the regression.
///
/// Differences in days: 2 g sinh(d / 2), d the difference of log medians and g the
/// geometric mean of the medians: the difference of the medians, with an interval that
/// leaves out 0 exactly where that of d does. Works needed: 2 v (z(0.975) + z(0.8))^2 /
/// d^2 + z(0.975)^2 / 4 of each, v the variance of a work's log median (Guenther WC
/// (1981) Am. Stat. 35:243-244). Each interval stands by itself; with many pairs some
/// leave out 0 by chance.
struct Comparison {
  stats::Summary summary; ///< of the regression of days
  stats::AftDistribution distribution = stats::AftDistribution::log_logistic;
  std::vector<DistributionTried> tried;
  std::vector<Adjustment> adjustments;
  std::vector<MethodFigures> methods; ///< by median, those without one last, by name
  std::vector<PairFigures> pairs;
  int works = 0;
  int looks = 0;
  double work_sd = 0;    ///< of log days, between works of one method
  double look_scale = 0; ///< of log days, between the greens of one work
  int df = 0;
  std::string no_growth_days; ///< why growth-days are absent, or empty
};

/// Refuses "one_method" (two needed), "too_few_works" (df 1 needed), "too_few_medians"
/// (two methods with a median), options; the regression's own refusals. Where it
/// refuses after options, methods and their counts, means and curves are there.
Comparison compare(const std::vector<Look>& looks, const CompareOptions& options = {});

} // namespace baize::compare
