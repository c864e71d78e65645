#include "commands.h"

namespace baize::cli {

namespace {

constexpr const char* kAbout =
    "Baize shows how true golf greens roll: how fast and how true each green was through the\n"
    "year, what each work cost, and on how many days it rolled true.";

constexpr const char* kCodes =
    "The options above go with every command. `baize COMMAND --help` tells more.\n"
    "Exit codes: 0 fine; 1 a problem in the data, nothing was kept; 2 wrong use of the command\n"
    "line; 3 file, disk, database or server trouble; 4 no such club, green, work, year or file;\n"
    "130 stopped by Ctrl-C, no result.";

void add_common(CLI::App& app, Session& session) {
  app.add_option("--db", session.database,
                 "The database file. Otherwise the file that BAIZE_DB names, otherwise the one in "
                 "your home folder")
      ->type_name("FILE");
  app.add_option("--units", session.units, "How to show distances: ft_in, ft, m or cm")
      ->check(CLI::IsMember({"ft_in", "ft", "m", "cm"}))
      ->capture_default_str()
      ->type_name("UNIT");
  app.add_flag("--decimal-comma", session.decimal_comma,
               "Write 3,05 for 3.05; CSV is then parted by semicolons");
  auto* json = app.add_flag("--json", session.json, "Answer in JSON, in SI units");
  app.add_flag("--csv", session.csv, "Answer as CSV")->excludes(json);
}

void add_commands(CLI::App& app, Session& session) {
  add_import(app, session);
  add_export(app, session);
  add_photos(app, session);
  add_serve(app, session);
  add_report(app, session);
  add_clubs(app, session);
  add_greens(app, session);
  add_visits(app, session);
  add_season(app, session);
  add_recovery(app, session);
  add_observers(app, session);
  add_consistency(app, session);
  add_methods(app, session);
  add_speed(app, session);
  add_score(app, session);
  add_trial(app, session);
  add_weather(app, session);
  add_people(app, session);
  add_backup(app, session);
  add_restore(app, session);
  add_doctor(app, session);
}

} // namespace

int run(int argc, const char* const* argv, const Ports& ports, std::ostream& out,
        std::ostream& err) {
  Session session{ports, out, err, {}};
  CLI::App app(kAbout, "baize");
  app.footer(kCodes);
  app.require_subcommand(1);
  app.fallthrough();
  add_common(app, session);
  add_commands(app, session);
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    // Help goes to `out` and is fine; anything else is a sentence on `err`.
    const bool help = error.get_exit_code() == 0;
    app.exit(error, out, err);
    return static_cast<int>(help ? Exit::fine : Exit::wrong_use);
  } catch (const std::exception& error) {
    err << "baize: something went wrong that should not: " << error.what() << '\n';
    return static_cast<int>(Exit::storage);
  }
  return static_cast<int>(session.code);
}

} // namespace baize::cli
