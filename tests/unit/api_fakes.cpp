#include "api_fakes.h"

#include "api_club.h"

#include <algorithm>

namespace made {

using namespace baize;

namespace {

units::Refusal damaged() {
  return units::refuse("database_damaged", "database", "x", "a sound database");
}
units::Refusal no_club(const std::string& club) {
  return units::refuse("no_such_club", "club", club, "a club that is kept here");
}

const api::Asset kPage{"text/html; charset=utf-8", "<!doctype html><title>x</title>", "\"page1\""};

const api::Asset* asset(std::string_view path) {
  return path == "/" ? &kPage : nullptr;
}

} // namespace

void FakeStore::put(const green::Records& records, const climate::Weather& weather) {
  const std::lock_guard lock(mutex_);
  records_[records.club.id] = records;
  weather_[records.club.id] = weather;
  ++change_;
}

FakeStore::Result<FakeStore::ClubNames> FakeStore::clubs() {
  if (broken) {
    return damaged();
  }
  const std::lock_guard lock(mutex_);
  ClubNames names;
  for (const auto& [id, records] : records_) {
    names.push_back({id, records.club.name});
  }
  return names;
}

FakeStore::Result<green::Records> FakeStore::load(const std::string& club) {
  ++loads;
  const std::lock_guard lock(mutex_);
  const auto found = records_.find(club);
  if (found == records_.end()) {
    return no_club(club);
  }
  return found->second;
}

FakeStore::Result<climate::Weather> FakeStore::weather(const std::string& club) {
  const std::lock_guard lock(mutex_);
  return weather_[club];
}

FakeStore::Result<services::Receipt>
FakeStore::keep(const green::Records& records, const services::Author& author, const Files& files) {
  if (broken) {
    return damaged();
  }
  const std::lock_guard lock(mutex_);
  green::Records& kept = records_[records.club.id];
  kept.club.id = records.club.id;
  services::Receipt receipt;
  for (const green::Visit& visit : records.visits) {
    if (green::find_green(kept, visit.green) == nullptr) {
      return units::refuse("unknown_green", "green", visit.green, "a green that the club has");
    }
    const bool known = std::any_of(kept.visits.begin(), kept.visits.end(),
                                   [&](const green::Visit& one) { return one.id == visit.id; });
    known ? ++receipt.unchanged : ++receipt.added;
    if (!known) {
      kept.visits.push_back(visit);
    }
  }
  last_author = author;
  last_files = files;
  change_ += receipt.added > 0 ? 1 : 0;
  return receipt;
}

FakeStore::Result<services::Receipt> FakeStore::keep_weather(const std::string& club,
                                                             const climate::Weather& weather,
                                                             const services::Author& /*author*/) {
  const std::lock_guard lock(mutex_);
  weather_[club] = weather;
  ++change_;
  return services::Receipt{static_cast<int>(weather.size()), 0, 0};
}

FakeStore::Result<FakeStore::Files> FakeStore::received(const std::string& /*club*/) {
  return last_files;
}

FakeStore::Result<FakeStore::Revisions>
FakeStore::history(const std::string& club, const std::string& kind, const std::string& id) {
  const std::lock_guard lock(mutex_);
  const auto found = records_.find(club);
  if (found == records_.end()) {
    return no_club(club);
  }
  const auto& visits = found->second.visits;
  const bool known = kind == "visit" && std::any_of(visits.begin(), visits.end(),
                                                    [&](const auto& one) { return one.id == id; });
  return known ? Revisions{{1, "ana", "2025-01-02T08:00:00Z", R"({"id":"x"})"},
                           {2, "ben", "2025-01-03T08:00:00Z", R"({"id":"x","note":"late"})"}}
               : Revisions{};
}

FakeStore::Result<std::int64_t> FakeStore::change_number() {
  if (broken) {
    return damaged();
  }
  const std::lock_guard lock(mutex_);
  return change_;
}

services::SheetsReading FakeSheets::read(const std::vector<services::ReceivedFile>& files,
                                         units::Day today) const {
  services::SheetsReading reading;
  for (const auto& file : files) {
    services::FileReport report{file.name, 1, 1, 0};
    if (file.content == "bad") {
      report.problems = 1;
      reading.problems.push_back({"score_out_of_range", "score", "11",
                                  "a whole number from 1 to 10", file.name + " line 2"});
    }
    if (file.content == "elsewhere") {
      reading.records.club.id = "another";
    }
    if (file.content == "good" || file.content == "stray") {
      green::Visit visit;
      visit.id = "new";
      visit.green = file.content == "good" ? "1" : "99";
      visit.observer = "ana";
      visit.day = today;
      reading.records.visits.push_back(visit);
      reading.remarks.push_back({"run_spread", "distance", "0.3 m", "within 0.2 m", file.name});
    }
    reading.files.push_back(report);
  }
  return reading;
}

std::vector<services::ReceivedFile>
FakeSheets::write(const green::Records& /*records*/,
                  const std::vector<services::ReceivedFile>& received) const {
  return received;
}

World::World() : World(club(), weather()) {}

World::World(const green::Records& records, const climate::Weather& weather)
    : context{store,
              sheets,
              clubs,
              [] { return *units::make_day(2025, 6, 30); },
              [] { return std::string("2025-06-30T10:00:00Z"); },
              asset} {
  context.edition = "test";
  context.report_page = [](const std::string& json) { return "<!doctype html>" + json; };
  store.put(records, weather);
}

api::Response World::get(const std::string& target) const {
  return ask("GET", target);
}

api::Response World::ask(const std::string& method, const std::string& target,
                         const std::string& body) const {
  api::Request request;
  request.method = method;
  request.target = target;
  request.body = body;
  request.host = "localhost:8080";
  request.content_type = method == "POST" ? "application/json" : "";
  return api::answer(context, request);
}

std::string header(const api::Response& response, const std::string& name) {
  for (const auto& [key, value] : response.headers) {
    if (key == name) {
      return value;
    }
  }
  return "";
}

} // namespace made
