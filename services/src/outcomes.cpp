#include "outcomes.h"

#include "baize/green/validate.h"

#include <algorithm>

namespace baize::services {
namespace {

using Problems = std::vector<units::Problem>;

/// Those of `with` that `without` does not hold already: what is wrong between
/// other records is not this record's fault.
Problems added(const Problems& with, Problems without) {
  Problems fresh;
  for (const units::Problem& problem : with) {
    const auto old = std::find(without.begin(), without.end(), problem);
    if (old == without.end()) {
      fresh.push_back(problem);
    } else {
      without.erase(old);
    }
  }
  return fresh;
}

} // namespace

template <class Record>
ThingOutcome Outcomes::begin(journal::Kind kind, const journal::Made<Record>& made) const {
  ThingOutcome outcome;
  outcome.kind = kind;
  outcome.thing = made.record.id;
  outcome.removed = made.removed;
  outcome.conflicts = made.conflicts;
  outcome.problems = made.problems;
  if (!made.club.empty() && made.club != club_) {
    outcome.problems.push_back(
        {"club_differs", "club", made.club, "'" + club_ + "', the club whose phone wrote it", ""});
  }
  outcome.state = outcome.problems.empty() ? ThingState::accepted : ThingState::refused;
  if (made.removed) {
    outcome.state = ThingState::accepted;
    outcome.problems.clear();
  }
  return outcome;
}

void Outcomes::settle(ThingOutcome outcome) {
  (outcome.kind == journal::Kind::visit ? visits_ : others_).push_back(std::move(outcome));
}

green::Records Outcomes::beside(const Around& around, const green::Visit& visit) const {
  green::Records records = around.ground();
  for (green::Visit& other : around.visits_beside(visit.day, visit.shared_rolls)) {
    if (!ours_.contains(other.id)) {
      records.visits.push_back(std::move(other));
    }
  }
  for (const green::Visit& other : decision_.records.visits) {
    const bool shares = !visit.shared_rolls.empty() && other.shared_rolls == visit.shared_rolls;
    if (other.day == visit.day || shares) {
      records.visits.push_back(other);
    }
  }
  return records;
}

void Outcomes::decide_visit(const Around& around, const journal::MadeVisit& made) {
  ThingOutcome outcome = begin(journal::Kind::visit, made);
  // Photos alone are no record, and no fault.
  const bool photos_alone = made.done && outcome.problems.empty() && made.record.runs.empty() &&
                            pictured_.contains(made.record.id);
  if (made.removed || photos_alone) {
    decision_.visits_out.push_back(made.record.id);
  } else if (!made.done) {
    outcome.state = ThingState::open;
  } else if (outcome.problems.empty()) {
    green::Records records = beside(around, made.record);
    const Problems without = green::validate(records, last_day_);
    records.visits.push_back(made.record);
    outcome.problems = added(green::validate(records, last_day_), without);
    if (outcome.problems.empty()) {
      decision_.records.visits.push_back(made.record);
    } else {
      outcome.state = ThingState::refused;
    }
  }
  settle(std::move(outcome));
}

template <class Record>
void Outcomes::decide_single(const Around& around, journal::Kind kind,
                             const journal::Made<Record>& made,
                             std::vector<Record> green::Records::* list,
                             std::vector<std::string>& out) {
  ThingOutcome outcome = begin(kind, made);
  if (made.removed) {
    out.push_back(made.record.id);
  } else if (outcome.problems.empty()) {
    green::Records records = around.ground();
    const Problems without = green::validate(records, last_day_);
    (records.*list).push_back(made.record);
    outcome.problems = added(green::validate(records, last_day_), without);
    if (outcome.problems.empty()) {
      (decision_.records.*list).push_back(made.record);
    } else {
      outcome.state = ThingState::refused;
    }
  }
  settle(std::move(outcome));
}

Decision Outcomes::decide(const Around& around) {
  *this = Outcomes(club_, last_day_); // a call before this one was taken back
  const journal::MadeRecords made = journal::records(journal::fold(around.entries()));
  decision_.records.club.id = club_;
  for (const journal::MadeVisit& visit : made.visits) {
    ours_.insert(visit.record.id);
  }
  for (const auto& photo : made.photos) {
    if (!photo.removed && photo.problems.empty()) {
      pictured_.insert(photo.record.visit);
    }
  }
  for (const journal::MadeVisit& visit : made.visits) {
    decide_visit(around, visit);
  }
  for (const auto& reading : made.readings) {
    decide_single(around, journal::Kind::reading, reading, &green::Records::readings,
                  decision_.readings_out);
  }
  for (const auto& work : made.works) {
    decide_single(around, journal::Kind::work, work, &green::Records::works, decision_.works_out);
  }
  for (const auto& photo : made.photos) { // entries are all there is of a photo
    settle(begin(journal::Kind::photo, photo));
  }
  astray_ = made.astray;
  return decision_;
}

void Outcomes::tell(const std::set<std::string>& touched, HandInReceipt& receipt) {
  receipt.visits = std::move(visits_);
  receipt.others = std::move(others_);
  for (units::Problem& problem : astray_) {
    // A roll that once belonged to one of these visits may have gone to another.
    const std::string thing = problem.place.substr(problem.place.rfind(' ') + 1);
    if (touched.contains(thing)) {
      receipt.remarks.push_back(std::move(problem));
    }
  }
}

} // namespace baize::services
