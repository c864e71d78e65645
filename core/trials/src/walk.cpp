#include "baize/trials/walk.h"

#include "baize/stats/random.h"

#include <algorithm>

namespace baize::trials {
namespace {

// Streams above those that lay_out uses, one for each block.
constexpr std::uint64_t kFirstStream = 1U << 20U;

/// To and fro along the rows of one block, from a corner.
void along_rows(const Plan& plan, std::vector<std::size_t>& plots, bool from_below,
                bool from_right) {
  const auto& all = plan.plots;
  std::stable_sort(plots.begin(), plots.end(), [&](std::size_t a, std::size_t b) {
    return std::pair(all[a].row, all[a].column) < std::pair(all[b].row, all[b].column);
  });
  std::vector<std::vector<std::size_t>> rows;
  for (const std::size_t i : plots) {
    if (rows.empty() || all[rows.back().front()].row != all[i].row) {
      rows.emplace_back();
    }
    rows.back().push_back(i);
  }
  if (from_below) {
    std::reverse(rows.begin(), rows.end());
  }
  plots.clear();
  for (auto& row : rows) {
    if (from_right) {
      std::reverse(row.begin(), row.end());
    }
    plots.insert(plots.end(), row.begin(), row.end());
    from_right = !from_right;
  }
}

} // namespace

std::vector<std::size_t> walk(const Plan& plan, int visit) {
  const int pair = (std::max(visit, 1) - 1) / 2;
  stats::Random random(plan.seed, kFirstStream + static_cast<std::uint64_t>(pair));
  std::vector<std::size_t> order;
  for (const int block : blocks(plan)) {
    std::vector<std::size_t> plots;
    for (std::size_t i = 0; i < plan.plots.size(); ++i) {
      if (plan.plots[i].block == block) {
        plots.push_back(i);
      }
    }
    const std::size_t corner = random.below(4);
    along_rows(plan, plots, corner / 2 == 1, corner % 2 == 1);
    order.insert(order.end(), plots.begin(), plots.end());
  }
  if (visit % 2 == 0) {
    std::reverse(order.begin(), order.end());
  }
  return order;
}

void number_walk(Plan& plan) {
  const auto order = walk(plan, 1);
  for (std::size_t i = 0; i < order.size(); ++i) {
    plan.plots[order[i]].walk = static_cast<int>(i) + 1;
  }
}

} // namespace baize::trials
