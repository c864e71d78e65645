#include "gather.h"
#include "names.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace baize::sheets {
namespace {

using green::MarkKind;

/// Puts rows together to visits, runs and rolls.
class Rolls {
 public:
  Rolls(const services::ReceivedFile& file, Gathered& all)
      : table_(file, all.findings), all_(all), owners_(all.owners[file.name]), file_(file) {}

  void read() {
    int rows = 0;
    for (RollRow row; table_.next(row);) {
      ++rows;
      const bool whole = table_.good() && row.day && row.direction;
      if (!whole && (!row.day || row.green.empty())) {
        continue; // which visit it belongs to cannot be told
      }
      const std::size_t at = visit_of(row);
      owners_.push_back(at);
      const bool good = whole && same_visit(row, at) && take(row, at);
      all_.visit_lines[at].broken = all_.visit_lines[at].broken || !good;
    }
    in_order();
    report(file_, table_, rows, all_.records.visits.size(), all_);
  }

 private:
  bool bad(units::Problem problem, const char* column) {
    const auto& columns = table_.layout().columns;
    const auto& known = baize::sheets::columns<RollRow>();
    Where where = table_.where(column);
    for (const LayoutColumn& one : columns) {
      if (one.heading >= 0 && known[static_cast<std::size_t>(one.heading)].name == column) {
        where.column = one.name;
      }
    }
    all_.findings.problem(std::move(problem), where);
    return false;
  }

  std::size_t visit_of(const RollRow& row) {
    const bool again = !last_key_.green.empty() && row.visit == last_key_.visit &&
                       row.day == last_key_.day && row.from == last_key_.from &&
                       row.observer == last_key_.observer && row.green == last_key_.green &&
                       row.half == last_key_.half;
    if (again) {
      return last_;
    }
    last_key_ = row;
    std::string id = row.visit.empty() ? natural_id(row) : row.visit;
    const auto [at, fresh] = visits_.emplace(std::move(id), all_.records.visits.size());
    last_ = at->second;
    if (fresh) {
      green::Visit& visit = all_.records.visits.emplace_back();
      visit.id = at->first;
      visit.green = row.green;
      visit.half = row.half;
      visit.observer = row.observer;
      visit.day = *row.day;
      visit.from = row.from;
      visit.to = row.to;
      visit.source = {file_.name, table_.cells().line};
      all_.visit_lines.emplace_back().named = !row.visit.empty();
    }
    return last_;
  }

  /// Rows of one visit must agree on what makes it that visit.
  bool same_visit(const RollRow& row, std::size_t at) {
    green::Visit& visit = all_.records.visits[at];
    const auto rule = [&](const std::string& known) {
      return (known.empty() ? "empty" : "'" + known + "'") + " as on line " +
             std::to_string(visit.source.line) + ", where the same visit begins";
    };
    const auto differs = [&](const char* field, const std::string& stated,
                             const std::string& known) {
      return bad({"rows_disagree", field, stated, rule(known), {}}, field);
    };
    if (row.day != visit.day) {
      return differs("day", units::iso(*row.day), units::iso(visit.day));
    }
    if (row.from != visit.from) {
      return differs("from", write_value(row.from, {}), write_value(visit.from, {}));
    }
    if (row.observer != visit.observer) {
      return differs("observer", row.observer, visit.observer);
    }
    if (row.green != visit.green) {
      return differs("green", row.green, visit.green);
    }
    if (row.half != visit.half) {
      return differs("half", row.half, visit.half);
    }
    if (row.to && visit.to && *row.to != *visit.to) {
      return differs("to", units::iso(*row.to), units::iso(*visit.to));
    }
    visit.to = visit.to ? visit.to : row.to;
    return true;
  }

  std::size_t run_of(const RollRow& row, std::size_t visit) {
    auto& runs = all_.records.visits[visit].runs;
    const auto is_it = [&](const green::Run& run) {
      return run.direction == *row.direction && run.spot == row.spot;
    };
    if (visit == run_visit_ && run_ < runs.size() && is_it(runs[run_])) {
      return run_;
    }
    run_visit_ = visit;
    std::string key =
        std::to_string(visit) + (*row.direction == green::Direction::out ? ">" : "<") + row.spot;
    const auto [at, fresh] = runs_.emplace(std::move(key), runs.size());
    run_ = at->second;
    if (fresh) {
      runs.push_back({row.spot, *row.direction, {}, std::nullopt, std::nullopt});
      all_.visit_lines[visit].runs.emplace_back();
    }
    return run_;
  }

  bool take(const RollRow& row, std::size_t visit) {
    const std::size_t at = run_of(row, visit);
    green::Run& run = all_.records.visits[visit].runs[at];
    RunLines& lines = all_.visit_lines[visit].runs[at];
    if (!row.roll) {
      return take_total(row, run, lines);
    }
    if (row.run_total || row.run_balls) {
      return bad({"total_beside_roll",
                  "roll",
                  std::to_string(*row.roll),
                  "empty on a row with run_total: a run's total has a row of its own",
                  {}},
                 "roll");
    }
    green::Roll roll;
    roll.order = *row.roll;
    roll.distance = row.distance;
    roll.score = row.score;
    if (!take_marks(row, roll)) {
      return false;
    }
    run.rolls.push_back(std::move(roll));
    lines.rolls.push_back(table_.cells().line);
    return true;
  }

