#include "baize/sheets/trial_csv.h"

#include "baize/trials/walk.h"
#include "merge.h"
#include "table.h"
#include "trial_plan.h"
#include "trial_rows.h"

namespace baize::sheets {
namespace {

std::optional<int> if_any(int number) {
  return number == 0 ? std::nullopt : std::optional(number);
}

/// A row says a score, or a value of some other quantity, or nothing yet.
std::optional<trials::Record>
record_of(const TrialRecordRow& row, const TableReader<TrialRecordRow>& table, Findings& findings) {
  if (row.score && row.value) {
    findings.problem({"two_values",
                      "value",
                      write_value(*row.value, {}),
                      "left out where the row has a score",
                      {}},
                     table.where("value"));
    return std::nullopt;
  }
  if (!row.day) {
    findings.problem({"cell_missing", "day", {}, "given in every row with a value", {}},
                     table.where("day"));
    return std::nullopt;
  }
  if (row.value && row.quantity.empty()) {
    findings.problem({"cell_missing", "quantity", {}, "named beside every value", {}},
                     table.where("quantity"));
    return std::nullopt;
  }
  trials::Record record;
  record.trial = row.trial;
  record.plot = *row.plot;
  record.day = *row.day;
  record.quantity = row.score ? "score" : row.quantity;
  record.value = row.score ? *row.score : *row.value;
  record.place = shown(table.where());
  return record;
}

void read_records(const services::ReceivedFile& file, services::TrialReading& reading,
                  Findings& findings) {
  TableReader<TrialRecordRow> table(file, findings);
  for (TrialRecordRow row; table.next(row);) {
    if (!table.good()) {
      continue;
    }
    if (!row.score && !row.value) {
      ++reading.rows_without_value;
    } else if (auto record = record_of(row, table, findings)) {
      reading.records.push_back(std::move(*record));
    }
  }
}

} // namespace

services::TrialReading TrialCsv::read(const services::ReceivedFile& plan,
                                      const services::ReceivedFile& records) const {
  services::TrialReading reading;
  Findings findings;
  reading.plan = sheets::read_plan(plan, findings);
  read_records(records, reading, findings);
  reading.problems = findings.problems();
  return reading;
}

services::TrialReading TrialCsv::read_plan(const services::ReceivedFile& plan) const {
  services::TrialReading reading;
  Findings findings;
  reading.plan = sheets::read_plan(plan, findings);
  reading.problems = findings.problems();
  return reading;
}

std::string TrialCsv::write_plan(const trials::Plan& plan) const {
  std::vector<PlotRow> rows;
  for (const trials::Plot& plot : plan.plots) {
    PlotRow row;
    row.trial = plan.trial;
    row.layout = trials::word(plan.layout);
    row.seed = std::to_string(plan.seed);
    row.control = plan.control;
    row.plot = plot.number;
    row.block = if_any(plot.block);
    row.whole_plot = if_any(plot.whole_plot);
    row.strip = if_any(plot.strip);
    row.treatment = plot.treatment;
    row.second_treatment = plot.second;
    row.green = plot.green;
    row.half = plot.half;
    row.row = if_any(plot.row);
    row.column = if_any(plot.column);
    row.walk = if_any(plot.walk);
    rows.push_back(std::move(row));
  }
  return fresh_file(rows);
}

std::string TrialCsv::write_sheet(const trials::Plan& plan,
                                  const std::vector<units::Day>& days) const {
  std::string sheet = "trial,day,plot,walk,time,observer,score,note\n";
  for (std::size_t visit = 0; visit < days.size(); ++visit) {
    int place = 0;
    for (const std::size_t i : trials::walk(plan, static_cast<int>(visit) + 1)) {
      sheet += csv_cell(plan.trial, ',') + "," + units::iso(days[visit]) + "," +
               std::to_string(plan.plots[i].number) + "," + std::to_string(++place) + ",,,,\n";
    }
  }
  return sheet;
}

} // namespace baize::sheets
