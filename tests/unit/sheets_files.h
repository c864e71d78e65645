#pragma once

#include "baize/services/sheets_port.h"
#include "baize/sheets/csv_sheets.h"

#include <string>
#include <vector>

/// Files for the tests of the sheets.
namespace sheets_test {

using Files = std::vector<baize::services::ReceivedFile>;

/// 31 May 2026: after every record of the tests' clubs.
baize::units::Day today();

/// Every .csv file of tests/clubs/NAME, by name.
Files club(const std::string& name);

/// A small sound club, whose files a test changes by name.
Files small_club();
/// The same with one file's content put in its place or added.
Files small_club_with(const std::string& name, const std::string& content);
/// small_club() with these rows under the usual header of rolls.csv.
Files small_club_with_rolls(const std::string& rows);

const std::string& content(const Files& files, const std::string& name);

baize::services::SheetsReading read(const Files& files);
/// The sentences of the problems.
std::vector<std::string> sentences(const std::vector<baize::units::Problem>& problems);

} // namespace sheets_test
