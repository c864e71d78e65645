#include "baize/green/validate.h"
#include "checks.h"
#include "run_text.h"
#include "shared.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace baize::green {
namespace {

using Problems = std::vector<units::Problem>;

void add(Problems& all, Problems some) {
  all.insert(all.end(), std::make_move_iterator(some.begin()), std::make_move_iterator(some.end()));
}

/// What the club has declared, for looking names up.
struct Names {
  explicit Names(const Records& records) {
    for (const Green& green : records.greens) {
      greens.emplace(green.id, &green);
    }
    for (const Observer& observer : records.observers) {
      observers.insert(observer.id);
    }
  }
  std::map<std::string, const Green*> greens;
  std::set<std::string> observers;
};

bool has_half(const Green& green, const std::string& half) {
  return std::find(green.halves.begin(), green.halves.end(), half) != green.halves.end();
}

/// A green that lists no spots has not said where its spots are; any will do.
bool has_spot(const Green& green, const std::string& id) {
  return green.spots.empty() || std::any_of(green.spots.begin(), green.spots.end(),
                                            [&](const Spot& spot) { return spot.id == id; });
}

/// The green of that name, or a problem and null.
const Green* known_green(Checks& checks, const Names& names, const std::string& green) {
  const auto found = names.greens.find(green);
  if (found != names.greens.end()) {
    return found->second;
  }
  if (!green.empty()) {
    checks.note("unknown_green", "green", green, "one of the club's greens");
  }
  return nullptr;
}

void known_half(Checks& checks, const Green& green, const std::string& half) {
  checks.want(half.empty() || has_half(green, half), "unknown_half", "half", half,
              "one of the green's halves");
}

void known_spot(Checks& checks, const Green& green, const std::string& spot,
                const std::string& within) {
  checks.want(has_spot(green, spot), "unknown_spot", "spot", spot, "one of the green's spots",
              within);
}

/// A club that lists no observers accepts any.
void known_observer(Checks& checks, const Names& names, const std::string& observer) {
  checks.want(observer.empty() || names.observers.empty() || names.observers.contains(observer),
              "unknown_observer", "observer", observer, "one of the club's observers");
}

Problems check_names(const Visit& visit, const Names& names) {
  Checks checks(visit.source);
  known_observer(checks, names, visit.observer);
  if (const Green* green = known_green(checks, names, visit.green)) {
    known_half(checks, *green, visit.half);
    for (const Run& run : visit.runs) {
      known_spot(checks, *green, run.spot, run_text(run));
    }
  }
  return checks.take();
}

Problems check_names(const Reading& reading, const Names& names) {
  Checks checks(reading.source);
  known_observer(checks, names, reading.observer);
  if (const Green* green = known_green(checks, names, reading.green)) {
    if (!reading.spot.empty()) {
      known_spot(checks, *green, reading.spot, {});
    }
  }
  return checks.take();
}

Problems check_names(const Work& work, const Names& names) {
  Checks checks(work.source);
  for (const std::string& name : work.greens) {
    if (const Green* green = known_green(checks, names, name)) {
      known_half(checks, *green, work.half);
    }
  }
  if (work.greens.empty() && !work.half.empty()) {
    const bool somewhere =
        std::any_of(names.greens.begin(), names.greens.end(),
                    [&](const auto& entry) { return has_half(*entry.second, work.half); });
    checks.want(somewhere, "unknown_half", "half", work.half, "a half of one of the club's greens");
  }
  return checks.take();
}

template <class Record> void check_ids(Problems& all, const std::vector<Record>& records) {
  std::map<std::string, std::string> seen;
  for (const Record& record : records) {
    const auto [first, fresh] = seen.emplace(record.id, place_of(record.source));
    if (!fresh && !record.id.empty()) {
      Checks checks(record.source);
      const std::string& where = first->second;
      checks.note("id_twice", "id", record.id,
                  "used once only" + (where.empty() ? "" : " (already in " + where + ")"));
      add(all, checks.take());
    }
  }
}

void check_standards(Problems& all, const Records& records, const Names& names) {
  std::set<std::tuple<std::string, std::optional<units::MonthDay>, std::optional<units::MonthDay>>>
      seen;
  for (const Standard& standard : records.standards) {
    add(all, validate(standard));
    Checks checks(standard.source);
    known_green(checks, names, standard.green);
    checks.want(seen.emplace(standard.green, standard.from, standard.to).second, "standard_twice",
                "standard", standard.green.empty() ? "every green" : standard.green,
                "set once for a green and season");
    add(all, checks.take());
  }
}

/// Do two visits overlap, the first of which does not begin later?
bool at_once(const Visit& first, const Visit& second) {
  return *first.from == *second.from || (first.to && *second.from < *first.to);
}

/// Observers are people: one place at a time. Only visits with a time can be told.
void check_times(Problems& all, const std::vector<Visit>& visits) {
  std::vector<const Visit*> timed;
  for (const Visit& visit : visits) {
    if (visit.from && !visit.observer.empty()) {
      timed.push_back(&visit);
    }
  }
  const auto key = [](const Visit* v) { return std::tie(v->observer, v->day, *v->from, v->id); };
  std::stable_sort(timed.begin(), timed.end(),
                   [&](const Visit* a, const Visit* b) { return key(a) < key(b); });
  const Visit* busy = nullptr; // of those before, the one that ends last
  for (const Visit* visit : timed) {
    const bool same =
        busy != nullptr && busy->observer == visit->observer && busy->day == visit->day;
    if (same && at_once(*busy, *visit)) {
      Checks checks(visit->source);
      checks.note("two_visits_at_once", "from", units::iso(*visit->from),
                  "a time when " + visit->observer + " is at no other visit (visit " + busy->id +
                      " at green " + busy->green + ")");
      add(all, checks.take());
    }
    if (!same || visit->to.value_or(*visit->from) >= busy->to.value_or(*busy->from)) {
      busy = visit;
    }
  }
}

} // namespace

std::vector<units::Problem> validate(const Records& records, units::Day today) {
  Problems all;
  if (records.club != Club{}) { // a set of files need not speak of the club
    add(all, validate(records.club));
  }
  const Names names(records);
  for (const Green& green : records.greens) {
    add(all, validate(green));
  }
  for (const Observer& observer : records.observers) {
    Checks checks(observer.source);
    checks.present(observer.id, "id");
    add(all, checks.take());
  }
  for (const Visit& visit : records.visits) {
    add(all, validate(visit, today));
    add(all, check_names(visit, names));
  }
  for (const Reading& reading : records.readings) {
    add(all, validate(reading, today));
    add(all, check_names(reading, names));
  }
  for (const Work& work : records.works) {
    add(all, validate(work, today));
    add(all, check_names(work, names));
  }
  for (const Fixture& fixture : records.fixtures) {
    add(all, validate(fixture));
  }
  check_standards(all, records, names);
  check_ids(all, records.greens);
  check_ids(all, records.observers);
  check_ids(all, records.visits);
  check_ids(all, records.readings);
  check_ids(all, records.works);
  check_ids(all, records.fixtures);
  check_times(all, records.visits);
  add(all, check_shared(records.visits));
  return all;
}

} // namespace baize::green
