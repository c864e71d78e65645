// Any bytes as one file of a club's set. Every problem has a place and a
// sentence; what was accepted is written back byte for byte, and written
// afresh it reads as the same club.
#include "baize/sheets/csv_sheets.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <cstdlib>
#include <tuple>

namespace {

using namespace baize;
using Files = std::vector<services::ReceivedFile>;

constexpr units::Day kToday{20604}; // 2026-05-31

void want(bool good) {
  if (!good) {
    std::abort();
  }
}

/// The first byte says which file the others are.
Files club_with(const std::uint8_t* data, std::size_t size) {
  constexpr std::array<const char*, 9> kNames{"rolls.csv",     "greens.csv",   "club.csv",
                                              "observers.csv", "visits.csv",   "works.csv",
                                              "readings.csv",  "fixtures.csv", "standards.csv"};
  Files files{{"club.csv", "club,name\nbrook,Brook Lane\n"},
              {"greens.csv", "green,half,spot\n1,west,A\n1,east,B\n2,,\n"},
              {"rolls.csv", "day,from,observer,green,spot,direction,roll,distance_m,score\n"
                            "2025-04-03,08:10,ab,1,A,out,1,3.10,8\n"
                            "2025-04-03,08:40,ab,2,A,out,1,3.10,8\n"}};
  const std::string name = kNames.at(*data % kNames.size());
  const std::string content(reinterpret_cast<const char*>(data) + 1, size - 1);
  for (auto& file : files) {
    if (file.name == name) {
      file.content = content;
      return files;
    }
  }
  files.push_back({name, content});
  return files;
}

Files sorted(Files files) {
  std::sort(files.begin(), files.end(),
            [](const auto& a, const auto& b) { return a.name < b.name; });
  return files;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) {
    return 0;
  }
  const Files files = club_with(data, size);
  const sheets::CsvSheets sheets;
  const auto reading = sheets.read(files, kToday);
  want(reading.problems.size() <= 1001);
  for (const auto& problem : reading.problems) {
    want(!problem.code.empty() && !problem.rule.empty());
    want(!problem.place.empty() || problem.code == "too_many_to_list");
  }
  if (!reading.good()) {
    want(!sheets.write(reading.records, files).empty());
    return 0;
  }
  want(sorted(sheets.write(reading.records, files)) == sorted(files));
  const auto again = sheets.read(sheets.write(reading.records, {}), kToday);
  want(again.good());
  want(again.records.visits.size() == reading.records.visits.size());
  want(again.records.works.size() == reading.records.works.size());
  for (std::size_t i = 0; i < reading.records.visits.size(); ++i) {
    want(again.records.visits[i].id == reading.records.visits[i].id);
    want(again.records.visits[i].runs == reading.records.visits[i].runs ||
         reading.records.visits[i].runs.size() > 1);
  }
  return 0;
}
