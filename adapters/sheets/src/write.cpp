#include "baize/sheets/csv_sheets.h"
#include "gather.h"
#include "merge.h"
#include "names.h"
#include "rows_of.h"

namespace baize::sheets {
namespace {

using services::ReceivedFile;

std::string id_of(const green::Club& /*club*/) {
  return {}; // a set holds one
}
std::string id_of(const green::Standard& standard) {
  return standard.green + "/" + write_value(standard.from, {}) + "/" + write_value(standard.to, {});
}
template <class Record> std::string id_of(const Record& record) {
  return record.id;
}

/// Which record of `now` each of `old` has become, and which are new.
struct Matched {
  std::vector<std::optional<std::size_t>> now; ///< by old record
  std::vector<std::size_t> added;
};

template <class Record>
Matched match(const std::vector<Record>& old, const std::vector<Record>& now) {
  std::unordered_map<std::string, std::size_t> places;
  for (std::size_t i = 0; i < now.size(); ++i) {
    places.emplace(id_of(now[i]), i);
  }
  Matched matched;
  std::vector<bool> met(now.size(), false);
  for (const Record& record : old) {
    const auto found = places.find(id_of(record));
    matched.now.push_back(found == places.end() ? std::nullopt : std::optional(found->second));
    if (found != places.end()) {
      met[found->second] = true;
    }
  }
  for (std::size_t i = 0; i < now.size(); ++i) {
    if (!met[i]) {
      matched.added.push_back(i);
    }
  }
  return matched;
}

/// Writes the nine files one after the other.
class Writer {
 public:
  Writer(const green::Records& records, const std::vector<ReceivedFile>& received)
      : records_(records), received_(received), old_(gather(received)) {}

  std::vector<ReceivedFile> files() {
    one<ClubRow>(old_clubs(), std::vector<green::Club>{records_.club}, true);
    greens();
    one<ObserverRow>(old_.records.observers, records_.observers, false);
    rolls();
    visits();
    readings();
    one<WorkRow>(old_.records.works, records_.works, false);
    one<FixtureRow>(old_.records.fixtures, records_.fixtures, false);
    one<StandardRow>(old_.records.standards, records_.standards, false);
    for (const ReceivedFile& file : received_) {
      if (!known_file(file)) {
        out_.push_back(file);
      }
    }
    return std::move(out_);
  }

 private:
  std::vector<green::Club> old_clubs() const {
    return usable<ClubRow>() ? std::vector<green::Club>{old_.records.club}
                             : std::vector<green::Club>{};
  }

  /// The received file, if its rows can be told apart.
  template <class Row> const ReceivedFile* usable() const {
    const ReceivedFile* file = find_file(received_, kFile<Row>);
    const bool sound = file != nullptr && old_.findings.problems_of(kFile<Row>) == 0;
    return sound ? file : nullptr;
  }

  template <class Row> void put(const ReceivedFile* file, Changes<Row> changes, bool always) {
    if (file != nullptr) {
      const std::vector<std::size_t>& owners = old_.owners.at(file->name);
      out_.push_back({file->name, Merge<Row>(*file, owners, std::move(changes)).text()});
    } else if (always || !changes.added.empty()) {
      out_.push_back({std::string(kFile<Row>), fresh_file(changes.added)});
    }
  }

  template <class Row> static void add(Changes<Row>& changes, std::vector<Row> rows) {
    changes.added.insert(changes.added.end(), std::make_move_iterator(rows.begin()),
                         std::make_move_iterator(rows.end()));
  }

  template <class Row>
  static void decide(Changes<Row>& changes, std::size_t old, const std::vector<Row>& before,
                     std::vector<Row> after) {
    changes.fates.push_back(before == after ? Fate::keep : Fate::change);
    if (before != after) {
      changes.changed.emplace(old, std::move(after));
    }
  }

  template <class Row, class Record>
  Changes<Row> changes(const std::vector<Record>& old, const std::vector<Record>& now,
                       const Matched& matched) const {
    Changes<Row> changes;
    for (std::size_t i = 0; i < old.size(); ++i) {
      if (matched.now[i]) {
        decide(changes, i, rows_of(old[i]), rows_of(now[*matched.now[i]]));
      } else {
        changes.fates.push_back(Fate::drop);
      }
    }
    for (const std::size_t i : matched.added) {
      add(changes, rows_of(now[i]));
    }
    return changes;
  }

  template <class Row, class Record>
  void one(const std::vector<Record>& old, const std::vector<Record>& now, bool always) {
    const ReceivedFile* file = usable<Row>();
    const bool implied =
        std::is_same_v<Row, ObserverRow> && find_file(received_, kFile<Row>) == nullptr;
    const std::vector<Record> known = file != nullptr || implied ? old : std::vector<Record>{};
    Changes<Row> found = changes<Row>(known, now, match(known, now));
    if (implied) { // an observer that only the rolls name needs no file until more is known
      for (auto& [owner, rows] : found.changed) {
        add(found, std::move(rows));
      }
      if (!found.added.empty()) {
        found.added.clear(); // a list must hold every observer
        for (const Record& record : now) {
          add(found, rows_of(record));
        }
      }
    }
    put(file, std::move(found), always);
  }

