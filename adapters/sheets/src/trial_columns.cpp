#include "trial_rows.h"

namespace baize::sheets {

template <> const std::vector<Column<PlotRow>>& columns() {
  static const std::vector<Column<PlotRow>> all{{"trial", &PlotRow::trial, Need::header},
                                                {"layout", &PlotRow::layout, Need::header},
                                                {"seed", &PlotRow::seed},
                                                {"control", &PlotRow::control},
                                                {"plot", &PlotRow::plot, Need::cell},
                                                {"block", &PlotRow::block},
                                                {"whole_plot", &PlotRow::whole_plot},
                                                {"strip", &PlotRow::strip},
                                                {"treatment", &PlotRow::treatment, Need::cell},
                                                {"second_treatment", &PlotRow::second_treatment},
                                                {"green", &PlotRow::green},
                                                {"half", &PlotRow::half},
                                                {"row", &PlotRow::row},
                                                {"column", &PlotRow::column},
                                                {"walk", &PlotRow::walk}};
  return all;
}

template <> const std::vector<Column<TrialRecordRow>>& columns() {
  static const std::vector<Column<TrialRecordRow>> all{{"trial", &TrialRecordRow::trial},
                                                       {"day", &TrialRecordRow::day, Need::header},
                                                       {"plot", &TrialRecordRow::plot, Need::cell},
                                                       {"walk", &TrialRecordRow::walk},
                                                       {"time", &TrialRecordRow::time},
                                                       {"observer", &TrialRecordRow::observer},
                                                       {"score", &TrialRecordRow::score},
                                                       {"quantity", &TrialRecordRow::quantity},
                                                       {"value", &TrialRecordRow::value},
                                                       {"note", &TrialRecordRow::note}};
  return all;
}

} // namespace baize::sheets
