#include "rows_of.h"

#include "names.h"

#include <algorithm>

namespace baize::sheets {
namespace {

using green::Mark;
using green::MarkKind;

/// Counts and times of one kind, timed ones first.
void put_marks(const std::vector<Mark>& marks, MarkKind kind, std::optional<int>& count,
               std::vector<double>& times) {
  count = 0;
  for (const Mark& mark : marks) {
    if (mark.kind == kind) {
      ++*count;
      if (mark.seconds) {
        times.push_back(*mark.seconds);
      }
    }
  }
}

GreenRow green_row(const green::Green& green) {
  return {green.id, green.name, green.grass, green.grass_mix, green.area_m2, {}, {}, {}};
}

/// Halves in the order in which the spots name them.
std::vector<std::string> halves_of_spots(const green::Green& green) {
  std::vector<std::string> halves;
  for (const green::Spot& spot : green.spots) {
    if (!spot.half.empty() && std::find(halves.begin(), halves.end(), spot.half) == halves.end()) {
      halves.push_back(spot.half);
    }
  }
  return halves;
}

} // namespace

std::vector<ClubRow> rows_of(const green::Club& club) {
  return {{club.id, club.name, club.latitude_deg, club.longitude_deg, club.elevation_m}};
}

std::vector<GreenRow> rows_of(const green::Green& green) {
  std::vector<GreenRow> rows;
  if (green.halves != halves_of_spots(green)) {
    for (const std::string& half : green.halves) {
      rows.push_back(green_row(green));
      rows.back().half = half;
    }
  }
  for (const green::Spot& spot : green.spots) {
    rows.push_back(green_row(green));
    rows.back().half = spot.half;
    rows.back().spot = spot.id;
    rows.back().bearing_deg = spot.bearing_deg;
  }
  if (rows.empty()) {
    rows.push_back(green_row(green));
  }
  return rows;
}

std::vector<ObserverRow> rows_of(const green::Observer& observer) {
  return {{observer.id, observer.name, observer.since}};
}

std::vector<RollRow> roll_rows(const green::Visit& visit) {
  std::vector<RollRow> rows;
  RollRow base;
  static_cast<VisitKey&>(base) = key_of(visit);
  for (const green::Run& run : visit.runs) {
    base.spot = run.spot;
    base.direction = run.direction;
    for (const green::Roll& roll : run.rolls) {
      RollRow& row = rows.emplace_back(base);
      row.roll = roll.order;
      row.distance = roll.distance;
      row.score = roll.score;
      if (roll.marks) {
        put_marks(*roll.marks, MarkKind::bobble, row.bobbles, row.bobble_s);
        put_marks(*roll.marks, MarkKind::chatter, row.chatters, row.chatter_s);
        put_marks(*roll.marks, MarkKind::snake, row.snakes, row.snake_s);
      }
    }
    if (run.total || run.total_of) {
      RollRow& row = rows.emplace_back(base);
      row.run_total = run.total;
      row.run_balls = run.total_of;
    }
  }
  return rows;
}

VisitRow visit_row(const green::Visit& visit) {
  VisitRow row;
  static_cast<VisitKey&>(row) = key_of(visit);
  row.hours_since_mowing = visit.conditions.hours_since_mowing;
  row.hours_since_rolling = visit.conditions.hours_since_rolling;
  row.dew = visit.conditions.dew;
  row.wind = visit.conditions.wind;
  row.surface = visit.conditions.surface;
  row.shared_rolls = visit.shared_rolls;
  row.note = visit.note;
  return row;
}

bool needs_visit_row(const green::Visit& visit) {
  return visit.conditions != green::Conditions{} || !visit.shared_rolls.empty() ||
         !visit.note.empty() || visit.runs.empty();
}

std::vector<ReadingRow> rows_of(const green::Reading& reading) {
  return {{{},
           reading.day,
           reading.at,
           reading.observer,
           reading.green,
           reading.spot,
           reading.kind,
           reading.value,
           {},
           reading.device,
           reading.rod_length_mm,
           reading.note}};
}

std::vector<WorkRow> rows_of(const green::Work& work) {
  WorkRow row{work.id == natural_id(work) ? std::string() : work.id,
              work.kind,
              work.day,
              work.until,
              work.at,
              green_list(work.greens),
              work.half,
              work.disruptive,
              in_table_order(work.kind, work.parameters),
              work.note};
  return {std::move(row)};
}

std::vector<FixtureRow> rows_of(const green::Fixture& fixture) {
  FixtureRow row{fixture.id == natural_id(fixture) ? std::string() : fixture.id,
                 fixture.name,
                 fixture.days.first,
                 {},
                 fixture.importance,
                 fixture.score_wanted,
                 fixture.speed_wanted};
  if (fixture.days.last != fixture.days.first) {
    row.until = fixture.days.last;
  }
  return {std::move(row)};
}

std::vector<StandardRow> rows_of(const green::Standard& standard) {
  return {{standard.green, standard.from, standard.to, standard.score}};
}

} // namespace baize::sheets
