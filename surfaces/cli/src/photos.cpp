// Writes a club's photos as files, all of them or none.
#include "baize/services/photos.h"

#include "baize/answers/photos.h"
#include "commands.h"
#include "files.h"
#include "table.h"

#include <algorithm>
#include <filesystem>
#include <sstream>

namespace baize::cli {

namespace fs = std::filesystem;

namespace {

struct PhotosOptions {
  std::string folder;
  std::string club;
};

/// Letters, digits and - of a green's id; others may mean something in a file's name.
std::string plain(std::string text) {
  std::replace_if(
      text.begin(), text.end(),
      [](char c) {
        const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
        return !letter && !(c >= '0' && c <= '9') && c != '-';
      },
      '-');
  return text;
}

/// 2026-05-03_7_0190a0b0-....jpg
std::string name_of(const services::PhotoLine& line) {
  const std::string where = line.photo.visit.empty() ? "work" : "green";
  return units::iso(line.day) + "_" + (line.green.empty() ? where : plain(line.green)) + "_" +
         line.photo.id + ".jpg";
}

Table table_of(const std::vector<services::PhotoLine>& photos) {
  Table table({words("file"), words("day"), words("green"), words("visit"), words("work"),
               words("taken"), words("by"), words("note"), number("size", "bytes"),
               words("sha256")});
  for (const services::PhotoLine& line : photos) {
    const journal::Photo& photo = line.photo;
    table.add({cell(line.here ? name_of(line) : ""), cell(line.day), cell(line.green),
               cell(photo.visit), cell(photo.work), cell(photo.taken), cell(photo.by),
               cell(photo.note), cell(photo.bytes), cell(photo.sha256)});
  }
  return table;
}

/// Files written so far; taken away again unless all are.
class Batch {
 public:
  explicit Batch(const std::string& folder) : folder_(folder) {}
  Batch(const Batch&) = delete;
  Batch& operator=(const Batch&) = delete;
  ~Batch() {
    std::error_code ignored;
    for (const std::string& path : written_) {
      fs::remove(path, ignored);
    }
  }
  units::Result<void> write(const std::string& name, const std::string& content) {
    const std::string path = (fs::path(folder_) / name).string();
    return write_file(path, content).map([&] { written_.push_back(path); });
  }
  void all_done() { written_.clear(); }

 private:
  std::string folder_;
  std::vector<std::string> written_;
};

units::Result<void> check_free(const std::string& folder,
                               const std::vector<services::PhotoLine>& photos) {
  std::vector<std::string> names{"photos.csv"};
  for (const services::PhotoLine& line : photos) {
    names.push_back(name_of(line));
  }
  std::error_code error;
  for (const std::string& name : names) {
    const std::string path = (fs::path(folder) / name).string();
    if (fs::exists(path, error)) {
      return units::refuse("file_exists", "file", path, "a name that no file of the folder has");
    }
  }
  fs::create_directories(folder, error);
  if (error) {
    return units::refuse("folder_unwritable", "folder", folder,
                         "a folder that can be made (" + error.message() + ")");
  }
  return {};
}

units::Result<void> write_all(const Session& session, services::PhotoStore& store,
                              const PhotosOptions& options, const std::string& club,
                              const std::vector<services::PhotoLine>& photos) {
  if (auto fit = check_free(options.folder, photos); !fit) {
    return fit;
  }
  Batch batch(options.folder);
  for (const services::PhotoLine& line : photos) {
    if (!line.here) {
      continue;
    }
    auto written =
        services::picture_of(store, club, line.photo.id).and_then([&](const std::string& bytes) {
          return batch.write(name_of(line), bytes);
        });
    if (!written) {
      return written;
    }
  }
  std::ostringstream list;
  table_of(photos).print_csv(list, session.decimal_comma ? ';' : ',');
  auto written = batch.write("photos.csv", list.str());
  if (written) {
    batch.all_done();
  }
  return written;
}

void write_photos(Session& session, const PhotosOptions& options) {
  const auto store = open_store(session);
  if (!store) {
    return;
  }
  if (store->photos() == nullptr) {
    return session.refuse(
        {"no_such_service", "photos", "", "asked of a database that keeps photos", ""});
  }
  const auto club = club_or_only(*store, options.club);
  if (!club) {
    return session.refuse(club.error());
  }
  const auto photos = services::photos_of(*store->photos(), *club, "");
  if (!photos) {
    return session.refuse(photos.error());
  }
  if (auto written = write_all(session, *store->photos(), options, *club, *photos); !written) {
    return session.refuse(written.error());
  }
  if (session.shape() == Shape::json) {
    return session.print(answers::to_json(*photos));
  }
  table_of(*photos).print(session);
  const auto missing = std::count_if(photos->begin(), photos->end(),
                                     [](const services::PhotoLine& line) { return !line.here; });
  std::ostream& out = session.shape() == Shape::csv ? session.err : session.out;
  const auto written = static_cast<std::int64_t>(photos->size()) - missing;
  out << written << (written == 1 ? " photo" : " photos") << " written to " << options.folder;
  out << (missing > 0 ? "; " + std::to_string(missing) + " are still on their phones.\n" : ".\n");
}

} // namespace

void add_photos(CLI::App& app, Session& session) {
  auto options = std::make_shared<PhotosOptions>();
  CLI::App* command =
      app.add_subcommand("photos", "Write a club's photos as files, with photos.csv beside them");
  command->add_option("--out", options->folder, "Where to write; made where there is none")
      ->required()
      ->type_name("FOLDER");
  command->add_option("--club", options->club, "The club; not needed where there is one only")
      ->type_name("CLUB");
  on_call(*command, session, options, write_photos);
}

} // namespace baize::cli
