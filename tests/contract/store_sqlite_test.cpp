// The contract, met by SQLite; and what can go wrong with a file on a disk.
#include "baize/services/photos_port.h"
#include "contract/sample_club.h"
#include "contract/store_place.h"
#include "database.h"
#include "schema.h"
#include "sha256.h"
#include "unit/journal_samples.h"

#include <fmt/format.h>

namespace contract {

std::vector<StoreMaker> makers() {
  return {{"sqlite", [] { return std::make_unique<SqlitePlace>(); }}};
}

namespace {

using store_sqlite::Connection;
using store_sqlite::Options;
using store_sqlite::SqliteStore;

INSTANTIATE_TEST_SUITE_P(Sqlite, StoreContract, testing::ValuesIn(makers()),
                         [](const auto& one) { return one.param.name; });

class SqliteFile : public testing::Test {
 protected:
  std::string path() const { return folder_.file("club.sqlite3"); }
  std::unique_ptr<SqliteStore> open(const Options& options = {}) {
    auto store = SqliteStore::open(path(), options);
    EXPECT_TRUE(store) << units::sentence(store.error());
    return std::move(*store);
  }
  std::string refusal(const Options& options = {}) {
    const auto store = SqliteStore::open(path(), options);
    return store ? "opened" : store.error().code;
  }
  void execute(const std::string& sql) {
    Connection(path(), SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, 0).execute(sql);
  }
  std::int64_t number(const std::string& sql) {
    return Connection(path(), SQLITE_OPEN_READONLY, 0).number(sql);
  }
  Folder folder_;
};

TEST_F(SqliteFile, IsMadeWithItsFolderAndSafeSettings) {
  const std::string deep = folder_.file("a/b/club.sqlite3");
  ASSERT_TRUE(SqliteStore::open(deep));
  Connection db(deep, SQLITE_OPEN_READONLY, 0);
  EXPECT_EQ(db.word("PRAGMA journal_mode"), "wal");
  EXPECT_EQ(db.number("PRAGMA application_id"), store_sqlite::kApplicationId);
  EXPECT_EQ(db.number("PRAGMA user_version"),
            static_cast<std::int64_t>(store_sqlite::migrations().size()));
  EXPECT_EQ(db.number("SELECT count(*) FROM pragma_table_list WHERE type = 'table' AND strict = 0 "
                      "AND name NOT LIKE 'sqlite%'"),
            0);
}

TEST_F(SqliteFile, IsNotMadeWhereNobodyAskedForIt) {
  Options options;
  options.create = false;
  EXPECT_EQ(refusal(options), "no_such_database");
  options = {};
  options.read_only = true;
  EXPECT_EQ(refusal(options), "no_such_database");
  EXPECT_FALSE(std::filesystem::exists(path()));
}

TEST_F(SqliteFile, ThatIsSomethingElseIsRefusedAndLeftAlone) {
  write_bytes(path(), "green,day,score\n7,2026-05-04,8\n" + std::string(2000, 'x'));
  const std::string before = bytes_of(path());
  EXPECT_EQ(refusal(), "not_a_baize_database");
  EXPECT_EQ(bytes_of(path()), before);

  std::filesystem::remove(path());
  execute("CREATE TABLE other(a); INSERT INTO other VALUES (1)");
  const std::string foreign = bytes_of(path());
  EXPECT_EQ(refusal(), "not_a_baize_database");
  EXPECT_EQ(bytes_of(path()), foreign) << "not even the journal mode is changed";

  std::filesystem::remove(path());
  std::filesystem::create_directory(path());
  EXPECT_EQ(refusal(), "not_a_baize_database");
}

TEST_F(SqliteFile, OfANewerVersionIsRefusedWithAClearSentence) {
  open().reset();
  execute("PRAGMA user_version = 99");
  const auto store = SqliteStore::open(path());
  ASSERT_FALSE(store);
  EXPECT_EQ(store.error().code, "database_too_new");
  EXPECT_NE(units::sentence(store.error()).find("a newer Baize made it"), std::string::npos);
}

TEST_F(SqliteFile, IsBroughtToTheNewestVersionStepByStep) {
  open()->keep(sample_club(), author(), {}).value();
  auto steps = store_sqlite::migrations();
  steps.emplace_back("CREATE TABLE extra (a INTEGER) STRICT");
  {
    Connection reader(path(), SQLITE_OPEN_READONLY, 0);
    EXPECT_THROW(store_sqlite::prepare(reader, steps, false), store_sqlite::Failure);
  }
  Connection db(path(), SQLITE_OPEN_READWRITE, 0);
  store_sqlite::prepare(db, steps, true);
  EXPECT_EQ(db.number("PRAGMA user_version"), static_cast<std::int64_t>(steps.size()));
  EXPECT_EQ(db.number("SELECT count(*) FROM visit"), 2);
  // A step that fails leaves the version before it.
  steps.emplace_back("CREATE TABLE extra (b INTEGER) STRICT");
  EXPECT_THROW(store_sqlite::prepare(db, steps, true), store_sqlite::Failure);
  EXPECT_EQ(db.number("PRAGMA user_version"), static_cast<std::int64_t>(steps.size()) - 1);
}

// A database as version 1 wrote it, by hand: its own tables and one visit.
TEST_F(SqliteFile, OfVersionOneKeepsItsVisitsAndTakesSharedRolls) {
  {
    Connection db(path(), SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, 0);
    store_sqlite::prepare(db, {store_sqlite::migrations().front()}, true);
    db.execute("INSERT INTO club (id) VALUES ('sample');"
               "INSERT INTO change (club, author, recorded_at) VALUES (1, 'ann', '2026-05-04');"
               "INSERT INTO club_revision VALUES (1, 1, 1, 1, 'Sample', NULL, NULL, NULL, NULL, 0);"
               "INSERT INTO green (club, id) VALUES (1, '7');"
               "INSERT INTO green_revision VALUES (1, 1, 1, 1, '7', 'cool', '', NULL, NULL, 0);"
               "INSERT INTO walk VALUES (1, 1, 1, 1); INSERT INTO walk_green VALUES (1, 0, 1);"
               "INSERT INTO visit (club, id) VALUES (1, 'v1');"
               "INSERT INTO visit_revision VALUES (1, 1, 1, 1, 1, NULL, NULL, '2026-05-04', 420, "
               "NULL, NULL, NULL, NULL, NULL, NULL, 'dew gone', NULL, 0);"
               "INSERT INTO run VALUES (1, 0, 'A', 'out', 25, 3);");
    EXPECT_EQ(db.number("PRAGMA user_version"), 1);
  }
  Options look;
  look.read_only = true;
  EXPECT_EQ(refusal(look), "database_too_old");
  const auto store = open();
  EXPECT_EQ(number("PRAGMA user_version"),
            static_cast<std::int64_t>(store_sqlite::migrations().size()));
  auto records = store->load("sample").value();
  ASSERT_EQ(records.visits.size(), 1U);
  EXPECT_EQ(records.visits[0].note, "dew gone");
  EXPECT_EQ(records.visits[0].shared_rolls, "");
  EXPECT_EQ(records.visits[0].runs[0].total, 25);
  records.visits[0].shared_rolls = "s1";
  EXPECT_EQ(store->keep(records, author(), {}).value().corrected, 1);
  EXPECT_EQ(store->load("sample").value().visits[0].shared_rolls, "s1");
  EXPECT_EQ(number("SELECT count(*) FROM current_visit WHERE shared_rolls = 's1'"), 1);
  EXPECT_EQ(number("SELECT count(*) FROM visit_revision WHERE shared_rolls IS NULL"), 1);
}

TEST_F(SqliteFile, RefusesToChangeOrRemoveRawRows) {
  const auto store = open();
  ASSERT_TRUE(store->keep(sample_club(), author(), sample_files()));
  ASSERT_TRUE(store->keep_weather("heath", sample_weather(), author()));
  ASSERT_TRUE(store->keep_entries("heath", {journal_test::visit(1, journal_test::visit_fields())},
                                  author(), [](const auto&) { return services::Decision{}; }));
  ASSERT_TRUE(store->photos()->keep_picture("heath", journal_test::id(1),
                                            store_sqlite::sha256("picture"), "picture", author()));
  for (const std::string& table : store_sqlite::raw_tables()) {
    const std::string column =
        Connection(path(), SQLITE_OPEN_READONLY, 0)
            .word(fmt::format("SELECT name FROM pragma_table_info('{}') LIMIT 1", table));
    const auto rows = number("SELECT count(*) FROM " + table);
    EXPECT_GT(rows, 0) << table;
    EXPECT_THROW(execute(fmt::format("UPDATE {0} SET {1} = {1}", table, column)),
                 store_sqlite::Failure)
        << table;
    EXPECT_THROW(execute("DELETE FROM " + table), store_sqlite::Failure) << table;
    EXPECT_EQ(number("SELECT count(*) FROM " + table), rows) << table;
  }
}

TEST_F(SqliteFile, ShowsTheCurrentRecordsInViews) {
  green::Records records = sample_club();
  auto store = open();
  ASSERT_TRUE(store->keep(records, author(), {}));
  records.visits[1].runs[0].rolls[0].score = 6;
  ASSERT_TRUE(store->keep(records, author(), {}));
  EXPECT_EQ(number("SELECT count(*) FROM visit_revision"), 3);
  EXPECT_EQ(number("SELECT count(*) FROM current_visit"), 2);
  EXPECT_EQ(number("SELECT score FROM current_roll WHERE visit_id = 'v0'"), 6);
  EXPECT_EQ(number("SELECT count(*) FROM current_roll"), 7);
}

TEST_F(SqliteFile, KeepsEachReceivedContentOnce) {
  auto store = open();
  const services::ReceivedFile file{"rolls.csv", std::string(100000, 'r')};
  ASSERT_TRUE(store->keep(sample_club("heath"), author(), {file}));
  ASSERT_TRUE(store->keep(sample_club("mere"), author(), {file, {"copy.csv", file.content}}));
  EXPECT_EQ(number("SELECT count(*) FROM received_content"), 1);
  EXPECT_EQ(number("SELECT count(*) FROM received_file"), 3);
  EXPECT_EQ(store->received("mere")->size(), 2U);
}

// The page limit is SQLite's own way to meet a full disk: it fails with the very
// code, SQLITE_FULL, in the middle of the write.
TEST_F(SqliteFile, OnAFullDiskLosesNothing) {
  ASSERT_TRUE(open()->keep(sample_club(), author(), {}));
  Options small;
  small.largest_pages = static_cast<int>(number("PRAGMA page_count")) + 20;
  auto store = open(small);
  const auto full = store->keep(large_club("large", 3000), author(), {});
  ASSERT_FALSE(full);
  EXPECT_EQ(full.error().code, "disk_full");
  EXPECT_NE(units::sentence(full.error()).find("nothing was written"), std::string::npos);
  EXPECT_EQ(store->clubs()->size(), 1U);
  EXPECT_EQ(*store->load("heath"), sample_club());
  // A small record still fits, and with room the large one does.
  green::Records one = sample_club();
  one.visits[0].note = "short";
  EXPECT_TRUE(store->keep(one, author(), {}));
  store = open();
  EXPECT_TRUE(store->keep(large_club("large", 3000), author(), {}));
}

TEST_F(SqliteFile, OpenForReadingTakesNoWrite) {
  ASSERT_TRUE(open()->keep(sample_club(), author(), {}));
  Options options;
  options.read_only = true;
  auto store = open(options);
  const auto refused = store->keep(sample_club("mere"), author(), {});
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().code, "database_read_only");
  EXPECT_EQ(*store->load("heath"), sample_club());
}

// Tests may run as the super-user, whom no permission stops; a folder that
// cannot exist, below a file, stops everybody.
TEST_F(SqliteFile, InAFolderThatCannotBeMadeIsRefused) {
  write_bytes(folder_.file("file"), "x");
  const auto store = SqliteStore::open(folder_.file("file/club.sqlite3"));
  ASSERT_FALSE(store);
  EXPECT_EQ(store.error().code, "database_unreadable");
}

TEST_F(SqliteFile, LockedByAnotherProgramSaysSoAndLosesNothing) {
  Options hasty;
  hasty.busy_ms = 20;
  auto store = open(hasty);
  ASSERT_TRUE(store->keep(sample_club(), author(), {}));
  Connection other(path(), SQLITE_OPEN_READWRITE, 0);
  other.execute("BEGIN IMMEDIATE");
  green::Records records = sample_club();
  records.visits[0].note = "later";
  EXPECT_EQ(store->keep(records, author(), {}).error().code, "database_locked");
  EXPECT_EQ(*store->load("heath"), sample_club()) << "reading goes on";
  other.execute("ROLLBACK");
  EXPECT_TRUE(store->keep(records, author(), {}));
}

TEST_F(SqliteFile, DamagedIsToldAsDamaged) {
  ASSERT_TRUE(open()->keep(large_club("large", 500), author(), {}));
  std::string bytes = bytes_of(path());
  for (std::size_t page = 4; (page + 1) * 4096 <= bytes.size(); ++page) {
    bytes.replace(page * 4096, 64, std::string(64, '\xee'));
  }
  write_bytes(path(), bytes);
  const auto store = SqliteStore::open(path());
  const std::string code = store ? (*store)->load("large").error().code : store.error().code;
  EXPECT_EQ(code, "database_damaged");
}

} // namespace
} // namespace contract
