#include "columns.h"

#include "baize/green/kinds.h"

#include <algorithm>

namespace baize::sheets {
namespace {

/// "tine_diameter_mm", "nitrogen_kg_ha", "area_m2"; plain counts ("passes") and
/// words have no unit in their name.
std::string parameter_column(const green::ParameterKind& kind) {
  std::string name(kind.name);
  std::string unit;
  for (const char c : kind.rule.unit) {
    unit += c == '/' ? '_' : c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  }
  const auto square = unit.find("²");
  if (square != std::string::npos) {
    unit.replace(square, std::string_view("²").size(), "2");
  }
  return unit.empty() || unit == name ? name : name + "_" + unit;
}

std::vector<Column<WorkRow>> work_columns() {
  std::vector<Column<WorkRow>> all{{"work", &WorkRow::work},
                                   {"kind", &WorkRow::kind, Need::cell},
                                   {"day", &WorkRow::day, Need::cell},
                                   {"until", &WorkRow::until},
                                   {"at", &WorkRow::at},
                                   {"greens", &WorkRow::greens, Need::cell},
                                   {"half", &WorkRow::half},
                                   {"disruptive", &WorkRow::disruptive}};
  for (const green::WorkKind& work : green::work_kinds()) {
    for (const green::ParameterKind& kind : work.parameters) {
      std::string name = parameter_column(kind);
      const bool known = std::any_of(all.begin(), all.end(),
                                     [&](const auto& column) { return column.name == name; });
      if (!known) {
        const bool word = kind.rule.type == green::ValueType::word;
        all.push_back({std::move(name), ParameterColumn{std::string(kind.name), word}});
      }
    }
  }
  all.push_back({"note", &WorkRow::note});
  return all;
}

/// The key that rolls.csv and visits.csv share.
template <class Row> std::vector<Column<Row>> key_columns() {
  return {{"visit", static_cast<std::string Row::*>(&Row::visit)},
          {"day", static_cast<std::optional<units::Day> Row::*>(&Row::day), Need::cell},
          {"from", static_cast<std::optional<units::Minute> Row::*>(&Row::from)},
          {"to", static_cast<std::optional<units::Minute> Row::*>(&Row::to)},
          {"observer", static_cast<std::string Row::*>(&Row::observer)},
          {"green", static_cast<std::string Row::*>(&Row::green), Need::cell},
          {"half", static_cast<std::string Row::*>(&Row::half)}};
}

template <class Row>
std::vector<Column<Row>> joined(std::vector<Column<Row>> first, std::vector<Column<Row>> rest) {
  first.insert(first.end(), rest.begin(), rest.end());
  return first;
}

} // namespace

template <> const std::vector<Column<ClubRow>>& columns() {
  static const std::vector<Column<ClubRow>> all{{"club", &ClubRow::club, Need::cell},
                                                {"name", &ClubRow::name},
                                                {"latitude_deg", &ClubRow::latitude_deg},
                                                {"longitude_deg", &ClubRow::longitude_deg},
                                                {"elevation_m", &ClubRow::elevation_m}};
  return all;
}

template <> const std::vector<Column<GreenRow>>& columns() {
  static const std::vector<Column<GreenRow>> all{{"green", &GreenRow::green, Need::cell},
                                                 {"name", &GreenRow::name},
                                                 {"grass", &GreenRow::grass},
                                                 {"grass_mix", &GreenRow::grass_mix},
                                                 {"area_m2", &GreenRow::area_m2},
                                                 {"half", &GreenRow::half},
                                                 {"spot", &GreenRow::spot},
                                                 {"bearing_deg", &GreenRow::bearing_deg}};
  return all;
}

template <> const std::vector<Column<ObserverRow>>& columns() {
  static const std::vector<Column<ObserverRow>> all{
      {"observer", &ObserverRow::observer, Need::cell},
      {"name", &ObserverRow::name},
      {"since", &ObserverRow::since}};
  return all;
}

template <> const std::vector<Column<RollRow>>& columns() {
  static const std::vector<Column<RollRow>> all =
      joined(key_columns<RollRow>(), {{"spot", &RollRow::spot},
                                      {"direction", &RollRow::direction, Need::cell},
                                      {"roll", &RollRow::roll},
                                      {"distance", &RollRow::distance},
                                      {"bobbles", &RollRow::bobbles},
                                      {"chatters", &RollRow::chatters},
                                      {"snakes", &RollRow::snakes},
                                      {"bobble_s", &RollRow::bobble_s},
                                      {"chatter_s", &RollRow::chatter_s},
                                      {"snake_s", &RollRow::snake_s},
                                      {"score", &RollRow::score},
                                      {"run_total", &RollRow::run_total},
                                      {"run_balls", &RollRow::run_balls}});
  return all;
}

template <> const std::vector<Column<VisitRow>>& columns() {
  static const std::vector<Column<VisitRow>> all =
      joined(key_columns<VisitRow>(), {{"hours_since_mowing", &VisitRow::hours_since_mowing},
                                       {"hours_since_rolling", &VisitRow::hours_since_rolling},
                                       {"dew", &VisitRow::dew},
                                       {"wind", &VisitRow::wind},
                                       {"surface", &VisitRow::surface},
                                       {"shared_rolls", &VisitRow::shared_rolls},
                                       {"note", &VisitRow::note}});
  return all;
}

template <> const std::vector<Column<ReadingRow>>& columns() {
  static const std::vector<Column<ReadingRow>> all{{"reading", &ReadingRow::reading},
                                                   {"day", &ReadingRow::day, Need::cell},
                                                   {"at", &ReadingRow::at},
                                                   {"observer", &ReadingRow::observer},
                                                   {"green", &ReadingRow::green, Need::cell},
                                                   {"spot", &ReadingRow::spot},
                                                   {"kind", &ReadingRow::kind, Need::cell},
                                                   {"value", &ReadingRow::value, Need::cell},
                                                   {"unit", &ReadingRow::unit},
                                                   {"device", &ReadingRow::device},
                                                   {"rod_length_mm", &ReadingRow::rod_length_mm},
                                                   {"note", &ReadingRow::note}};
  return all;
}

template <> const std::vector<Column<WorkRow>>& columns() {
  static const std::vector<Column<WorkRow>> all = work_columns();
  return all;
}

template <> const std::vector<Column<FixtureRow>>& columns() {
  static const std::vector<Column<FixtureRow>> all{
      {"fixture", &FixtureRow::fixture},          {"name", &FixtureRow::name, Need::cell},
      {"day", &FixtureRow::day, Need::cell},      {"until", &FixtureRow::until},
      {"importance", &FixtureRow::importance},    {"score_wanted", &FixtureRow::score_wanted},
      {"speed_wanted", &FixtureRow::speed_wanted}};
  return all;
}

template <> const std::vector<Column<StandardRow>>& columns() {
  static const std::vector<Column<StandardRow>> all{{"green", &StandardRow::green},
                                                    {"season_from", &StandardRow::season_from},
                                                    {"season_to", &StandardRow::season_to},
                                                    {"score", &StandardRow::score, Need::cell}};
  return all;
}

} // namespace baize::sheets
