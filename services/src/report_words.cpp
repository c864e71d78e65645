#include "report_words.h"

#include "baize/units/number.h"
#include "wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace baize::services {
namespace {

/// Greens scored on fewer days say too little to be ranked.
constexpr int kRankedDays = 10;

struct Share {
  const SeasonReview* season = nullptr;
  int part = 0;
  int whole = 0;
  bool less_than(const Share& other) const { return part * other.whole < other.part * whole; }
};

std::vector<Share> ranked(const std::vector<SeasonReview>& seasons) {
  std::vector<Share> shares;
  for (const SeasonReview& season : seasons) {
    const int scored = season.ledger.measured_true + season.ledger.measured_not;
    if (scored >= kRankedDays) {
      shares.push_back({&season, season.ledger.measured_true, scored});
    }
  }
  std::stable_sort(shares.begin(), shares.end(),
                   [](const Share& a, const Share& b) { return b.less_than(a); });
  return shares;
}

std::string true_days_sentence(const ReportData& report) {
  const LedgerTotals& sum = report.totals;
  const int scored = sum.measured_true + sum.measured_not;
  if (scored == 0) {
    return fmt::format("No green was scored on an open day in {}, so nothing can be said about "
                       "true days.",
                       report.year);
  }
  return fmt::format("Greens were scored on {} (a green-day is one green on one day); on {} of "
                     "them ({}) the green was at the standard.",
                     counted(scored, "open green-day"), sum.measured_true,
                     percent(sum.measured_true, scored));
}

std::string unknown_sentence(const ReportData& report) {
  const LedgerTotals& sum = report.totals;
  const int unscored = sum.between_true + sum.unmeasured;
  if (unscored == 0) {
    return "Every open green-day was scored.";
  }
  std::string text = fmt::format(
      "{} of {} open green-days ({}) {} not scored, so true green-days lie between {} and {}",
      unscored, sum.open(), percent(unscored, sum.open()), was(unscored), sum.fewest_true(),
      sum.most_true());
  if (sum.between_true > 0) {
    text += fmt::format("; {} of the unscored {} between two true days with no disruptive work "
                        "between them",
                        sum.between_true, sum.between_true == 1 ? "lies" : "lie");
  }
  return text + ".";
}

std::string ranking_sentence(const ReportData& report) {
  const auto shares = ranked(report.seasons);
  if (shares.size() < 2 || !shares.back().less_than(shares.front())) {
    return {};
  }
  const auto one = [](const Share& share) {
    return fmt::format("{} ({} of {} scored days)", share.season->green_name, share.part,
                       share.whole);
  };
  return fmt::format("Most often at the standard when scored: {}; least often: {}.",
                     one(shares.front()), one(shares.back()));
}

/// Sum of score-days over greens, and how many greens it covers.
std::pair<double, int> loss_of(const WorkReview& review) {
  double sum = 0;
  int greens = 0;
  for (const WorkAtGreen& here : review.greens) {
    if (here.loss.area) {
      sum += here.loss.area->score_days;
      ++greens;
    }
  }
  return {sum, greens};
}

std::string works_sentence(const ReportData& report) {
  if (report.works.empty()) {
    return fmt::format("No disruptive work was done in {}.", report.year);
  }
  const WorkReview* costliest = nullptr;
  for (const WorkReview& review : report.works) {
    if (loss_of(review).second > 0 &&
        (costliest == nullptr || loss_of(*costliest).first < loss_of(review).first)) {
      costliest = &review;
    }
  }
  std::string text = fmt::format("{} {} done in {}",
                                 counted(static_cast<int>(report.works.size()), "disruptive work"),
                                 was(static_cast<int>(report.works.size())), report.year);
  if (costliest == nullptr) {
    return text + "; what they cost is not known, for want of scores before and after.";
  }
  const auto [sum, greens] = loss_of(*costliest);
  return text + fmt::format("; the costliest known was {} on {}: {} on {}.", costliest->label,
                            plain(costliest->work.day),
                            counted(static_cast<int>(std::lround(sum)), "score-day"),
                            counted(greens, costliest->work.half.empty() ? "green" : "half green"));
}

std::string fast_sentence(const ReportData& report) {
  std::string names;
  for (const GreenCard& card : report.greens.greens) {
    if (card.fast_but_not_true) {
      names += (names.empty() ? "" : ", ") + card.name;
    }
  }
  return names.empty() ? names : "Fast but not true when last scored: " + names + ".";
}

std::string closed_sentence(const ReportData& report) {
  return report.totals.closed == 0
             ? std::string()
             : fmt::format("Greens were closed to play on {}; these are not counted as open.",
                           counted(report.totals.closed, "green-day"));
}

std::string growth_sentence(const ReportData& report) {
  std::string text = "Growth potential is exp(-((T - optimum) / spread)^2 / 2) of the day's mean "
                     "temperature (Gelernter and Stowell 2005)";
  std::vector<climate::GrowthOptions> shown;
  for (const SeasonReview& season : report.seasons) {
    if (std::find(shown.begin(), shown.end(), season.growth_options) == shown.end()) {
      shown.push_back(season.growth_options);
      text +=
          fmt::format("{} optimum {} and spread {} degrees C", shown.size() == 1 ? ", with" : " or",
                      season.growth_options.optimum_c, season.growth_options.spread_c);
    }
  }
  text += report.basis.weather_days_missing == 0
              ? "; every day of the period has a temperature."
              : fmt::format("; {} of the period {} no temperature, and growth-days that run over "
                            "such a day are not given.",
                            counted(report.basis.weather_days_missing, "day"),
                            report.basis.weather_days_missing == 1 ? "has" : "have");
  return text;
}

} // namespace

