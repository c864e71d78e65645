#include "baize/stats/designed_trial.h"

#include "baize/stats/distributions.h"
#include "checks.h"
#include "trial_filling.h"
#include "trial_layout.h"

#include <algorithm>

namespace baize::stats {
namespace {

using detail::Column;
using detail::Filling;
using detail::Layout;
using detail::squared_length;

TrialTerm term_of(const Layout& layout, std::size_t t, long double ss, const TrialStratum& in) {
  const detail::LayoutTerm& term = layout.terms[t];
  TrialTerm result{term.name, term.factors, term.df, static_cast<double>(ss), 0, {}, {}};
  result.ms = result.ss / result.df;
  if (in.residual_df > 0 && in.residual_ms > 0) {
    result.f = result.ms / in.residual_ms;
    result.p = f_upper(*result.f, result.df, in.residual_df);
  }
  return result;
}

/// What the residual grows by without the term, lost plots filled anew; with none
/// lost that is the term's own length.
long double term_ss(const Layout& layout, std::size_t t, const Column& y, const Filling& fill,
                    long double residual) {
  if (fill.lost.empty()) {
    return squared_length(detail::of_term(layout, t, y));
  }
  const std::size_t s = layout.terms[t].stratum;
  const Column again = detail::filled(detail::filling(layout, fill.lost, t), y);
  return std::max(0.0L, squared_length(detail::residual_of(layout, s, again, t)) - residual);
}

TrialStratum stratum_of(const Layout& layout, std::size_t s, const Column& y, const Filling& fill,
                        double mean) {
  TrialStratum result;
  result.name = layout.strata[s].name;
  result.lost = fill.degrees[s];
  result.residual_df = layout.strata[s].df - result.lost;
  for (const auto& term : layout.terms) {
    result.residual_df -= term.stratum == s ? term.df : 0;
  }
  const long double residual =
      result.residual_df > 0 ? squared_length(detail::residual_of(layout, s, y)) : 0;
  result.residual_ss = static_cast<double>(residual);
  result.residual_ms = result.residual_df > 0 ? result.residual_ss / result.residual_df : 0;
  if (result.residual_df > 0 && mean > 0) {
    result.cv = std::sqrt(result.residual_ms) / mean;
  }
  for (std::size_t t = 0; t < layout.terms.size(); ++t) {
    if (layout.terms[t].stratum == s) {
      result.terms.push_back(term_of(layout, t, term_ss(layout, t, y, fill, residual), result));
    }
  }
  return result;
}

Summary summary_of(const TrialAnova& anova, double largest) {
  bool tested = false;
  bool spread = false;
  Summary finite = done();
  for (const TrialStratum& stratum : anova.strata) {
    const bool above = std::sqrt(stratum.residual_ms) > rounding_of(largest) / 64;
    tested = tested || (stratum.residual_df > 0 && !stratum.terms.empty());
    spread = spread || (above && !stratum.terms.empty());
    for (const TrialTerm& term : stratum.terms) {
      const Summary one = done_if_finite({term.ss, term.f.value_or(0), term.p.value_or(0)});
      finite = one.usable ? finite : one;
    }
  }
  if (!tested) {
    return degenerate({"no_residual", "layout", "no degrees of freedom left for error",
                       "more plots than the treatments and strata use up", ""});
  }
  if (!spread && finite.usable) {
    return degenerate({"no_spread", "y", "explained without rest by treatments and strata",
                       "spread between plots treated alike", ""});
  }
  if (anova.lost > 0 && finite.usable) {
    finite.message = "Computed; lost plots filled: " + std::to_string(anova.lost) +
                     ", with the values that leave the smallest residual, and as many degrees "
                     "of freedom taken off.";
  }
  return finite;
}

} // namespace

std::optional<units::Problem> TrialOptions::problem() const {
  return outside_open("highest_order", highest_order, 0, 7, "a whole number from 1 to 6");
}

Grouping nested(const Grouping& outer, const Grouping& inner) {
  Grouping result{outer.name + ":" + inner.name, {}};
  if (outer.level.size() == inner.level.size()) {
    const auto pairs =
        detail::crossed(detail::partition(outer.level), detail::partition(inner.level));
    result.level.assign(pairs.of.begin(), pairs.of.end());
  }
  return result;
}

TrialAnova trial_anova(const DesignedTrial& trial, const TrialOptions& options) {
  TrialAnova result;
  const auto layout = detail::trial_layout(trial, options);
  if (!layout) {
    result.summary = refused(layout.error());
    return result;
  }
  const Filling fill = detail::filling(*layout, detail::lost_plots(trial));
  if (!fill.determined) {
    result.summary = refused(detail::cannot_fill(fill.lost));
    return result;
  }
  const Column y = detail::filled(fill, detail::given(trial));
  long double sum = 0;
  for (const long double value : y) {
    sum += value;
    result.y.push_back(static_cast<double>(value));
  }
  result.lost = static_cast<int>(fill.lost.size());
  result.mean = static_cast<double>(sum / static_cast<long double>(y.size()));
  for (std::size_t s = 0; s < layout->strata.size(); ++s) {
    result.strata.push_back(stratum_of(*layout, s, y, fill, result.mean));
  }
  result.summary = summary_of(result, largest_of(result.y));
  return result;
}

} // namespace baize::stats
