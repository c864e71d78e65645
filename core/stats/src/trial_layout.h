#pragma once

#include "baize/stats/designed_trial.h"
#include "partition.h"

namespace baize::stats::detail {

struct LayoutTerm {
  std::string name;
  std::vector<std::size_t> factors;
  Partition cells;
  std::vector<std::size_t> margins; ///< terms of some of its factors
  int df = 0;
  std::size_t stratum = 0;
};

struct LayoutStratum {
  std::string name;
  Partition units;
  int df = 0; ///< treatments included
};

/// The part of a trial that does not depend on y. All its groupings are
/// orthogonal, so projections may be applied one after the other in any order.
struct Layout {
  Partition whole; ///< all plots in one class
  std::vector<LayoutStratum> strata;
  std::vector<LayoutTerm> terms;
};

units::Result<Layout> trial_layout(const DesignedTrial& trial, const TrialOptions& options);

/// What of `values` lies between the units of one stratum, larger units swept out.
Column in_stratum(const Layout& layout, std::size_t stratum, Column values);
/// What of `values` belongs to one term, its margins swept out.
Column of_term(const Layout& layout, std::size_t term, Column values);

constexpr std::size_t kNoTerm = static_cast<std::size_t>(-1);
/// What a stratum's terms leave of `values`; `without` is not taken as a term.
Column residual_of(const Layout& layout, std::size_t stratum, const Column& values,
                   std::size_t without = kNoTerm);

long double squared_length(const Column& values);

} // namespace baize::stats::detail
