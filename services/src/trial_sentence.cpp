#include "baize/units/number.h"
#include "trial_words.h"
#include "wording.h"

#include <algorithm>
#include <cmath>

namespace baize::services {
namespace {

using units::show_number;

std::string replicates(const trials::Plan& plan) {
  if (plan.has_blocks()) {
    return counted(static_cast<int>(trials::blocks(plan).size()), "block");
  }
  return counted(static_cast<int>(plan.plots.size() / trials::treatments(plan).size()),
                 "plot of each", "plots of each");
}

constexpr double kLevel = 0.05;

/// The clearest difference of days back, where one is clear after allowing for the
/// number of pairs (Bonferroni).
const trials::BackDifference* clearest(const trials::TimeBack& back) {
  const trials::BackDifference* best = nullptr;
  for (const auto& one : back.differences) {
    const bool clear = one.p * static_cast<double>(back.differences.size()) < kLevel &&
                       one.interval.low * one.interval.high > 0;
    best = clear && (best == nullptr || one.p < best->p) ? &one : best;
  }
  return best;
}

std::string days_sentence(const trials::BackDifference& one) {
  const bool first_earlier = one.days < 0;
  const double low = first_earlier ? -one.interval.high : one.interval.low;
  const double high = first_earlier ? -one.interval.low : one.interval.high;
  return (first_earlier ? one.first : one.second) + " was back about " +
         show_number(std::fabs(one.days), 0) + " days earlier than " +
         (first_earlier ? one.second : one.first) + " (" + range(low, high, 0) + ")";
}

std::string unit_of(const std::string& quantity) {
  return quantity == "score" ? " points" : "";
}

std::string mean_sentence(const trials::Pair& pair, const std::string& quantity) {
  const bool higher = pair.difference > 0;
  const double low = higher ? pair.among_all.low : -pair.among_all.high;
  const double high = higher ? pair.among_all.high : -pair.among_all.low;
  const std::string what = quantity == "score" ? "scored " : "had a " + quantity + " ";
  return (higher ? pair.first : pair.second) + " " + what +
         show_number(std::fabs(pair.difference), 1) + unit_of(quantity) + " higher than " +
         (higher ? pair.second : pair.first) + " (" + range(low, high, 1) + ")";
}

std::string not_apart(const TrialAnalysisReview& review, const trials::Comparison& comparison) {
  const auto widest = std::max_element(comparison.pairs.begin(), comparison.pairs.end(),
                                       [](const auto& a, const auto& b) {
                                         return std::fabs(a.difference) < std::fabs(b.difference);
                                       });
  std::string names = "The treatments";
  if (comparison.means.size() == 2) {
    names = comparison.means[0].name + " and " + comparison.means[1].name;
  }
  return names + " cannot be told apart with " + replicates(review.plan) +
         ": the largest difference was " + show_number(std::fabs(widest->difference), 1) +
         unit_of(review.analysis.quantity) + ", and about " + show_number(comparison.lsd, 1) +
         " would have been needed between two";
}

/// The clearest difference of means: where both treatments matter, of the one that
/// is clearer.
const trials::Pair* clearest(const trials::Analysis& analysis) {
  const trials::Pair* best = nullptr;
  for (const trials::Comparison& comparison : analysis.overall.comparisons) {
    for (const trials::Pair& pair : comparison.pairs) {
      const bool clear = comparison.of != "both together" && pair.p_among_all < kLevel;
      const bool clearer = best == nullptr || pair.p_among_all < best->p_among_all ||
                           (pair.p_among_all == best->p_among_all &&
                            std::fabs(pair.difference) > std::fabs(best->difference));
      best = clear && clearer ? &pair : best;
    }
  }
  return best;
}

} // namespace

std::string trial_sentence(const TrialAnalysisReview& review) {
  const trials::Analysis& analysis = review.analysis;
  if (!analysis.summary.usable || analysis.overall.comparisons.empty() ||
      analysis.overall.comparisons.front().pairs.empty()) {
    return "Nothing can be said of this trial: " + units::sentence(analysis.summary.problem);
  }
  const trials::Pair* pair = clearest(analysis);
  const std::string means = pair != nullptr
                                ? mean_sentence(*pair, analysis.quantity)
                                : not_apart(review, analysis.overall.comparisons.front());
  if (analysis.back && analysis.back->summary.usable) {
    if (const auto* difference = clearest(*analysis.back)) {
      return days_sentence(*difference) + ". Over the whole trial " + means + ".";
    }
  }
  return means + ".";
}

} // namespace baize::services
