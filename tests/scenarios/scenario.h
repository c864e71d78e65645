#pragma once

#include "baize/climate/growth.h"
#include "baize/green/club.h"
#include "scenarios/table.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace baize::scenarios {

/// A small club with what must come out, worked by hand. README.md states the format.
struct Scenario {
  std::string name;       ///< the file's, without its ending
  green::Records records; ///< valid records: every green, spot and observer is declared
  climate::Weather weather;
  units::Day record_end;   ///< "today"
  std::vector<Row> losses; ///< [expect losses], [expect recovery] ... cells by column
  std::vector<Row> recovery;
  std::vector<Row> ledgers;
  std::vector<Row> notes;
};

/// Refuses unknown sections, columns and words, so that a slip is not an untested line.
units::Result<Scenario> parse_scenario(std::string_view text, const std::string& name);
units::Result<Scenario> read_scenario(const std::filesystem::path& file);
/// Every .txt file of the folder, by name.
std::vector<std::filesystem::path> scenario_files(const std::filesystem::path& folder);

/// Growth settings by the green's grass, as reviews use them.
climate::GrowthOptions growth_of(const Scenario& scenario, const std::string& green);

/// A number, whole or decimal, or a fraction as pencil work leaves it: "46/6".
std::optional<double> cell_number(const std::string& cell);
/// Does the cell say the same as the value? A column that is not there says
/// nothing; "-" wants no value. Numbers agree to 1e-9 of their size.
bool agrees(const Row& row, const std::string& column, std::optional<double> value);
bool agrees(const Row& row, const std::string& column, const std::optional<std::string>& value);

} // namespace baize::scenarios
