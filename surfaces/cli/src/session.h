#pragma once

#include "baize/answers/json.h"
#include "baize/cli/run.h"

#include <CLI/CLI.hpp>

#include <optional>
#include <ostream>
#include <string>

namespace baize::cli {

/// How results are shown.
enum class Shape { table, json, csv };

/// One run of the program: ports, streams, and the options of every command.
struct Session {
  const Ports& ports;
  std::ostream& out;
  std::ostream& err;
  std::string database;
  std::string units = "ft_in";
  bool decimal_comma = false;
  bool json = false;
  bool csv = false;
  Exit code = Exit::fine;

  char decimal() const { return decimal_comma ? ',' : '.'; }
  Shape shape() const { return json ? Shape::json : csv ? Shape::csv : Shape::table; }
  units::LengthUnit length_unit() const { return *units::parse_length_unit(units); }
  std::string database_path() const { return database.empty() ? ports.default_database : database; }
  /// Says the sentence on `err` (with --json the problem on `out` as well) and
  /// sets the exit code that its kind has.
  void refuse(const units::Problem& problem);
  void print(const answers::Json& answer) { out << answers::laid_out(answer) << '\n'; }
};

/// The exit code for a problem, by its code.
Exit exit_of(const units::Problem& problem);

/// A command's options, kept alive as long as its callback.
template <class Options, class Act>
void on_call(CLI::App& command, Session& session, std::shared_ptr<Options> options, Act act) {
  command.callback([&session, options = std::move(options), act] { act(session, *options); });
}

/// An open database with one of its clubs.
struct OpenClub {
  std::unique_ptr<services::Store> store;
  green::Records records;
  climate::Weather weather;
};

/// The id of the only club; refuses "no_such_club", and "wrong_use_club" where there
/// are several.
units::Result<std::string> only_club(services::Store& store);
/// The id that was said, whether or not such a club is there; with none the only club's.
units::Result<std::string> club_or_only(services::Store& store, const std::string& said);
/// Loads a club; with an empty id the only one there is. Where that fails it
/// has refused already.
std::optional<OpenClub> open_club(Session& session, const std::string& club);
/// Opens a database that must be there.
std::unique_ptr<services::Store> open_store(Session& session, bool create = false);

/// The id of the green meant by "7" or "7th"; refuses "no_such_green".
units::Result<std::string> green_id(const green::Records& records, const std::string& text);

} // namespace baize::cli
