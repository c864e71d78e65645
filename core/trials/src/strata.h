#pragma once

#include "baize/stats/designed_trial.h"
#include "baize/trials/plan.h"

namespace baize::trials {

/// The plan as the analysis of variance wants it, with one value for each plot.
/// Levels are places in treatments(plan) and seconds(plan).
stats::DesignedTrial designed(const Plan& plan, const std::vector<std::optional<double>>& values);

/// "coring" or "coring / sand", for levels of one table.
std::string level_name(const Plan& plan, const std::vector<std::size_t>& factors,
                       const std::vector<int>& level);

} // namespace baize::trials
