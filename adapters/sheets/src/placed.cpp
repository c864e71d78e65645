#include "placed.h"

#include "baize/green/validate.h"
#include "baize/units/number.h"

#include <algorithm>

namespace baize::sheets {
namespace {

/// "rolls.csv line 12 spot A out roll 2" taken apart.
struct Place {
  std::string file;
  int line = 0;
  std::string within;
};

Place take_apart(const std::string& text, const Gathered& all) {
  Place place;
  for (const services::FileReport& file : all.files) {
    const std::string head = file.name + " line ";
    if (text.starts_with(head)) {
      place.file = file.name;
      const std::size_t end = std::min(text.find(' ', head.size()), text.size());
      place.line = units::parse_whole(text.substr(head.size(), end - head.size())).value_or(0);
      place.within = text.substr(std::min(end + 1, text.size()));
      return place;
    }
  }
  place.file = text;
  return place;
}

/// The rules' fields by the name of the column they stand in, where it differs.
std::string column_of(const std::string& field, const std::string& name) {
  const std::string file = bare_name(name);
  static const std::map<std::string, std::string> kNames{{"total", "run_total"},
                                                         {"total_of", "run_balls"},
                                                         {"order", "roll"},
                                                         {"area", "area_m2"},
                                                         {"bearing", "bearing_deg"},
                                                         {"latitude", "latitude_deg"},
                                                         {"longitude", "longitude_deg"},
                                                         {"elevation", "elevation_m"},
                                                         {"rod_length", "rod_length_mm"},
                                                         {"last", "until"}};
  static const std::map<std::string, std::string> kIds{
      {"club.csv", "club"},   {"greens.csv", "green"},    {"observers.csv", "observer"},
      {"rolls.csv", "visit"}, {"visits.csv", "visit"},    {"readings.csv", "reading"},
      {"works.csv", "work"},  {"fixtures.csv", "fixture"}};
  if (field == "id") {
    const auto id = kIds.find(file);
    return id == kIds.end() ? field : id->second;
  }
  if (file == kFile<StandardRow> && (field == "from" || field == "to")) {
    return "season_" + field;
  }
  if (file == kFile<WorkRow> && field == "green") {
    return "greens";
  }
  const auto known = kNames.find(field);
  return known == kNames.end() ? field : known->second;
}

/// The file's own name of the column; empty where it has none of that name.
std::string written(const Gathered& all, const std::string& file, const std::string& column) {
  const auto names = all.written.find(file);
  if (names == all.written.end()) {
    return {};
  }
  const auto exact = names->second.find(column);
  if (exact != names->second.end()) {
    return exact->second;
  }
  // A parameter's column ends in its unit.
  for (const auto& [name, shown] : names->second) {
    if (bare_name(file) == kFile<WorkRow> && name.starts_with(column + "_")) {
      return shown;
    }
  }
  return {};
}

std::string run_text(const green::Run& run) {
  const std::string direction(word(run.direction));
  return run.spot.empty() ? direction : "spot " + run.spot + " " + direction;
}

/// Sentences of a visit carry the line where it begins; the roll's own is wanted.
class VisitPlaces {
 public:
  explicit VisitPlaces(const Gathered& all) {
    for (std::size_t i = 0; i < all.records.visits.size(); ++i) {
      const green::Source& source = all.records.visits[i].source;
      at_.emplace(source.file + ":" + std::to_string(source.line), i);
    }
  }

  /// The visit that begins there; nothing where none does.
  std::optional<std::size_t> find(const Place& place) const {
    const auto found = at_.find(place.file + ":" + std::to_string(place.line));
    return found == at_.end() ? std::nullopt : std::optional(found->second);
  }

  void refine(const Gathered& all, Place& place, const std::string& column) const {
    const auto found = find(place);
    if (!found) {
      return;
    }
    const green::Visit& visit = all.records.visits[*found];
    const VisitLines& lines = all.visit_lines[*found];
    for (std::size_t r = 0; r < visit.runs.size() && !place.within.empty(); ++r) {
      refine(visit.runs[r], lines.runs[r], place);
    }
    const bool of_visit = column == "dew" || column == "wind" || column == "surface" ||
                          column == "shared_rolls" || column.starts_with("hours_");
    if (of_visit && lines.in_visits > 0) {
      place.file = all.visits_file;
      place.line = lines.in_visits;
    }
  }

