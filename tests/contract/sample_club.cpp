#include "contract/sample_club.h"

namespace contract {

namespace {

green::Roll roll(int order, std::optional<double> metres, std::optional<int> score) {
  green::Roll made;
  made.order = order;
  if (metres) {
    made.distance = units::from_metres(*metres);
  }
  made.score = score;
  return made;
}

std::vector<green::Green> greens() {
  green::Green split;
  split.id = "7";
  split.name = "7th";
  split.grass = green::Grass::warm;
  split.grass_mix = "hybrid couch";
  split.area_m2 = 512.5;
  split.halves = {"left", "right"};
  split.spots = {{"a", 90, "left"}, {"b", std::nullopt, ""}};
  split.source = {"greens.csv", 2};
  green::Green plain;
  plain.id = "2";
  plain.name = "2";
  plain.source = {"greens.csv", 3};
  return {split, plain}; // in walking order, which is not the order of their ids
}

green::Visit full_visit() {
  green::Visit visit;
  visit.id = "v1";
  visit.green = "7";
  visit.half = "left";
  visit.observer = "ann";
  visit.day = day(2026, 5, 4);
  visit.from = units::Minute{0};
  visit.to = units::Minute{432};
  visit.conditions = {2.5, 0.0, "none", "calm", "dry"};
  visit.shared_rolls = "walk; first";
  visit.note = "before the mower, \"quiet\"; 12 °C";
  visit.source = {"rolls.csv", 2};
  green::Run out;
  out.spot = "a";
  out.rolls = {roll(1, 3.05, 9), roll(2, 1.0 / 3.0, 8), roll(3, std::nullopt, std::nullopt)};
  out.rolls[0].marks = std::vector<green::Mark>{};
  out.rolls[2].marks = std::vector<green::Mark>{};
  out.rolls[1].marks = std::vector<green::Mark>{{green::MarkKind::chatter, 0.8},
                                                {green::MarkKind::snake, std::nullopt},
                                                {green::MarkKind::bobble, 2.25}};
  green::Run back;
  back.spot = "a";
  back.direction = green::Direction::back;
  back.rolls = {roll(1, 2.5, std::nullopt), roll(2, 2.75, std::nullopt), roll(3, 2.625, {})};
  back.total = 24;
  back.total_of = 3;
  visit.runs = {out, back};
  return visit;
}

green::Visit bare_visit() {
  green::Visit visit;
  visit.id = "v0";
  visit.green = "2";
  visit.day = day(2026, 5, 6);
  green::Run run;
  run.spot = "1";
  run.rolls = {roll(1, std::nullopt, 7)};
  visit.runs = {run};
  return visit;
}

std::vector<green::Work> works() {
  green::Work coring;
  coring.id = "w1";
  coring.kind = "coring";
  coring.day = day(2026, 5, 5);
  coring.until = day(2026, 5, 6);
  coring.at = units::Minute{480};
  coring.greens = {"7"};
  coring.half = "left";
  coring.disruptive = true;
  coring.parameters = {{"tine_diameter", 13, ""}, {"diameter_measured", std::nullopt, "outside"}};
  coring.note = "half the width";
  coring.source = {"works.csv", 2};
  green::Work mowing;
  mowing.id = "w2";
  mowing.kind = "mowing";
  mowing.day = day(2026, 5, 7);
  mowing.greens = {"2", "7"};
  return {coring, mowing};
}

} // namespace

green::Records sample_club(const std::string& id) {
  green::Records records;
  records.club = {id, "Heath and Mere", -33.5, 151.25, 12, {"club.csv", 2}};
  records.greens = greens();
  records.observers = {{"ann", "Ann", day(2020, 1, 1), {"observers.csv", 2}},
                       {"bo", "", std::nullopt, {}}};
  records.visits = {full_visit(), bare_visit()};
  green::Reading moisture;
  moisture.id = "r1";
  moisture.green = "7";
  moisture.spot = "b";
  moisture.observer = "bo";
  moisture.day = day(2026, 5, 4);
  moisture.at = units::Minute{400};
  moisture.kind = "soil_moisture";
  moisture.value = 18.5;
  moisture.device = "probe with two rods";
  moisture.rod_length_mm = 60;
  moisture.note = "north side";
  moisture.source = {"readings.csv", 2};
  green::Reading firmness;
  firmness.id = "r2";
  firmness.green = "2";
  firmness.day = day(2026, 5, 4 + 1);
  firmness.kind = "firmness";
  firmness.value = 0;
  records.readings = {moisture, firmness};
  records.works = works();
  records.fixtures = {{"f1",
                       "Spring cup",
                       {day(2026, 6, 1), day(2026, 6, 3)},
                       3,
                       8.5,
                       units::from_metres(3.2),
                       {"fixtures.csv", 2}},
                      {"f2", "", {day(2026, 7, 1), day(2026, 7, 1)}, 1, {}, {}, {}}};
  green::Standard season;
  season.green = "7";
  season.from = units::MonthDay{11, 1};
  season.to = units::MonthDay{2, 28};
  season.score = 7.5;
  season.source = {"standards.csv", 3};
  green::Standard general;
  general.score = 8;
  records.standards = {general, season};
  return records;
}

climate::Weather sample_weather() {
  climate::WeatherDay full;
  full.day = day(2026, 5, 4);
  full.tmin_c = -1.5;
  full.tmax_c = 14.25;
  full.tmean_c = 6;
  full.rain_mm = 0;
  full.rain_trace = true;
  full.et0_mm = 2.1;
  full.solar_mj_m2 = 18;
  full.wind_m_s = 2;
  full.wind_height_m = 10;
  full.dew_point_c = 1;
  full.humidity_max_pct = 98;
  full.humidity_min_pct = 41;
  climate::WeatherDay bare;
  bare.day = day(2026, 5, 5);
  return {{full.day, full}, {bare.day, bare}};
}

std::vector<services::ReceivedFile> sample_files() {
  return {{"rolls.csv", std::string("green,day\r\n7,2026-05-04\r\n\0\xff\xfe", 28)},
          {"works.csv", "kind;day\ncoring;2026-05-05\n"}};
}

green::Records large_club(const std::string& id, int visits) {
  green::Records records;
  records.club.id = id;
  records.club.name = "Large";
  for (int number = 1; number <= 18; ++number) {
    green::Green green;
    green.id = std::to_string(number);
    green.name = green.id;
    records.greens.push_back(green);
  }
  records.observers = {{"ann", "Ann", {}, {}}};
  for (int number = 0; number < visits; ++number) {
    green::Visit visit;
    visit.id = "v" + std::to_string(number);
    visit.green = std::to_string(1 + number % 18);
    visit.observer = "ann";
    visit.day = day(2000, 1, 1) + number / 18;
    visit.source = {"rolls.csv", 2 + 6 * number};
    for (const auto direction : {green::Direction::out, green::Direction::back}) {
      green::Run run;
      run.spot = "a";
      run.direction = direction;
      for (int order = 1; order <= 3; ++order) {
        run.rolls.push_back(roll(order, 2.5 + 0.01 * (number % 100), 6 + (number + order) % 4));
        if ((number + order) % 5 == 0) {
          run.rolls.back().marks = std::vector<green::Mark>{{green::MarkKind::chatter, 1.5}};
        }
      }
      visit.runs.push_back(run);
    }
    records.visits.push_back(visit);
  }
  return records;
}

} // namespace contract
