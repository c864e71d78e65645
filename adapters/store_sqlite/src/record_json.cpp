#include "record_json.h"

#include <nlohmann/json.hpp>

namespace baize::store_sqlite {

namespace {

using Json = nlohmann::ordered_json;

Json told(const std::string& value) {
  return value;
}
Json told(double value) {
  return value;
}
Json told(int value) {
  return value;
}
Json told(bool value) {
  return value;
}
Json told(units::Day value) {
  return units::iso(value);
}
Json told(units::Minute value) {
  return units::iso(value);
}
Json told(units::MonthDay value) {
  return units::iso(value);
}
Json told(units::Length value) {
  return value.metres;
}

template <class T> void put(Json& to, const char* name, const std::optional<T>& value) {
  if (value) {
    to[name] = told(*value);
  }
}
void put(Json& to, const char* name, const std::string& value) {
  if (!value.empty()) {
    to[name] = value;
  }
}
void put(Json& to, const green::Source& source) {
  if (!source.file.empty()) {
    to["file"] = source.file;
    to["line"] = source.line;
  }
}

// Names may hold bytes that are no UTF-8; they are shown replaced, never refused.
std::string text(const Json& json) {
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

Json rolled(const green::Roll& roll) {
  Json to;
  to["order"] = roll.order;
  put(to, "distance_m", roll.distance);
  if (roll.marks) {
    to["marks"] = Json::array();
    for (const green::Mark& mark : *roll.marks) {
      Json seen;
      seen["kind"] = word(mark.kind);
      put(seen, "seconds", mark.seconds);
      to["marks"].push_back(std::move(seen));
    }
  }
  put(to, "score", roll.score);
  return to;
}

Json ran(const green::Run& run) {
  Json to;
  put(to, "spot", run.spot);
  to["direction"] = word(run.direction);
  to["rolls"] = Json::array();
  for (const green::Roll& roll : run.rolls) {
    to["rolls"].push_back(rolled(roll));
  }
  put(to, "total", run.total);
  put(to, "total_of", run.total_of);
  return to;
}

} // namespace

std::string json_text(const green::Club& club) {
  Json to;
  to["id"] = club.id;
  put(to, "name", club.name);
  put(to, "latitude_deg", club.latitude_deg);
  put(to, "longitude_deg", club.longitude_deg);
  put(to, "elevation_m", club.elevation_m);
  put(to, club.source);
  return text(to);
}

std::string json_text(const green::Green& green) {
  Json to;
  to["id"] = green.id;
  put(to, "name", green.name);
  to["grass"] = green.grass == green::Grass::warm ? "warm" : "cool";
  put(to, "grass_mix", green.grass_mix);
  put(to, "area_m2", green.area_m2);
  to["halves"] = green.halves;
  to["spots"] = Json::array();
  for (const green::Spot& spot : green.spots) {
    Json one;
    one["id"] = spot.id;
    put(one, "bearing_deg", spot.bearing_deg);
    put(one, "half", spot.half);
    to["spots"].push_back(std::move(one));
  }
  put(to, green.source);
  return text(to);
}

std::string json_text(const green::Observer& observer) {
  Json to;
  to["id"] = observer.id;
  put(to, "name", observer.name);
  put(to, "since", observer.since);
  put(to, observer.source);
  return text(to);
}

std::string json_text(const green::Visit& visit) {
  Json to;
  to["id"] = visit.id;
  to["green"] = visit.green;
  put(to, "half", visit.half);
  put(to, "observer", visit.observer);
  to["day"] = units::iso(visit.day);
  put(to, "from", visit.from);
  put(to, "to", visit.to);
  put(to, "hours_since_mowing", visit.conditions.hours_since_mowing);
  put(to, "hours_since_rolling", visit.conditions.hours_since_rolling);
  put(to, "dew", visit.conditions.dew);
  put(to, "wind", visit.conditions.wind);
  put(to, "surface", visit.conditions.surface);
  put(to, "shared_rolls", visit.shared_rolls);
  to["runs"] = Json::array();
  for (const green::Run& run : visit.runs) {
    to["runs"].push_back(ran(run));
  }
  put(to, "note", visit.note);
  put(to, visit.source);
  return text(to);
}

std::string json_text(const green::Reading& reading) {
  Json to;
  to["id"] = reading.id;
  to["green"] = reading.green;
  put(to, "spot", reading.spot);
  put(to, "observer", reading.observer);
  to["day"] = units::iso(reading.day);
  put(to, "at", reading.at);
  to["kind"] = reading.kind;
  to["value"] = reading.value;
  put(to, "device", reading.device);
  put(to, "rod_length_mm", reading.rod_length_mm);
  put(to, "note", reading.note);
  put(to, reading.source);
  return text(to);
}

std::string json_text(const green::Work& work) {
  Json to;
  to["id"] = work.id;
  to["kind"] = work.kind;
  to["day"] = units::iso(work.day);
  put(to, "until", work.until);
  put(to, "at", work.at);
  to["greens"] = work.greens;
  put(to, "half", work.half);
  put(to, "disruptive", work.disruptive);
  to["parameters"] = Json::object();
  for (const green::Parameter& parameter : work.parameters) {
    to["parameters"][parameter.name] =
        parameter.number ? Json(*parameter.number) : Json(parameter.word);
  }
  put(to, "note", work.note);
  put(to, work.source);
  return text(to);
}

std::string json_text(const green::Fixture& fixture) {
  Json to;
  to["id"] = fixture.id;
  put(to, "name", fixture.name);
  to["first_day"] = units::iso(fixture.days.first);
  to["last_day"] = units::iso(fixture.days.last);
  to["importance"] = fixture.importance;
  put(to, "score_wanted", fixture.score_wanted);
  put(to, "speed_wanted_m", fixture.speed_wanted);
  put(to, fixture.source);
  return text(to);
}

std::string json_text(const green::Standard& standard) {
  Json to;
  put(to, "green", standard.green);
  put(to, "from", standard.from);
  put(to, "to", standard.to);
  to["score"] = standard.score;
  put(to, standard.source);
  return text(to);
}

std::string json_text(const climate::WeatherDay& day) {
  Json to;
  to["day"] = units::iso(day.day);
  put(to, "tmin_c", day.tmin_c);
  put(to, "tmax_c", day.tmax_c);
  put(to, "tmean_c", day.tmean_c);
  put(to, "rain_mm", day.rain_mm);
  to["rain_trace"] = day.rain_trace;
  put(to, "et0_mm", day.et0_mm);
  put(to, "solar_mj_m2", day.solar_mj_m2);
  put(to, "wind_m_s", day.wind_m_s);
  put(to, "wind_height_m", day.wind_height_m);
  put(to, "dew_point_c", day.dew_point_c);
  put(to, "humidity_max_pct", day.humidity_max_pct);
  put(to, "humidity_min_pct", day.humidity_min_pct);
  return text(to);
}

} // namespace baize::store_sqlite
