#pragma once

#include <span>

namespace baize::stats {

/// The jackknife's standard error of a figure, sqrt((n - 1)/n sum (v[i] - mean)^2) over
/// the figures v[i] without item i. `without`: finite; `alike`: how many items give each
/// of them, whole numbers above 0, or empty for one each. 0 for fewer than 2 items.
/// Source: Efron and Tibshirani (1993) An Introduction to the Bootstrap, ch. 11.
double leave_one_out_error(std::span<const double> without, std::span<const double> alike = {});

} // namespace baize::stats
