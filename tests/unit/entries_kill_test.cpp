// The server is killed (SIGKILL) at random moments while phones hand in a
// thousand visits: what it acknowledged is there, whole, once, and as a record.
#include "baize/entries_json/entries.h"
#include "baize/store_sqlite/maintenance.h"
#include "baize/store_sqlite/store.h"
#include "contract/folder.h"
#include "unit/entries_kill.h"
#include "unit/green_samples.h"
#include "unit/journal_samples.h"

#include <gtest/gtest.h>

#include <atomic>
#include <random>
#include <set>
#include <thread>

namespace {

using namespace journal_test;
using Json = nlohmann::json;

constexpr int kVisits = 1000;
constexpr int kPhones = 4;
constexpr int kKills = 30;

/// Visit `number` with one roll, each on a day of its own so that none overlaps.
std::vector<Entry> visit_of(int number) {
  auto fields = visit_fields();
  auto rolls = roll_fields();
  for (auto& member : fields) {
    if (member.name == "day") {
      member.value = text(units::iso(samples::kToday - number));
    }
  }
  for (auto& member : rolls) {
    if (member.name == "visit") {
      member.value = text(id(100000 + number));
    }
  }
  return {entry(2 * number + 1, Kind::visit, id(100000 + number), fields),
          entry(2 * number + 2, Kind::roll, id(200000 + number), rolls)};
}

/// Hands a visit in again and again until the server has acknowledged it.
void hand_in(const std::atomic<std::uint16_t>& port, int number) {
  const auto entries = visit_of(number);
  const std::string body =
      entries_json::write_package({kPhone, "2026-05-03T08:00:00Z", entries, {}});
  for (;;) {
    const std::string answer = killed::post(port, "/api/v1/clubs/hill/entries", body);
    if (answer.empty()) {
      std::this_thread::sleep_for(std::chrono::milliseconds(5));
      continue;
    }
    const Json receipt = Json::parse(answer);
    EXPECT_EQ(receipt["kept"], (Json{entries[0].id, entries[1].id})) << answer;
    EXPECT_EQ(receipt["visits"][0]["state"], "accepted") << answer;
    return;
  }
}

/// Kills the server and starts it again until all is done, at least kKills times.
int trouble(killed::Process& server, std::atomic<std::uint16_t>& port,
            const std::atomic<int>& acknowledged) {
  std::mt19937 random(20260503);
  std::uniform_int_distribution<int> pause(20, 250);
  int kills = 0;
  while (acknowledged < kVisits && kills < kKills) {
    std::this_thread::sleep_for(std::chrono::milliseconds(pause(random)));
    server.kill();
    ++kills;
    if (!server.start()) {
      return -1;
    }
    port = server.port();
  }
  return kills;
}

TEST(EntriesKill, WhatWasAcknowledgedIsThere) {
  const contract::Folder folder;
  const std::string database = folder.file("club.sqlite3");
  {
    green::Records club = samples::records();
    club.visits.clear();
    ASSERT_TRUE((*store_sqlite::SqliteStore::open(database))
                    ->keep(club, {"ann", "2026-05-01T00:00:00Z"}, {}));
  }
  killed::Process server(database);
  ASSERT_TRUE(server.start());
  std::atomic<std::uint16_t> port = server.port();
  std::atomic<int> next = 0;
  std::atomic<int> acknowledged = 0;
  std::vector<std::thread> phones;
  for (int i = 0; i < kPhones; ++i) {
    phones.emplace_back([&] {
      for (int number = next++; number < kVisits; number = next++) {
        hand_in(port, number);
        ++acknowledged;
      }
    });
  }
  const int kills = trouble(server, port, acknowledged);
  for (std::thread& phone : phones) {
    phone.join();
  }
  server.kill();
  EXPECT_GE(kills, kKills / 2) << "the server was too fast to be killed";
  RecordProperty("kills", kills);

  const auto store = store_sqlite::SqliteStore::open(database);
  ASSERT_TRUE(store);
  std::vector<Entry> expected;
  for (int number = 0; number < kVisits; ++number) {
    for (Entry& one : visit_of(number)) {
      expected.push_back(std::move(one));
    }
  }
  std::vector<Entry> found = (*store)->entries_since("hill", 0, 10 * kVisits)->entries;
  std::sort(found.begin(), found.end(), journal::before);
  EXPECT_EQ(found, expected);
  EXPECT_EQ((*store)->load("hill")->visits.size(), static_cast<std::size_t>(kVisits));
  const auto findings = store_sqlite::examine(database, samples::kToday);
  ASSERT_TRUE(findings);
  EXPECT_EQ(findings->wrong, std::vector<std::string>{});
}

} // namespace
