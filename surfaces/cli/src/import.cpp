// Brings record files and weather into the database, or says what would come in.
#include "baize/answers/imported.h"
#include "commands.h"
#include "files.h"
#include "import_entries.h"
#include "progress.h"
#include "table.h"
#include "weather_file.h"

namespace baize::cli {

namespace {

struct ImportOptions {
  std::vector<std::string> paths;
  std::string weather;
  std::vector<std::string> map;
  std::string club;
  bool dry_run = false;
  bool all_remarks = false;
};

struct Gathered {
  std::vector<services::ReceivedFile> files;
  services::SheetsReading sheets;
  std::optional<services::WeatherFile> weather;
  bool with_records() const { return !files.empty(); }
  bool good() const { return sheets.good() && (!weather || weather->reading.problems.empty()); }
};

units::Result<std::vector<services::ReceivedFile>> receive(const ImportOptions& options) {
  std::vector<services::ReceivedFile> files;
  for (const std::string& given : options.paths) {
    const auto paths = files_of(given);
    if (!paths) {
      return tl::unexpected(paths.error());
    }
    for (const std::string& path : *paths) {
      if (!options.weather.empty() && same_file(path, options.weather)) {
        continue;
      }
      auto content = read_file(path);
      if (!content) {
        return tl::unexpected(content.error());
      }
      files.push_back({bare_name(path), std::move(*content)});
    }
  }
  return files;
}

/// The club the records go to: the files say it, or --club does.
units::Result<void> settle_club(const ImportOptions& options, green::Records& records) {
  std::string& id = records.club.id;
  if (id.empty() && options.club.empty()) {
    return units::refuse("wrong_use_club", "--club", "",
                         "given: no file says to which club the records belong");
  }
  if (!id.empty() && !options.club.empty() && id != options.club) {
    return units::refuse("club_differs", "--club", options.club,
                         "the club that the files name, " + id);
  }
  id = id.empty() ? options.club : id;
  return {};
}

units::Result<Gathered> gather(const Session& session, const ImportOptions& options,
                               Progress& progress) {
  Gathered all;
  progress.step("reading files");
  auto files = receive(options);
  if (!files) {
    return tl::unexpected(files.error());
  }
  all.files = std::move(*files);
  if (all.with_records()) {
    progress.step("checking records");
    all.sheets = session.ports.sheets->read(all.files, session.ports.today);
  }
  // A file that could not be read says nothing of its club: its own problems come first.
  if (all.sheets.problems.empty()) {
    if (auto settled = settle_club(options, all.sheets.records); !settled) {
      return tl::unexpected(settled.error());
    }
  }
  if (!options.weather.empty()) {
    progress.step("reading weather");
    auto weather = read_weather(session, options.weather, options.map);
    if (!weather) {
      return tl::unexpected(weather.error());
    }
    all.weather = std::move(*weather);
  }
  return all;
}

void add_up(services::Receipt& to, const services::Receipt& more) {
  to.added += more.added;
  to.corrected += more.corrected;
  to.unchanged += more.unchanged;
}

units::Result<services::Receipt> keep(const Session& session, services::Store& store,
                                      const Gathered& all, Progress& progress) {
  const services::Author author{session.ports.author, session.ports.now};
  services::Receipt sum;
  if (all.with_records()) {
    progress.step("keeping records");
    const auto receipt = store.keep(all.sheets.records, author, all.files);
    if (!receipt) {
      return receipt;
    }
    add_up(sum, *receipt);
  }
  if (all.weather) {
    progress.step("keeping weather");
    const auto receipt =
        store.keep_weather(all.sheets.records.club.id, all.weather->reading.weather, author);
    if (!receipt) {
      return receipt;
    }
    add_up(sum, *receipt);
  }
  return sum;
}

answers::Imported imported(const ImportOptions& options, const Gathered& all,
                           const std::optional<services::Receipt>& receipt) {
  answers::Imported told{options.dry_run,    all.sheets.files, all.sheets.problems,
                         all.sheets.remarks, receipt,          {}};
  if (receipt) {
    told.club = all.sheets.records.club.id;
  }
  if (all.weather) {
    const services::WeatherReading& reading = all.weather->reading;
    told.files.push_back({bare_name(options.weather), reading.rows,
                          static_cast<int>(reading.weather.size()),
                          static_cast<int>(reading.problems.size())});
    told.problems.insert(told.problems.end(), reading.problems.begin(), reading.problems.end());
    told.remarks.insert(told.remarks.end(), reading.remarks.begin(), reading.remarks.end());
  }
  return told;
}

void print_files(const Session& session, const answers::Imported& told) {
  Table table({words("file"), number("rows"), number("records"), number("problems")});
  for (const services::FileReport& file : told.files) {
    table.add({cell(file.name), cell(file.rows), cell(file.records), cell(file.problems)});
  }
  table.print(session);
}

void print_imported(Session& session, const ImportOptions& options, const answers::Imported& told) {
  if (session.shape() == Shape::json) {
    session.print(to_json(told));
    return;
  }
  print_files(session, told);
  std::ostream& out = session.shape() == Shape::csv ? session.err : session.out;
  print_problems(out, told.problems);
  print_remarks(out, told.remarks, options.all_remarks);
  if (!told.problems.empty()) {
    out << "Nothing was kept: put these right first.\n";
  } else if (told.receipt) {
    out << "Kept in " << session.database_path() << ": " << told.receipt->added << " new, "
        << told.receipt->corrected << " corrected, " << told.receipt->unchanged << " unchanged.\n";
  } else {
    out << "All of it can come in. Nothing was kept, as you asked.\n";
  }
}

void bring_in(Session& session, const ImportOptions& options) {
  if (is_entries_file(options.paths)) {
    import_entries(session, options.paths.front(), options.club, options.dry_run);
    return;
  }
  if (options.paths.empty() && options.weather.empty()) {
    session.refuse({"wrong_use_files",
                    "files",
                    "",
                    "a folder, record files, or a weather file with --weather",
                    {}});
    return;
  }
  std::optional<services::Receipt> receipt;
  units::Result<Gathered> all;
  {
    constexpr int kSteps = 5;
    Progress progress(session.err, session.ports.show_progress, kSteps);
    all = gather(session, options, progress);
    if (all && all->good() && !options.dry_run) {
      const auto store = open_store(session, all->with_records());
      if (!store) {
        return;
      }
      const auto kept = keep(session, *store, *all, progress);
      if (!kept) {
        session.refuse(kept.error());
        return;
      }
      receipt = *kept;
    }
  }
  if (!all) {
    session.refuse(all.error());
    return;
  }
  print_imported(session, options, imported(options, *all, receipt));
  if (!all->good()) {
    session.code = Exit::data_problem;
  }
}

} // namespace

void add_import(CLI::App& app, Session& session) {
  auto options = std::make_shared<ImportOptions>();
  CLI::App* command = app.add_subcommand(
      "import", "Bring in record files (docs/howto/records.md) and daily weather, all or nothing");
  command
      ->add_option("files", options->paths,
                   "A folder (its .csv files), single record files, or one file of entries\n"
                   "from a phone (.json)")
      ->type_name("FOLDER|FILE");
  command->add_flag("--dry-run", options->dry_run,
                    "Only say what would come in, and every problem with its place");
  command->add_option("--weather", options->weather, "A daily weather file of the club's station")
      ->type_name("FILE");
  add_map(*command, options->map);
  command->add_option("--club", options->club, "The club, where no file names it")
      ->type_name("CLUB");
  command->add_flag("--remarks", options->all_remarks, "Show every remark, not only the first");
  on_call(*command, session, options, bring_in);
}

} // namespace baize::cli
