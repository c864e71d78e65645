// What holds for every club written to files and read again.
#include "baize/green/validate.h"
#include "baize/sheets/csv.h"
#include "baize/units/number.h"
#include "laws/generators.h"
#include "unit/sheets_files.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace {

using namespace baize;
using sheets_test::Files;

services::SheetsReading read(const Files& files) {
  return sheets::CsvSheets().read(files, laws::today());
}

Files write(const green::Records& records, const Files& received = {}) {
  return sheets::CsvSheets().write(records, received);
}

Files sorted(Files files) {
  std::sort(files.begin(), files.end(),
            [](const auto& a, const auto& b) { return a.name < b.name; });
  return files;
}

void good(const services::SheetsReading& reading) {
  for (const std::string& sentence : sheets_test::sentences(reading.problems)) {
    RC_FAIL(sentence);
  }
}

/// As the phrase goes: orders carry no meaning, except that of the greens.
green::Records in_order(green::Records records) {
  const auto by_id = [](auto& all) {
    std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.id < b.id; });
  };
  by_id(records.observers);
  by_id(records.visits);
  by_id(records.readings);
  by_id(records.works);
  by_id(records.fixtures);
  std::sort(records.standards.begin(), records.standards.end(), [](const auto& a, const auto& b) {
    return std::tie(a.green, a.from, a.score) < std::tie(b.green, b.from, b.score);
  });
  for (green::Visit& visit : records.visits) {
    std::sort(visit.runs.begin(), visit.runs.end(), [](const auto& a, const auto& b) {
      return std::tie(a.spot, a.direction) < std::tie(b.spot, b.direction);
    });
  }
  for (green::Green& green : records.greens) {
    std::sort(green.halves.begin(), green.halves.end());
    std::sort(green.spots.begin(), green.spots.end(),
              [](const auto& a, const auto& b) { return a.id < b.id; });
  }
  return laws::without_sources(std::move(records));
}

/// The same table with its columns turned round, in another delimiter and
/// decimal mark, other line ends, and a new unit for its length.
std::string other_layout(const std::string& content, units::LengthUnit unit) {
  sheets::CsvReader reader(content, ',');
  sheets::CsvRow row;
  std::string out = "\xEF\xBB\xBF";
  std::vector<std::string> names;
  while (reader.next(row) == sheets::CsvReader::Step::row) {
    std::vector<std::string> cells;
    const bool header = names.empty();
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
      std::string text(row.cells[i].text);
      if (header) {
        names.push_back(text);
        text = text == "distance_m" ? "distance_" + std::string(units::name(unit)) : text;
      } else if (names[i] == "distance_m" && !text.empty()) {
        const double metres = *units::parse_number(text);
        const double other = unit == units::LengthUnit::centimetre ? metres * 100
                             : unit == units::LengthUnit::foot     ? metres / units::kMetresPerFoot
                                                                   : metres;
        text = units::write_number(other, ',');
        if (unit == units::LengthUnit::foot_inch) {
          const double inches = metres / units::kMetresPerInch;
          const double feet = std::floor(inches / 12);
          text =
              units::write_number(feet) + "'" + units::write_number(inches - 12 * feet, ',') + "\"";
        }
      } else if (names[i].ends_with("_s")) {
        std::replace(text.begin(), text.end(), '.', ',');
      }
      cells.insert(cells.begin(), sheets::csv_cell(text, ';'));
    }
    for (std::size_t i = 0; i < cells.size(); ++i) {
      out += (i == 0 ? "" : ";") + cells[i];
    }
    out += "\r\n";
  }
  return out;
}

Files with_other_rolls(Files files, units::LengthUnit unit) {
  for (auto& file : files) {
    if (file.name == "rolls.csv") {
      file.content = other_layout(file.content, unit);
    }
  }
  return files;
}

RC_GTEST_PROP(SheetsLaws, GeneratedRecordsAreValid, ()) {
  for (const auto& problem : green::validate(*laws::records(), laws::today())) {
    RC_FAIL(units::sentence(problem));
  }
}

RC_GTEST_PROP(SheetsLaws, ReadingWhatWasWrittenGivesTheRecords, ()) {
  const green::Records records = *laws::records();
  const auto reading = read(write(records));
  good(reading);
  RC_ASSERT(laws::without_sources(reading.records) == records);
}