 private:
  static void refine(const green::Run& run, const RunLines& lines, Place& place) {
    const std::string text = run_text(run);
    const std::string of_roll = text + " roll ";
    if (place.within.starts_with(of_roll)) {
      const auto order = units::parse_whole(place.within.substr(of_roll.size()));
      const auto roll =
          std::lower_bound(run.rolls.begin(), run.rolls.end(), order.value_or(0),
                           [](const green::Roll& one, int number) { return one.order < number; });
      if (order && roll != run.rolls.end() && roll->order == *order) {
        place.line = lines.rolls[static_cast<std::size_t>(roll - run.rolls.begin())];
        place.within.clear();
      }
      return;
    }
    if (place.within == text) {
      place.line = lines.total > 0 || lines.rolls.empty() ? lines.total : lines.rolls.front();
      place.within.clear();
    }
  }

  std::unordered_map<std::string, std::size_t> at_;
};

/// Does the sentence only follow from problems already told?
bool follows(const units::Problem& problem, const Findings& findings) {
  const auto broken = [&](std::string_view file) { return findings.problems_of(file) > 0; };
  if (problem.code == "unknown_green" || problem.code == "unknown_half" ||
      problem.code == "unknown_spot") {
    return broken(kFile<GreenRow>);
  }
  if (problem.code == "unknown_observer") {
    return broken(kFile<ObserverRow>);
  }
  return problem.code == "no_runs" && broken(kFile<RollRow>);
}

Where placed(const Gathered& all, const VisitPlaces& visits, const units::Problem& problem) {
  Place place = take_apart(problem.place, all);
  std::string column = column_of(problem.field, place.file);
  visits.refine(all, place, column);
  return {place.file, place.line, written(all, place.file, column)};
}

/// Broken visits keep their place, so that lines stay beside them, but say nothing.
green::Records without_broken(const Gathered& all) {
  green::Records sound = all.records;
  std::size_t kept = 0;
  for (std::size_t i = 0; i < sound.visits.size(); ++i) {
    if (!all.visit_lines[i].broken) {
      std::swap(sound.visits[kept], sound.visits[i]);
      ++kept;
    }
  }
  sound.visits.resize(kept);
  return sound;
}

} // namespace

void check(Gathered& all, units::Day today) {
  const bool whole = std::none_of(all.visit_lines.begin(), all.visit_lines.end(),
                                  [](const VisitLines& lines) { return lines.broken; });
  std::vector<units::Problem> problems =
      whole ? green::validate(all.records, today) : green::validate(without_broken(all), today);
  if (problems.empty()) {
    return;
  }
  const VisitPlaces visits(all);
  const Findings before = all.findings;
  std::vector<std::size_t> wrong;
  for (units::Problem& problem : problems) {
    if (!follows(problem, before)) {
      if (const auto visit = visits.find(take_apart(problem.place, all))) {
        wrong.push_back(*visit);
      }
      const Where where = all.findings.listing()
                              ? placed(all, visits, problem)
                              : Where{take_apart(problem.place, all).file, 0, {}};
      problem.place.clear();
      all.findings.problem(std::move(problem), where);
    }
  }
  for (const std::size_t visit : wrong) {
    all.visit_lines[visit].broken = true;
  }
}

void remark(Gathered& all) {
  std::optional<VisitPlaces> visits;
  for (std::size_t i = 0; i < all.records.visits.size(); ++i) {
    if (all.visit_lines[i].broken) {
      continue;
    }
    for (units::Problem& problem : green::remarks(all.records.visits[i])) {
      if (!visits) {
        visits.emplace(all);
      }
      const Where where = placed(all, *visits, problem);
      all.findings.remark(std::move(problem), where);
    }
  }
}

} // namespace baize::sheets
