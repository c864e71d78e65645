#include "baize/trials/plan.h"

#include <algorithm>
#include <array>
#include <set>

namespace baize::trials {
namespace {

constexpr std::array<std::pair<Layout, std::string_view>, 4> kWords{
    {{Layout::completely_randomised, "completely_randomised"},
     {Layout::randomised_blocks, "randomised_blocks"},
     {Layout::split_plot, "split_plot"},
     {Layout::strip_plot, "strip_plot"}}};

std::vector<std::string> in_order(const Plan& plan, std::string Plot::* name,
                                  const std::string& first) {
  std::vector<std::string> names;
  if (!first.empty()) {
    names.push_back(first);
  }
  for (const Plot& plot : plan.plots) {
    if (std::find(names.begin(), names.end(), plot.*name) == names.end()) {
      names.push_back(plot.*name);
    }
  }
  return names;
}

} // namespace

std::string_view word(Layout layout) {
  return kWords.at(static_cast<std::size_t>(layout)).second;
}

std::optional<Layout> layout_of(std::string_view text) {
  for (const auto& [layout, word] : kWords) {
    if (word == text) {
      return layout;
    }
  }
  return std::nullopt;
}

std::vector<std::string> treatments(const Plan& plan) {
  return in_order(plan, &Plot::treatment, plan.control);
}

std::vector<std::string> seconds(const Plan& plan) {
  return plan.has_second() ? in_order(plan, &Plot::second, {}) : std::vector<std::string>{};
}

std::vector<int> blocks(const Plan& plan) {
  std::set<int> numbers;
  for (const Plot& plot : plan.plots) {
    numbers.insert(plot.block);
  }
  return {numbers.begin(), numbers.end()};
}

std::vector<ErrorDf> error_df(const Plan& plan) {
  const int t = static_cast<int>(treatments(plan).size());
  const int s = static_cast<int>(seconds(plan).size());
  const int r = static_cast<int>(blocks(plan).size());
  switch (plan.layout) {
  case Layout::completely_randomised:
    return {{"treatment", static_cast<int>(plan.plots.size()) - t}};
  case Layout::randomised_blocks:
    return {{"treatment", (r - 1) * (t - 1)}};
  case Layout::split_plot:
    return {{"treatment", (r - 1) * (t - 1)},
            {"second treatment", t * (r - 1) * (s - 1)},
            {"both together", t * (r - 1) * (s - 1)}};
  case Layout::strip_plot:
    return {{"treatment", (r - 1) * (t - 1)},
            {"second treatment", (r - 1) * (s - 1)},
            {"both together", (r - 1) * (t - 1) * (s - 1)}};
  }
  return {};
}

} // namespace baize::trials