  bool take_total(const RollRow& row, green::Run& run, RunLines& lines) {
    const bool measured = row.distance || row.score || row.bobbles || row.chatters || row.snakes ||
                          !row.bobble_s.empty() || !row.chatter_s.empty() || !row.snake_s.empty();
    if (measured || (!row.run_total && !row.run_balls)) {
      return bad({"cell_missing",
                  "roll",
                  {},
                  "1, 2, 3 ... as the balls were rolled, or empty on a row with only the run_total",
                  {}},
                 "roll");
    }
    if (lines.total > 0) {
      return bad(
          {"total_twice",
           "run_total",
           write_value(row.run_total, {}),
           "there once for each run; line " + std::to_string(lines.total) + " has it already",
           {}},
          "run_total");
    }
    run.total = row.run_total;
    run.total_of = row.run_balls;
    lines.total = table_.cells().line;
    return true;
  }

  /// Absent while nothing is said of marks; else what is not said was not seen.
  bool take_marks(const RollRow& row, green::Roll& roll) {
    return take_kind(row.bobbles, row.bobble_s, MarkKind::bobble, "bobbles", roll) &&
           take_kind(row.chatters, row.chatter_s, MarkKind::chatter, "chatters", roll) &&
           take_kind(row.snakes, row.snake_s, MarkKind::snake, "snakes", roll);
  }

  bool take_kind(const std::optional<int>& stated, const std::vector<double>& times, MarkKind kind,
                 const char* column, green::Roll& roll) {
    constexpr int kMost = 99; // as the data dictionary has it; more would be a slip
    const int timed = static_cast<int>(std::min<std::size_t>(times.size(), kMost + 1));
    if (!stated && timed == 0) {
      return true;
    }
    const int count = stated.value_or(timed);
    if (count < 0 || count > kMost) {
      return bad(
          {"too_many_marks", column, std::to_string(count), "a whole number from 0 to 99", {}},
          column);
    }
    if (count < timed) {
      return bad({"more_times_than_marks",
                  column,
                  std::to_string(count),
                  "at least the " + std::to_string(timed) + " whose times are given",
                  {}},
                 column);
    }
    auto& marks = roll.marks ? *roll.marks : roll.marks.emplace();
    for (int i = 0; i < count; ++i) {
      marks.push_back(
          {kind, i < timed ? std::optional(times[static_cast<std::size_t>(i)]) : std::nullopt});
    }
    return true;
  }

  /// Rolls by their number, so that a sorted sheet makes the same records.
  void in_order() {
    for (std::size_t v = 0; v < all_.records.visits.size(); ++v) {
      auto& runs = all_.records.visits[v].runs;
      for (std::size_t r = 0; r < runs.size(); ++r) {
        sort_run(runs[r].rolls, all_.visit_lines[v].runs[r].rolls);
        check_twice(v, r);
      }
    }
  }

  static void sort_run(std::vector<green::Roll>& rolls, std::vector<int>& lines) {
    const auto by_order = [&](const green::Roll& a, const green::Roll& b) {
      return a.order < b.order;
    };
    if (std::is_sorted(rolls.begin(), rolls.end(), by_order)) {
      return;
    }
    std::vector<std::size_t> places(rolls.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    std::sort(places.begin(), places.end(), [&](std::size_t a, std::size_t b) {
      return std::tie(rolls[a].order, lines[a]) < std::tie(rolls[b].order, lines[b]);
    });
    std::vector<green::Roll> sorted;
    std::vector<int> sorted_lines;
    sorted.reserve(rolls.size());
    sorted_lines.reserve(rolls.size());
    for (const std::size_t place : places) {
      sorted.push_back(std::move(rolls[place]));
      sorted_lines.push_back(lines[place]);
    }
    rolls = std::move(sorted);
    lines = std::move(sorted_lines);
  }

  void check_twice(std::size_t visit, std::size_t run_at) {
    const auto& rolls = all_.records.visits[visit].runs[run_at].rolls;
    const auto& lines = all_.visit_lines[visit].runs[run_at].rolls;
    for (std::size_t i = 1; i < rolls.size(); ++i) {
      if (rolls[i].order == rolls[i - 1].order) {
        all_.visit_lines[visit].broken = true;
        all_.findings.problem(
            {"roll_twice",
             "roll",
             std::to_string(rolls[i].order),
             "another number than on line " + std::to_string(lines[i - 1]) +
                 " (same visit, spot and direction); give two visits a time each, or ids in a "
                 "column visit",
             {}},
            {file_.name, lines[i], "roll"});
      }
    }
  }

  TableReader<RollRow> table_;
  Gathered& all_;
  std::vector<std::size_t>& owners_;
  const services::ReceivedFile& file_;
  std::unordered_map<std::string, std::size_t> visits_;
  std::unordered_map<std::string, std::size_t> runs_;
  VisitKey last_key_;
  std::size_t last_ = 0;
  std::size_t run_visit_ = std::string::npos;
  std::size_t run_ = 0;
};

} // namespace

void gather_rolls(const services::ReceivedFile& file, Gathered& all) {
  Rolls(file, all).read();
}

} // namespace baize::sheets