RC_GTEST_PROP(SheetsLaws, WritingWhatWasReadGivesTheFiles, ()) {
  const Files files = write(*laws::records());
  const auto reading = read(files);
  good(reading);
  RC_ASSERT(write(reading.records, files) == files);
  const Files other = with_other_rolls(files, units::LengthUnit::centimetre);
  RC_ASSERT(write(read(other).records, other) == other);
}

RC_GTEST_PROP(SheetsLaws, ChangedRecordsComeBackFromTheOldFiles, ()) {
  const green::Records before = *laws::records();
  const green::Records after = *laws::records();
  Files files = write(before);
  if (*rc::gen::arbitrary<bool>()) {
    files = with_other_rolls(std::move(files), units::LengthUnit::centimetre);
  }
  const Files out = write(after, files);
  const auto reading = read(out);
  good(reading);
  green::Records back = in_order(reading.records);
  green::Records wanted = in_order(after);
  // Lengths written in centimetres may differ by a rounding of the last digit.
  for (std::size_t v = 0; v < back.visits.size() && v < wanted.visits.size(); ++v) {
    for (std::size_t r = 0; r < back.visits[v].runs.size(); ++r) {
      for (std::size_t i = 0; i < back.visits[v].runs[r].rolls.size(); ++i) {
        auto& now = back.visits[v].runs[r].rolls[i].distance;
        const auto& was = wanted.visits[v].runs.at(r).rolls.at(i).distance;
        RC_ASSERT(now.has_value() == was.has_value());
        RC_ASSERT(!now || std::fabs(now->metres - was->metres) < 1e-12);
        now = was;
      }
    }
  }
  RC_ASSERT(back.club == wanted.club);
  RC_ASSERT(back.greens == wanted.greens);
  RC_ASSERT(back.observers == wanted.observers);
  RC_ASSERT(back.visits == wanted.visits);
  RC_ASSERT(back.readings == wanted.readings);
  RC_ASSERT(back.works == wanted.works);
  RC_ASSERT(back.fixtures == wanted.fixtures);
  RC_ASSERT(back.standards == wanted.standards);
  RC_ASSERT(write(reading.records, out) == out);
}

RC_GTEST_PROP(SheetsLaws, UnitsOfTheFileChangeNothing, ()) {
  const Files files = write(*laws::records());
  const auto metres = read(files);
  good(metres);
  for (const auto unit :
       {units::LengthUnit::centimetre, units::LengthUnit::foot, units::LengthUnit::foot_inch}) {
    const auto other = read(with_other_rolls(files, unit));
    good(other);
    RC_ASSERT(other.records.visits.size() == metres.records.visits.size());
    auto visits = other.records.visits;
    for (std::size_t v = 0; v < visits.size(); ++v) {
      const green::Visit& wanted = metres.records.visits[v];
      for (std::size_t r = 0; r < wanted.runs.size(); ++r) {
        for (std::size_t i = 0; i < wanted.runs[r].rolls.size(); ++i) {
          const auto& was = wanted.runs[r].rolls[i].distance;
          auto& now = visits[v].runs.at(r).rolls.at(i).distance;
          RC_ASSERT(std::fabs(now->metres - was->metres) < 1e-9);
          now = was;
        }
      }
    }
    RC_ASSERT(visits == metres.records.visits);
  }
}

RC_GTEST_PROP(SheetsLaws, OrderOfFilesChangesNothing, ()) {
  Files files = write(*laws::records());
  const auto before = read(files);
  std::reverse(files.begin(), files.end());
  RC_ASSERT(read(files).records == before.records);
}

RC_GTEST_PROP(SheetsLaws, AnyTextIsOneCell, ()) {
  const std::string text = *laws::words();
  const char delimiter = *rc::gen::element(',', ';', '\t');
  const std::string line = sheets::csv_cell(text, delimiter) + delimiter + "x\n";
  sheets::CsvReader reader(line, delimiter);
  sheets::CsvRow row;
  RC_ASSERT(reader.next(row) == sheets::CsvReader::Step::row);
  RC_ASSERT(row.cells.size() == 2U);
  RC_ASSERT(std::string(row.cells[0].text) == text);
}

TEST(SheetsLaws, AwkwardClubComesBackByteForByte) {
  const Files files = sheets_test::club("larch_hollow");
  const auto reading = sheets_test::read(files);
  ASSERT_TRUE(reading.good());
  EXPECT_EQ(sorted(write(reading.records, files)), files);
  // And what it says survives being written afresh.
  const auto again = sheets_test::read(write(reading.records));
  EXPECT_EQ(in_order(again.records), in_order(reading.records));
}

} // namespace
