#pragma once

#include "baize/green/club.h"
#include "baize/services/trial_analysis.h"

namespace baize::services {

struct TrialRollsOptions {
  trials::AnalysisOptions analysis; ///< without a day of the treatment the works tell it
  /// Last day that counts. Absent: the day before the next disruptive work on any
  /// plot, at most 90 days after the treatment.
  std::optional<units::Day> until;
};

/// A trial whose plots are greens or halves and were measured with the club's ordinary
/// visits: its rolls' scores from 30 days before the treatment on. The day of the
/// treatment is the last on which disruptive works differed between the plots. A day's
/// value of a plot is the mean of all rolls scored on it. Problems of the plan as
/// analyse_trial; refuses "plot_without_place", "no_such_green", "no_such_half",
/// "plots_share_place" and "no_treatment_day".
TrialAnswer analyse_trial_rolls(const ReceivedFile& plan, const green::Records& club,
                                units::Day today, const TrialRollsOptions& options,
                                const TrialFiles& files);

} // namespace baize::services
