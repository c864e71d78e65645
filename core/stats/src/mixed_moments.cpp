#include "mixed_moments.h"

#include <cstddef>

namespace baize::stats::detail {
namespace {

/// The rows in the order of their groups, rows of one group in the order given.
std::vector<int> by_group(const Grouping& term, const std::vector<int>& rows) {
  std::vector<int> start(static_cast<std::size_t>(term.groups) + 1, 0);
  for (const int g : term.of_row) {
    ++start[static_cast<std::size_t>(g) + 1];
  }
  for (std::size_t g = 1; g < start.size(); ++g) {
    start[g] += start[g - 1];
  }
  std::vector<int> sorted(rows.size());
  for (const int r : rows) {
    const int g = term.of_row[static_cast<std::size_t>(r)];
    sorted[static_cast<std::size_t>(start[static_cast<std::size_t>(g)]++)] = r;
  }
  return sorted;
}

Cross cross(const Grouping& a, const Grouping& b) {
  std::vector<int> rows(a.of_row.size());
  for (std::size_t r = 0; r < rows.size(); ++r) {
    rows[r] = static_cast<int>(r);
  }
  rows = by_group(a, by_group(b, rows));
  Cross out{a.columns, b.columns, {}, {}, {}};
  const auto block = static_cast<std::size_t>(a.columns) * b.columns;
  int last_a = -1;
  for (const int r : rows) {
    const auto row = static_cast<std::size_t>(r);
    const int g = a.of_row[row];
    const int h = b.of_row[row];
    const bool next = g != last_a;
    for (; last_a < g; ++last_a) {
      out.start.push_back(static_cast<int>(out.group.size()));
    }
    if (next || out.group.back() != h) {
      out.group.push_back(h);
      out.value.resize(out.value.size() + block, 0);
    }
    double* sum = &out.value[out.value.size() - block];
    for (int j = 0; j < b.columns; ++j) {
      for (int i = 0; i < a.columns; ++i) {
        *sum++ += a.z[row * a.columns + i] * b.z[row * b.columns + j];
      }
    }
  }
  out.start.push_back(static_cast<int>(out.group.size()));
  return out;
}

std::vector<double> response(const Grouping& term, const MixedDesign& design) {
  const auto k = static_cast<std::size_t>(term.columns);
  const auto columns = static_cast<std::size_t>(design.q.cols()) + 1;
  std::vector<double> out(static_cast<std::size_t>(term.groups) * k * columns, 0);
  for (std::size_t c = 0; c < columns; ++c) {
    const double* x =
        c + 1 < columns ? design.q.col(static_cast<Eigen::Index>(c)).data() : design.y.data();
    for (std::size_t r = 0; r < term.of_row.size(); ++r) {
      double* sum = &out[(static_cast<std::size_t>(term.of_row[r]) * columns + c) * k];
      for (std::size_t i = 0; i < k; ++i) {
        sum[i] += term.z[r * k + i] * x[r];
      }
    }
  }
  return out;
}

} // namespace

MixedMoments moments(const MixedDesign& design) {
  MixedMoments out;
  out.terms = static_cast<int>(design.terms.size());
  out.cross.resize(design.terms.size() * design.terms.size());
  for (int a = 0; a < out.terms; ++a) {
    const Grouping& first = design.terms[static_cast<std::size_t>(a)];
    for (int b = a; b < out.terms; ++b) {
      out.cross[out.index(a, b)] = cross(first, design.terms[static_cast<std::size_t>(b)]);
    }
    out.response.push_back(response(first, design));
  }
  return out;
}

} // namespace baize::stats::detail
