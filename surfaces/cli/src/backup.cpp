// Backup, restore and doctor.
#include "commands.h"

namespace baize::cli {

namespace {

struct CopyOptions {
  std::string path;
  bool force = false;
};
struct DoctorOptions {
  std::vector<std::string> copies;
};

answers::Json copy_json(const BackupCopy& copy) {
  return answers::Object()
      .put("path", copy.path)
      .put("check_path", copy.check_path)
      .put("sha256", copy.sha256)
      .put("rows", copy.rows)
      .done();
}

void back_up(Session& session, const CopyOptions& options) {
  const auto copy = session.ports.backup(session.database_path(), options.path);
  if (!copy) {
    session.refuse(copy.error());
  } else if (session.shape() == Shape::json) {
    session.print(copy_json(*copy));
  } else {
    session.out << "Backup written: " << copy->path << ", " << copy->rows << " rows.\n"
                << "Checksum beside it: " << copy->check_path << ". Keep both together.\n";
  }
}

void put_back(Session& session, const CopyOptions& options) {
  const auto done = session.ports.restore(options.path, session.database_path(), options.force);
  if (!done) {
    session.refuse(done.error());
    return;
  }
  if (session.shape() == Shape::json) {
    answers::Json json = copy_json(done->copy);
    json["database"] = session.database_path();
    if (!done->moved_aside.empty()) {
      json["moved_aside"] = done->moved_aside;
    }
    session.print(json);
    return;
  }
  session.out << "Checksum right. Restored " << done->copy.rows << " rows to "
              << session.database_path() << ".\n";
  if (!done->moved_aside.empty()) {
    session.out << "The database that was there is now " << done->moved_aside << ".\n";
  }
}

void print_findings(Session& session, const DoctorFindings& found) {
  if (session.shape() == Shape::json) {
    session.print(answers::Object()
                      .put("database", session.database_path())
                      .put("version", found.version)
                      .put("clubs", found.clubs)
                      .put("rows", found.rows)
                      .put("sha256", found.sha256)
                      .nest("wrong", answers::list(found.wrong))
                      .nest("remarks", answers::list(found.remarks))
                      .done());
    return;
  }
  session.out << session.database_path() << ": version " << found.version << ", clubs "
              << found.clubs << ", rows " << found.rows << "\nContents sha256 " << found.sha256
              << '\n';
  for (const std::string& sentence : found.wrong) {
    session.out << "Wrong: " << sentence << '\n';
  }
  for (const std::string& sentence : found.remarks) {
    session.out << "Look at: " << sentence << '\n';
  }
  session.out << (found.wrong.empty() ? "Nothing is wrong.\n" : "");
}

void look(Session& session, const DoctorOptions& options) {
  const auto found =
      session.ports.examine(session.database_path(), session.ports.today, options.copies);
  if (!found) {
    session.refuse(found.error());
    return;
  }
  print_findings(session, *found);
  if (!found->wrong.empty()) {
    session.code = Exit::data_problem;
  }
}

} // namespace

void add_backup(CLI::App& app, Session& session) {
  auto options = std::make_shared<CopyOptions>();
  CLI::App* command = app.add_subcommand(
      "backup", "Copy the database, in use or not, with a checksum of its contents beside it");
  command->add_option("file", options->path, "The new file; an existing one is never replaced")
      ->required()
      ->type_name("FILE");
  on_call(*command, session, options, back_up);
}

void add_restore(CLI::App& app, Session& session) {
  auto options = std::make_shared<CopyOptions>();
  CLI::App* command = app.add_subcommand(
      "restore", "Put a backup in the database's place after its checksum is found right");
  command->add_option("file", options->path, "The backup")->required()->type_name("FILE");
  command->add_flag("--force", options->force,
                    "Also where a database is there already: it is moved aside, not removed");
  on_call(*command, session, options, put_back);
}

void add_doctor(CLI::App& app, Session& session) {
  auto options = std::make_shared<DoctorOptions>();
  CLI::App* command = app.add_subcommand(
      "doctor", "Look through the whole database, and through backups, and change nothing");
  command->add_option("backups", options->copies, "Backups to check against their checksums")
      ->type_name("FILE");
  on_call(*command, session, options, look);
}

} // namespace baize::cli
