#pragma once

#include "rows.h"

#include <vector>

/// Records as the rows that say them, in the form that reading gives back.
namespace baize::sheets {

std::vector<ClubRow> rows_of(const green::Club& club);
std::vector<GreenRow> rows_of(const green::Green& green);
std::vector<ObserverRow> rows_of(const green::Observer& observer);
std::vector<RollRow> roll_rows(const green::Visit& visit);
/// One row; whether it needs one is another matter.
VisitRow visit_row(const green::Visit& visit);
/// Conditions or a note, which rolls.csv has no columns for.
bool needs_visit_row(const green::Visit& visit);
/// Without an id: that hangs on the readings before it.
std::vector<ReadingRow> rows_of(const green::Reading& reading);
std::vector<WorkRow> rows_of(const green::Work& work);
std::vector<FixtureRow> rows_of(const green::Fixture& fixture);
std::vector<StandardRow> rows_of(const green::Standard& standard);

} // namespace baize::sheets
