// Two observers at one green within days.
#include "baize/observers/nearby.h"
#include "unit/observers_samples.h"

#include <gtest/gtest.h>

namespace {

using namespace observers_test;
using observers::nearby_pairs;

/// Not shared: another id each.
green::Visit alone(const std::string& observer, const std::string& on,
                   const std::vector<int>& out) {
  return visit(observer, day(on), {}, out);
}

// Ann 8 on the 1st; Bob 7 on the 2nd and 6 on the 3rd: the nearest pairs, the other
// has nobody left. May: Ann 9, Bob 7, three days apart: too far.
TEST(Nearby, TheNearestVisitOnce) {
  const auto records = club({alone("ann", "2025-04-01", {8}), alone("bob", "2025-04-02", {7}),
                             alone("bob", "2025-04-03", {6}), alone("ann", "2025-05-01", {9}),
                             alone("bob", "2025-05-04", {7})});
  const auto pairs = nearby_pairs(records, kToday);
  ASSERT_EQ(pairs.size(), 1U);
  EXPECT_EQ(pairs[0].first, "bob"); // the club's order
  EXPECT_EQ(pairs[0].second, "ann");
  EXPECT_EQ(pairs[0].pairs, 1);
  EXPECT_EQ(pairs[0].bias.value, -1);
  EXPECT_FALSE(pairs[0].bias.interval);
  observers::NearbyOptions wide;
  wide.days = 3;
  EXPECT_EQ(nearby_pairs(records, kToday, wide)[0].pairs, 2);
}

TEST(Nearby, LeavesOutWorksSharedBallsAndTheFuture) {
  auto records = club({alone("ann", "2025-04-01", {8}), alone("bob", "2025-04-02", {7})});
  green::Work work;
  work.id = "w";
  work.kind = "coring";
  work.day = day("2025-04-02");
  records.works.push_back(work);
  EXPECT_TRUE(nearby_pairs(records, kToday).empty());
  records.works.clear();
  EXPECT_TRUE(nearby_pairs(records, day("2025-04-01")).empty());
  EXPECT_EQ(nearby_pairs(records, kToday).size(), 1U);
  for (auto& one : records.visits) {
    one.shared_rolls = "s";
  }
  EXPECT_TRUE(nearby_pairs(records, kToday).empty());
}

TEST(Nearby, RefusesSillyDays) {
  observers::NearbyOptions options;
  options.days = -1;
  EXPECT_EQ(options.problem()->code, "option_out_of_range");
  EXPECT_TRUE(nearby_pairs(three_sessions(), kToday, options).empty());
}

} // namespace
