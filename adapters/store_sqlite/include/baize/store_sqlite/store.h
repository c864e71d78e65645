#pragma once

#include "baize/services/entries_port.h"
#include "baize/services/people_port.h"
#include "baize/services/photos_port.h"

#include <cstdint>
#include <memory>
#include <string>

namespace baize::store_sqlite {

/// How the database file is opened.
struct Options {
  bool create = true;     ///< make the file, and its folder, where there is none
  bool read_only = false; ///< refuse every write; makes nothing
  int busy_ms = 5000;     ///< how long to wait for another program's write, 0 or more
  int largest_pages = 0;  ///< upper limit of the file in pages of 4096 bytes; 0: the disk's own
};

/// How busy the writing is.
struct WriteFigures {
  std::int64_t waiting = 0; ///< writes that stand in the queue now
  std::int64_t writes = 0;  ///< done since opening, with those that changed nothing or failed
  std::int64_t commits = 0; ///< waits for the disk; fewer where hand-ins shared one
};

/// services::Store in one SQLite file (write-ahead log, every commit on disk
/// before it is reported). Raw records are never changed or removed: a
/// correction is a new revision, and triggers refuse anything else. May be used
/// from many threads: writes stand in a queue, readers have connections of
/// their own and see the state before or after a write, never the middle.
/// Hand-ins of entries that wait behind one another share one commit.
///
/// The source (file and line) of a record is kept with each revision but is no
/// part of its contents: the same record read from another line adds nothing.
/// A club that gives its id only, in a club already known, says nothing of it.
///
/// Refuses with "no_such_database", "not_a_baize_database", "database_too_new",
/// "database_damaged", "database_read_only", "database_locked", "disk_full" and
/// "database_unreadable"; a record that names a green that nothing declares with
/// "unknown_green"; records that name no club with "no_such_club".
class SqliteStore : public services::Store, public services::EntryStore {
 public:
  static units::Result<std::unique_ptr<SqliteStore>> open(const std::string& path,
                                                          const Options& options = {});
  ~SqliteStore() override;
  WriteFigures figures() const;

  units::Result<std::vector<services::ClubName>> clubs() override;
  units::Result<green::Records> load(const std::string& club) override;
  units::Result<climate::Weather> weather(const std::string& club) override;
  units::Result<services::Receipt> keep(const green::Records& records,
                                        const services::Author& author,
                                        const std::vector<services::ReceivedFile>& files) override;
  units::Result<services::Receipt> keep_weather(const std::string& club,
                                                const climate::Weather& weather,
                                                const services::Author& author) override;
  units::Result<std::vector<services::ReceivedFile>> received(const std::string& club) override;
  units::Result<std::vector<services::Revision>>
  history(const std::string& club, const std::string& kind, const std::string& id) override;
  units::Result<std::int64_t> change_number() override;

  services::PeopleStore* people() override { return people_.get(); }
  services::PhotoStore* photos() override { return photos_.get(); }

  services::EntryStore* entries() override { return this; }
  units::Result<services::KeptEntries> keep_entries(const std::string& club,
                                                    const std::vector<journal::Entry>& entries,
                                                    const services::Author& author,
                                                    const services::Decide& decide) override;
  units::Result<services::EntriesPage> entries_since(const std::string& club, std::int64_t since,
                                                     int limit) override;
  units::Result<std::vector<journal::Entry>> branched(const std::string& club) override;

 private:
  class Inside;
  explicit SqliteStore(std::unique_ptr<Inside> inside);
  std::unique_ptr<Inside> inside_;
  std::unique_ptr<services::PeopleStore> people_;
  std::unique_ptr<services::PhotoStore> photos_;
};

} // namespace baize::store_sqlite
