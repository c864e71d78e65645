#include "baize/trials/design.h"

#include "baize/stats/random.h"
#include "baize/trials/walk.h"

#include <numeric>

namespace baize::trials {
namespace {

std::vector<std::size_t> shuffled(std::size_t n, stats::Random& random) {
  std::vector<std::size_t> order(n);
  std::iota(order.begin(), order.end(), std::size_t{0});
  stats::shuffle(order, random);
  return order;
}

/// Plots in a row of a block.
int across(const Design& design) {
  const int t = static_cast<int>(design.treatments.size());
  const int most = 4;
  return design.across > 0 ? design.across : t <= most ? t : (t + 1) / 2;
}

Plot plot_at(const Design& design, int block, int row, int column, int columns) {
  Plot plot;
  plot.block = block;
  plot.row = row + 1;
  plot.column = column + 1;
  plot.number = 100 * block + row * columns + column + 1;
  if (!design.greens.empty()) {
    // Neighbouring blocks lie on one green.
    const std::size_t each = static_cast<std::size_t>(design.blocks) / design.greens.size();
    plot.green = design.greens[static_cast<std::size_t>(block - 1) / each];
  }
  return plot;
}

void one_factor(const Design& design, int block, stats::Random& random, Plan& plan) {
  const int columns = across(design);
  const auto order = shuffled(design.treatments.size(), random);
  for (std::size_t i = 0; i < order.size(); ++i) {
    const int at = static_cast<int>(i);
    Plot plot = plot_at(design, block, at / columns, at % columns, columns);
    plot.treatment = design.treatments[order[i]];
    if (!design.halves.empty()) {
      plot.half = design.halves[i];
    }
    plan.plots.push_back(std::move(plot));
  }
}

void two_factors(const Design& design, int block, stats::Random& random, Plan& plan) {
  const int columns = static_cast<int>(design.seconds.size());
  const bool strips = design.layout == Layout::strip_plot;
  const auto rows = shuffled(design.treatments.size(), random);
  auto order = shuffled(design.seconds.size(), random);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (i > 0 && !strips) {
      stats::shuffle(order, random); // each whole plot has an order of its own
    }
    for (std::size_t j = 0; j < order.size(); ++j) {
      Plot plot = plot_at(design, block, static_cast<int>(i), static_cast<int>(j), columns);
      plot.treatment = design.treatments[rows[i]];
      plot.second = design.seconds[order[j]];
      plot.whole_plot = plot.row;
      plot.strip = strips ? plot.column : 0;
      if (!design.halves.empty()) {
        plot.half = design.halves[i];
      }
      plan.plots.push_back(std::move(plot));
    }
  }
}

/// As many plots of each treatment as there are replicates, shuffled over all.
void no_blocks(const Design& design, stats::Random& random, Plan& plan) {
  const auto each = static_cast<std::size_t>(design.blocks);
  const int columns =
      design.across > 0 ? design.across : static_cast<int>(design.treatments.size());
  const auto order = shuffled(design.treatments.size() * each, random);
  for (std::size_t i = 0; i < order.size(); ++i) {
    Plot plot;
    plot.number = static_cast<int>(i) + 1;
    plot.row = static_cast<int>(i) / columns + 1;
    plot.column = static_cast<int>(i) % columns + 1;
    plot.treatment = design.treatments[order[i] / each];
    plot.green =
        design.greens.empty() ? "" : design.greens[i * design.greens.size() / order.size()];
    plan.plots.push_back(std::move(plot));
  }
}

} // namespace

units::Result<Plan> lay_out(const Design& design) {
  if (const auto problem = design.problem()) {
    return tl::unexpected(*problem);
  }
  Plan plan;
  plan.trial = design.trial;
  plan.layout = design.layout;
  plan.seed = design.seed;
  plan.control = design.control;
  if (!plan.has_blocks()) {
    stats::Random random(design.seed);
    no_blocks(design, random, plan);
  }
  for (int block = 1; plan.has_blocks() && block <= design.blocks; ++block) {
    // A stream for each block: one block more leaves the others as they were.
    stats::Random random(design.seed, static_cast<std::uint64_t>(block));
    (plan.has_second() ? two_factors : one_factor)(design, block, random, plan);
  }
  number_walk(plan);
  return plan;
}

} // namespace baize::trials
