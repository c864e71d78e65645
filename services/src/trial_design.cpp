#include "baize/services/trial_design.h"

#include "baize/trials/map.h"
#include "baize/units/number.h"
#include "trial_sheet_page.h"
#include "wording.h"

namespace baize::services {
namespace {

using units::show_number;

std::string found_sentence(const TrialRequest& request, const trials::TrialPower& power) {
  const trials::TablePower& first = power.tables.front();
  const int blocks = request.design.blocks;
  const bool loose = request.design.layout == trials::Layout::completely_randomised;
  const std::string size = loose ? "plots of each treatment" : "blocks";
  std::string sentence = "With " + std::to_string(blocks) + " " + size + " a difference of " +
                         show_number(first.detectable, 1) +
                         " points between two treatments would " + "be found in " +
                         show_number(100 * request.power.power, 0) + " of 100 such trials";
  for (const auto& other : power.other_blocks) {
    if (other.blocks == blocks + 2) {
      sentence += "; with " + std::to_string(other.blocks) + ", " +
                  show_number(other.detectable, 1) + " points";
    }
  }
  return sentence + ".";
}

std::vector<std::string> notes_of(const TrialRequest& request, const TrialDesignReview& review) {
  std::vector<std::string> notes;
  for (const trials::ErrorDf& one : review.error_df) {
    if (one.df < trials::kFewErrorDf) {
      notes.push_back("Only " +
                      counted(one.df, "error degree of freedom", "error degrees of freedom") +
                      " for " + one.of + ": fewer than " + std::to_string(trials::kFewErrorDf) +
                      " see large differences only. Add blocks.");
    }
  }
  const trials::Spread& spread = request.power.spread;
  notes.push_back("Worked out for a standard deviation of " + show_number(spread.plot, 2) +
                  " points between plots, " + show_number(spread.visit, 2) +
                  " of one plot from visit to visit" +
                  (review.plan.has_second()
                       ? " and " + show_number(spread.whole_plot, 2) + " between whole plots"
                       : "") +
                  ", " + counted(request.power.visits, "visit") +
                  " averaged. These are assumed, from common practice, "
                  "unless they were taken from your own rolls.");
  if (request.design.control.empty()) {
    notes.emplace_back("No control: without plots left as usual nothing tells what the year did.");
  }
  notes.push_back("Layout drawn with seed " + std::to_string(review.plan.seed) +
                  ". Keep the plan file: it is the record of the draw, and the analysis reads it.");
  notes.emplace_back(
      "Trials with fertilisers, plant protection or other products: the label and local rules come "
      "first, also on small plots; where the law asks for a licence, only a licensed person "
      "applies them. Keep people off plots for as long as the label says.");
  return notes;
}

} // namespace

units::Result<std::vector<units::Day>> visit_days(units::Day first, int visits, int every) {
  if (visits < 1 || visits > 60) {
    return units::refuse("option_out_of_range", "visits", std::to_string(visits), "1 to 60");
  }
  if (every < 1 || every > 365) {
    return units::refuse("option_out_of_range", "every", std::to_string(every), "1 to 365 days");
  }
  std::vector<units::Day> days;
  days.reserve(static_cast<std::size_t>(visits));
  for (int i = 0; i < visits; ++i) {
    days.push_back(first + i * every);
  }
  return days;
}

units::Result<TrialDesignReview> design_trial(const TrialRequest& asked, const TrialFiles& files) {
  TrialRequest request = asked;
  if (!request.days.empty()) {
    request.power.visits = static_cast<int>(request.days.size());
  }
  auto plan = trials::lay_out(request.design);
  if (!plan) {
    return tl::unexpected(plan.error());
  }
  TrialDesignReview review;
  review.plan = std::move(*plan);
  review.power = trials::simulate_power(trials::shape_of(review.plan), request.power);
  if (!review.power.summary.usable) {
    return tl::unexpected(review.power.summary.problem);
  }
  review.error_df = trials::error_df(review.plan);
  review.sentence = found_sentence(request, review.power);
  review.notes = notes_of(request, review);
  review.map_text = trials::map_text(review.plan);
  review.map_svg = trials::map_svg(review.plan);
  review.plan_csv = files.write_plan(review.plan);
  if (!request.days.empty()) {
    review.sheet_csv = files.write_sheet(review.plan, request.days);
    review.sheet_page = trial_sheet_page(review.plan, request.days);
  }
  return review;
}

} // namespace baize::services
