#include "trial_layout.h"

#include "baize/stats/random.h"
#include "checks.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace baize::stats::detail {
namespace {

using units::Problem;

constexpr std::size_t kMost = 6;

std::optional<Problem> bad_groupings(const char* field, const std::vector<Grouping>& groupings,
                                     std::size_t plots) {
  if (groupings.size() > kMost) {
    return Problem{"too_many", field, std::to_string(groupings.size()), "at most 6", ""};
  }
  for (const Grouping& one : groupings) {
    if (auto problem = lengths_differ("level", one.level.size(), plots)) {
      problem->place = one.name;
      problem->rule = "one for each plot, " + std::to_string(plots);
      return problem;
    }
  }
  return std::nullopt;
}

std::optional<Problem> bad_trial(const DesignedTrial& trial) {
  const std::size_t plots = trial.y.size();
  auto problem = too_few("plots", plots, 2);
  problem = problem ? problem : too_few("treatments", trial.treatments.size(), 1);
  problem = problem ? problem : bad_groupings("treatments", trial.treatments, plots);
  problem = problem ? problem : bad_groupings("strata", trial.strata, plots);
  for (std::size_t i = 0; i < plots && !problem; ++i) {
    if (trial.y[i] && !std::isfinite(*trial.y[i])) {
      problem = Problem{"not_finite", "y", units::write_number(*trial.y[i]), "a finite number",
                        "plot " + std::to_string(i + 1)};
    }
  }
  return problem;
}

/// Terms of one treatment first, then of two ...
std::vector<std::vector<std::size_t>> factor_sets(std::size_t factors, int highest) {
  std::vector<std::vector<std::size_t>> sets;
  for (unsigned bits = 1; bits < 1U << factors; ++bits) {
    std::vector<std::size_t> set;
    for (std::size_t k = 0; k < factors; ++k) {
      if ((bits >> k & 1U) != 0) {
        set.push_back(k);
      }
    }
    if (set.size() <= static_cast<std::size_t>(highest)) {
      sets.push_back(set);
    }
  }
  std::sort(sets.begin(), sets.end(), [](const auto& a, const auto& b) {
    return std::pair(a.size(), a) < std::pair(b.size(), b);
  });
  return sets;
}

std::optional<Problem> add_terms(const DesignedTrial& trial, int highest, Layout& layout) {
  for (const auto& set : factor_sets(trial.treatments.size(), highest)) {
    LayoutTerm term{"", set, layout.whole, {}, 1, 0};
    std::size_t combinations = 1;
    for (const std::size_t k : set) {
      const Partition levels = partition(trial.treatments[k].level);
      if (auto problem = too_few("levels", levels.classes(), 2)) {
        problem->place = trial.treatments[k].name;
        return problem;
      }
      term.name += (term.name.empty() ? "" : ":") + trial.treatments[k].name;
      term.cells = crossed(term.cells, levels);
      term.df *= static_cast<int>(levels.classes()) - 1;
      combinations *= levels.classes();
    }
    if (term.cells.classes() != combinations) {
      return Problem{"combination_missing", term.name,
                     std::to_string(term.cells.classes()) + " combinations",
                     "each of the " + std::to_string(combinations) + " on some plot", ""};
    }
    for (std::size_t i = 0; i < layout.terms.size(); ++i) {
      const auto& other = layout.terms[i].factors;
      if (std::includes(set.begin(), set.end(), other.begin(), other.end())) {
        term.margins.push_back(i);
      }
    }
    layout.terms.push_back(std::move(term));
  }
  return std::nullopt;
}

/// Degrees of freedom of the units of `one` when all of `before` are swept out.
int degrees(const Partition& one, std::vector<const Partition*> before) {
  if (before.empty()) {
    return static_cast<int>(one.classes());
  }
  const Partition& last = *before.back();
  before.pop_back();
  return degrees(one, before) - degrees(joined(one, last), before);
}

std::optional<Problem> add_strata(const DesignedTrial& trial, Layout& layout) {
  std::vector<int> each(trial.y.size());
  std::iota(each.begin(), each.end(), 0);
  for (const Grouping& one : trial.strata) {
    layout.strata.push_back({one.name, partition(one.level), 0});
  }
  if (trial.strata.empty() || layout.strata.back().units.classes() < each.size()) {
    layout.strata.push_back({"plots", partition(each), 0});
  }
  std::vector<const Partition*> before{&layout.whole};
  for (LayoutStratum& stratum : layout.strata) {
    stratum.df = degrees(stratum.units, before);
    if (stratum.df <= 0) {
      return Problem{"stratum_without_units", stratum.name,
                     std::to_string(stratum.units.classes()) + " units",
                     "units that the strata before it do not tell apart already", ""};
    }
    before.push_back(&stratum.units);
  }
  return std::nullopt;
}

std::optional<Problem> not_balanced(const Layout& layout) {
  std::vector<std::pair<const std::string*, const Partition*>> all;
  all.reserve(layout.strata.size() + layout.terms.size());
  for (const LayoutStratum& stratum : layout.strata) {
    all.emplace_back(&stratum.name, &stratum.units);
  }
  for (const LayoutTerm& term : layout.terms) {
    all.emplace_back(&term.name, &term.cells);
  }
  for (std::size_t i = 0; i < all.size(); ++i) {
    for (std::size_t k = i + 1; k < all.size(); ++k) {
      if (!orthogonal(*all[i].second, *all[k].second)) {
        return Problem{"not_balanced", "layout",
                       "uneven between " + *all[i].first + " and " + *all[k].first,
                       "the same number of plots of each (a lost plot stays in, without y)", ""};
      }
    }
  }
  return std::nullopt;
}

/// Each term must lie in one stratum. As all projections commute, a term lies in a
/// stratum in part if and only if a vector in general position does.
std::optional<Problem> place_terms(Layout& layout) {
  Random random(1);
  Column general(layout.whole.of.size());
  for (long double& value : general) {
    value = random.normal();
  }
  for (std::size_t t = 0; t < layout.terms.size(); ++t) {
    LayoutTerm& term = layout.terms[t];
    const Column part = of_term(layout, t, general);
    int found = 0;
    for (std::size_t s = 0; s < layout.strata.size(); ++s) {
      if (squared_length(in_stratum(layout, s, part)) > 1e-16L * squared_length(part)) {
        term.stratum = s;
        ++found;
      }
    }
    if (found != 1) {
      return Problem{"term_split", term.name, "in " + std::to_string(found) + " strata",
                     "randomised to the units of one stratum", ""};
    }
  }
  return std::nullopt;
}

} // namespace

