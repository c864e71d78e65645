#include "baize/trials/plan.h"

#include <algorithm>
#include <map>
#include <set>

namespace baize::trials {
namespace {

using units::Problem;

constexpr std::size_t kMostPlots = 2000;

std::string plot_name(const Plot& plot) {
  return "plot " + std::to_string(plot.number);
}

/// "coring with sand" or "coring".
std::string name_of(const std::string& first, const std::string& second) {
  return second.empty() ? first : first + " with " + second;
}

std::optional<Problem> bad_plots(const Plan& plan) {
  std::set<int> numbers;
  for (const Plot& plot : plan.plots) {
    if (plot.number < 1) {
      return Problem{"plot_number", "plot", std::to_string(plot.number), "a number above 0", ""};
    }
    if (!numbers.insert(plot.number).second) {
      return Problem{"plot_twice", "plot", std::to_string(plot.number),
                     "a number that no other plot has", ""};
    }
    if (plot.treatment.empty()) {
      return Problem{"treatment_missing", "treatment", "", "given for every plot", plot_name(plot)};
    }
    if (plan.has_second() && plot.second.empty()) {
      return Problem{"treatment_missing", "second_treatment", "",
                     "given for every plot of a split plot or strip plot", plot_name(plot)};
    }
  }
  return std::nullopt;
}

/// Every treatment (or pair) exactly once in each block.
std::optional<Problem> bad_blocks(const Plan& plan) {
  std::map<int, std::set<std::pair<std::string, std::string>>> found;
  for (const Plot& plot : plan.plots) {
    if (!found[plot.block].insert({plot.treatment, plot.second}).second) {
      return Problem{"treatment_twice", "treatment", name_of(plot.treatment, plot.second),
                     "once in each block, and it is twice in block " + std::to_string(plot.block),
                     plot_name(plot)};
    }
  }
  const auto firsts = treatments(plan);
  const auto others = plan.has_second() ? seconds(plan) : std::vector<std::string>{""};
  for (const auto& [block, pairs] : found) {
    for (const std::string& first : firsts) {
      for (const std::string& other : others) {
        if (!pairs.contains({first, other})) {
          return Problem{"treatment_missing", "treatment", name_of(first, other),
                         "once in each block", "block " + std::to_string(block)};
        }
      }
    }
  }
  return std::nullopt;
}

/// One treatment on each whole plot or strip.
std::optional<Problem> bad_units(const Plan& plan, int Plot::* unit, std::string Plot::* name,
                                 const char* field) {
  std::map<std::pair<int, int>, std::string> on;
  std::map<std::pair<int, std::string>, int> where;
  for (const Plot& plot : plan.plots) {
    const auto [at, is_new] = on.try_emplace({plot.block, plot.*unit}, plot.*name);
    const auto [same, first] = where.try_emplace({plot.block, plot.*name}, plot.*unit);
    if (at->second != plot.*name || same->second != plot.*unit) {
      return Problem{"treatment_twice", field, std::to_string(plot.*unit),
                     "one with a treatment of its own within block " + std::to_string(plot.block),
                     plot_name(plot)};
    }
  }
  return std::nullopt;
}

std::optional<Problem> too_little(const Plan& plan) {
  const auto names = treatments(plan);
  if (names.size() < 2) {
    return Problem{"one_treatment", "treatment", names.empty() ? "" : names.front(),
                   "at least two different treatments, for there is nothing to compare", ""};
  }
  if (plan.has_second() && seconds(plan).size() < 2) {
    return Problem{"one_treatment", "second_treatment", seconds(plan).front(),
                   "at least two different second treatments", ""};
  }
  if (plan.has_blocks() && blocks(plan).size() < 2) {
    return Problem{"one_block", "block", "1",
                   "at least two blocks, for with one nothing tells chance from treatment", ""};
  }
  return std::nullopt;
}

std::optional<Problem> no_replicates(const Plan& plan) {
  std::map<std::string, int> count;
  for (const Plot& plot : plan.plots) {
    ++count[plot.treatment];
  }
  for (const auto& [name, plots] : count) {
    if (plots < 2) {
      return Problem{"no_replicates", "treatment", name, "on at least two plots", ""};
    }
  }
  return std::nullopt;
}

} // namespace

std::optional<Problem> problem_of(const Plan& plan) {
  if (plan.trial.empty()) {
    return Problem{"trial_unnamed", "trial", "", "a name of the trial", ""};
  }
  if (plan.plots.empty() || plan.plots.size() > kMostPlots) {
    return Problem{plan.plots.empty() ? "no_plots" : "too_many", "plots",
                   std::to_string(plan.plots.size()), "1 to " + std::to_string(kMostPlots), ""};
  }
  auto problem = bad_plots(plan);
  const auto controlled = [&](const Plot& plot) { return plot.treatment == plan.control; };
  if (!problem && !plan.control.empty() &&
      std::none_of(plan.plots.begin(), plan.plots.end(), controlled)) {
    return Problem{"no_such_control", "control", plan.control, "one of the treatments", ""};
  }
  problem = problem ? problem : too_little(plan);
  if (!plan.has_blocks()) {
    return problem ? problem : no_replicates(plan);
  }
  problem = problem ? problem : bad_blocks(plan);
  if (plan.has_second()) {
    problem =
        problem ? problem : bad_units(plan, &Plot::whole_plot, &Plot::treatment, "whole_plot");
  }
  if (plan.layout == Layout::strip_plot) {
    problem = problem ? problem : bad_units(plan, &Plot::strip, &Plot::second, "strip");
  }
  return problem;
}

} // namespace baize::trials
