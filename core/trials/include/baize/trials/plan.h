#pragma once

#include "baize/units/problem.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace baize::trials {

/// How treatments were given to plots.
enum class Layout {
  completely_randomised, ///< any plot, any treatment; no blocks
  randomised_blocks,     ///< each treatment once in each block
  split_plot,            ///< treatments on whole plots, second treatments on plots within them
  strip_plot             ///< treatments on strips one way, second treatments on strips across
};

/// "randomised_blocks" and so on, as files hold it.
std::string_view word(Layout layout);
std::optional<Layout> layout_of(std::string_view text);

/// A piece of a green with one treatment (or one pair of treatments).
struct Plot {
  int number = 0; ///< as painted at the plot; above 0, once in a plan
  int block = 0;  ///< from 1; 0 in a completely randomised trial
  /// Split plot: which whole plot of the block. Strip plot: which strip of the
  /// first treatment. Otherwise 0.
  int whole_plot = 0;
  int strip = 0; ///< strip plot: which strip of the second treatment; otherwise 0
  std::string treatment;
  std::string second; ///< second treatment; empty where there is none
  std::string green;  ///< where it lies; may be empty
  std::string half;
  int row = 0;    ///< within the block, from 1; 0 where not known
  int column = 0; ///< likewise
  int walk = 0;   ///< place in the first walk, from 1
  friend bool operator==(const Plot&, const Plot&) = default;
};

/// Everything about a trial that must be known before its records are read.
struct Plan {
  std::string trial; ///< its name; records repeat it
  Layout layout = Layout::randomised_blocks;
  std::uint64_t seed = 0; ///< of the random layout and of the walks
  std::string control;    ///< the treatment that others are compared with; may be empty
  std::vector<Plot> plots;

  bool has_second() const { return layout == Layout::split_plot || layout == Layout::strip_plot; }
  bool has_blocks() const { return layout != Layout::completely_randomised; }
  friend bool operator==(const Plan&, const Plan&) = default;
};

/// The names in the order in which they first occur; the control first.
std::vector<std::string> treatments(const Plan& plan);
std::vector<std::string> seconds(const Plan& plan);
/// Numbers of the blocks, rising.
std::vector<int> blocks(const Plan& plan);

/// The first rule that a plan breaks: "trial_unnamed", "no_plots", "too_many",
/// "plot_number", "plot_twice", "treatment_missing" (a plot without, or a block
/// that lacks one), "treatment_twice" (in one block, or two treatments on one whole
/// plot or strip), "one_treatment", "one_block", "no_replicates", "no_such_control".
/// A plan without a problem is balanced.
std::optional<units::Problem> problem_of(const Plan& plan);

/// Error degrees of freedom of one comparison.
struct ErrorDf {
  std::string of; ///< "treatment", "second treatment" or "both together"
  int df = 0;
};
/// With t treatments, s second ones and r blocks: completely randomised t(r-1);
/// blocks (r-1)(t-1); split plot (r-1)(t-1) and t(r-1)(s-1); strip plot (r-1)(t-1),
/// (r-1)(s-1) and (r-1)(t-1)(s-1). The plan has no problem.
std::vector<ErrorDf> error_df(const Plan& plan);

/// Below this a trial sees large differences only. Common practice, no source.
inline constexpr int kFewErrorDf = 6;

} // namespace baize::trials