  /// Greens stand in walking order, so their order is part of the file.
  void greens() {
    const ReceivedFile* file = usable<GreenRow>();
    const std::vector<green::Green> old =
        file != nullptr ? old_.records.greens : std::vector<green::Green>{};
    const Matched matched = match(old, records_.greens);
    Changes<GreenRow> found = changes<GreenRow>(old, records_.greens, matched);
    std::vector<std::size_t> order;
    for (const auto& now : matched.now) {
      if (now) {
        order.push_back(*now);
      }
    }
    order.insert(order.end(), matched.added.begin(), matched.added.end());
    if (!std::is_sorted(order.begin(), order.end())) {
      for (const auto& now : matched.now) {
        found.positions.push_back(now.value_or(0));
      }
      for (const std::size_t i : matched.added) {
        found.added_positions.insert(found.added_positions.end(),
                                     rows_of(records_.greens[i]).size(), i);
      }
    }
    put(file, std::move(found), true);
  }

  /// Both files speak of the same visits: with a problem in one, neither can be kept.
  bool visits_usable() const {
    const bool rolls = usable<RollRow>() != nullptr;
    const bool none = find_file(received_, kFile<VisitRow>) == nullptr;
    return rolls && (none || usable<VisitRow>() != nullptr);
  }

  void rolls() {
    const bool sound = visits_usable();
    const std::vector<green::Visit> none;
    const auto& old = sound ? old_.records.visits : none;
    visits_ = match(old, records_.visits);
    Changes<RollRow> found;
    for (std::size_t i = 0; i < old.size(); ++i) {
      if (visits_.now[i]) {
        decide(found, i, roll_rows(old[i]), roll_rows(records_.visits[*visits_.now[i]]));
      } else {
        found.fates.push_back(Fate::drop);
      }
    }
    for (const std::size_t i : visits_.added) {
      add(found, roll_rows(records_.visits[i]));
    }
    put(sound ? usable<RollRow>() : nullptr, std::move(found), true);
  }

  void visits() {
    const bool sound = visits_usable();
    Changes<VisitRow> found;
    for (std::size_t i = 0; i < visits_.now.size(); ++i) {
      const auto& now = visits_.now[i];
      if (!now) {
        found.fates.push_back(Fate::drop);
        continue;
      }
      const green::Visit& visit = records_.visits[*now];
      const std::vector<VisitRow> after{visit_row(visit)};
      if (old_.visit_lines[i].in_visits > 0) {
        decide(found, i, {visit_row(old_.records.visits[i])}, after);
      } else {
        found.fates.push_back(Fate::keep);
        if (needs_visit_row(visit)) {
          add(found, after);
        }
      }
    }
    for (const std::size_t i : visits_.added) {
      if (needs_visit_row(records_.visits[i])) {
        add(found, {visit_row(records_.visits[i])});
      }
    }
    put(sound ? usable<VisitRow>() : nullptr, std::move(found), false);
  }

  /// A reading's id may hang on those before it: rows get an id of their own
  /// where they would otherwise get another one.
  void readings() {
    const ReceivedFile* file = usable<ReadingRow>();
    const std::vector<green::Reading> none;
    const auto& old = file != nullptr ? old_.records.readings : none;
    const Matched matched = match(old, records_.readings);
    ReadingIds ids;
    const auto row_of = [&](const green::Reading& reading, bool named) {
      ReadingRow row = rows_of(reading).front();
      if (!named && ids.peek(reading) == reading.id) {
        ids.take(reading);
      } else {
        row.reading = reading.id;
      }
      return std::vector<ReadingRow>{std::move(row)};
    };
    Changes<ReadingRow> found;
    for (std::size_t i = 0; i < old.size(); ++i) {
      if (!matched.now[i]) {
        found.fates.push_back(Fate::drop);
        continue;
      }
      std::vector<ReadingRow> before = rows_of(old[i]);
      if (old_.reading_named[i]) {
        before.front().reading = old[i].id;
      }
      decide(found, i, before, row_of(records_.readings[*matched.now[i]], old_.reading_named[i]));
    }
    for (const std::size_t i : matched.added) {
      add(found, row_of(records_.readings[i], false));
    }
    put(file, std::move(found), false);
  }

  const green::Records& records_;
  const std::vector<ReceivedFile>& received_;
  Gathered old_;
  Matched visits_;
  std::vector<ReceivedFile> out_;
};

} // namespace

std::vector<ReceivedFile> CsvSheets::write(const green::Records& records,
                                           const std::vector<ReceivedFile>& received) const {
  return Writer(records, received).files();
}

} // namespace baize::sheets
