#include "strata.h"

#include <algorithm>

namespace baize::trials {
namespace {

int place_of(const std::vector<std::string>& names, const std::string& name) {
  return static_cast<int>(std::find(names.begin(), names.end(), name) - names.begin());
}

stats::Grouping numbered(const Plan& plan, const char* name, int Plot::* number) {
  stats::Grouping grouping{name, {}};
  for (const Plot& plot : plan.plots) {
    grouping.level.push_back(plot.*number);
  }
  return grouping;
}

} // namespace

stats::DesignedTrial designed(const Plan& plan, const std::vector<std::optional<double>>& values) {
  stats::DesignedTrial trial;
  trial.y = values;
  const auto names = treatments(plan);
  const auto others = seconds(plan);
  stats::Grouping first{"treatment", {}};
  stats::Grouping second{"second treatment", {}};
  for (const Plot& plot : plan.plots) {
    first.level.push_back(place_of(names, plot.treatment));
    second.level.push_back(place_of(others, plot.second));
  }
  trial.treatments.push_back(std::move(first));
  if (plan.has_second()) {
    trial.treatments.push_back(std::move(second));
  }
  const stats::Grouping block = numbered(plan, "blocks", &Plot::block);
  if (plan.has_blocks()) {
    trial.strata.push_back(block);
  }
  if (plan.has_second()) {
    const bool split = plan.layout == Layout::split_plot;
    trial.strata.push_back(stats::nested(block, numbered(plan, "whole plots", &Plot::whole_plot)));
    trial.strata.back().name = split ? "whole plots" : "strips";
  }
  if (plan.layout == Layout::strip_plot) {
    trial.strata.push_back(stats::nested(block, numbered(plan, "strips", &Plot::strip)));
    trial.strata.back().name = "strips across";
  }
  return trial;
}

std::string level_name(const Plan& plan, const std::vector<std::size_t>& factors,
                       const std::vector<int>& level) {
  std::string name;
  for (std::size_t i = 0; i < factors.size(); ++i) {
    const auto names = factors[i] == 0 ? treatments(plan) : seconds(plan);
    name += (name.empty() ? "" : " / ") + names.at(static_cast<std::size_t>(level[i]));
  }
  return name;
}

} // namespace baize::trials
