#include "unit/sheets_files.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace sheets_test {

using namespace baize;

units::Day today() {
  return *units::make_day(2026, 5, 31);
}

Files club(const std::string& name) {
  Files files;
  for (const auto& entry :
       std::filesystem::directory_iterator(std::string(BAIZE_SOURCE_DIR "/tests/clubs/") + name)) {
    if (entry.path().extension() != ".csv") {
      continue;
    }
    std::ifstream in(entry.path(), std::ios::binary);
    std::ostringstream all;
    all << in.rdbuf();
    files.push_back({entry.path().filename().string(), all.str()});
  }
  std::sort(files.begin(), files.end(),
            [](const auto& a, const auto& b) { return a.name < b.name; });
  return files;
}

Files small_club() {
  return {{"club.csv", "club,name\nbrook,Brook Lane\n"},
          {"greens.csv", "green,name,spot\n1,First,A\n2,Second,A\n"},
          {"observers.csv", "observer,name\nab,A. B.\ncd,C. D.\n"},
          {"rolls.csv", "day,from,observer,green,spot,direction,roll,distance_m,score\n"
                        "2025-04-03,08:10,ab,1,A,out,1,3.10,8\n"}};
}

Files small_club_with(const std::string& name, const std::string& content) {
  Files files = small_club();
  for (auto& file : files) {
    if (file.name == name) {
      file.content = content;
      return files;
    }
  }
  files.push_back({name, content});
  return files;
}

Files small_club_with_rolls(const std::string& rows) {
  return small_club_with("rolls.csv",
                         "day,from,to,observer,green,spot,direction,roll,distance_m,bobbles,score,"
                         "run_total,run_balls\n" +
                             rows);
}

const std::string& content(const Files& files, const std::string& name) {
  return std::find_if(files.begin(), files.end(),
                      [&](const auto& file) { return file.name == name; })
      ->content;
}

services::SheetsReading read(const Files& files) {
  return sheets::CsvSheets().read(files, today());
}

std::vector<std::string> sentences(const std::vector<units::Problem>& problems) {
  std::vector<std::string> all;
  for (const units::Problem& problem : problems) {
    all.push_back(units::sentence(problem));
  }
  return all;
}

} // namespace sheets_test
