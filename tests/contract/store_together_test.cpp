// How hand-ins share a commit in the SQLite store.
#include "baize/store_sqlite/store.h"
#include "contract/folder.h"
#include "contract/sample_club.h"
#include "group.h"
#include "open.h"
#include "unit/journal_samples.h"

#include <gtest/gtest.h>

#include <atomic>
#include <future>
#include <thread>

namespace contract {
namespace {

using journal_test::entry;
using journal_test::id;
using journal_test::text;
using services::Around;
using services::Decision;
using store_sqlite::Options;
using store_sqlite::SqliteStore;

class Together : public testing::Test {
 protected:
  void open(const Options& options = {}) {
    store_ = std::move(*SqliteStore::open(folder_.file("club.sqlite3"), options));
    ASSERT_TRUE(store_->keep(sample_club(), author(), {}));
  }
  using Told = units::Result<services::KeptEntries>;
  std::future<Told> hand_in(int at, std::size_t bytes, std::shared_future<void> gate = {}) {
    return std::async(std::launch::async, [=, this] {
      return store_->keep_entries("heath",
                                  {entry(at, journal::Kind::roll, id(500000 + at),
                                         {{"note", text(std::string(bytes, 'x'))}})},
                                  author(), [this, gate](const Around& /*around*/) {
                                    if (gate.valid()) {
                                      begun_ = true;
                                      gate.wait();
                                    }
                                    return Decision{};
                                  });
    });
  }
  /// Until this many stand in the queue: they then go together.
  void wait_for(std::int64_t waiting) const {
    while (store_->figures().waiting != waiting) {
      std::this_thread::sleep_for(std::chrono::milliseconds(1));
    }
  }
  std::size_t kept() const { return store_->entries_since("heath", 0, 1000)->entries.size(); }

  /// Until the one with the gate is being written.
  void wait_until_begun() const {
    while (!begun_) {
      std::this_thread::sleep_for(std::chrono::milliseconds(1));
    }
  }
  Folder folder_;
  std::unique_ptr<SqliteStore> store_;
  std::atomic<bool> begun_ = false;
};

TEST_F(Together, ThoseThatWaitShareOneCommit) {
  open();
  const auto before = store_->figures();
  std::promise<void> gate;
  std::vector<std::future<Told>> all;
  all.push_back(hand_in(1, 10, gate.get_future().share()));
  wait_until_begun();
  for (int i = 2; i <= 11; ++i) {
    all.push_back(hand_in(i, 10));
  }
  wait_for(10);
  gate.set_value();
  for (auto& one : all) {
    EXPECT_TRUE(one.get());
  }
  const auto after = store_->figures();
  EXPECT_EQ(after.writes - before.writes, 11);
  EXPECT_EQ(after.commits - before.commits, 2) << "the first alone, then the ten that waited";
  EXPECT_EQ(after.waiting, 0);
  EXPECT_EQ(kept(), 11U);
}

TEST_F(Together, OneTooLargeForTheDiskHarmsNone) {
  Options options;
  options.largest_pages = 400;
  open(options);
  std::promise<void> gate;
  auto first = hand_in(1, 10, gate.get_future().share());
  wait_until_begun();
  auto small = hand_in(2, 10);
  wait_for(1);
  auto large = hand_in(3, 4'000'000);
  wait_for(2);
  auto last = hand_in(4, 10);
  wait_for(3);
  gate.set_value();
  EXPECT_TRUE(first.get());
  EXPECT_TRUE(small.get());
  EXPECT_EQ(large.get().error().code, "disk_full");
  EXPECT_TRUE(last.get());
  EXPECT_EQ(kept(), 3U);
}

// What SQLite itself takes back is written again, one by one and in order.
TEST(Group, LostAsAWholeIsTriedOneByOne) {
  const Folder folder;
  const auto db = store_sqlite::open_database(folder.file("club.sqlite3"), {});
  db->execute("CREATE TABLE seen (n INTEGER)");
  int calls = 0;
  std::vector<store_sqlite::Write> writes(3);
  std::vector<store_sqlite::Write*> group;
  for (int i = 0; i < 3; ++i) {
    writes[static_cast<std::size_t>(i)].work = [&calls, i](store_sqlite::Connection& on,
                                                           bool& changed) {
      on.use("INSERT INTO seen VALUES (?)").run(i);
      changed = true;
      if (++calls == 2) {
        on.rest();
        on.execute("ROLLBACK"); // as SQLite does when it runs out of disk
      }
    };
    group.push_back(&writes[static_cast<std::size_t>(i)]);
  }
  EXPECT_EQ(store_sqlite::write_group(*db, group), 3);
  EXPECT_EQ(calls, 5);
  EXPECT_EQ(db->word("SELECT group_concat(n) FROM (SELECT n FROM seen ORDER BY rowid)"), "0,1,2");
  for (const auto& one : writes) {
    EXPECT_FALSE(one.error);
  }
}

TEST(Group, ADatabaseThatAnotherHoldsIsRefusedToAll) {
  const Folder folder;
  Options options;
  options.busy_ms = 10;
  const auto db = store_sqlite::open_database(folder.file("club.sqlite3"), options);
  const auto other = store_sqlite::open_database(folder.file("club.sqlite3"), options);
  const store_sqlite::Transaction held(*other, store_sqlite::Transaction::Kind::write);
  std::vector<store_sqlite::Write> writes(2);
  std::vector<store_sqlite::Write*> group{writes.data(), &writes[1]};
  for (auto& one : writes) {
    one.work = [](store_sqlite::Connection&, bool&) { FAIL() << "nothing may begin"; };
  }
  EXPECT_EQ(store_sqlite::write_group(*db, group), 0);
  for (const auto& one : writes) {
    EXPECT_THROW(std::rethrow_exception(one.error), store_sqlite::Failure);
  }
}

} // namespace
} // namespace contract
