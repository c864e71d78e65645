// Growth potential: the formula of Gelernter W, Stowell L (2005), Improved
// overseeding programs, Golf Course Management. The coefficients in degrees C
// and the four cases are common practice, no published source.
#include "baize/climate/growth.h"
#include "reference/climate_data.h"

#include <algorithm>

namespace baize::climate {
namespace {

using climate_reference::cases;
using climate_reference::read_csv;

constexpr GrowthOptions kWarmPlateau{31, 7, true};

TEST(GrowthPotential, CoefficientsAreThoseOfTheReference) {
  const auto reference = climate_reference::read_json("growth_potential.json");
  const auto& c = reference.at("coefficients_C");
  EXPECT_EQ(kCoolSeason.optimum_c, c.at("C3").at("opt").get<double>());
  EXPECT_EQ(kCoolSeason.spread_c, c.at("C3").at("var").get<double>());
  EXPECT_EQ(kWarmSeason.optimum_c, c.at("C4").at("opt").get<double>());
  EXPECT_EQ(kWarmSeason.spread_c, c.at("C4").at("var").get<double>());
}

TEST(GrowthPotential, Table) {
  const auto rows = read_csv("growth_potential_table.csv");
  ASSERT_EQ(rows.size(), 16U);
  for (const auto& row : rows) {
    const double t = std::stod(row.at("t_C"));
    EXPECT_NEAR(growth_potential(t, kCoolSeason), std::stod(row.at("gp_C3")), 5e-7) << t;
    EXPECT_NEAR(growth_potential(t, kWarmSeason), std::stod(row.at("gp_C4")), 5e-7) << t;
    EXPECT_NEAR(growth_potential(t, kWarmPlateau), std::stod(row.at("gp_C4_with_plateau")), 5e-7)
        << t;
  }
}

TEST(GrowthPotential, PublishedCases) {
  const auto all = cases("growth_potential.json", "published_cases");
  for (const char* id : {"GP1", "GP2"}) {
    const auto& one = all.at(id);
    const double gp = growth_potential(one.at("inputs").at("t").get<double>(), kCoolSeason);
    EXPECT_NEAR(gp, one.at("published").get<double>(), 0.005) << id;
    EXPECT_NEAR(gp, one.at("recomputed").get<double>(), 1e-12) << id;
  }
  for (const auto& t : all.at("GP4").at("inputs").at("t")) {
    EXPECT_NEAR(growth_potential(t.get<double>(), kCoolSeason),
                all.at("GP4").at("recomputed").get<double>(), 1e-12);
  }
}

TEST(GrowthPotential, WarmSeasonOvertakesCoolSeasonNear24Point8) {
  // GP3: bisect the difference, which changes sign once between the two optima.
  double low = 20;
  double high = 31;
  while (high - low > 1e-9) {
    const double middle = (low + high) / 2;
    const bool cool_leads =
        growth_potential(middle, kCoolSeason) > growth_potential(middle, kWarmSeason);
    (cool_leads ? low : high) = middle;
  }
  EXPECT_NEAR(
      low,
      cases("growth_potential.json", "published_cases").at("GP3").at("recomputed").get<double>(),
      1e-6);
}

} // namespace
} // namespace baize::climate
