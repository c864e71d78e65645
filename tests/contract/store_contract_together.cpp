// Hand-ins that wait behind one another, and may share one commit.
#include "baize/services/entries_port.h"
#include "contract/sample_club.h"
#include "contract/store_contract.h"
#include "unit/journal_samples.h"

#include <atomic>
#include <chrono>
#include <future>
#include <map>
#include <thread>

namespace contract {
namespace {

using journal_test::entry;
using journal_test::id;
using journal_test::number;
using services::Around;
using services::Decision;
using services::KeptEntries;

class TogetherContract : public StoreContract {
 protected:
  void SetUp() override {
    if (store().entries() == nullptr) {
      GTEST_SKIP() << "this store keeps no entries";
    }
    ASSERT_TRUE(store().keep(sample_club(), author(), {}));
  }
  /// Hands one entry in from a thread of its own.
  std::future<units::Result<KeptEntries>> hand_in(int at, services::Decide decide,
                                                  const std::string& club = "heath") {
    return std::async(std::launch::async, [this, at, decide = std::move(decide), club] {
      return store().entries()->keep_entries(
          club, {entry(at, journal::Kind::roll, id(500000 + at), {{"score", number(7)}})}, author(),
          decide);
    });
  }
  /// Time for a thread to come to the queue; one that is late is only written later.
  static void settle() { std::this_thread::sleep_for(std::chrono::milliseconds(50)); }
};

/// Two visits with the same words in both, so that a half would show.
services::Decide two_visits(const std::string& name, const std::string& note) {
  return [=](const Around& /*around*/) {
    Decision decision;
    decision.records.club.id = "heath";
    for (const char* part : {"a", "b"}) {
      green::Visit made = sample_club().visits[0];
      made.id = name + part;
      made.note = note;
      made.shared_rolls.clear();
      decision.records.visits.push_back(made);
    }
    return decision;
  };
}

TEST_P(TogetherContract, OneThatFailsHarmsNoneAndTheOrderIsKept) {
  std::promise<void> gate;
  const std::shared_future<void> opened = gate.get_future().share();
  auto first = hand_in(1, [opened](const Around& /*around*/) {
    opened.wait();
    return Decision{};
  });
  settle();
  auto second = hand_in(2, two_visits("second", "kept"));
  settle();
  auto bad = hand_in(3, [](const Around& around) {
    Decision decision = two_visits("third", "lost")(around);
    decision.records.visits[1].green = "19"; // after one visit is written already
    return decision;
  });
  settle();
  auto elsewhere = hand_in(4, nothing, "fen");
  settle();
  auto last = hand_in(5, two_visits("last", "kept"));
  settle();
  gate.set_value();
  EXPECT_TRUE(first.get());
  const auto kept = second.get();
  ASSERT_TRUE(kept);
  EXPECT_EQ(kept->kept, std::vector{id(2)});
  EXPECT_EQ(kept->receipt.added, 2);
  EXPECT_EQ(bad.get().error().code, "unknown_green");
  EXPECT_EQ(elsewhere.get().error().code, "no_such_club");
  EXPECT_TRUE(last.get());
  reopen();
  const auto page = store().entries()->entries_since("heath", 0, 100);
  ASSERT_TRUE(page);
  std::vector<std::string> order;
  for (const journal::Entry& one : page->entries) {
    order.push_back(one.id);
  }
  EXPECT_EQ(order, (std::vector{id(1), id(2), id(5)}));
  EXPECT_EQ(store().load("heath")->visits.size(), sample_club().visits.size() + 4);
  EXPECT_EQ(store().history("heath", "visit", "thirda").error().code, "no_such_record");
}

// The second sees what the first came to, though both may be of one commit.
TEST_P(TogetherContract, EachSeesWhatCameBefore) {
  std::promise<void> gate;
  const std::shared_future<void> opened = gate.get_future().share();
  auto first = hand_in(1, [opened](const Around& around) {
    opened.wait();
    return two_visits("one", "first")(around);
  });
  settle();
  std::atomic<std::size_t> seen = 0;
  auto second = hand_in(2, [&](const Around& around) {
    seen = around.visits_beside(sample_club().visits[0].day, "").size();
    return two_visits("one", "second")(around);
  });
  auto again = hand_in(1, nothing);
  settle();
  gate.set_value();
  EXPECT_TRUE(first.get());
  EXPECT_EQ(second.get()->receipt.corrected, 2);
  EXPECT_EQ(again.get()->kept, std::vector{id(1)});
  EXPECT_GE(seen, 2U);
  EXPECT_EQ(store().history("heath", "visit", "onea")->size(), 2U);
}

TEST_P(TogetherContract, AReaderSeesAllOfAHandInOrNone) {
  std::atomic<bool> done = false;
  std::atomic<int> torn = 0;
  std::atomic<int> looked = 0;
  std::thread reader([&] {
    while (!done || looked == 0) {
      const auto seen = store().load("heath");
      std::map<std::string, std::vector<std::string>> notes;
      for (const green::Visit& visit : seen->visits) {
        if (visit.id.rfind("phone", 0) == 0) {
          notes[visit.id.substr(0, visit.id.size() - 1)].push_back(visit.note);
        }
      }
      for (const auto& [name, both] : notes) {
        torn += both.size() == 2 && both[0] == both[1] ? 0 : 1;
      }
      ++looked;
    }
  });
  std::vector<std::thread> phones;
  for (int phone = 0; phone < 6; ++phone) {
    phones.emplace_back([&, phone] {
      for (int i = 0; i < 10; ++i) {
        const auto put = two_visits("phone" + std::to_string(phone), "round " + std::to_string(i));
        EXPECT_TRUE(hand_in(100 * (phone + 1) + i, put).get());
      }
    });
  }
  for (std::thread& phone : phones) {
    phone.join();
  }
  done = true;
  reader.join();
  EXPECT_GT(looked, 0);
  EXPECT_EQ(torn, 0);
  EXPECT_EQ(store().load("heath")->visits.size(), sample_club().visits.size() + 12);
}

} // namespace

GTEST_ALLOW_UNINSTANTIATED_PARAMETERIZED_TEST(TogetherContract);
INSTANTIATE_TEST_SUITE_P(Made, TogetherContract, testing::ValuesIn(makers()),
                         [](const auto& one) { return one.param.name; });

} // namespace contract
