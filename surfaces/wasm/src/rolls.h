#pragma once

#include "baize/green/roll.h"
#include "reader.h"

namespace baize::wasm {

/// The marks of one roll. Not known: they were not watched.
std::optional<std::vector<green::Mark>> read_marks(Reader& reader, const char* field);

/// The rolls of one direction, without those of which nothing is known yet; a
/// roll without an order has its place in the list.
std::vector<green::Roll> read_rolls(Reader& reader, const char* field);

/// The first rule of core/green that a run breaks on its own; nothing is asked
/// of a run without rolls and total.
std::optional<units::Problem> run_problem(const green::Run& run);

/// What there is to look at in a run that breaks no rule.
std::vector<std::string> run_remarks(const green::Run& run);

} // namespace baize::wasm
