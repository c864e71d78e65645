#include "baize/trials/map.h"
#include "unit/trials_given.h"

#include <gtest/gtest.h>

namespace baize::trials {
namespace {

Plan small() {
  Plan plan;
  plan.trial = "Tines & <sand>";
  for (int block = 1; block <= 2; ++block) {
    for (int column = 1; column <= 2; ++column) {
      Plot plot;
      plot.number = 100 * block + column;
      plot.block = block;
      plot.row = 1;
      plot.column = column;
      plot.treatment = column == block ? "none" : "t<i>ne";
      plot.green = block == 1 ? "7" : "";
      plot.walk = 2 * (block - 1) + column;
      plan.plots.push_back(plot);
    }
  }
  return plan;
}

TEST(TrialMap, InLetters) {
  EXPECT_EQ(map_text(small()), "Block 1, green 7\n"
                               "+---------------+---------------+\n"
                               "| 101  (walk 1) | 102  (walk 2) |\n"
                               "| none          | t<i>ne        |\n"
                               "+---------------+---------------+\n"
                               "\n"
                               "Block 2\n"
                               "+---------------+---------------+\n"
                               "| 201  (walk 3) | 202  (walk 4) |\n"
                               "| t<i>ne        | none          |\n"
                               "+---------------+---------------+\n");
}

TEST(TrialMap, AsAPictureWithNothingUnescaped) {
  const std::string svg = map_svg(small());
  EXPECT_NE(svg.find("<title>Tines &amp; &lt;sand&gt;</title>"), std::string::npos);
  EXPECT_NE(svg.find(">t&lt;i&gt;ne</text>"), std::string::npos);
  EXPECT_EQ(svg.find("t<i>ne"), std::string::npos);
  std::size_t cells = 0;
  for (auto at = svg.find("<rect x="); at != std::string::npos; at = svg.find("<rect x=", at + 1)) {
    ++cells;
  }
  EXPECT_EQ(cells, 4U);
}

TEST(TrialMap, EveryPlotOfASplitPlotIsThere) {
  const Plan plan = *lay_out(split_of(Layout::split_plot));
  const std::string text = map_text(plan);
  const std::string svg = map_svg(plan);
  for (const Plot& plot : plan.plots) {
    EXPECT_NE(text.find(std::to_string(plot.number)), std::string::npos);
    EXPECT_NE(svg.find(">" + std::to_string(plot.number) + "<"), std::string::npos);
  }
}

} // namespace
} // namespace baize::trials
