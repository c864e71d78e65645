#include "baize/services/trial_rolls.h"

#include "baize/green/roll_score.h"
#include "baize/services/season_review.h"
#include "trial_words.h"
#include "wording.h"

#include <algorithm>
#include <map>
#include <set>

namespace baize::services {
namespace {

constexpr int kDaysBefore = 30;
constexpr int kDaysAfter = 90;

units::Problem bad_plot(const char* code, const char* field, const trials::Plot& plot,
                        const std::string& value, std::string rule) {
  return {code, field, value, std::move(rule), "plot " + std::to_string(plot.number)};
}

/// Every plot must be a surface that rolls can be told to lie on.
std::optional<units::Problem> misplaced(const trials::Plan& plan, const green::Records& club) {
  std::map<std::string, std::set<std::string>> halves; ///< taken, by green; "": all of it
  for (const trials::Plot& plot : plan.plots) {
    if (plot.green.empty()) {
      return bad_plot("plot_without_place", "green", plot, "",
                      "given for every plot, so that the club's rolls can be told to lie on it");
    }
    const green::Green* green = green::find_green(club, plot.green);
    if (green == nullptr) {
      return bad_plot("no_such_green", "green", plot, plot.green, "a green of the club");
    }
    const auto& known = green->halves;
    if (!plot.half.empty() && std::find(known.begin(), known.end(), plot.half) == known.end()) {
      return bad_plot("no_such_half", "half", plot, plot.half, "a half of that green");
    }
    auto& taken = halves[plot.green];
    const bool whole = plot.half.empty() || taken.contains("");
    if (!taken.insert(plot.half).second || (whole && taken.size() > 1)) {
      return bad_plot("plots_share_place", "green", plot, plot.green,
                      "a green or half of its own: rolls do not say which plot they crossed");
    }
  }
  return std::nullopt;
}

bool on_plot(const green::Work& work, const trials::Plot& plot) {
  return green::class_of(work) == green::WorkClass::disruptive &&
         green::touches(work, plot.green, plot.half);
}

/// The last day on which not all plots had the same disruptive works.
std::optional<units::Day> day_of_treatment(const trials::Plan& plan, const green::Records& club,
                                           units::Day today) {
  std::map<units::Day, std::vector<std::multiset<std::string>>> done;
  for (const green::Work& work : club.works) {
    for (std::size_t i = 0; i < plan.plots.size() && work.day <= today; ++i) {
      if (on_plot(work, plan.plots[i])) {
        auto& plots = done[work.day];
        plots.resize(plan.plots.size());
        plots[i].insert(work_label(work));
      }
    }
  }
  std::optional<units::Day> last;
  for (const auto& [day, plots] : done) {
    if (std::any_of(plots.begin(), plots.end(),
                    [&first = plots.front()](const auto& one) { return one != first; })) {
      last = day;
    }
  }
  return last;
}

units::Day last_day(const trials::Plan& plan, const green::Records& club, units::Day treated,
                    units::Day today) {
  units::Day last = std::min(today, treated + kDaysAfter);
  for (const green::Work& work : club.works) {
    const bool touches = std::any_of(plan.plots.begin(), plan.plots.end(),
                                     [&](const auto& plot) { return on_plot(work, plot); });
    if (touches && work.day > treated) {
      last = std::min(last, work.day - 1);
    }
  }
  return last;
}

/// One record a plot and day: the mean of all rolls scored there.
std::vector<trials::Record> records_of(const trials::Plan& plan, const green::Records& club,
                                       units::Period days) {
  std::map<std::pair<units::Day, std::size_t>, green::ScoreSum> sums;
  for (const green::Visit& visit : club.visits) {
    for (std::size_t i = 0; i < plan.plots.size() && days.holds(visit.day); ++i) {
      const trials::Plot& plot = plan.plots[i];
      for (const green::Run& run : visit.runs) {
        const auto sum = green::score_sum(run);
        const bool here = visit.green == plot.green &&
                          (plot.half.empty() || green::half_of(green::find_green(club, visit.green),
                                                               visit, run) == plot.half);
        if (sum && here) {
          green::ScoreSum& all = sums[{visit.day, i}];
          all.total += sum->total;
          all.rolls += sum->rolls;
        }
      }
    }
  }
  std::vector<trials::Record> records;
  records.reserve(sums.size());
  for (const auto& [key, sum] : sums) {
    records.push_back({"", plan.plots[key.second].number, key.first, "score", sum.mean(),
                       "rolls of " + units::iso(key.first)});
  }
  return records;
}

} // namespace

TrialAnswer analyse_trial_rolls(const ReceivedFile& plan, const green::Records& club,
                                units::Day today, const TrialRollsOptions& options,
                                const TrialFiles& files) {
  TrialAnswer answer;
  TrialReading reading = files.read_plan(plan);
  answer.problems = std::move(reading.problems);
  if (answer.problems.empty()) {
    if (auto problem = misplaced(reading.plan, club)) {
      answer.problems.push_back(std::move(*problem));
    }
  }
  if (!answer.problems.empty()) {
    return answer;
  }
  trials::AnalysisOptions analysis = options.analysis;
  analysis.ordinary_visits = true;
  if (!analysis.treated) {
    analysis.treated = day_of_treatment(reading.plan, club, today);
  }
  if (!analysis.treated) {
    answer.problems.push_back({"no_treatment_day", "treated", "",
                               "given, as on no day disruptive works differed between the plots",
                               plan.name});
    return answer;
  }
  const units::Day last =
      options.until.value_or(last_day(reading.plan, club, *analysis.treated, today));
  reading.records = records_of(reading.plan, club, {*analysis.treated - kDaysBefore, last});
  answer = review_trial(std::move(reading), "rolls of " + club.club.id, analysis);
  if (answer.review) {
    answer.review->notes.insert(
        answer.review->notes.begin(),
        "From the club's own rolls, treated on " + plain(*analysis.treated) + ", up to " +
            plain(last) + "; a plot's value of a day is the mean of all rolls scored on it.");
  }
  return answer;
}

} // namespace baize::services
