#include "serve.h"

#include "baize/api/answer.h"
#include "baize/api/server.h"
#include "baize/assets/assets.h"
#include "baize/demo/demo_club.h"
#include "baize/sheets/csv_sheets.h"
#include "baize/sheets/trial_csv.h"
#include "baize/store_sqlite/store.h"
#include "baize/weather_files/reader.h"
#include "clock.h"
#include "report_page.h"

#include <fmt/format.h>

#include <cstdlib>
#include <filesystem>
#include <map>
#include <ostream>

namespace baize::apps {

namespace fs = std::filesystem;

namespace {

/// A folder of its own for the demo club, gone when the program ends.
class TemporaryFolder {
 public:
  TemporaryFolder() {
    std::string name = (fs::temp_directory_path() / "baize-demo-XXXXXX").string();
    if (::mkdtemp(name.data()) != nullptr) {
      path_ = name;
    }
  }
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;
  ~TemporaryFolder() {
    std::error_code ignored;
    if (!path_.empty()) {
      fs::remove_all(path_, ignored);
    }
  }
  std::string file(const char* name) const { return (fs::path(path_) / name).string(); }

 private:
  std::string path_;
};

std::map<std::string, api::Asset, std::less<>> pages() {
  std::map<std::string, api::Asset, std::less<>> all;
  for (const assets::Asset& asset : assets::all()) {
    all.emplace(asset.path,
                api::Asset{std::string(asset.content_type), asset.bytes, std::string(asset.etag)});
  }
  for (const char* folder : {"/", "/field", "/field/"}) {
    if (const assets::Asset* first = assets::find(folder)) {
      all.emplace(folder, api::Asset{std::string(first->content_type), first->bytes,
                                     std::string(first->etag)});
    }
  }
  return all;
}

bool this_machine_only(const std::string& address) {
  return address.rfind("127.", 0) == 0 || address == "::1" || address == "localhost";
}

units::Result<void> serve_store(services::Store& store, std::function<units::Day()> day,
                                const cli::ServeSettings& settings, std::ostream& out) {
  const sheets::CsvSheets sheets;
  const sheets::TrialCsv trial_files;
  api::ClubsCache clubs(store);
  const auto files = pages();
  const auto asset = [&](std::string_view path) {
    const auto found = files.find(path);
    return found == files.end() ? nullptr : &found->second;
  };
  api::Context context{store, sheets, clubs, std::move(day), now, asset};
  context.trial_files = &trial_files;
  context.report_page = report_page;
  const weather_files::Reader weather_files;
  context.weather_files = &weather_files;
  // Another program or another store must not answer from a browser's memory.
  context.edition = fmt::format("{:x}", std::hash<std::string>()(now() + settings.database));
  if (!this_machine_only(settings.address)) {
    context.hosts.clear();
  }
  api::ServerOptions options;
  options.address = settings.address;
  options.port = settings.port;
  options.body_limit = api::body_limit;
  options.stop_on_signals = true;
  options.listening = [&](std::uint16_t port) {
    const bool v6 = settings.address.find(':') != std::string::npos;
    out << fmt::format("Baize is at http://{}{}{}:{}/ (Ctrl+C ends it)\n", v6 ? "[" : "",
                       settings.address, v6 ? "]" : "", port)
        << std::flush;
  };
  const auto handler = [&](const api::Request& request) { return api::answer(context, request); };
  return api::serve(options, handler, std::stop_token());
}

units::Result<void> serve_demo(const cli::ServeSettings& settings, std::ostream& out) {
  const TemporaryFolder folder;
  const auto store = store_sqlite::SqliteStore::open(folder.file("demo.sqlite3"));
  if (!store) {
    return tl::unexpected(store.error());
  }
  const demo::DemoClub club = demo::make();
  const services::Author author{"demo", now()};
  const auto kept =
      (*store)->keep(club.records, author, {}).and_then([&](const services::Receipt&) {
        return (*store)->keep_weather(club.records.club.id, club.weather, author);
      });
  if (!kept) {
    return tl::unexpected(kept.error());
  }
  return serve_store(**store, [day = club.today] { return day; }, settings, out);
}

} // namespace

units::Result<void> serve(const cli::ServeSettings& settings, std::ostream& out) {
  if (settings.demo) {
    return serve_demo(settings, out);
  }
  const auto store = store_sqlite::SqliteStore::open(settings.database);
  if (!store) {
    return tl::unexpected(store.error());
  }
  return serve_store(**store, today, settings, out);
}

} // namespace baize::apps
