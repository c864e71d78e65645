#include "scenarios/scenario.h"

#include "scenarios/records.h"

#include <algorithm>
#include <fstream>
#include <iterator>

namespace baize::scenarios {

units::Result<Scenario> parse_scenario(std::string_view text, const std::string& name) {
  const auto tables = parse_tables(text, name);
  if (!tables) {
    return units::Refusal(tables.error());
  }
  Builder builder(name);
  for (const Table& table : *tables) {
    if (auto problem = builder.add(table)) {
      return units::Refusal(*problem);
    }
  }
  return builder.finish();
}

units::Result<Scenario> read_scenario(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  if (!in) {
    return units::refuse("no_such_file", "file", file.string(), "a file that can be read");
  }
  const std::string text{std::istreambuf_iterator<char>(in), {}};
  return parse_scenario(text, file.stem().string());
}

std::vector<std::filesystem::path> scenario_files(const std::filesystem::path& folder) {
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    if (entry.path().extension() == ".txt") {
      files.push_back(entry.path());
    }
  }
  std::sort(files.begin(), files.end());
  return files;
}

climate::GrowthOptions growth_of(const Scenario& scenario, const std::string& green) {
  const green::Green* place = green::find_green(scenario.records, green);
  return place != nullptr && place->grass == green::Grass::warm ? climate::kWarmSeason
                                                                : climate::kCoolSeason;
}

} // namespace baize::scenarios
