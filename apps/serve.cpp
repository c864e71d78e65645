#include "serve.h"

#include "baize/api/answer.h"
#include "baize/api/log_line.h"
#include "baize/api/server.h"
#include "baize/assets/assets.h"
#include "baize/demo/demo_club.h"
#include "baize/pictures/jpeg.h"
#include "baize/scan_code/scan_code.h"
#include "baize/sheets/csv_sheets.h"
#include "baize/sheets/trial_csv.h"
#include "baize/store_sqlite/store.h"
#include "baize/weather_files/reader.h"
#include "clock.h"
#include "report_page.h"
#include "secure.h"
#include "sign_in.h"

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

std::function<void(const api::Answered&)> log_of(const std::string& kind) {
  if (kind == "none") {
    return {};
  }
  const auto write = kind == "json" ? api::log_json : api::log_line;
  return [write](const api::Answered& answered) {
    fmt::print(stderr, "{}\n", write(now(), answered));
  };
}

std::vector<api::Figure> figures_of(const store_sqlite::SqliteStore& store) {
  const store_sqlite::WriteFigures figures = store.figures();
  return {{"waiting_writes", "Writes that stand in the queue.", false, figures.waiting},
          {"writes", "Writes done, also those that changed nothing.", true, figures.writes},
          {"commits", "Commits: waits for the disk.", true, figures.commits}};
}

api::ServerOptions options_of(const cli::ServeSettings& settings, std::ostream& out) {
  api::ServerOptions options;
  options.address = settings.address;
  options.port = settings.port;
  options.body_limit = api::body_limit;
  options.waits = api::waits;
  options.stop_on_signals = true;
  options.behind_proxy = settings.behind_proxy;
  options.log = log_of(settings.log);
  options.listening = [&](std::uint16_t port) {
    out << fmt::format("Baize is at http://{}:{}/ (Ctrl+C ends it)\n",
                       before_port(settings.address), port)
        << std::flush;
  };
  return options;
}

/// Serves by https where that is asked for, else without.
units::Result<void> serve_by(api::ServerOptions options, const api::Handler& handler,
                             std::optional<Secure> secure, std::ostream& out) {
  if (!secure) {
    return api::serve(options, handler, std::stop_token());
  }
  api::Doorway& doorway = secure->doorway;
  options.tls = std::move(secure->tls);
  options.tls->plain = [&](const api::Request& request) {
    return api::at_the_door(doorway, request);
  };
  options.listening = [&](std::uint16_t port) {
    doorway.port = port;
    out << ways_in(doorway) << std::flush;
  };
  const auto within = [&](const api::Request& request) {
    return api::inside(doorway, handler, request);
  };
  return api::serve(options, within, std::stop_token());
}

/// The names under which the pages may be asked for.
void set_hosts(api::Context& context, const cli::ServeSettings& settings,
               const std::optional<Secure>& secure) {
  if (secure) {
    context.hosts = secure->hosts;
  } else if (!this_machine_only(settings.address)) {
    context.hosts.clear();
  }
  if (settings.behind_proxy) {
    context.hosts.insert(context.hosts.end(), settings.names.begin(), settings.names.end());
  }
}

units::Result<void> serve_store(store_sqlite::SqliteStore& store, std::function<units::Day()> day,
                                const std::string& folder, const cli::ServeSettings& settings,
                                std::ostream& out) {
  std::optional<Secure> secure;
  if (settings.tls) {
    auto opened = open_secure(settings, folder);
    if (!opened) {
      return tl::unexpected(opened.error());
    }
    opened->tls.plain_port = settings.http_port;
    secure = std::move(*opened);
  }
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
  const pictures::Jpeg pictures;
  context.pictures = &pictures;
  // Another program or another store must not answer from a browser's memory.
  context.edition = fmt::format("{:x}", std::hash<std::string>()(now() + settings.database));
  const auto sign_in = sign_in_of(store, settings);
  if (!sign_in) {
    return tl::unexpected(sign_in.error());
  }
  context.people = sign_in->people.get();
  context.scan_code = scan_code::svg;
  set_hosts(context, settings, secure);
  context.metrics = std::make_shared<api::Metrics>();
  context.metrics_for_all = settings.metrics_for_all;
  context.figures = [&] { return figures_of(store); };
  api::ServerOptions options = options_of(settings, out);
  options.metrics = context.metrics;
  options.turned_away = [&](const api::Request& head) { return api::turned_away(context, head); };
  const auto handler = [&](const api::Request& request) { return api::answer(context, request); };
  return serve_by(std::move(options), handler, std::move(secure), out);
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
  return serve_store(**store, [day = club.today] { return day; }, folder.file(""), settings, out);
}

} // namespace

units::Result<void> serve(const cli::ServeSettings& settings, std::ostream& out) {
  if (settings.behind_proxy && (!this_machine_only(settings.address) || settings.names.empty())) {
    return units::refuse("proxy_elsewhere", "address", settings.address,
                         "one of this machine only, with the proxy beside it, and --name with the "
                         "name that the proxy serves");
  }
  if (settings.demo) {
    return serve_demo(settings, out);
  }
  const auto store = store_sqlite::SqliteStore::open(settings.database);
  if (!store) {
    return tl::unexpected(store.error());
  }
  const std::string folder = fs::absolute(settings.database).parent_path().string();
  return serve_store(**store, today, folder, settings, out);
}

} // namespace baize::apps
