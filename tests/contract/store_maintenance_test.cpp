// Backup, restore and doctor.
#include "baize/store_sqlite/maintenance.h"
#include "contract/sample_club.h"
#include "contract/store_place.h"
#include "database.h"
#include "unit/journal_samples.h"

#include <algorithm>

namespace contract {
namespace {

using store_sqlite::Connection;
using store_sqlite::SqliteStore;

class Maintenance : public testing::Test {
 protected:
  Maintenance() {
    auto store = SqliteStore::open(database());
    store.value()->keep(sample_club(), author(), sample_files()).value();
    store.value()->keep_weather("heath", sample_weather(), author()).value();
  }
  std::string database() const { return folder_.file("club.sqlite3"); }
  std::string copy() const { return folder_.file("copy.sqlite3"); }
  store_sqlite::Findings examine(const std::vector<std::string>& copies = {}) {
    const auto found = store_sqlite::examine(database(), day(2026, 12, 31), copies);
    EXPECT_TRUE(found) << units::sentence(found.error());
    return *found;
  }
  void execute(const std::string& sql) {
    Connection(database(), SQLITE_OPEN_READWRITE, 0).execute(sql);
  }
  bool told(const std::vector<std::string>& sentences, const std::string& words) {
    return std::any_of(sentences.begin(), sentences.end(), [&](const std::string& one) {
      return one.find(words) != std::string::npos;
    });
  }
  Folder folder_;
};

TEST_F(Maintenance, ABackupHoldsEverythingAndCanBeChecked) {
  const auto open = SqliteStore::open(database()); // in use meanwhile
  const auto made = store_sqlite::backup(database(), copy());
  ASSERT_TRUE(made) << units::sentence(made.error());
  EXPECT_EQ(made->sha256.size(), 64U);
  EXPECT_NE(bytes_of(made->check_path).find(made->sha256), std::string::npos);
  EXPECT_FALSE(std::filesystem::exists(copy() + ".part"));
  EXPECT_EQ(store_sqlite::check_copy(copy())->rows, made->rows);
  EXPECT_EQ(examine().sha256, made->sha256) << "the same contents, the same sum";
  store_sqlite::Restored restored =
      store_sqlite::restore(copy(), folder_.file("new.sqlite3"), false).value();
  EXPECT_EQ(restored.moved_aside, "");
  const auto store = SqliteStore::open(folder_.file("new.sqlite3"));
  EXPECT_EQ(*store.value()->load("heath"), sample_club());
  EXPECT_EQ(*store.value()->received("heath"), sample_files());
}

TEST_F(Maintenance, TheChecksumTellsContentsAndNotPages) {
  const auto before = examine().sha256;
  execute("VACUUM");
  EXPECT_EQ(examine().sha256, before);
  green::Records records = sample_club();
  records.visits[0].runs[0].rolls[0].score = 10;
  ASSERT_TRUE(SqliteStore::open(database()).value()->keep(records, author(), {}));
  EXPECT_NE(examine().sha256, before);
}

TEST_F(Maintenance, ABackupReplacesNothing) {
  write_bytes(copy(), "mine");
  EXPECT_EQ(store_sqlite::backup(database(), copy()).error().code, "file_exists");
  EXPECT_EQ(bytes_of(copy()), "mine");
  EXPECT_EQ(store_sqlite::backup(folder_.file("none"), copy()).error().code, "no_such_database");
  EXPECT_FALSE(store_sqlite::backup(database(), folder_.file("no/folder/copy")));
  EXPECT_FALSE(std::filesystem::exists(copy() + ".check"));
}

TEST_F(Maintenance, AnAlteredBackupIsRefused) {
  ASSERT_TRUE(store_sqlite::backup(database(), copy()));
  {
    Connection db(copy(), SQLITE_OPEN_READWRITE, 0);
    db.execute("DROP TRIGGER roll_refuses_UPDATE; UPDATE roll SET score = 10 WHERE score = 8");
  }
  const std::string target = folder_.file("new.sqlite3");
  EXPECT_EQ(store_sqlite::restore(copy(), target, false).error().code, "checksum_wrong");
  EXPECT_FALSE(std::filesystem::exists(target));
  std::filesystem::remove(copy() + ".check");
  EXPECT_EQ(store_sqlite::restore(copy(), target, false).error().code, "no_checksum");
  EXPECT_EQ(store_sqlite::restore(folder_.file("none"), target, false).error().code,
            "no_such_file");
}

TEST_F(Maintenance, RestoringOverADatabaseNeedsForceAndKeepsTheOldOne) {
  ASSERT_TRUE(store_sqlite::backup(database(), copy()));
  green::Records later = sample_club();
  later.visits[0].note = "after the backup";
  ASSERT_TRUE(SqliteStore::open(database()).value()->keep(later, author(), {}));
  EXPECT_EQ(store_sqlite::restore(copy(), database(), false).error().code, "file_exists");
  EXPECT_EQ(*SqliteStore::open(database()).value()->load("heath"), later);
  {
    const auto in_use = SqliteStore::open(database());
    ASSERT_TRUE(in_use.value()->load("heath"));
    EXPECT_EQ(store_sqlite::restore(copy(), database(), true).error().code, "database_locked");
  }
  const auto restored = store_sqlite::restore(copy(), database(), true);
  ASSERT_TRUE(restored) << units::sentence(restored.error());
  EXPECT_EQ(*SqliteStore::open(database()).value()->load("heath"), sample_club());
  EXPECT_EQ(*SqliteStore::open(restored->moved_aside).value()->load("heath"), later);
  const auto again = store_sqlite::restore(copy(), database(), true);
  ASSERT_TRUE(again);
  EXPECT_NE(again->moved_aside, restored->moved_aside);
}

TEST_F(Maintenance, ADamagedDatabaseCanBeReplaced) {
  ASSERT_TRUE(store_sqlite::backup(database(), copy()));
  write_bytes(database(), std::string(5000, 'z'));
  ASSERT_TRUE(store_sqlite::restore(copy(), database(), true));
  EXPECT_EQ(*SqliteStore::open(database()).value()->load("heath"), sample_club());
}

TEST_F(Maintenance, TheDoctorFindsAWellDatabaseWell) {
  ASSERT_TRUE(store_sqlite::backup(database(), copy()));
  const auto found = examine({copy()});
  EXPECT_EQ(found.clubs, 1);
  EXPECT_GT(found.rows, 50);
  EXPECT_EQ(found.wrong, std::vector<std::string>{});
}

TEST_F(Maintenance, TheDoctorSeesWhatIsWrong) {
  execute(
      "DROP TRIGGER roll_refuses_DELETE; DROP TRIGGER mark_refuses_DELETE;"
      "DROP TRIGGER visit_revision_refuses_DELETE; DROP TRIGGER received_content_refuses_UPDATE;"
      "DELETE FROM mark WHERE kind = 'snake';"
      "UPDATE received_content SET content = x'00' WHERE length(content) < 28;");
  const auto found = examine();
  EXPECT_FALSE(found.well());
  EXPECT_TRUE(told(found.wrong, "Guards"));
  EXPECT_TRUE(told(found.wrong, "1 rolls do not have as many marks"));
  EXPECT_TRUE(told(found.wrong, "1 received files"));

  execute("DELETE FROM visit_revision WHERE record = 2");
  const auto orphans = examine();
  EXPECT_TRUE(told(orphans.wrong, "1 records of the kind visit have no contents"));
  EXPECT_TRUE(told(orphans.wrong, "1 rows of the table run lead to rows of visit_revision"));
}

TEST_F(Maintenance, EntriesOfPhonesAreGuardedBackedUpAndExamined) {
  {
    const auto store = SqliteStore::open(database());
    ASSERT_TRUE((*store)->keep_entries("heath",
                                       {journal_test::visit(1, journal_test::visit_fields()),
                                        journal_test::roll(2, journal_test::roll_fields())},
                                       author(), [](const auto&) { return services::Decision{}; }));
  }
  EXPECT_TRUE(examine().well());
  const auto made = store_sqlite::backup(database(), copy());
  ASSERT_TRUE(made);
  EXPECT_EQ(made->sha256, examine().sha256);
  execute("DROP TRIGGER entry_refuses_UPDATE;"
          "UPDATE entry SET contents = replace(contents, '3.05', '3.5')");
  EXPECT_NE(made->sha256, examine().sha256) << "the checksum sees entries";
  execute("UPDATE entry SET contents = replace(contents, '\"roll\"', '\"total\"')");
  EXPECT_TRUE(told(examine().wrong, "1 entries of phones are not as they were handed in"));
  EXPECT_TRUE(store_sqlite::check_copy(copy()));
  ASSERT_TRUE(store_sqlite::restore(copy(), database(), true));
  EXPECT_EQ((*SqliteStore::open(database()))->entries_since("heath", 0, 10)->entries.size(), 2U);
}

TEST_F(Maintenance, TheDoctorChecksRecordsByTheirRules) {
  green::Records records = sample_club();
  records.visits[0].runs[0].rolls[0].score = 11;
  ASSERT_TRUE(SqliteStore::open(database()).value()->keep(records, author(), {}));
  EXPECT_TRUE(told(examine().wrong, "11"));
  EXPECT_TRUE(told(examine().wrong, "heath"));
}

TEST_F(Maintenance, TheDoctorChecksBackups) {
  ASSERT_TRUE(store_sqlite::backup(database(), copy()));
  write_bytes(copy() + ".check",
              "Baize database, contents\nsha256 " + std::string(64, '0') + "\nrows 3\n");
  EXPECT_TRUE(told(examine({copy()}).wrong, "copy.sqlite3"));
  EXPECT_TRUE(told(examine({folder_.file("none")}).wrong, "none"));
}

} // namespace
} // namespace contract
