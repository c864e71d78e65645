#include "gather.h"
#include "names.h"

namespace baize::sheets {
namespace {

constexpr std::size_t kNone = std::string::npos;
constexpr std::size_t kSeveral = kNone - 1;

/// Joins the rows of visits.csv to the visits that the rolls made.
class Visits {
 public:
  Visits(const services::ReceivedFile& file, Gathered& all)
      : table_(file, all.findings), all_(all), owners_(all.owners[file.name]), file_(file) {
    for (std::size_t i = 0; i < all.records.visits.size(); ++i) {
      const green::Visit& visit = all.records.visits[i];
      by_id_.emplace(visit.id, i);
      const auto [at, fresh] = by_key_.emplace(bare_key(visit), i);
      at->second = fresh ? i : kSeveral;
    }
  }

  void read() {
    int rows = 0;
    for (VisitRow row; table_.next(row);) {
      ++rows;
      if (!row.day || row.green.empty()) {
        continue;
      }
      const std::size_t at = visit_of(row);
      if (at == kNone) {
        continue;
      }
      owners_.push_back(at);
      const bool good = table_.good() && take(row, at);
      all_.visit_lines[at].broken = all_.visit_lines[at].broken || !good;
    }
    report(file_, table_, rows, static_cast<std::size_t>(rows), all_);
  }

 private:
  static std::string bare_key(const green::Visit& visit) {
    VisitKey key = key_of(visit);
    key.visit.clear();
    return natural_id(key);
  }

  std::size_t visit_of(const VisitRow& row) {
    const std::string key = natural_id(row);
    const auto by_id = by_id_.find(row.visit.empty() ? key : row.visit);
    if (by_id != by_id_.end()) {
      return by_id->second;
    }
    const auto by_key = by_key_.find(key);
    if (by_key == by_key_.end()) {
      return fresh(row, key);
    }
    const std::size_t at = by_key->second;
    if (at == kSeveral) {
      all_.findings.problem({"visit_not_told",
                             "visit",
                             row.visit,
                             "the id of one of the several visits of that day, time, observer "
                             "and green",
                             {}},
                            table_.where());
      return kNone;
    }
    if (row.visit.empty()) {
      return at;
    }
    if (all_.visit_lines[at].named) {
      return fresh(row, key); // another visit with the same key: told apart by id
    }
    all_.records.visits[at].id = row.visit;
    all_.visit_lines[at].named = true;
    by_id_.emplace(row.visit, at);
    return at;
  }

  /// A visit without rolls; the rules of a visit will say so.
  std::size_t fresh(const VisitRow& row, const std::string& key) {
    const std::size_t at = all_.records.visits.size();
    green::Visit& visit = all_.records.visits.emplace_back();
    visit.id = row.visit.empty() ? key : row.visit;
    visit.green = row.green;
    visit.half = row.half;
    visit.observer = row.observer;
    visit.day = *row.day;
    visit.from = row.from;
    visit.source = {file_.name, table_.cells().line};
    all_.visit_lines.emplace_back().named = !row.visit.empty();
    by_id_.emplace(visit.id, at);
    by_key_.emplace(key, at);
    return at;
  }

  bool bad(units::Problem problem, const char* column) {
    all_.findings.problem(std::move(problem), table_.where(column));
    return false;
  }

  bool take(const VisitRow& row, std::size_t at) {
    green::Visit& visit = all_.records.visits[at];
    VisitLines& lines = all_.visit_lines[at];
    if (lines.in_visits > 0) {
      return bad({"visit_twice",
                  "visit",
                  visit.id,
                  "described once; line " + std::to_string(lines.in_visits) + " does already",
                  {}},
                 "");
    }
    lines.in_visits = table_.cells().line;
    VisitKey stated = row;
    VisitKey known = key_of(visit);
    stated.visit = known.visit = {};
    stated.to = known.to = {};
    if (stated != known) {
      return bad({"rows_disagree",
                  "visit",
                  natural_id(row),
                  natural_id(known) + " as in the rolls of the visit with that id",
                  {}},
                 "");
    }
    if (row.to && visit.to && *row.to != *visit.to) {
      return bad({"rows_disagree",
                  "to",
                  units::iso(*row.to),
                  "'" + units::iso(*visit.to) + "' as in the visit's rolls, or empty",
                  {}},
                 "to");
    }
    visit.to = visit.to ? visit.to : row.to;
    visit.conditions = {row.hours_since_mowing, row.hours_since_rolling, row.dew, row.wind,
                        row.surface};
    visit.shared_rolls = row.shared_rolls;
    visit.note = row.note;
    return true;
  }

  TableReader<VisitRow> table_;
  Gathered& all_;
  std::vector<std::size_t>& owners_;
  const services::ReceivedFile& file_;
  std::unordered_map<std::string, std::size_t> by_id_;
  std::unordered_map<std::string, std::size_t> by_key_;
};

} // namespace

void gather_visits(const services::ReceivedFile& file, Gathered& all) {
  all.visits_file = file.name;
  Visits(file, all).read();
}

} // namespace baize::sheets
