// The only place that knows adapters and surfaces: it gives the command line
// the parts it asks for.
#include "baize/cli/run.h"
#include "baize/pictures/jpeg.h"
#include "baize/scan_code/scan_code.h"
#include "baize/secrets/sodium.h"
#include "baize/sheets/csv_sheets.h"
#include "baize/sheets/trial_csv.h"
#include "baize/store_sqlite/maintenance.h"
#include "baize/store_sqlite/store.h"
#include "baize/weather_files/reader.h"
#include "clock.h"
#include "password.h"
#include "print_pdf.h"
#include "report_page.h"
#include "serve.h"
#include "stop.h"

#include <cstdlib>
#include <iostream>
#include <pwd.h>
#include <unistd.h>

namespace {

using namespace baize;

std::string setting(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? std::string() : std::string(value);
}

std::string default_database() {
  if (std::string named = setting("BAIZE_DB"); !named.empty()) {
    return named;
  }
  std::string home = setting("HOME");
  if (const passwd* user = home.empty() ? ::getpwuid(::getuid()) : nullptr) {
    home = user->pw_dir;
  }
  return home + "/.local/share/baize/baize.sqlite3";
}

std::string author() {
  const passwd* user = ::getpwuid(::getuid());
  return user == nullptr ? "command line" : user->pw_name;
}

cli::BackupCopy shown(const store_sqlite::Copy& copy) {
  return {copy.path, copy.check_path, copy.sha256, copy.rows};
}

void wire_store(cli::Ports& ports) {
  ports.open_store = [](const std::string& path,
                        bool create) -> units::Result<std::unique_ptr<services::Store>> {
    store_sqlite::Options options;
    options.create = create;
    auto store = store_sqlite::SqliteStore::open(path, options);
    if (!store) {
      return tl::unexpected(store.error());
    }
    return std::unique_ptr<services::Store>(std::move(*store));
  };
  ports.backup = [](const std::string& database, const std::string& to) {
    return store_sqlite::backup(database, to).map(shown);
  };
  ports.restore = [](const std::string& from, const std::string& database, bool force) {
    return store_sqlite::restore(from, database, force).map([](const store_sqlite::Restored& done) {
      return cli::RestoredCopy{shown(done.copy), done.moved_aside};
    });
  };
  ports.examine = [](const std::string& database, units::Day today,
                     const std::vector<std::string>& copies) {
    return store_sqlite::examine(database, today, copies)
        .map([](const store_sqlite::Findings& found) {
          return cli::DoctorFindings{found.version, found.rows,  found.clubs,
                                     found.sha256,  found.wrong, found.remarks};
        });
  };
}

} // namespace

int main(int argc, char** argv) {
  const sheets::CsvSheets sheets;
  const sheets::TrialCsv trial_files;
  const weather_files::Reader weather;
  const pictures::Jpeg pictures;
  cli::Ports ports;
  wire_store(ports);
  ports.sheets = &sheets;
  ports.trial_files = &trial_files;
  ports.weather_files = &weather;
  ports.pictures = &pictures;
  const auto secrets = secrets::Sodium::open();
  ports.secrets = secrets ? secrets->get() : nullptr;
  ports.seconds = apps::seconds;
  ports.read_password = apps::read_password;
  ports.scan_code = scan_code::svg;
  ports.serve = apps::serve;
  ports.report_page = apps::report_page;
  ports.print_pdf = apps::print_pdf;
  ports.today = apps::today();
  ports.now = apps::now();
  ports.author = author();
  ports.default_database = default_database();
  ports.show_progress = ::isatty(STDERR_FILENO) != 0;
  ports.asked_to_stop = apps::asked_to_stop;
  return cli::run(argc, argv, ports, std::cout, std::cerr);
}
