#pragma once

namespace baize::stats {

/// Distribution functions P(X <= x), their upper tails P(X > x) (small ones keep
/// their digits, where 1 - cdf would lose them) and quantiles. Degrees of freedom
/// and shapes are above 0, not necessarily whole; p is from 0 to 1. Quantiles of
/// 0 and 1 are the ends of the range, infinite where it has none. Anything else,
/// NaN included, gives NaN. Correct to about 1e-13 relative, but 1e-10
/// for t with one degree of freedom and beta(1/2, 1/2) close to an end.
/// Source: the definitions; computed by Boost.Math under `MathPolicy`.

double normal_cdf(double z);
double normal_upper(double z);
double normal_quantile(double p);

double t_cdf(double t, double df);
double t_upper(double t, double df);
double t_quantile(double p, double df);

double chi_squared_cdf(double x, double df);
double chi_squared_upper(double x, double df);
double chi_squared_quantile(double p, double df);

double f_cdf(double f, double df1, double df2);
double f_upper(double f, double df1, double df2);
double f_quantile(double p, double df1, double df2);

/// x from 0 to 1.
double beta_cdf(double x, double a, double b);
double beta_upper(double x, double a, double b);
double beta_quantile(double p, double a, double b);

} // namespace baize::stats
