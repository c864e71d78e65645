#include "baize/services/season_model.h"

#include "baize/services/season_review.h"
#include "season_of.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace baize::services {
namespace {

long nearest(double value) {
  return std::lround(value);
}

std::string sentence(const season::GreenYear& year, const std::string& name) {
  std::string text =
      fmt::format("{} is estimated to have been at or above the standard on about {} of {} open "
                  "days ({} to {}).",
                  name, nearest(year.true_days.value), year.open_days, nearest(year.true_days.low),
                  nearest(year.true_days.high));
  if (!year.forecast) {
    return text;
  }
  const season::Return& back = *year.forecast;
  if (!back.median) {
    return text +
           fmt::format(" It is below now and not expected back within {} days.", back.followed);
  }
  text += fmt::format(" It is below now and expected back in about {} days", *back.median);
  if (back.low && back.high) {
    return text + fmt::format(" ({} to {}).", *back.low, *back.high);
  }
  return text + fmt::format("; {:.0f} in 100 that it takes longer than {}.", 100 * (1 - back.share),
                            back.followed);
}

/// Notes of other greens are of no use here.
std::vector<std::string> notes_of(const season::SeasonFit& fit, const std::string& green) {
  std::vector<std::string> notes;
  for (const std::string& note : fit.notes) {
    const bool of_a_green = note.rfind("Green ", 0) == 0;
    if (!of_a_green || note.rfind("Green " + green + ":", 0) == 0) {
      notes.push_back(note);
    }
  }
  return notes;
}

} // namespace

season::SeasonFit season_fit(const green::Records& records, const climate::Weather& weather,
                             units::Day today, const stats::Watch& watch) {
  season::Options options;
  for (const green::Work& work : records.works) {
    if (green::class_of(work) == green::WorkClass::disruptive) {
      options.methods[work.id] = work_label(work);
    }
  }
  return season::fit_season(season::read_model(records, weather, today, options), options, watch);
}

units::Result<SeasonModel> season_model(const season::SeasonFit& fit, const green::Records& records,
                                        const std::string& green, int year) {
  const green::Green* found = green::find_green(records, green);
  if (found == nullptr) {
    return units::refuse("no_such_green", "green", green, "a green of this club");
  }
  const auto period = period_of(year, fit.model.record_end);
  if (!period) {
    return units::Refusal(period.error());
  }
  SeasonModel model;
  model.estimates = season::project(fit, records, green, {}, *period);
  if (!model.estimates.summary.usable) {
    return units::Refusal(model.estimates.summary.problem);
  }
  model.club = records.club.id;
  model.green = green;
  model.green_name = found->name;
  model.year = year;
  model.sentence = sentence(model.estimates, found->name);
  model.notes = notes_of(fit, green);
  return model;
}

} // namespace baize::services
