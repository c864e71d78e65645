#pragma once

#include "baize/units/day.h"
#include "scenarios/table.h"

#include <nlohmann/json.hpp>

namespace baize::scenarios {

// What a surface tells in JSON against what a row of a text table wants.

void expect_loss(const Row& row, const nlohmann::json& loss);
/// The interval of the row's definition among the loss's four.
void expect_interval(const Row& row, const nlohmann::json& loss);
void expect_ledger(const Row& row, const nlohmann::json& ledger);
/// Is the row's loss this one?
bool is_loss_of(const Row& row, const nlohmann::json& loss);
/// The calendar year whose season shows the row's ledger, or empty: a scenario
/// that expects another period is asked of the core alone.
std::string season_of(const Row& row, units::Day record_end);

} // namespace baize::scenarios
