#include "unit/cli_bench.h"

#include <sstream>

namespace cli_bench {

namespace {

/// Hands out the bench's one store again and again.
class Borrowed : public services::Store {
 public:
  explicit Borrowed(MemoryStore& store) : store_(store) {}
  units::Result<std::vector<services::ClubName>> clubs() override { return store_.clubs(); }
  units::Result<green::Records> load(const std::string& club) override { return store_.load(club); }
  units::Result<climate::Weather> weather(const std::string& club) override {
    return store_.weather(club);
  }
  units::Result<services::Receipt> keep(const green::Records& given, const services::Author& author,
                                        const std::vector<services::ReceivedFile>& from) override {
    return store_.keep(given, author, from);
  }
  units::Result<services::Receipt> keep_weather(const std::string& club,
                                                const climate::Weather& given,
                                                const services::Author& author) override {
    return store_.keep_weather(club, given, author);
  }
  units::Result<std::vector<services::ReceivedFile>> received(const std::string& club) override {
    return store_.received(club);
  }
  units::Result<std::vector<services::Revision>>
  history(const std::string& club, const std::string& kind, const std::string& id) override {
    return store_.history(club, kind, id);
  }
  units::Result<std::int64_t> change_number() override { return store_.change_number(); }

 private:
  MemoryStore& store_;
};

} // namespace

units::Result<std::vector<services::ClubName>> MemoryStore::clubs() {
  std::vector<services::ClubName> all;
  for (const auto& [id, club] : records) {
    all.push_back({id, club.club.name});
  }
  return all;
}

units::Result<green::Records> MemoryStore::load(const std::string& club) {
  if (!records.contains(club)) {
    return units::refuse("no_such_club", "club", club, "a club that is in the database");
  }
  return records.at(club);
}

units::Result<climate::Weather> MemoryStore::weather(const std::string& club) {
  return kept_weather[club];
}

units::Result<services::Receipt>
MemoryStore::keep(const green::Records& given, const services::Author& author,
                  const std::vector<services::ReceivedFile>& from) {
  records[given.club.id] = given;
  files[given.club.id] = from;
  authors.push_back(author);
  return services::Receipt{static_cast<int>(given.visits.size()), 0, 0};
}

units::Result<services::Receipt> MemoryStore::keep_weather(const std::string& club,
                                                           const climate::Weather& given,
                                                           const services::Author& author) {
  kept_weather[club] = given;
  authors.push_back(author);
  return services::Receipt{static_cast<int>(given.size()), 0, 0};
}

units::Result<std::vector<services::ReceivedFile>> MemoryStore::received(const std::string& club) {
  return files[club];
}

units::Result<std::vector<services::Revision>> MemoryStore::history(const std::string& /*club*/,
                                                                    const std::string& /*kind*/,
                                                                    const std::string& /*id*/) {
  return std::vector<services::Revision>{};
}

services::SheetsReading ToldSheets::read(const std::vector<services::ReceivedFile>& files,
                                         units::Day /*today*/) const {
  services::SheetsReading told = reading;
  for (const services::ReceivedFile& file : files) {
    told.files.push_back({file.name, 6, 1, static_cast<int>(told.problems.size())});
  }
  return told;
}

units::Result<services::WeatherMapping> ToldWeather::guess(const std::string& content) const {
  if (content.empty()) {
    return units::refuse("not_a_weather_file", "file", "", "daily weather");
  }
  services::WeatherMapping mapping;
  mapping.format = "delimited";
  return mapping;
}

services::WeatherReading ToldWeather::read(const std::string& /*content*/,
                                           const services::WeatherMapping& mapping) const {
  services::WeatherReading told = reading;
  if (mapping.format == "unusable") {
    told.weather.clear();
    told.problems.push_back({"unknown_unit", "rain_mm", "", "given a unit", ""});
  }
  return told;
}

std::vector<std::string> ToldWeather::show(const services::WeatherMapping& mapping) const {
  return {"format=" + mapping.format};
}

units::Result<services::WeatherMapping>
ToldWeather::corrected(services::WeatherMapping mapping,
                       const std::vector<std::string>& lines) const {
  mapping.format = lines.front();
  return mapping;
}

Bench::Bench() {
  ports.open_store = [this](const std::string& path,
                            bool create) -> units::Result<std::unique_ptr<services::Store>> {
    opened.push_back(path + (create ? "!" : ""));
    if (path == "/none") {
      return units::refuse("no_such_database", "database", path, "a database file that exists");
    }
    return std::make_unique<Borrowed>(store);
  };
  ports.sheets = &sheets;
  ports.weather_files = &weather;
  ports.today = contract::day(2026, 12, 31);
  ports.now = "2026-12-31T12:00:00Z";
  ports.author = "tess";
  ports.default_database = "/default";
}

int Bench::run(const std::vector<std::string>& words) {
  std::ostringstream out;
  std::ostringstream err;
  std::vector<const char*> arguments{"baize"};
  for (const std::string& word : words) {
    arguments.push_back(word.c_str());
  }
  const int code = cli::run(static_cast<int>(arguments.size()), arguments.data(), ports, out, err);
  out_ = out.str();
  err_ = err.str();
  return code;
}

std::string Bench::put(const std::string& name, const std::string& content) const {
  contract::write_bytes(file(name), content);
  return file(name);
}

} // namespace cli_bench
