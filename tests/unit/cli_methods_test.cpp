// baize methods.
#include "baize/demo/demo_club.h"
#include "unit/cli_bench.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace cli_bench {
namespace {

class CliMethods : public testing::Test {
 protected:
  CliMethods() {
    static const baize::demo::DemoClub club = baize::demo::make(19);
    bench.store.records["rookwater"] = club.records;
    bench.ports.today = club.today;
  }
  Bench bench;
};

TEST_F(CliMethods, ListsMethodsAndPairs) {
  EXPECT_EQ(bench.run({"methods"}), 0) << bench.err();
  EXPECT_TRUE(bench.said("median (days)"));
  EXPECT_TRUE(bench.said("solid tining"));
  EXPECT_EQ(bench.run({"methods", "--csv"}), 0);
  EXPECT_EQ(bench.out().substr(0, bench.out().find("\r\n")),
            "method,works,greens,not_yet_back,median_days,days_from,days_to,median_growth-days,"
            "growth-days_from,growth-days_to,depth_points,depth_from,depth_to,loss_score-days,"
            "loss_from,loss_to");
  EXPECT_EQ(bench.run({"methods", "--list", "pairs", "--csv"}), 0);
  EXPECT_TRUE(bench.said("evidence"));
}

TEST_F(CliMethods, PartsAndRefuses) {
  EXPECT_EQ(bench.run({"methods", "--kind", "coring", "--by", "tine_diameter", "--cut", "10"}), 0)
      << bench.err();
  EXPECT_TRUE(bench.said("coring, tine diameter under 10 mm"));
  EXPECT_EQ(bench.run({"methods", "--by", "shoe_size"}), 2);
  EXPECT_EQ(bench.run({"methods", "--definition", "soon"}), 2);
  EXPECT_EQ(bench.run({"methods", "--club", "moor"}), 4);
}

TEST_F(CliMethods, BackMeansTheHeadlineWhereNothingIsSaid) {
  ASSERT_EQ(bench.run({"methods", "--json"}), 0) << bench.err();
  EXPECT_EQ(nlohmann::json::parse(bench.out())["definition"], "two_running");
}

TEST_F(CliMethods, JsonIsTheInterfacesOwn) {
  EXPECT_EQ(bench.run({"methods", "--json", "--definition", "own_level"}), 0) << bench.err();
  const auto json = nlohmann::json::parse(bench.out());
  EXPECT_EQ(json["definition"], "own_level");
  EXPECT_GT(json["methods"].size(), 3U);
}

} // namespace
} // namespace cli_bench
