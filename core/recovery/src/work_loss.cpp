#include "baize/recovery/work_loss.h"

#include "baize/recovery/missed_visits.h"
#include "disruption.h"
#include "intervals.h"
#include "loss_area.h"
#include "notes.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

namespace baize::recovery {
namespace {

/// A green or one of its halves, with all that happened on it.
struct Surface {
  const green::Records& records;
  const climate::Weather& weather;
  const Options& options;
  std::string green;
  std::string half;
  units::Day record_end;
  std::vector<VisitScore> visits;
  std::vector<DayScore> days;
  std::vector<Disruption> disruptions;
};

/// Scored days in front of and behind a disruption.
struct Sides {
  std::vector<DayScore> before;
  std::vector<DayScore> after;
  std::vector<std::string> unordered;
};

Surface surface_of(const green::Records& records, const climate::Weather& weather,
                   const Options& options, const std::string& green, const std::string& half,
                   units::Day record_end) {
  Surface s{records, weather, options, green, half, record_end, {}, {}, {}};
  s.visits = visit_scores(records, green, half);
  s.days = day_scores(s.visits);
  s.disruptions = disruptions(records, green, half, record_end);
  return s;
}

/// Visits of the work's own day, each on its side where the times tell.
void split_own_day(Sides& sides, const Surface& surface, const Disruption& work, bool want_before) {
  std::vector<VisitScore> before;
  std::vector<VisitScore> after;
  for (const VisitScore& visit : surface.visits) {
    if (visit.day != work.day) {
      continue;
    }
    if (visit.at && work.begins && *visit.at < *work.begins) {
      before.push_back(visit);
    } else if (visit.at && work.ends && *visit.at > *work.ends) {
      after.push_back(visit);
    } else {
      sides.unordered.push_back(visit.visit);
    }
  }
  if (want_before) {
    sides.before = day_scores(before);
  }
  sides.after = day_scores(after);
}

Sides sides_of(const Surface& surface, const Disruption& work, units::Day before_from,
               units::Day horizon) {
  Sides sides;
  split_own_day(sides, surface, work, before_from <= work.day);
  std::vector<DayScore> earlier;
  for (const DayScore& day : surface.days) {
    if (before_from <= day.day && day.day < work.day) {
      earlier.push_back(day);
    } else if (work.day < day.day && day.day <= horizon) {
      sides.after.push_back(day);
    }
  }
  sides.before.insert(sides.before.begin(), earlier.begin(), earlier.end());
  return sides;
}

void set_before(WorkLoss& loss, const std::vector<DayScore>& days) {
  double total = 0;
  int rolls = 0;
  for (const DayScore& day : days) {
    total += day.total;
    rolls += day.rolls;
    loss.before_visits.insert(loss.before_visits.end(), day.visits.begin(), day.visits.end());
  }
  if (rolls > 0) {
    loss.before = total / rolls;
  }
}

/// The visited days a loss is read from: to the first one back, and with it.
std::size_t until_back(const Aftermath& after) {
  const auto definition = after.own_level ? Definition::own_level : Definition::at_standard;
  return std::min(first_back(after, definition) + 1, after.days.size());
}

void set_depth(WorkLoss& loss, const Aftermath& after) {
  const auto end = after.days.begin() + static_cast<std::ptrdiff_t>(until_back(after));
  const auto lowest =
      std::min_element(after.days.begin(), end,
                       [](const DayScore& a, const DayScore& b) { return a.score < b.score; });
  if (lowest == end) {
    return;
  }
  loss.trough = lowest->score;
  loss.trough_day = lowest->day;
  if (loss.before) {
    loss.depth = reaches(lowest->score, *after.own_level) ? 0 : *loss.before - lowest->score;
  }
}

void set_area(WorkLoss& loss, const Aftermath& after, const Surface& surface) {
  if (!loss.before || after.days.empty()) {
    return;
  }
  std::vector<LossPoint> points;
  for (std::size_t i = 0; i < until_back(after); ++i) {
    const DayScore& day = after.days[i];
    points.push_back({day.day - after.work,
                      reaches(day.score, *after.own_level) ? 0 : *loss.before - day.score});
  }
  loss.area = loss_area(points, *loss.before - 1);
  loss.area->ended = first_back(after, Definition::own_level) < after.days.size();
  loss.area->growth_score_days =
      growth_weighted(points, after.work, surface.weather, surface.options.growth);
}

/// First day of the window before, also cut by the disruption in front.
units::Day window_start(const Surface& surface, std::size_t place) {
  const units::Day from = surface.disruptions[place].day - surface.options.before_window_days;
  units::Day start = from;
  for (std::size_t i = 0; i < place; ++i) {
    start = std::max(start, surface.disruptions[i].last + 1);
  }
  return start;
}

WorkLoss loss_of(const Surface& surface, std::size_t place, const green::Work& work) {
  const Disruption& disruption = surface.disruptions[place];
  const bool followed = place + 1 < surface.disruptions.size();
  const Disruption* next = followed ? &surface.disruptions[place + 1] : nullptr;
  WorkLoss loss;
  loss.work = work.id;
  loss.kind = work.kind;
  loss.green = surface.green;
  loss.half = work.half;
  loss.day = work.day;
  loss.horizon = followed ? next->day - 1 : surface.record_end;
  loss.horizon_reason = followed ? Censoring::next_work : Censoring::record_ends;
  loss.standard = green::standard_on(surface.records.standards, surface.green, work.day);
  const units::Day before_from = window_start(surface, place);
  Sides sides = sides_of(surface, disruption, before_from, loss.horizon);
  set_before(loss, sides.before);
  Aftermath after{work.day, std::move(sides.after), {}, {}, loss.horizon_reason};
  for (const DayScore& day : after.days) {
    loss.visits_after += static_cast<int>(day.visits.size());
    after.true_day.push_back(
        reaches(day.score, green::standard_on(surface.records.standards, surface.green, day.day)));
  }
  if (loss.before) {
    after.own_level = *loss.before - surface.options.own_level_tolerance;
  }
  loss.recovery = recovery_intervals(after, surface.weather, surface.options.growth);
  set_depth(loss, after);
  set_area(loss, after, surface);
  const std::size_t back = first_back(after, kHeadline);
  loss.back_at_lower_standard =
      back < after.days.size() && !reaches(after.days[back].score, loss.standard);
  loss.notes = loss_notes(loss, after, {&work, &disruption, next, before_from, sides.unordered});
  return loss;
}

/// What custom there is among a green's visits only all its works together tell.
void read_missed_visits(std::vector<WorkLoss>& losses) {
  for (const Definition definition : kDefinitions) {
    std::set<std::pair<units::Day, std::string>> seen; // works of one day share their visits
    std::vector<int> gaps;
    for (const WorkLoss& loss : losses) {
      if (seen.emplace(loss.day, loss.half).second) {
        const auto& own = loss.under(definition).gaps_below;
        gaps.insert(gaps.end(), own.begin(), own.end());
      }
    }
    const auto usual = usual_gap(std::move(gaps));
    for (WorkLoss& loss : losses) {
      RecoveryInterval& interval = loss.recovery[static_cast<std::size_t>(definition)];
      if (interval.by_days) {
        interval.by_days_if_good = by_if_good(interval.after_days, *interval.by_days, usual);
      }
    }
  }
  for (WorkLoss& loss : losses) {
    if (auto note = missed_note(loss)) {
      loss.notes.push_back(std::move(*note));
    }
  }
}

} // namespace

std::optional<units::Problem> Options::problem() const {
  if (before_window_days < 1 || before_window_days > 366) {
    return units::Problem{"before_window_out_of_range", "before_window_days",
                          std::to_string(before_window_days), "a whole number from 1 to 366", ""};
  }
  if (!(own_level_tolerance >= 0 && own_level_tolerance <= 9)) {
    return units::Problem{"tolerance_out_of_range", "own_level_tolerance",
                          std::to_string(own_level_tolerance), "a number from 0 to 9", ""};
  }
  return growth.problem();
}

climate::GrowthOptions growth_options_for(green::Grass grass) {
  return grass == green::Grass::warm ? climate::kWarmSeason : climate::kCoolSeason;
}

std::vector<WorkLoss> work_losses(const green::Records& records, const climate::Weather& weather,
                                  const std::string& green, units::Day record_end,
                                  const Options& options) {
  std::vector<WorkLoss> losses;
  if (!options.valid()) {
    return losses;
  }
  std::set<std::string> halves;
  for (const Disruption& disruption : disruptions(records, green, {}, record_end)) {
    for (const green::Work* work : disruption.works) {
      halves.insert(work->half);
    }
  }
  for (const std::string& half : halves) {
    const Surface surface = surface_of(records, weather, options, green, half, record_end);
    for (std::size_t i = 0; i < surface.disruptions.size(); ++i) {
      for (const green::Work* work : surface.disruptions[i].works) {
        if (work->half == half) {
          losses.push_back(loss_of(surface, i, *work));
        }
      }
    }
  }
  std::sort(losses.begin(), losses.end(), [](const WorkLoss& a, const WorkLoss& b) {
    return std::tie(a.day, a.work, a.half) < std::tie(b.day, b.work, b.half);
  });
  read_missed_visits(losses);
  return losses;
}

} // namespace baize::recovery
