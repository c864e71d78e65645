// Columns y (empty: missing), noise, level: a series a day apart and the variances to smooth
// it by. Says the likelihood, levels and errors, and the fitted variances.
#include "baize/stats/local_level.h"
#include "peers/sheet_in.h"

int main() {
  using namespace baize;
  auto sheet = peers::read_sheet();
  std::vector<stats::LevelReading> readings;
  for (const std::string& cell : sheet["y"]) {
    stats::LevelReading reading;
    reading.day = static_cast<double>(readings.size() + 1);
    if (cell != "NA") {
      reading.value = std::strtod(cell.c_str(), nullptr);
    }
    readings.push_back(reading);
  }
  const stats::LocalLevelVariances variances{peers::numbers(sheet["noise"]).front(),
                                             peers::numbers(sheet["level"]).front()};
  const auto smooth = stats::smooth_local_level(readings, variances);
  peers::say("log likelihood", smooth.log_likelihood);
  for (std::size_t i = 0; i < smooth.levels.size(); ++i) {
    peers::say("level " + std::to_string(i + 1), smooth.levels[i].level);
    peers::say("error " + std::to_string(i + 1), smooth.levels[i].standard_error);
  }
  const auto fit = stats::fit_local_level(readings);
  peers::say("fitted likelihood", fit.log_likelihood);
}
