// Writes a club's records as files.
#include "commands.h"
#include "files.h"
#include "table.h"

#include <filesystem>

namespace baize::cli {

namespace fs = std::filesystem;

namespace {

struct ExportOptions {
  std::string folder;
  std::string club;
  bool force = false;
};

/// Names come from whoever sent the files; none may lead out of the folder.
units::Result<void> check_names(const ExportOptions& options,
                                const std::vector<services::ReceivedFile>& files) {
  for (const services::ReceivedFile& file : files) {
    if (file.name.empty() || file.name == "." || file.name == ".." ||
        file.name != bare_name(file.name)) {
      return units::refuse("file_name", "file", file.name, "a plain file name");
    }
    const std::string path = (fs::path(options.folder) / file.name).string();
    const auto there = read_file(path);
    if (!options.force && (there ? *there != file.content : fs::exists(path))) {
      return units::refuse("file_exists", "file", path,
                           "the same as what would be written, or replaced with --force");
    }
  }
  return {};
}

units::Result<void> write_all(const ExportOptions& options,
                              const std::vector<services::ReceivedFile>& files) {
  if (auto fit = check_names(options, files); !fit) {
    return fit;
  }
  std::error_code error;
  fs::create_directories(options.folder, error);
  if (error) {
    return units::refuse("folder_unwritable", "folder", options.folder,
                         "a folder that can be made (" + error.message() + ")");
  }
  for (const services::ReceivedFile& file : files) {
    auto written = write_file((fs::path(options.folder) / file.name).string(), file.content);
    if (!written) {
      return written;
    }
  }
  return {};
}

void print_files(Session& session, const std::vector<services::ReceivedFile>& files) {
  if (session.shape() == Shape::json) {
    answers::Json list = answers::Json::array();
    for (const services::ReceivedFile& file : files) {
      list.push_back(answers::Object()
                         .put("name", file.name)
                         .put("bytes", static_cast<std::int64_t>(file.content.size()))
                         .done());
    }
    session.print(answers::Object().nest("files", list).done());
    return;
  }
  Table table({words("file"), number("size", "bytes")});
  for (const services::ReceivedFile& file : files) {
    table.add({cell(file.name), cell(std::to_string(file.content.size()))});
  }
  table.print(session);
}

void write_out(Session& session, const ExportOptions& options) {
  const auto open = open_club(session, options.club);
  if (!open) {
    return;
  }
  const auto received = open->store->received(open->records.club.id);
  if (!received) {
    session.refuse(received.error());
    return;
  }
  const auto files = session.ports.sheets->write(open->records, *received);
  if (auto written = write_all(options, files); !written) {
    session.refuse(written.error());
    return;
  }
  print_files(session, files);
}

} // namespace

void add_export(CLI::App& app, Session& session) {
  auto options = std::make_shared<ExportOptions>();
  CLI::App* command = app.add_subcommand(
      "export", "Write a club's records as files; what was brought in unchanged comes out byte "
                "for byte");
  command->add_option("folder", options->folder, "Where to write; made where there is none")
      ->required()
      ->type_name("FOLDER");
  command->add_option("--club", options->club, "The club; not needed where there is one only")
      ->type_name("CLUB");
  command->add_flag("--force", options->force, "Replace files that say something else");
  on_call(*command, session, options, write_out);
}

} // namespace baize::cli
