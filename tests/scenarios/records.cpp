#include "scenarios/records.h"

#include "scenarios/cells.h"

#include <algorithm>

namespace baize::scenarios {

const std::vector<Builder::Kind>& Builder::kinds() {
  static const std::vector<Kind> all{
      {"club", {"id", "record_end", "latitude"}, &Builder::club},
      {"greens", {"green", "grass", "halves", "spots"}, &Builder::green},
      {"standards", {"green", "from", "to", "score"}, &Builder::standard},
      {"visits",
       {"id", "day", "time", "until", "green", "half", "observer", "scores"},
       &Builder::visit},
      {"works",
       {"id", "kind", "day", "until", "time", "greens", "half", "disruptive"},
       &Builder::work},
      {"weather", {"from", "to", "tmin", "tmax"}, &Builder::weather},
      {"expect losses",
       {"work", "green", "half", "horizon", "reason", "standard", "before", "trough", "trough_day",
        "depth", "area", "low", "high", "growth_area", "ended", "visits_after"},
       &Builder::loss},
      {"expect recovery",
       {"work", "green", "half", "definition", "censoring", "last_below", "first_back",
        "after_days", "by_days", "after_growth", "by_growth"},
       &Builder::recovery},
      {"expect ledger",
       {"green", "first", "last", "measured_true", "measured_not", "between_true", "unmeasured",
        "closed", "fewest_true", "most_true", "open"},
       &Builder::ledger},
      {"expect notes", {"work", "green", "half", "text"}, &Builder::note}};
  return all;
}

std::optional<units::Problem> Builder::add(const Table& table) {
  const auto kind = std::find_if(kinds().begin(), kinds().end(),
                                 [&](const Kind& k) { return k.section == table.name; });
  if (kind == kinds().end()) {
    return units::Problem{"bad_scenario", "section", table.name, "one that README.md lists",
                          place(file_, table.line)};
  }
  for (const std::string& column : table.columns) {
    if (std::find(kind->columns.begin(), kind->columns.end(), column) == kind->columns.end()) {
      return units::Problem{"bad_scenario", "column", column, "one of section " + table.name,
                            place(file_, table.line)};
    }
  }
  for (const Row& row : table.rows) {
    if (auto problem = (this->*kind->make)(row)) {
      return problem;
    }
  }
  return std::nullopt;
}

units::Result<Scenario> Builder::finish() {
  if (!ends_) {
    return units::Refusal(
        units::Problem{"bad_scenario", "record_end", "", "stated under [club]", file_});
  }
  if (scenario_.losses.empty() && scenario_.ledgers.empty()) {
    return units::Refusal(
        units::Problem{"bad_scenario", "expect", "", "followed by something to expect", file_});
  }
  return std::move(scenario_);
}

green::Green& Builder::green_named(const std::string& id) {
  auto& greens = scenario_.records.greens;
  const auto found =
      std::find_if(greens.begin(), greens.end(), [&](const green::Green& g) { return g.id == id; });
  if (found != greens.end()) {
    return *found;
  }
  green::Green made;
  made.id = id;
  made.name = id;
  return greens.emplace_back(std::move(made));
}

void Builder::declare_spot(const std::string& green, const std::string& spot,
                           const std::string& half) {
  auto& spots = green_named(green).spots;
  if (std::none_of(spots.begin(), spots.end(),
                   [&](const green::Spot& s) { return s.id == spot; })) {
    spots.push_back({spot, std::nullopt, half});
  }
}

void Builder::declare_observer(const std::string& id) {
  auto& all = scenario_.records.observers;
  if (std::none_of(all.begin(), all.end(), [&](const green::Observer& o) { return o.id == id; })) {
    green::Observer made;
    made.id = id;
    made.name = id;
    all.push_back(std::move(made));
  }
}

std::optional<units::Problem> Builder::club(const Row& row) {
  Cells cells(row, file_);
  auto& club = scenario_.records.club;
  cells.text("id", club.id);
  club.name = club.id;
  cells.number("latitude", club.latitude_deg);
  cells.day("record_end", scenario_.record_end);
  ends_ = row.has("record_end");
  return cells.problem();
}

std::optional<units::Problem> Builder::green(const Row& row) {
  Cells cells(row, file_);
  green::Green& green = green_named(row.text("green"));
  green.source = source(row);
  const std::string grass = row.text("grass");
  if (!grass.empty() && grass != "cool" && grass != "warm") {
    cells.refuse("grass", "cool or warm");
  }
  green.grass = grass == "warm" ? green::Grass::warm : green::Grass::cool;
  green.halves = split(row.text("halves"), ',');
  for (const std::string& spot : split(row.text("spots"), ',')) {
    const auto parts = split(spot, '@');
    declare_spot(green.id, parts.front(), parts.size() > 1 ? parts[1] : "");
  }
  return cells.problem();
}

std::optional<units::Problem> Builder::standard(const Row& row) {
  Cells cells(row, file_);
  green::Standard standard;
  standard.green = row.text("green");
  cells.month_day("from", standard.from);
  cells.month_day("to", standard.to);
  cells.number("score", standard.score);
  standard.source = source(row);
  scenario_.records.standards.push_back(standard);
  return cells.problem();
}

std::optional<units::Problem> Builder::work(const Row& row) {
  Cells cells(row, file_);
  green::Work work;
  cells.text("id", work.id);
  cells.text("kind", work.kind);
  cells.day("day", work.day);
  cells.day("until", work.until);
  cells.minute("time", work.at);
  work.greens = split(row.text("greens"), ',');
  cells.text("half", work.half);
  if (row.has("disruptive")) {
    work.disruptive = row.text("disruptive") == "yes";
  }
  work.source = source(row);
  scenario_.records.works.push_back(std::move(work));
  return cells.problem();
}

std::optional<units::Problem> Builder::weather(const Row& row) {
  Cells cells(row, file_);
  climate::WeatherDay day;
  units::Day to;
  cells.day("from", day.day);
  cells.day("to", to);
  cells.number("tmin", day.tmin_c);
  cells.number("tmax", day.tmax_c);
  for (; day.day <= to; ++day.day) {
    scenario_.weather[day.day] = day;
  }
  return cells.problem();
}

} // namespace baize::scenarios
