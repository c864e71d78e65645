// Small parts inside the SQLite store.
#include "around.h"
#include "entry_rows.h"
#include "kind.h"
#include "photo_rows.h"
#include "schema.h"
#include "sha256.h"

#include <gtest/gtest.h>

namespace baize::store_sqlite {
namespace {

// Examples of FIPS 180-4 as NIST publishes them beside the standard ("abc", the
// two-block message, a million times "a"; the empty message), from memory.
TEST(Sha256, GivesThePublishedExamples) {
  EXPECT_EQ(sha256(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  EXPECT_EQ(sha256("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
            "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  EXPECT_EQ(sha256(std::string(1000000, 'a')),
            "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST(Sha256, DoesNotDependOnThePieces) {
  const std::string text(1000, 'q');
  for (const std::size_t size : {1U, 7U, 55U, 56U, 63U, 64U, 65U, 999U}) {
    Sha256 sum;
    for (std::size_t at = 0; at < text.size(); at += size) {
      sum.add(std::string_view(text).substr(at, size));
    }
    EXPECT_EQ(sum.hex(), sha256(text)) << size;
  }
}

using Ids = std::vector<std::string>;

TEST(Walk, NewGreensStandBesideTheirNeighbours) {
  EXPECT_EQ(merged_walk({}, {"3", "1", "2"}), (Ids{"3", "1", "2"}));
  EXPECT_EQ(merged_walk({"2", "3"}, {"1", "2", "3"}), (Ids{"1", "2", "3"}));
  EXPECT_EQ(merged_walk({"1", "2"}, {"9"}), (Ids{"1", "2", "9"}));
  EXPECT_EQ(merged_walk({"1", "2"}, {"1", "8", "9", "2"}), (Ids{"1", "8", "9", "2"}));
  EXPECT_EQ(merged_walk({"1", "2", "3", "4"}, {"4", "2"}), (Ids{"1", "4", "3", "2"}));
  EXPECT_EQ(merged_walk({"1", "2"}, {}), (Ids{"1", "2"}));
}

/// How SQLite would go about a query, in its own words.
std::string plan_of(Connection& db, const std::string& sql) {
  Statement& rows = db.use("EXPLAIN QUERY PLAN " + sql);
  rows.start();
  std::string plan;
  while (rows.next()) {
    for (int skipped = 0; skipped < 3; ++skipped) {
      rows.integer();
    }
    plan += rows.text() + "\n";
  }
  return plan;
}

// A club of ten years has thousands of visits; what a phone hands in, or asks, touches a few.
TEST(Questions, OfPhonesDoNotWalkThroughTheClub) {
  Connection db(":memory:", SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, 0);
  prepare(db, migrations(), true);
  const std::string by_day = plan_of(db, visits_beside_sql(Beside::day));
  EXPECT_EQ(by_day.find("SEARCH r USING INDEX visit_by_day (day=?)"), 0U) << by_day;
  const std::string shared = plan_of(db, visits_beside_sql(Beside::shared_rolls));
  EXPECT_EQ(shared.find("SEARCH r USING INDEX visit_by_shared_rolls (shared_rolls=?)"), 0U)
      << shared;
  const std::string owners = plan_of(db, kOwnersSql);
  EXPECT_EQ(owners.find("SEARCH entry USING INDEX entry_by_thing (club=? AND thing=?)"), 0U)
      << owners;
  EXPECT_EQ(plan_of(db, kNewEntriesSql), "SEARCH entry USING INTEGER PRIMARY KEY (rowid>?)\n");
  for (const char* of_photos : {kPhotosSql, kPhotoOwnersSql}) {
    EXPECT_EQ(plan_of(db, of_photos), "SEARCH entry USING INDEX entry_of_photo (club=?)\n");
  }
}

TEST(Problems, OfTheDatabaseNameWhatCanBeDone) {
  EXPECT_EQ(problem_of(SQLITE_FULL, "x", "").code, "disk_full");
  EXPECT_EQ(problem_of(SQLITE_READONLY_DIRECTORY, "x", "").code, "database_read_only");
  EXPECT_EQ(problem_of(SQLITE_IOERR_READ, "x", "").code, "database_unreadable");
  EXPECT_EQ(problem_of(SQLITE_BUSY_SNAPSHOT, "x", "").code, "database_locked");
  EXPECT_EQ(problem_of(SQLITE_NOMEM, "x", "no memory").code, "database_trouble");
}

} // namespace
} // namespace baize::store_sqlite
