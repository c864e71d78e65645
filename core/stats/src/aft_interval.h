#pragma once

#include "aft_term.h"

namespace baize::stats::detail {

/// What a time between two ends adds, low < high and one of them finite. Second
/// derivatives are sums of terms of one sign (but for the log-normal, where they come
/// from differences): they keep their digits where both ends lie in one tail, and the
/// information of many rows is positive by construction.
AftTerm interval_term(AftDistribution distribution, const AftRow& row, double centre, double rate);

/// Its value alone.
double interval_value(AftDistribution distribution, const AftRow& row, double centre, double rate);

} // namespace baize::stats::detail
