#pragma once

#include "aft_term.h"

namespace baize::stats::detail {

/// What a time between two ends adds, low < high and one of them finite. Second
/// derivatives are sums of terms of one sign wherever that can be had (all but the
/// log-normal): they keep their digits where both ends lie in one tail, and the
/// information of many rows is positive by construction.
AftTerm interval_term(AftDistribution distribution, const AftRow& row, double centre, double rate);

/// Its value alone, a < b on the scale of W.
double interval_value(AftDistribution distribution, double a, double b);

} // namespace baize::stats::detail
