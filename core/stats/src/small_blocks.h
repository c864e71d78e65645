#pragma once

#include <cmath>

/// Arithmetic on blocks of a few rows, stored column after column. A library for
/// large matrices spends most of its time on the way in here.
namespace baize::stats::detail {

/// out = t' m, where t is k by k and m is k by `columns`; out may not be m.
inline void transposed_times(int k, const double* t, int columns, const double* m, double* out) {
  for (int c = 0; c < columns; ++c) {
    for (int i = 0; i < k; ++i) {
      double sum = 0;
      for (int h = 0; h < k; ++h) {
        sum += t[i * k + h] * m[c * k + h];
      }
      out[c * k + i] = sum;
    }
  }
}

/// out = m t, where m is `rows` by k and t is k by k; out may not be m.
inline void times(int rows, int k, const double* m, const double* t, double* out) {
  for (int c = 0; c < k; ++c) {
    for (int i = 0; i < rows; ++i) {
      double sum = 0;
      for (int h = 0; h < k; ++h) {
        sum += m[h * rows + i] * t[c * k + h];
      }
      out[c * rows + i] = sum;
    }
  }
}

/// The lower Cholesky factor in place of a; the rest of a is left. Gives the
/// product of its diagonal, not above 0 or NaN where a is not positive definite.
inline double cholesky(int k, double* a) {
  double product = 1;
  for (int c = 0; c < k; ++c) {
    double pivot = a[c * k + c];
    for (int h = 0; h < c; ++h) {
      pivot -= a[h * k + c] * a[h * k + c];
    }
    if (!(pivot > 0)) {
      return 0;
    }
    pivot = std::sqrt(pivot);
    product *= pivot;
    a[c * k + c] = pivot;
    for (int i = c + 1; i < k; ++i) {
      double sum = a[c * k + i];
      for (int h = 0; h < c; ++h) {
        sum -= a[h * k + i] * a[h * k + c];
      }
      a[c * k + i] = sum / pivot;
    }
  }
  return product;
}

/// x = l^-1 x for each of the columns.
inline void forward(int k, const double* l, int columns, double* x) {
  for (int c = 0; c < columns; ++c, x += k) {
    for (int i = 0; i < k; ++i) {
      double sum = x[i];
      for (int h = 0; h < i; ++h) {
        sum -= l[h * k + i] * x[h];
      }
      x[i] = sum / l[i * k + i];
    }
  }
}

/// x = l'^-1 x for each of the columns.
inline void backward(int k, const double* l, int columns, double* x) {
  for (int c = 0; c < columns; ++c, x += k) {
    for (int i = k - 1; i >= 0; --i) {
      double sum = x[i];
      for (int h = i + 1; h < k; ++h) {
        sum -= l[i * k + h] * x[h];
      }
      x[i] = sum / l[i * k + i];
    }
  }
}

inline double dot(int k, const double* a, const double* b) {
  double sum = 0;
  for (int i = 0; i < k; ++i) {
    sum += a[i] * b[i];
  }
  return sum;
}

} // namespace baize::stats::detail
