// The demo club through its files and back.
#include "baize/sheets/csv_sheets.h"
#include "unit/demo_print.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>
#include <vector>

namespace baize::testing {
namespace {

std::vector<std::string> sorted_lines(const std::string& text) {
  std::istringstream in(text);
  std::vector<std::string> lines;
  for (std::string line; std::getline(in, line);) {
    lines.push_back(line);
  }
  std::sort(lines.begin(), lines.end());
  return lines;
}

TEST(DemoFiles, ReadBackAsTheyWereWritten) {
  const auto& club = demo_club();
  const sheets::CsvSheets csv;
  const auto files = csv.write(club.records, {});
  const auto reading = csv.read(files, club.today);
  for (const units::Problem& problem : reading.problems) {
    ADD_FAILURE() << units::sentence(problem);
  }
  const auto written = sorted_lines(print(club.records));
  const auto read = sorted_lines(print(reading.records));
  ASSERT_EQ(written.size(), read.size());
  for (std::size_t i = 0; i < written.size(); ++i) {
    ASSERT_EQ(written[i], read[i]);
  }
}

} // namespace
} // namespace baize::testing
