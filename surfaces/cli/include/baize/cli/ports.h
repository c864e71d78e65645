#pragma once

#include "baize/services/people.h"
#include "baize/services/pictures_port.h"
#include "baize/services/report_data.h"
#include "baize/services/sheets_port.h"
#include "baize/services/trial_files_port.h"
#include "baize/services/weather_port.h"

#include <cstdint>
#include <functional>
#include <iosfwd>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace baize::cli {

/// A backup, told by its contents.
struct BackupCopy {
  std::string path;
  std::string check_path;
  std::string sha256;
  std::int64_t rows = 0;
};

/// What restoring did.
struct RestoredCopy {
  BackupCopy copy;
  std::string moved_aside; ///< the database that was there before, or empty
};

/// What the doctor found.
struct DoctorFindings {
  int version = 0;
  std::int64_t rows = 0;
  std::int64_t clubs = 0;
  std::string sha256;
  std::vector<std::string> wrong;
  std::vector<std::string> remarks;
};

/// How to serve the pages.
struct ServeSettings {
  std::string database; ///< unused with demo
  std::string address = "127.0.0.1";
  std::uint16_t port = 0;    ///< 0: any free one
  bool demo = false;         ///< the invented club instead of the database
  bool tls = false;          ///< by https
  std::string certificate{}; ///< PEM files of one's own; empty: this machine's authority
  std::string key{};
  std::vector<std::string> names{};         ///< by which it is reached, the first by phones
  std::optional<std::uint16_t> http_port{}; ///< with tls: a further port, for the way to https
  bool behind_proxy = false;
  std::string log = "lines"; ///< lines, json or none
  bool metrics_for_all = false;
  bool people = false; ///< people sign in on this machine too
  bool anyone = false; ///< nobody signs in, whatever the address
};

/// Everything the command line needs from outside, given by apps. The commands
/// know no file format, no database and no clock.
struct Ports {
  /// `create`: make the database where there is none; else "no_such_database".
  std::function<units::Result<std::unique_ptr<services::Store>>(const std::string& path,
                                                                bool create)>
      open_store;
  std::function<units::Result<BackupCopy>(const std::string& database, const std::string& to)>
      backup;
  std::function<units::Result<RestoredCopy>(const std::string& from, const std::string& database,
                                            bool force)>
      restore;
  std::function<units::Result<DoctorFindings>(const std::string& database, units::Day today,
                                              const std::vector<std::string>& copies)>
      examine;

  const services::Sheets* sheets = nullptr;
  const services::TrialFiles* trial_files = nullptr;
  const services::WeatherFiles* weather_files = nullptr;
  const services::Pictures* pictures = nullptr; ///< null: photos are refused

  /// Serves until it is told to stop; says on `out` where.
  std::function<units::Result<void>(const ServeSettings& settings, std::ostream& out)> serve;
  /// The report as one HTML file, from its data in JSON.
  std::function<units::Result<std::string>(const std::string& json)> report_page;
  /// Prints an HTML file to a PDF file.
  std::function<units::Result<void>(const std::string& html, const std::string& pdf)> print_pdf;

  /// Hashes and randomness of accounts; null: there are no accounts.
  services::Secrets* secrets = nullptr;
  std::function<services::Seconds()> seconds{}; ///< since 1970, UTC
  /// Asks on the terminal, twice and without showing it, or reads one line of the
  /// standard input.
  std::function<units::Result<std::string>(bool from_input)> read_password{};
  /// A link as a picture to scan, SVG.
  std::function<units::Result<std::string>(const std::string& text)> scan_code{};

  units::Day today;
  std::string now;              ///< RFC 3339, UTC; written beside what is kept
  std::string author;           ///< who is at the keyboard
  std::string default_database; ///< where --db is not given
  bool show_progress = false;   ///< the error stream is a terminal
  /// Whether Ctrl-C was pressed since a long computation first asked. Absent: the
  /// system ends the program.
  std::function<bool()> asked_to_stop{};
};

} // namespace baize::cli