units::Result<Layout> trial_layout(const DesignedTrial& trial, const TrialOptions& options) {
  Layout layout;
  auto problem = options.problem();
  problem = problem ? problem : bad_trial(trial);
  if (!problem) {
    layout.whole = partition(std::vector<int>(trial.y.size(), 0));
    problem = add_terms(trial, options.highest_order, layout);
  }
  problem = problem ? problem : add_strata(trial, layout);
  problem = problem ? problem : not_balanced(layout);
  problem = problem ? problem : place_terms(layout);
  if (problem) {
    return units::Refusal(*problem);
  }
  return layout;
}

Column in_stratum(const Layout& layout, std::size_t stratum, Column values) {
  sweep(layout.whole, values);
  for (std::size_t before = 0; before < stratum; ++before) {
    sweep(layout.strata[before].units, values);
  }
  average(layout.strata[stratum].units, values);
  return values;
}

Column of_term(const Layout& layout, std::size_t term, Column values) {
  average(layout.terms[term].cells, values);
  sweep(layout.whole, values);
  for (const std::size_t margin : layout.terms[term].margins) {
    sweep(layout.terms[margin].cells, values);
  }
  return values;
}

Column residual_of(const Layout& layout, std::size_t stratum, const Column& values,
                   std::size_t without) {
  Column left = in_stratum(layout, stratum, values);
  for (std::size_t t = 0; t < layout.terms.size(); ++t) {
    if (layout.terms[t].stratum == stratum && t != without) {
      const Column part = of_term(layout, t, left);
      for (std::size_t i = 0; i < left.size(); ++i) {
        left[i] -= part[i];
      }
    }
  }
  return left;
}

long double squared_length(const Column& values) {
  return std::inner_product(values.begin(), values.end(), values.begin(), 0.0L);
}

} // namespace baize::stats::detail
