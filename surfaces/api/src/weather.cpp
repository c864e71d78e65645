// Brings a daily weather file in: understood, shown, corrected, kept.
#include "baize/answers/imported.h"
#include "baize/api/import_body.h"
#include "baize/services/weather_file.h"
#include "call.h"
#include "query.h"
#include "reply.h"

#include <sstream>

namespace baize::api {

namespace {

/// The lines of the query's `map`, without blank ones.
std::vector<std::string> corrections(const Call& call) {
  std::vector<std::string> lines;
  if (const std::string* text = call.query("map")) {
    std::istringstream all(*text);
    for (std::string line; std::getline(all, line);) {
      if (!line.empty() && line.back() == '\r') {
        line.pop_back();
      }
      if (!line.empty()) {
        lines.push_back(line);
      }
    }
  }
  return lines;
}

answers::Imported told(const std::string& name, services::WeatherReading reading) {
  answers::Imported imported;
  imported.files.push_back({name, reading.rows, static_cast<int>(reading.weather.size()),
                            static_cast<int>(reading.problems.size())});
  imported.problems = std::move(reading.problems);
  imported.remarks = std::move(reading.remarks);
  return imported;
}

} // namespace

Answer import_weather(const Call& call) {
  if (call.context.weather_files == nullptr) {
    return units::refuse("no_such_service", "weather", "",
                         "a server that was given its file formats");
  }
  const auto dry_run = dry_run_of(call);
  const auto files = read_import_body(call.request.body);
  if (!dry_run || !files) {
    return tl::unexpected(dry_run ? files.error() : dry_run.error());
  }
  if (files->size() != 1) {
    return units::refuse("bad_import", "files", std::to_string(files->size()),
                         "one weather file at a time");
  }
  const auto club = club_of(call);
  const services::WeatherFiles& reader = *call.context.weather_files;
  auto file = services::read_weather_file(reader, files->front(), corrections(call));
  if (!club || !file) {
    return tl::unexpected(club ? file.error() : club.error());
  }
  const climate::Weather weather = file->reading.weather;
  answers::ImportedWeather imported{told(files->front().name, std::move(file->reading)),
                                    reader.show(file->mapping)};
  imported.file.dry_run = *dry_run;
  if (imported.file.problems.empty() && !*dry_run) {
    const auto receipt = call.context.store.keep_weather(call.ids.front(), weather,
                                                         {call.author(), call.context.now()});
    if (!receipt) {
      return tl::unexpected(receipt.error());
    }
    imported.file.receipt = *receipt;
    imported.file.club = call.ids.front();
  }
  return reply(answers::to_json(imported), imported.file.problems.empty() ? 200 : 422);
}

} // namespace baize::api
