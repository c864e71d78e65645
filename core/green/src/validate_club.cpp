#include "baize/green/validate.h"
#include "checks.h"

#include <algorithm>

namespace baize::green {
namespace {

bool from_to(std::optional<double> value, double lowest, double highest) {
  return !value || (*value >= lowest && *value <= highest); // refuses what is not a number
}

std::string text(std::optional<double> value) {
  return value ? shown(*value) : std::string{};
}

bool a_day(const std::optional<units::MonthDay>& day) {
  constexpr int kLeapYear = 2000;
  return !day || units::make_day(kLeapYear, day->month, day->day).has_value();
}

} // namespace

std::vector<units::Problem> validate(const Reading& reading, units::Day today) {
  Checks checks(reading.source);
  checks.present(reading.id, "id");
  checks.present(reading.green, "green");
  checks.not_after(reading.day, today, "future_reading", "day");
  checks.minute(reading.at, "at");
  const MeasuredField* kind = find_reading_kind(reading.kind);
  if (kind == nullptr) {
    std::string rule = "one of";
    for (const MeasuredField& one : reading_kinds()) {
      rule += " " + std::string(one.name);
    }
    checks.note("unknown_kind", "kind", reading.kind, rule);
  } else if (!kind->rule.takes(reading.value)) {
    checks.note("value_out_of_range", "value", shown(reading.value),
                kind->rule.clause() + " for " + reading.kind);
  }
  checks.number(find_field("reading", "rod_length"), reading.rod_length_mm,
                "rod_length_out_of_range");
  checks.want(!reading.rod_length_mm || reading.kind == "soil_moisture", "rod_length_not_used",
              "rod_length", text(reading.rod_length_mm),
              "left empty: only soil moisture is read with rods");
  return checks.take();
}

std::vector<units::Problem> validate(const Green& green) {
  Checks checks(green.source);
  checks.present(green.id, "id");
  checks.want(from_to(green.area_m2, 1, 10000), "area_out_of_range", "area", text(green.area_m2),
              "a number from 1 to 10000 m²");
  checks.different(green.halves, "half", "half_twice");
  std::vector<std::string> spots;
  for (const Spot& spot : green.spots) {
    spots.push_back(spot.id);
    const std::string within = "spot " + spot.id;
    checks.want(from_to(spot.bearing_deg, 0, 360), "bearing_out_of_range", "bearing",
                text(spot.bearing_deg), "degrees from north, 0 to 360", within);
    const bool known = spot.half.empty() || std::find(green.halves.begin(), green.halves.end(),
                                                      spot.half) != green.halves.end();
    checks.want(known, "unknown_half", "half", spot.half, "one of the green's halves", within);
  }
  checks.different(spots, "spot", "spot_twice");
  return checks.take();
}

std::vector<units::Problem> validate(const Fixture& fixture) {
  Checks checks(fixture.source);
  checks.present(fixture.id, "id");
  if (fixture.days.last < fixture.days.first) {
    checks.note("ends_before_it_begins", "last", units::iso(fixture.days.last),
                "on or after the first day, " + units::iso(fixture.days.first));
  }
  checks.want(fixture.importance >= 1 && fixture.importance <= 3, "importance_out_of_range",
              "importance", std::to_string(fixture.importance), "1, 2 or 3");
  checks.want(from_to(fixture.score_wanted, 1, 10), "score_out_of_range", "score_wanted",
              text(fixture.score_wanted), "a number from 1 to 10");
  if (fixture.speed_wanted) {
    checks.number(find_field("roll", "distance"), fixture.speed_wanted->metres,
                  "speed_out_of_range", "speed wanted");
  }
  return checks.take();
}

std::vector<units::Problem> validate(const Standard& standard) {
  Checks checks(standard.source);
  checks.want(from_to(standard.score, 1, 10), "score_out_of_range", "score", shown(standard.score),
              "a number from 1 to 10");
  checks.want(standard.from.has_value() == standard.to.has_value(), "half_a_season",
              standard.from ? "to" : "from", "", "given: a season has a first and a last day");
  for (const auto& day : {standard.from, standard.to}) {
    checks.want(a_day(day), "not_a_month_day", "season", day ? units::iso(*day) : std::string{},
                "a day of the year written MM-DD");
  }
  return checks.take();
}

std::vector<units::Problem> validate(const Club& club) {
  Checks checks(club.source);
  checks.present(club.id, "id");
  checks.want(from_to(club.latitude_deg, -90, 90), "latitude_out_of_range", "latitude",
              text(club.latitude_deg), "degrees, -90 to 90, north positive");
  checks.want(from_to(club.longitude_deg, -180, 180), "longitude_out_of_range", "longitude",
              text(club.longitude_deg), "degrees, -180 to 180, east positive");
  checks.want(from_to(club.elevation_m, -450, 6000), "elevation_out_of_range", "elevation",
              text(club.elevation_m), "metres above the sea, -450 to 6000");
  return checks.take();
}

} // namespace baize::green
