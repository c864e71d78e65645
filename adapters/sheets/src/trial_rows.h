#pragma once

#include "columns.h"

/// Rows of a trial's two files. What holds for the whole trial (name, layout, seed,
/// control) stands in the plan's first row and may be repeated in others.
namespace baize::sheets {

struct PlotRow {
  std::string trial;
  std::string layout;
  std::string seed;
  std::string control;
  std::optional<int> plot;
  std::optional<int> block;
  std::optional<int> whole_plot;
  std::optional<int> strip;
  std::string treatment;
  std::string second_treatment;
  std::string green;
  std::string half;
  std::optional<int> row;
  std::optional<int> column;
  std::optional<int> walk;
};

struct TrialRecordRow {
  std::string trial;
  std::optional<units::Day> day;
  std::optional<int> plot;
  std::optional<int> walk;
  std::optional<units::Minute> time;
  std::string observer;
  std::optional<double> score;
  std::string quantity;
  std::optional<double> value;
  std::string note;
};

template <> inline constexpr std::string_view kFile<PlotRow> = "trial.csv";
template <> inline constexpr std::string_view kFile<TrialRecordRow> = "trial_records.csv";
template <> const std::vector<Column<PlotRow>>& columns();
template <> const std::vector<Column<TrialRecordRow>>& columns();

} // namespace baize::sheets
