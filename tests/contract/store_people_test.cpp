// People in the SQLite store: the step from version 3, and what keeps them whole.
#include "baize/store_sqlite/maintenance.h"
#include "contract/sample_club.h"
#include "database.h"
#include "schema.h"
#include "unit/people_world.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace contract {
namespace {

using people_test::TwoClubs;
using services::Role;
using store_sqlite::Connection;
using store_sqlite::SqliteStore;

template <class T> std::string code(const units::Result<T>& result) {
  return result ? "fine" : result.error().code;
}

// A database as version 3 wrote it: its own steps, a club and an entry.
TEST(PeopleInTheStore, AVersionThreeDatabaseTakesPeople) {
  const Folder folder;
  const std::string path = folder.file("club.sqlite3");
  {
    auto steps = store_sqlite::migrations();
    ASSERT_GE(steps.size(), 4U);
    steps.resize(3);
    Connection db(path, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, 0);
    db.execute("PRAGMA foreign_keys = ON");
    store_sqlite::prepare(db, steps, true);
    db.execute(
        "INSERT INTO club (id) VALUES ('heath');"
        "INSERT INTO change (club, author, recorded_at) VALUES (1, 'ann', '2026-05-04');"
        "INSERT INTO club_revision VALUES (1, 1, 1, 1, 'Heath', NULL, NULL, NULL, NULL, 0);"
        "INSERT INTO entry (club, id, change, kind, thing, visit, over_one, contents) VALUES "
        "(1, '0192f0c1-2a3b-7c4d-8e5f-0123456789ab', 1, 'visit', 'x', NULL, '', '{}');");
    EXPECT_EQ(db.number("PRAGMA user_version"), 3);
    EXPECT_EQ(db.number("SELECT count(*) FROM sqlite_schema WHERE name = 'person'"), 0);
  }
  const auto store = SqliteStore::open(path).value();
  EXPECT_EQ(Connection(path, SQLITE_OPEN_READONLY, 0).number("PRAGMA user_version"),
            static_cast<std::int64_t>(store_sqlite::migrations().size()));
  EXPECT_TRUE(store->people()->people().value().empty());
  EXPECT_EQ(store->change_number().value(), 1);
  EXPECT_EQ(Connection(path, SQLITE_OPEN_READONLY, 0).number("SELECT count(*) FROM entry"), 1);
  people_test::PlainSecrets secrets;
  services::People people(*store->people(), secrets, [] { return 1000; });
  EXPECT_TRUE(people.add("Bea", people_test::kPassword, "heath", Role::observer));
  EXPECT_EQ(store->people()->people().value().size(), 1U);
}

TEST(PeopleInTheStore, NamesAndClubsAreHeldTo) {
  TwoClubs world;
  services::Person twin = world.person("hill_reader");
  twin.id = "twin";
  EXPECT_EQ(code(world.kept().add_person(twin)), "name_taken");
  twin.name_key = "twin";
  twin.clubs = {{"lake", Role::reader}};
  EXPECT_EQ(code(world.kept().add_person(twin)), "no_such_club");
  EXPECT_FALSE(world.kept().person_named("twin").value()) << "nothing half-done";
  EXPECT_EQ(code(world.kept().set_role("none", "hill", Role::reader, false)), "no_such_person");
  EXPECT_EQ(
      code(world.kept().set_role(world.person("hill_reader").id, "lake", Role::reader, false)),
      "no_such_club");
}

TEST(PeopleInTheStore, PeopleAreNoRecords) {
  TwoClubs world;
  const auto change = world.store->change_number().value();
  world.sign_in("hill_reader");
  EXPECT_EQ(world.store->change_number().value(), change);
  EXPECT_EQ(world.store->load("hill").value().observers.size(), 1U) << "an account is no observer";
}

TEST(PeopleInTheStore, ABackupHoldsThemAndItsChecksumKnows) {
  TwoClubs world;
  const Folder folder;
  const std::string copy = folder.file("copy.sqlite3");
  ASSERT_TRUE(store_sqlite::backup(world.path(), copy));
  EXPECT_EQ(store_sqlite::check_copy(copy).value().sha256, world.contents());
  {
    const auto again = SqliteStore::open(copy).value();
    EXPECT_EQ(again->people()->people().value().size(), 8U);
  }
  Connection(copy, SQLITE_OPEN_READWRITE, 0)
      .execute("UPDATE person_role SET role = 'head_greenkeeper' WHERE role = 'reader'");
  EXPECT_EQ(code(store_sqlite::check_copy(copy)), "checksum_wrong");
}

TEST(PeopleInTheStore, TheDoctorSeesWhatWasAltered) {
  TwoClubs world;
  const auto today = day(2026, 6, 30);
  EXPECT_TRUE(store_sqlite::examine(world.path(), today).value().well());
  {
    Connection db(world.path(), SQLITE_OPEN_READWRITE, 0);
    db.execute("PRAGMA ignore_check_constraints = ON");
    db.execute("UPDATE person SET password_hash = 'open' WHERE name = 'hill_reader'");
  }
  const auto found = store_sqlite::examine(world.path(), today).value();
  EXPECT_FALSE(found.well());
  EXPECT_TRUE(std::any_of(found.wrong.begin(), found.wrong.end(), [](const std::string& line) {
    return line.find("altered from outside") != std::string::npos;
  }));
  Connection(world.path(), SQLITE_OPEN_READWRITE, 0)
      .execute("DELETE FROM person_role WHERE role = 'head_greenkeeper'");
  const auto headless = store_sqlite::examine(world.path(), today).value();
  ASSERT_FALSE(headless.remarks.empty());
  EXPECT_NE(headless.remarks.front().find("no head greenkeeper"), std::string::npos);
}

} // namespace
} // namespace contract
