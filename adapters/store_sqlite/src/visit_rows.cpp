// Visits with their runs, rolls and marks.
#include "kind.h"

namespace baize::store_sqlite {

namespace {

void insert_roll(Connection& db, std::int64_t visit, int run, int place, const green::Roll& roll) {
  std::optional<int> marks;
  if (roll.marks) {
    marks = static_cast<int>(roll.marks->size());
  }
  db.use("INSERT INTO roll (visit, run, place, roll_order, distance_m, marks, score) "
         "VALUES (?, ?, ?, ?, ?, ?, ?)")
      .run(visit, run, place, roll.order, roll.distance, marks, roll.score);
  for (int i = 0; i < marks.value_or(0); ++i) {
    const green::Mark& mark = (*roll.marks)[static_cast<std::size_t>(i)];
    db.use("INSERT INTO mark (visit, run, roll, place, kind, seconds) VALUES (?, ?, ?, ?, ?, ?)")
        .run(visit, run, place, i, word(mark.kind), mark.seconds);
  }
}

void insert_runs(Connection& db, std::int64_t visit, const std::vector<green::Run>& runs) {
  int place = 0;
  for (const green::Run& run : runs) {
    db.use("INSERT INTO run (visit, place, spot, direction, total, total_of) "
           "VALUES (?, ?, ?, ?, ?, ?)")
        .run(visit, place, Blank{run.spot}, word(run.direction), run.total, run.total_of);
    int number = 0;
    for (const green::Roll& roll : run.rolls) {
      insert_roll(db, visit, place, number++, roll);
    }
    ++place;
  }
}

std::vector<green::Mark> read_marks(Connection& db, std::int64_t visit, int run, int roll) {
  Statement& row = db.use(
      "SELECT kind, seconds FROM mark WHERE visit = ? AND run = ? AND roll = ? ORDER BY place");
  row.start(visit, run, roll);
  std::vector<green::Mark> marks;
  while (row.next()) {
    green::Mark mark;
    mark.kind = green::find_mark_kind(row.text()).value_or(green::MarkKind::snake);
    mark.seconds = row.maybe_real();
    marks.push_back(mark);
  }
  return marks;
}

std::vector<green::Run> read_runs(Connection& db, std::int64_t visit) {
  std::vector<green::Run> runs;
  Statement& row =
      db.use("SELECT spot, direction, total, total_of FROM run WHERE visit = ? ORDER BY place");
  row.start(visit);
  while (row.next()) {
    green::Run run;
    run.spot = row.text();
    run.direction = green::find_direction(row.text()).value_or(green::Direction::back);
    run.total = row.maybe_whole();
    run.total_of = row.maybe_whole();
    runs.push_back(std::move(run));
  }
  Statement& rolls = db.use("SELECT run, place, roll_order, distance_m, marks, score FROM roll "
                            "WHERE visit = ? ORDER BY run, place");
  rolls.start(visit);
  while (rolls.next()) {
    const int run = rolls.whole();
    const int place = rolls.whole();
    green::Roll roll;
    roll.order = rolls.whole();
    roll.distance = rolls.maybe_length();
    if (const auto marks = rolls.maybe_whole()) {
      roll.marks = *marks == 0 ? std::vector<green::Mark>() : read_marks(db, visit, run, place);
    }
    roll.score = rolls.maybe_whole();
    runs[static_cast<std::size_t>(run)].rolls.push_back(std::move(roll));
  }
  return runs;
}

} // namespace

const char* const Kind<green::Visit>::table = "visit";
const char* const Kind<green::Visit>::columns =
    "g.id, r.half, o.id, r.day, r.from_minute, r.to_minute, r.hours_since_mowing, "
    "r.hours_since_rolling, r.dew, r.wind, r.surface, r.shared_rolls, "
    "r.note";
const char* const Kind<green::Visit>::joins =
    "JOIN green g ON g.key = r.green LEFT JOIN observer o ON o.key = r.observer";

const char* const Kind<green::Visit>::withdrawn = "r.withdrawn";

std::string Kind<green::Visit>::id(const green::Visit& visit) {
  return visit.id;
}

void Kind<green::Visit>::insert(Writing& to, std::int64_t record, int revision,
                                const green::Visit& visit) {
  const green::Conditions& state = visit.conditions;
  to.db()
      .use("INSERT INTO visit_revision (record, revision, change, green, half, observer, day, "
           "from_minute, to_minute, hours_since_mowing, hours_since_rolling, dew, wind, surface, "
           "shared_rolls, note, file, line, withdrawn) "
           "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
      .run(record, revision, to.change(), to.green(visit.green, visit.source), Blank{visit.half},
           to.observer(visit.observer), visit.day, visit.from, visit.to, state.hours_since_mowing,
           state.hours_since_rolling, state.dew, state.wind, state.surface,
           Blank{visit.shared_rolls}, visit.note, Blank{visit.source.file}, visit.source.line,
           to.withdrawing);
  insert_runs(to.db(), to.db().last_key(), visit.runs);
}

green::Visit Kind<green::Visit>::read(Connection& db, std::int64_t key, std::string id,
                                      Statement& row) {
  green::Visit visit;
  visit.id = std::move(id);
  visit.green = row.text();
  visit.half = row.text();
  visit.observer = row.text();
  visit.day = row.day();
  visit.from = row.maybe_minute();
  visit.to = row.maybe_minute();
  visit.conditions.hours_since_mowing = row.maybe_real();
  visit.conditions.hours_since_rolling = row.maybe_real();
  visit.conditions.dew = row.maybe_text();
  visit.conditions.wind = row.maybe_text();
  visit.conditions.surface = row.maybe_text();
  visit.shared_rolls = row.text();
  visit.note = row.text();
  visit.runs = read_runs(db, key);
  return visit;
}

} // namespace baize::store_sqlite
