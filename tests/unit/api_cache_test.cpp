#include "api_club.h"
#include "api_fakes.h"

#include <gtest/gtest.h>

#include <thread>

namespace {

using baize::api::ClubsCache;

baize::green::Records named(const std::string& id) {
  baize::green::Records records;
  records.club.id = id;
  return records;
}

TEST(ClubsCache, LoadsOnceUntilSomethingWasWritten) {
  made::FakeStore store;
  store.put(named("a"), {});
  ClubsCache cache(store);
  const auto first = cache.club("a", *store.change_number());
  const auto second = cache.club("a", *store.change_number());
  ASSERT_TRUE(first && second);
  EXPECT_EQ(*first, *second);
  EXPECT_EQ(store.loads, 1);
  auto changed = named("a");
  changed.club.name = "A";
  store.put(changed, {});
  EXPECT_EQ((*cache.club("a", *store.change_number()))->records.club.name, "A");
  EXPECT_EQ((*first)->records.club.name, "") << "an old snapshot stays as it was";
  EXPECT_EQ(store.loads, 2);
}

TEST(ClubsCache, KeepsTheClubsLastAskedFor) {
  made::FakeStore store;
  for (const char* id : {"a", "b", "c"}) {
    store.put(named(id), {});
  }
  const auto change = *store.change_number();
  ClubsCache cache(store, 2);
  for (const char* id : {"a", "b", "a", "c"}) {
    ASSERT_TRUE(cache.club(id, change));
    EXPECT_LE(cache.kept(), 2U);
  }
  EXPECT_EQ(store.loads, 3);
  ASSERT_TRUE(cache.club("a", change));
  EXPECT_EQ(store.loads, 3) << "a was asked for after b, so b went";
  ASSERT_TRUE(cache.club("b", change));
  EXPECT_EQ(store.loads, 4);
}

TEST(ClubsCache, ARefusalIsNotKept) {
  made::FakeStore store;
  ClubsCache cache(store);
  const auto none = cache.club("a", 1);
  ASSERT_FALSE(none);
  EXPECT_EQ(none.error().code, "no_such_club");
  EXPECT_EQ(cache.kept(), 0U);
  store.put(named("a"), {});
  EXPECT_TRUE(cache.club("a", *store.change_number()));
}

TEST(ClubsCache, ACrowdLoadsOnce) {
  made::FakeStore store;
  store.put(made::club(), made::weather());
  ClubsCache cache(store);
  const auto change = *store.change_number();
  std::vector<std::jthread> crowd;
  std::atomic<int> good{0};
  for (int i = 0; i < 8; ++i) {
    crowd.emplace_back([&] { good += cache.club("c/1", change) ? 1 : 0; });
  }
  crowd.clear();
  EXPECT_EQ(good, 8);
  EXPECT_EQ(store.loads, 1);
}

// Writers and readers at once: no reader sees a club older than the number it
// asked with. (The thread sanitizer watches this one too.)
TEST(ClubsCache, NeverOlderThanAskedFor) {
  made::FakeStore store;
  store.put(named("a"), {});
  ClubsCache cache(store);
  std::atomic<bool> done{false};
  std::atomic<int> stale{0};
  std::vector<std::jthread> readers;
  for (int i = 0; i < 3; ++i) {
    readers.emplace_back([&] {
      while (!done) {
        const auto change = *store.change_number();
        const auto club = cache.club("a", change);
        stale += club && (*club)->change >= change ? 0 : 1;
      }
    });
  }
  for (int i = 0; i < 200; ++i) {
    store.put(named("a"), {});
  }
  done = true;
  readers.clear();
  EXPECT_EQ(stale, 0);
}

} // namespace
