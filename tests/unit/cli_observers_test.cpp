// baize observers.
#include "unit/cli_bench.h"
#include "unit/observers_samples.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace cli_bench {
namespace {

class CliObservers : public testing::Test {
 protected:
  CliObservers() {
    auto records = observers_test::three_sessions();
    records.club.id = "heath";
    bench.store.records["heath"] = records;
  }
  Bench bench;
};

TEST_F(CliObservers, ListsEachAgainstTheOthers) {
  EXPECT_EQ(bench.run({"observers"}), 0) << bench.err();
  // Mean 1, error 0.58 over three sessions: t(2) = 4.30 takes the interval past 0.
  EXPECT_TRUE(bench.said("No observer can be told apart from the others over the same balls."));
  EXPECT_TRUE(bench.said("difference (points)"));
  EXPECT_EQ(bench.run({"observers", "--csv"}), 0);
  EXPECT_EQ(bench.out().substr(0, bench.out().find("\r\n")),
            "observer,name,visits,shared_rolls,difference_points,from,to,change_points_a_year,p");
  EXPECT_TRUE(bench.said("ann,ann,3,6,1,"));
}

TEST_F(CliObservers, ListsPairsQuartersAndNeighbours) {
  EXPECT_EQ(bench.run({"observers", "--list", "pairs", "--csv"}), 0);
  EXPECT_TRUE(bench.said("bob,ann,rolls,6,-1,"));
  EXPECT_EQ(bench.run({"observers", "--list", "quarters", "--csv"}), 0);
  EXPECT_TRUE(bench.said("ann,2025,2,4,0.5,,"));
  EXPECT_EQ(bench.run({"observers", "--list", "nearby"}), 0);
  EXPECT_EQ(bench.run({"observers", "--list", "everything"}), 2);
}

TEST_F(CliObservers, ConsistencySaysWhenThereIsTooLittle) {
  EXPECT_EQ(bench.run({"consistency", "--year", "2025"}), 0) << bench.err();
  EXPECT_TRUE(bench.said("Too few greens were scored on the same day"));
  EXPECT_EQ(bench.run({"consistency", "--list", "spots", "--year", "2025", "--csv"}), 0);
  EXPECT_EQ(bench.run({"consistency", "--list", "parts"}), 0);
  EXPECT_EQ(bench.run({"consistency", "--year", "1066"}), 2);
  EXPECT_EQ(bench.run({"consistency", "--json"}), 0);
  EXPECT_EQ(nlohmann::json::parse(bench.out())["greens"].size(), 1U);
}

TEST_F(CliObservers, JsonIsTheInterfacesOwn) {
  EXPECT_EQ(bench.run({"observers", "--json"}), 0);
  const auto json = nlohmann::json::parse(bench.out());
  EXPECT_EQ(json["sessions"], 3);
  EXPECT_EQ(json["pairs"][0]["first"], "bob");
  EXPECT_EQ(bench.run({"observers", "--club", "moor"}), 4);
}

} // namespace
} // namespace cli_bench
