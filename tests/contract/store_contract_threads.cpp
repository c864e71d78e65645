// Many writers, readers beside them, and a writer that dies.
#include "contract/sample_club.h"
#include "contract/store_contract.h"

#include <array>
#include <atomic>
#include <chrono>
#include <csignal>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace contract {
namespace {

TEST_P(StoreContract, WritersStandInLineAndNothingIsLost) {
  green::Records base = sample_club();
  base.visits.clear();
  ASSERT_TRUE(store().keep(base, author(), {}));
  constexpr int kThreads = 6;
  constexpr int kEach = 10;
  std::vector<std::thread> threads;
  std::atomic<int> failed = 0;
  for (int thread = 0; thread < kThreads; ++thread) {
    threads.emplace_back([&, thread] {
      for (int i = 0; i < kEach; ++i) {
        green::Records one;
        one.club.id = "heath";
        green::Visit visit = sample_club().visits[1];
        visit.id = std::to_string(thread) + "-" + std::to_string(i);
        one.visits = {visit};
        failed += store().keep(one, author(), {}) ? 0 : 1;
      }
    });
  }
  for (std::thread& thread : threads) {
    thread.join();
  }
  EXPECT_EQ(failed, 0);
  EXPECT_EQ(store().load("heath")->visits.size(), static_cast<std::size_t>(kThreads * kEach));
}

// Every write moves two visits together; a reader that saw only one moved would
// have looked into the middle of a write.
TEST_P(StoreContract, AReaderNeverSeesTheMiddleOfAWrite) {
  green::Records records = sample_club();
  for (green::Visit& visit : records.visits) {
    visit.note = "at first";
  }
  ASSERT_TRUE(store().keep(records, author(), {}));
  std::atomic<bool> done = false;
  std::atomic<int> torn = 0;
  std::atomic<int> looked = 0;
  std::thread reader([&] {
    while (!done || looked == 0) {
      const auto seen = store().load("heath");
      ++looked;
      const bool together = seen && seen->visits[0].note == seen->visits[1].note;
      torn += together ? 0 : 1;
    }
  });
  for (int i = 0; i < 40; ++i) {
    for (green::Visit& visit : records.visits) {
      visit.note = "round " + std::to_string(i);
    }
    ASSERT_TRUE(store().keep(records, author(), {}));
  }
  done = true;
  reader.join();
  EXPECT_GT(looked, 0);
  EXPECT_EQ(torn, 0);
}

TEST_P(StoreContract, AWriteBySomebodyElseIsSeen) {
  const auto other = place().open();
  ASSERT_TRUE(store().keep(sample_club(), author(), {}));
  const auto before = *other->change_number();
  EXPECT_EQ(*other->load("heath"), sample_club());
  green::Records records = sample_club();
  records.visits[0].note = "another hand";
  ASSERT_TRUE(other->keep(records, author(), {}));
  EXPECT_GT(*store().change_number(), before);
  EXPECT_EQ(*store().load("heath"), records);
}

/// A child process that keeps `records` and is killed after `wait`; true when it
/// had ended by itself before.
bool kill_while_keeping(Place& place, const green::Records& records,
                        std::chrono::microseconds wait) {
  std::array<int, 2> ready{};
  EXPECT_EQ(::pipe(ready.data()), 0);
  const pid_t child = ::fork();
  if (child == 0) {
    auto store = place.open();
    const char go = 'g';
    const bool told = ::write(ready[1], &go, 1) == 1;
    const bool kept = told && store->keep(records, author(), {}).has_value();
    ::_exit(kept ? 0 : 1);
  }
  char go = 0;
  EXPECT_EQ(::read(ready[0], &go, 1), 1);
  ::close(ready[0]);
  ::close(ready[1]);
  std::this_thread::sleep_for(wait);
  ::kill(child, SIGKILL);
  int status = 0;
  ::waitpid(child, &status, 0);
  return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

TEST_P(StoreContract, AKilledWriterLeavesAllOrNothing) {
  ASSERT_TRUE(store().keep(sample_club(), author(), {}));
  close();
  const green::Records large = large_club("large", 2000);
  int kept = 0;
  int cut = 0;
  for (int round = 0; round < 12; ++round) {
    green::Records records = large;
    records.club.id = "large" + std::to_string(round);
    const bool ended =
        kill_while_keeping(place(), records, std::chrono::microseconds(500 << (round / 2)));
    reopen();
    EXPECT_EQ(*store().load("heath"), sample_club());
    const auto loaded = store().load(records.club.id);
    if (loaded) {
      ++kept;
      EXPECT_EQ(loaded->visits.size(), records.visits.size());
      EXPECT_EQ(loaded->greens, records.greens);
    } else {
      ++cut;
      EXPECT_FALSE(ended) << "the writer said it was done, and nothing is there";
      EXPECT_EQ(loaded.error().code, "no_such_club");
    }
    ASSERT_TRUE(store().keep(records, author(), {})) << "and the store goes on";
    EXPECT_EQ(store().load(records.club.id)->visits.size(), records.visits.size());
    close();
  }
  EXPECT_EQ(kept + cut, 12);
  EXPECT_GT(cut, 0) << "no writer was cut off, so nothing was tried";
}

} // namespace
} // namespace contract
