// Writes the demo club as the files a keeper would bring: the CSV set, the
// weather, and beside them the truth it was drawn from.
#include "baize/demo/demo_club.h"

#include "baize/sheets/csv_sheets.h"
#include "baize/units/number.h"

#include <fmt/format.h>

#include <filesystem>
#include <fstream>
#include <optional>
#include <string>
#include <system_error>

namespace {

using namespace baize;

std::string cell(const std::optional<double>& value) {
  return value ? units::write_number(*value) : std::string();
}

std::string weather_csv(const climate::Weather& weather) {
  std::string text = "date,tmin_c,tmax_c,rain_mm,et0_mm\n";
  for (const auto& [day, values] : weather) {
    text += fmt::format("{},{},{},{},{}\n", units::iso(day), cell(values.tmin_c),
                        cell(values.tmax_c), cell(values.rain_mm), cell(values.et0_mm));
  }
  return text;
}

bool write(const std::filesystem::path& file, const std::string& content) {
  std::ofstream out(file, std::ios::binary | std::ios::trunc);
  out.write(content.data(), static_cast<std::streamsize>(content.size()));
  out.close();
  if (!out) {
    fmt::print(stderr, "{} cannot be written.\n", file.string());
    return false;
  }
  return true;
}

bool write_all(const std::filesystem::path& folder) {
  const demo::DemoClub club = demo::make();
  for (const auto& file : sheets::CsvSheets().write(club.records, {})) {
    if (!write(folder / file.name, file.content)) {
      return false;
    }
  }
  return write(folder / "weather.csv", weather_csv(club.weather)) &&
         write(folder / "truth.json", demo::truth_json(club.truth));
}

} // namespace

int main(int count, char** words) {
  if (count != 2) {
    fmt::print(stderr, "Usage: demo_club FOLDER\nWrites the demo club's files into the folder.\n");
    return 2;
  }
  const std::filesystem::path folder = words[1];
  std::error_code failed;
  std::filesystem::create_directories(folder, failed);
  if (failed) {
    fmt::print(stderr, "{} cannot be made: {}.\n", folder.string(), failed.message());
    return 1;
  }
  return write_all(folder) ? 0 : 1;
}