std::vector<std::string> committee_sentences(const ReportData& report) {
  if (report.seasons.empty()) {
    return {"No green has been entered yet."};
  }
  std::vector<std::string> all{true_days_sentence(report), unknown_sentence(report),
                               ranking_sentence(report),   works_sentence(report),
                               fast_sentence(report),      closed_sentence(report)};
  std::erase_if(all, [](const std::string& sentence) { return sentence.empty(); });
  if (!report.year_ended) {
    all.push_back(fmt::format("The year is not over: figures run to {}.", plain(report.today)));
  }
  return all;
}

std::vector<std::string> method_sentences(const ReportData& report) {
  const ReportBasis& basis = report.basis;
  std::vector<std::string> all;
  all.push_back(fmt::format("The figures rest on {} by {}: {} with a score and {} with a distance.",
                            counted(basis.visits, "visit"), counted(basis.observers, "observer"),
                            counted(basis.scored_rolls, "roll"),
                            counted(basis.measured_rolls, "roll")));
  all.emplace_back("Each roll is scored 1 to 10 by the observer's own eye. A day's score is the "
                   "mean of all its rolls at the green.");
  all.emplace_back("A true day is a day whose score is at or above the club's standard. A day "
                   "without a score is never counted as true: the fewest true days count none of "
                   "them, the most count all.");
  all.push_back(fmt::format("The score before a work is the mean of the scored days in the {} days "
                            "before it; where there is none, none is invented. Depth is the score "
                            "before less the lowest day's score after.",
                            recovery::Options{}.before_window_days));
  all.emplace_back("Back means the first of two scored days running at the standard. It lies after "
                   "the last scored day below it and no later than that first day.");
  all.emplace_back("A loss in score-days is points below the score before, times days, until the "
                   "score before is reached again or the next disruptive work or the record ends "
                   "the count.");
  all.emplace_back("Green speed is the mean of the two directions; where they differ by more than "
                   "46 cm, twice their product over their sum (Brede 1990, 1991).");
  all.push_back(growth_sentence(report));
  all.push_back(fmt::format("Works are followed up to {}.", plain(report.today)));
  return all;
}

} // namespace baize::services
