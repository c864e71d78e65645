// Photos in the SQLite store: the step from version 4, what keeps them whole, and
// that backups carry them.
#include "baize/entries_json/entries.h"
#include "baize/services/photos_port.h"
#include "baize/store_sqlite/maintenance.h"
#include "baize/store_sqlite/store.h"
#include "contract/folder.h"
#include "database.h"
#include "schema.h"
#include "unit/green_samples.h"
#include "unit/photo_samples.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using namespace photo_test;
using store_sqlite::Connection;
using store_sqlite::SqliteStore;

const services::Author kAnn{"ann", "2026-05-03T08:00:00Z"};

services::Decision nothing_decided(const services::Around& /*around*/) {
  return {};
}

std::string row_of(int arrival, const Entry& entry) {
  return "INSERT INTO entry (arrival, club, id, change, kind, thing, visit, over_one, contents) "
         "VALUES (" +
         std::to_string(arrival) + ", 1, '" + entry.id + "', 1, '" + std::string(name(entry.kind)) +
         "', '" + entry.thing + "', NULL, '', '" +
         entries_json::text(entries_json::to_json(entry)) + "');";
}

// A database as version 4 wrote it, with arrivals that have gaps.
TEST(PhotosInTheStore, AVersionFourDatabaseKeepsItsEntriesAndTakesPhotos) {
  const contract::Folder folder;
  const std::string path = folder.file("club.sqlite3");
  {
    auto steps = store_sqlite::migrations();
    ASSERT_GE(steps.size(), 5U);
    steps.resize(4);
    Connection db(path, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, 0);
    db.execute("PRAGMA foreign_keys = ON");
    store_sqlite::prepare(db, steps, true);
    db.execute("INSERT INTO club (id) VALUES ('hill');"
               "INSERT INTO change (club, author, recorded_at) VALUES (1, 'ann', '2026-05-04');"
               "INSERT INTO club_revision VALUES (1, 1, 1, 1, 'Hill', NULL, NULL, NULL, NULL, 0);" +
               row_of(3, visit(1, visit_fields())) + row_of(8, roll(2, roll_fields())));
    EXPECT_EQ(db.number("PRAGMA user_version"), 4);
  }
  const auto store = SqliteStore::open(path).value();
  const auto before = store->entries_since("hill", 0, 10).value();
  EXPECT_EQ(before.entries, (std::vector{visit(1, visit_fields()), roll(2, roll_fields())}));
  EXPECT_EQ(before.next, 8) << "numbers of arrival stay, for phones ask by them";
  ASSERT_TRUE(store->keep_entries("hill", {photo(3, photo_fields(jpeg()))}, kAnn, nothing_decided));
  EXPECT_EQ(store->entries_since("hill", 8, 10)->entries.size(), 1U);
  Connection db(path, SQLITE_OPEN_READWRITE, 1000);
  for (const char* sql : {"DELETE FROM entry", "UPDATE entry SET thing = 'x'"}) {
    EXPECT_THROW(db.execute(sql), store_sqlite::Failure) << "the guards are there again: " << sql;
  }
}

class KeptPhoto : public testing::Test {
 protected:
  void SetUp() override {
    store_ = SqliteStore::open(path_).value();
    ASSERT_TRUE(store_->keep(samples::records(), kAnn, {}));
    ASSERT_TRUE(
        store_->keep_entries("hill", {photo(3, photo_fields(picture_))}, kAnn, nothing_decided));
    ASSERT_TRUE(
        store_->photos()->keep_picture("hill", kPhoto, sha256_of(picture_), picture_, kAnn));
  }
  std::string keep(const std::string& photo, const std::string& told, const std::string& bytes,
                   const std::string& club = "hill") {
    const auto kept = store_->photos()->keep_picture(club, photo, told, bytes, kAnn);
    return kept ? "fine" : kept.error().code;
  }
  const std::string picture_ = jpeg();
  contract::Folder folder_;
  const std::string path_ = folder_.file("club.sqlite3");
  std::unique_ptr<SqliteStore> store_;
};

TEST_F(KeptPhoto, IsThereAfterOpeningAgain) {
  store_.reset();
  store_ = SqliteStore::open(path_).value();
  EXPECT_EQ(store_->photos()->picture("hill", kPhoto)->value(), picture_);
  EXPECT_FALSE(store_->photos()->picture("hill", id(1)).value().has_value());
  const auto told = store_->photos()->photos_told("hill", kVisit).value();
  EXPECT_EQ(told.entries.size(), 1U);
  EXPECT_EQ(told.here, std::set<std::string>{kPhoto});
  EXPECT_EQ(store_->photos()->photo_told("hill", kPhoto)->size(), 1U);
}

TEST_F(KeptPhoto, IsRefusedUnderAnotherChecksumIdOrClub) {
  const std::string other = jpeg(8, 8);
  EXPECT_EQ(keep(kPhoto, sha256_of(picture_), picture_), "fine");
  EXPECT_EQ(keep(kPhoto, sha256_of(other), other), "photo_differs");
  EXPECT_EQ(keep(id(5), sha256_of(picture_), other), "photo_not_as_told");
  EXPECT_EQ(keep(id(5), "", other), "photo_not_as_told");
  EXPECT_EQ(keep(id(5), sha256_of(other), other, "gone"), "no_such_club");
  EXPECT_FALSE(store_->photos()->picture("hill", id(5)).value().has_value());
}

TEST_F(KeptPhoto, IsNeverChangedNorRemoved) {
  Connection db(path_, SQLITE_OPEN_READWRITE, 1000);
  EXPECT_THROW(db.execute("DELETE FROM photo"), store_sqlite::Failure);
  EXPECT_THROW(db.execute("UPDATE photo SET content = x'00'"), store_sqlite::Failure);
}

TEST_F(KeptPhoto, TheDoctorSeesAChangedByte) {
  EXPECT_TRUE(store_sqlite::examine(path_, samples::kToday)->well());
  {
    Connection db(path_, SQLITE_OPEN_READWRITE, 1000);
    db.execute("DROP TRIGGER photo_refuses_UPDATE; UPDATE photo SET content = x'ffd8'");
  }
  const auto found = store_sqlite::examine(path_, samples::kToday).value();
  const auto says = [&](const std::string& words) {
    return std::any_of(found.wrong.begin(), found.wrong.end(), [&](const std::string& one) {
      return one.find(words) != std::string::npos;
    });
  };
  EXPECT_TRUE(says("1 photos are not as they were sent"));
  EXPECT_TRUE(says("Guards"));
}

TEST_F(KeptPhoto, ABackupCarriesIt) {
  const auto copy = store_sqlite::backup(path_, folder_.file("copy")).value();
  store_.reset();
  ASSERT_TRUE(store_sqlite::restore(copy.path, folder_.file("again"), false));
  store_ = SqliteStore::open(folder_.file("again")).value();
  EXPECT_EQ(store_->photos()->picture("hill", kPhoto)->value(), picture_);
  // The checksum is of the pictures too.
  {
    Connection db(copy.path, SQLITE_OPEN_READWRITE, 1000);
    db.execute("DROP TRIGGER photo_refuses_DELETE; DELETE FROM photo");
  }
  EXPECT_EQ(store_sqlite::check_copy(copy.path).error().code, "checksum_wrong");
}

} // namespace
