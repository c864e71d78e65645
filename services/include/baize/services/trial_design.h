#pragma once

#include "baize/services/trial_files_port.h"
#include "baize/trials/design.h"
#include "baize/trials/power.h"

namespace baize::services {

/// What somebody asks for before a trial begins.
struct TrialRequest {
  trials::Design design;
  /// Days of the visits after the treatment; may be empty: then no record sheet.
  std::vector<units::Day> days;
  trials::PowerOptions power; ///< its visits are the days where there are any
};

/// Everything that is taken to the green, and what the trial could find.
struct TrialDesignReview {
  std::string sentence; ///< what a trial of this size would find
  trials::Plan plan;
  std::vector<trials::ErrorDf> error_df;
  trials::TrialPower power;
  std::vector<std::string> notes; ///< warnings first, cautions last
  std::string map_text;
  std::string map_svg;
  std::string plan_csv;   ///< trial.csv, to be kept: it is the record of the draw
  std::string sheet_csv;  ///< trial_records.csv, empty scores
  std::string sheet_page; ///< the same as an HTML page to print
};

/// Draws the layout and says what it could find. Refuses as trials::Design and
/// trials::PowerOptions.
units::Result<TrialDesignReview> design_trial(const TrialRequest& asked, const TrialFiles& files);

/// `visits` days, `every` days apart, from the first: 1 to 60 visits, every 1 to 365 days.
units::Result<std::vector<units::Day>> visit_days(units::Day first, int visits, int every);

} // namespace baize::services
