#include "baize/journal/records.h"

#include "fields.h"
#include "photos.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace baize::journal {
namespace {

template <class M> M begun(const Thing& thing) {
  M made;
  made.record.id = thing.id;
  made.removed = thing.removed();
  made.conflicts = thing.conflicts();
  return made;
}

MadeVisit visit_of(const Thing& thing) {
  auto made = begun<MadeVisit>(thing);
  green::Visit& visit = made.record;
  Fields fields(thing, made.problems);
  made.club = fields.text("club");
  fields.present("club");
  visit.green = fields.text("green");
  visit.half = fields.text("half");
  visit.observer = fields.text("observer");
  visit.day = fields.day("day").value_or(units::Day{});
  fields.present("day");
  visit.from = fields.minute("from");
  visit.to = fields.minute("to");
  visit.shared_rolls = fields.text("shared_rolls");
  visit.conditions.hours_since_mowing = fields.number("hours_since_mowing");
  visit.conditions.hours_since_rolling = fields.number("hours_since_rolling");
  visit.conditions.dew = fields.maybe_text("dew");
  visit.conditions.wind = fields.maybe_text("wind");
  visit.conditions.surface = fields.maybe_text("surface");
  visit.note = fields.text("note");
  made.done = fields.flag("done").value_or(false);
  fields.finish();
  return made;
}

Made<green::Reading> reading_of(const Thing& thing) {
  auto made = begun<Made<green::Reading>>(thing);
  green::Reading& reading = made.record;
  Fields fields(thing, made.problems);
  made.club = fields.text("club");
  fields.present("club");
  reading.green = fields.text("green");
  reading.spot = fields.text("spot");
  reading.observer = fields.text("observer");
  reading.day = fields.day("day").value_or(units::Day{});
  fields.present("day");
  reading.at = fields.minute("at");
  reading.kind = fields.text("measured");
  reading.value = fields.number("value").value_or(0);
  fields.present("value");
  reading.device = fields.text("device");
  reading.rod_length_mm = fields.number("rod_length");
  reading.note = fields.text("note");
  fields.finish();
  return made;
}

Made<green::Work> work_of(const Thing& thing) {
  auto made = begun<Made<green::Work>>(thing);
  green::Work& work = made.record;
  Fields fields(thing, made.problems);
  made.club = fields.text("club");
  fields.present("club");
  work.kind = fields.text("done_as");
  work.day = fields.day("day").value_or(units::Day{});
  fields.present("day");
  work.until = fields.day("until");
  work.at = fields.minute("at");
  work.greens = fields.texts("greens");
  work.half = fields.text("half");
  work.disruptive = fields.flag("disruptive");
  work.parameters = fields.parameters("parameters");
  work.note = fields.text("note");
  fields.finish();
  return made;
}

/// Puts rolls and totals into their visits' runs.
class Runs {
 public:
  explicit Runs(MadeRecords& made) : made_(made) {
    for (MadeVisit& visit : made.visits) {
      visits_.emplace(visit.record.id, &visit);
    }
  }

  void take(const Thing& thing) {
    std::vector<units::Problem> problems;
    Fields fields(thing, problems);
    const std::string of = fields.text("visit");
    const auto at = visits_.find(of);
    if (thing.removed()) {
      if (at != visits_.end()) {
        at->second->conflicts += thing.conflicts();
      }
      return;
    }
    if (at == visits_.end()) {
      fields.note("no_such_visit", "visit", of, "the visit it belongs to, which is not here");
      made_.astray.insert(made_.astray.end(), problems.begin(), problems.end());
      return;
    }
    MadeVisit& visit = *at->second;
    visit.conflicts += thing.conflicts();
    const std::string spot = fields.text("spot");
    const auto direction = fields.direction("direction");
    if (!direction) {
      fields.present("direction");
    }
    green::Run& run = run_of(visit.record, spot, direction.value_or(green::Direction::out));
    if (thing.kind == Kind::roll) {
      roll(fields, run);
    } else {
      total(fields, run);
    }
    fields.finish();
    visit.problems.insert(visit.problems.end(), problems.begin(), problems.end());
  }

 private:
  static green::Run& run_of(green::Visit& visit, const std::string& spot,
                            green::Direction direction) {
    const auto key = std::tie(spot, direction);
    auto at = std::find_if(visit.runs.begin(), visit.runs.end(), [&](const green::Run& run) {
      return std::tie(run.spot, run.direction) == key;
    });
    if (at == visit.runs.end()) {
      green::Run fresh;
      fresh.spot = spot;
      fresh.direction = direction;
      at = visit.runs.insert(at, std::move(fresh));
    }
    return *at;
  }

  static void roll(Fields& fields, green::Run& run) {
    green::Roll roll;
    roll.order = fields.whole("order").value_or(0);
    fields.present("order");
    if (const auto metres = fields.number("distance")) {
      roll.distance = units::from_metres(*metres);
    }
    roll.marks = fields.marks("marks");
    roll.score = fields.whole("score");
    fields.instant("released");
    fields.instant("stopped");
    run.rolls.push_back(std::move(roll));
  }

  static void total(Fields& fields, green::Run& run) {
    const auto total = fields.whole("total");
    const auto of = fields.whole("total_of");
    if (run.total || run.total_of) {
      fields.note("total_twice", "total", total ? std::to_string(*total) : "",
                  "written once for a spot and direction");
      return;
    }
    run.total = total;
    run.total_of = of;
  }

  MadeRecords& made_;
  std::map<std::string, MadeVisit*, std::less<>> visits_;
};

void put_in_order(green::Visit& visit) {
  std::stable_sort(visit.runs.begin(), visit.runs.end(), [](const auto& a, const auto& b) {
    return std::tie(a.spot, a.direction) < std::tie(b.spot, b.direction);
  });
  for (green::Run& run : visit.runs) {
    std::stable_sort(run.rolls.begin(), run.rolls.end(),
                     [](const auto& a, const auto& b) { return a.order < b.order; });
  }
}

} // namespace

MadeRecords records(const Folded& folded) {
  MadeRecords made;
  for (const Thing& thing : folded.things) {
    if (thing.kind == Kind::visit) {
      made.visits.push_back(visit_of(thing));
    } else if (thing.kind == Kind::reading) {
      made.readings.push_back(reading_of(thing));
    } else if (thing.kind == Kind::work) {
      made.works.push_back(work_of(thing));
    }
  }
  Runs runs(made);
  for (const Thing& thing : folded.things) {
    if (thing.kind == Kind::roll || thing.kind == Kind::total) {
      runs.take(thing);
    }
  }
  for (MadeVisit& visit : made.visits) {
    put_in_order(visit.record);
  }
  add_photos(folded, made);
  return made;
}

} // namespace baize::journal
