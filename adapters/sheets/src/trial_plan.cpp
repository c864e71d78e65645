#include "trial_plan.h"

#include "table.h"
#include "trial_rows.h"

#include <charconv>

namespace baize::sheets {
namespace {

/// Greater seeds lose digits where numbers are kept as doubles (JSON in a browser).
constexpr std::uint64_t kGreatestSeed = (std::uint64_t{1} << 53U) - 1;

bool seed_of(const std::string& text, trials::Plan& plan) {
  std::uint64_t seed = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), seed);
  if (error != std::errc() || end != text.data() + text.size() || seed > kGreatestSeed) {
    return false;
  }
  plan.seed = seed;
  return true;
}

/// What must be the same all over the plan.
struct Whole {
  std::string PlotRow::* member;
  const char* column;
};
constexpr Whole kWhole[] = {{&PlotRow::trial, "trial"},
                            {&PlotRow::layout, "layout"},
                            {&PlotRow::seed, "seed"},
                            {&PlotRow::control, "control"}};

bool same_trial(const PlotRow& first, const PlotRow& row, const TableReader<PlotRow>& table,
                Findings& findings) {
  for (const auto& [member, column] : kWhole) {
    if (!(row.*member).empty() && row.*member != first.*member) {
      findings.problem({"plan_differs",
                        column,
                        row.*member,
                        "'" + first.*member + "' as in the first row: a plan is of one trial",
                        {}},
                       table.where(column));
      return false;
    }
  }
  return true;
}

void take_whole(const PlotRow& row, const TableReader<PlotRow>& table, trials::Plan& plan,
                Findings& findings) {
  plan.trial = row.trial;
  plan.control = row.control;
  const auto layout = trials::layout_of(row.layout);
  if (!layout) {
    findings.problem({"no_such_layout",
                      "layout",
                      row.layout,
                      "completely_randomised, randomised_blocks, split_plot or strip_plot",
                      {}},
                     table.where("layout"));
  }
  plan.layout = layout.value_or(trials::Layout::randomised_blocks);
  if (!row.seed.empty() && !seed_of(row.seed, plan)) {
    findings.problem(
        {"not_a_seed", "seed", row.seed, "a whole number from 0 to 9007199254740991", {}},
        table.where("seed"));
  }
}

trials::Plot plot_of(const PlotRow& row) {
  trials::Plot plot;
  plot.number = *row.plot;
  plot.block = row.block.value_or(0);
  plot.whole_plot = row.whole_plot.value_or(0);
  plot.strip = row.strip.value_or(0);
  plot.treatment = row.treatment;
  plot.second = row.second_treatment;
  plot.green = row.green;
  plot.half = row.half;
  plot.row = row.row.value_or(0);
  plot.column = row.column.value_or(0);
  plot.walk = row.walk.value_or(0);
  return plot;
}

} // namespace

trials::Plan read_plan(const services::ReceivedFile& file, Findings& findings) {
  trials::Plan plan;
  TableReader<PlotRow> table(file, findings);
  std::optional<PlotRow> first;
  for (PlotRow row; table.next(row);) {
    if (!table.good()) {
      continue;
    }
    if (!first) {
      take_whole(row, table, plan, findings);
      first = row;
    }
    if (same_trial(*first, row, table, findings)) {
      plan.plots.push_back(plot_of(row));
    }
  }
  if (findings.good()) {
    if (auto problem = trials::problem_of(plan)) {
      // The core's place ("plot 102") comes behind the file's name.
      const std::string at = problem->place.empty() ? "" : ", " + problem->place;
      findings.problem(std::move(*problem), {file.name + at, 0, {}});
    }
  }
  return plan;
}

} // namespace baize::sheets
