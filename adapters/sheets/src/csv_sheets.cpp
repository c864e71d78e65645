#include "baize/sheets/csv_sheets.h"

#include "placed.h"

#include <algorithm>
#include <tuple>

namespace baize::sheets {

services::SheetsReading CsvSheets::read(const std::vector<services::ReceivedFile>& files,
                                        units::Day today) const {
  Gathered all = gather(files);
  check(all, today);
  remark(all);
  services::SheetsReading reading;
  for (services::FileReport& file : all.files) {
    file.problems = all.findings.problems_of(bare_name(file.name));
  }
  reading.files = std::move(all.files);
  reading.problems = all.findings.problems();
  reading.remarks = all.findings.remarks();
  reading.records = std::move(all.records);
  // Two files speak of visits, so neither's order can be theirs.
  auto& visits = reading.records.visits;
  const auto key = [](const green::Visit& v) { return std::tie(v.day, v.from, v.id); };
  const auto before = [&](const auto& a, const auto& b) { return key(a) < key(b); };
  if (!std::is_sorted(visits.begin(), visits.end(), before)) {
    std::sort(visits.begin(), visits.end(), before);
  }
  return reading;
}

} // namespace baize::sheets
