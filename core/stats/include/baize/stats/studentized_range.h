#pragma once

namespace baize::stats {

/// The studentized range: Q = (largest - smallest of k means) / standard error,
/// for comparing k means with each other (Tukey).
///
///   P(Q <= q) = integral over s of f(s) W(q s),
///   W(w) = k integral over z of phi(z) [Phi(z) - Phi(z - w)]^(k-1)
///
/// with s the root of chi-squared over its degrees of freedom. Both integrals
/// are taken by the trapezoidal rule in variables that make the integrand
/// analytic and fast falling, where it converges exponentially.
///
/// k: means compared, 2 to 200. df: degrees of freedom of the error, 1 to
/// 1e6, or infinity for a known error. q: 0 or more. Anything else gives NaN.
/// Correct to about 1e-12 relative, in the tails too (`upper` does not subtract
/// from 1). Source: the definition, Tukey (1953); Lund and Lund (1983), AS 190.
double studentized_range_cdf(double q, int k, double df);
double studentized_range_upper(double q, int k, double df);

/// q with P(Q <= q) = p, 0 < p < 1 (0 gives 0, 1 gives infinity), to 1e-10
/// relative. `critical` takes the upper tail instead: alpha = 0.05 for the
/// usual comparison.
double studentized_range_quantile(double p, int k, double df);
double studentized_range_critical(double alpha, int k, double df);

} // namespace baize::stats
