#include "mixed_design.h"

#include "checks.h"

#include <Eigen/QR>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace baize::stats::detail {
namespace {

/// A column shorter than this, once those before it are taken out, is a sum of them.
constexpr double kDependent = 1e-10;

/// Numbers the groups from 0 in ascending order. By table where the numbers lie
/// close together, as they mostly do; by sorting elsewhere.
void number_groups(const std::vector<int>& group, Grouping& out) {
  const auto [low, high] = std::minmax_element(group.begin(), group.end());
  const long long first = *low;
  const long long range = *high - first + 1;
  out.of_row.resize(group.size());
  if (range <= 4 * static_cast<long long>(group.size())) {
    std::vector<int> seen(static_cast<std::size_t>(range), 0);
    for (const int g : group) {
      seen[static_cast<std::size_t>(g - first)] = 1;
    }
    for (std::size_t i = 0; i < seen.size(); ++i) {
      if (seen[i] != 0) {
        seen[i] = static_cast<int>(out.label.size());
        out.label.push_back(static_cast<int>(first + static_cast<long long>(i)));
      }
    }
    for (std::size_t r = 0; r < group.size(); ++r) {
      out.of_row[r] = seen[static_cast<std::size_t>(group[r] - first)];
    }
  } else {
    out.label = group;
    std::sort(out.label.begin(), out.label.end());
    out.label.erase(std::unique(out.label.begin(), out.label.end()), out.label.end());
    for (std::size_t r = 0; r < group.size(); ++r) {
      const auto at = std::lower_bound(out.label.begin(), out.label.end(), group[r]);
      out.of_row[r] = static_cast<int>(at - out.label.begin());
    }
  }
  out.groups = static_cast<int>(out.label.size());
  std::vector<int> count(out.label.size(), 0);
  for (const int g : out.of_row) {
    out.largest = std::max(out.largest, ++count[static_cast<std::size_t>(g)]);
  }
}

std::optional<Summary> make_term(const RandomTerm& term, Grouping& out) {
  number_groups(term.group, out);
  const std::size_t rows = term.group.size();
  const std::size_t first = term.constant ? 1 : 0;
  const std::size_t columns = term.slopes.size() + first;
  out.columns = static_cast<int>(columns);
  if (out.groups < 2) {
    return refused({"one_group", term.name, "one group", "at least two groups", ""});
  }
  if (static_cast<std::size_t>(out.size()) >= rows) {
    return refused({"group_is_row", term.name,
                    std::to_string(out.size()) + " effects for " + std::to_string(rows) + " rows",
                    "fewer effects than rows, or they cannot be told from the error", ""});
  }
  out.correlated = term.correlated && columns > 1;
  out.scale.assign(columns, 1);
  out.z.assign(rows * columns, 1);
  for (std::size_t j = 0; j < term.slopes.size(); ++j) {
    double squares = 0;
    for (const double x : term.slopes[j]) {
      squares += x * x;
    }
    const double scale = std::sqrt(squares / static_cast<double>(rows));
    if (!(scale > 0) || !std::isfinite(scale)) {
      return degenerate({"singular_design", term.name + " slope " + std::to_string(j + 1),
                         "nothing but 0, or too large to square", "a column that varies", ""});
    }
    out.scale[first + j] = scale;
    for (std::size_t r = 0; r < rows; ++r) {
      out.z[r * columns + first + j] = term.slopes[j][r] / scale;
    }
  }
  return std::nullopt;
}

/// Two terms with one grouping whose columns span the same: only the sum of their
/// variances would be determined.
bool same(const Grouping& a, const Grouping& b) {
  return a.of_row == b.of_row && a.z == b.z;
}

std::optional<Summary> make_fixed(const MixedModel& model, MixedDesign& design) {
  const auto rows = static_cast<Eigen::Index>(model.y.size());
  const Eigen::Index first = model.constant ? 1 : 0;
  const Eigen::Index columns = static_cast<Eigen::Index>(model.fixed.size()) + first;
  Eigen::MatrixXd x = Eigen::MatrixXd::Ones(rows, columns);
  for (Eigen::Index j = first; j < columns; ++j) {
    x.col(j) = Eigen::Map<const Eigen::VectorXd>(
        model.fixed[static_cast<std::size_t>(j - first)].data(), rows);
  }
  const Eigen::VectorXd length = x.colwise().norm();
  const auto singular = [&](Eigen::Index j) {
    return degenerate({"singular_design", "fixed column " + std::to_string(j - first + 1),
                       "a sum of the columns before it", "a column that adds something", ""});
  };
  for (Eigen::Index j = 0; j < columns; ++j) {
    if (!(length(j) > 0) || !std::isfinite(length(j))) {
      return singular(j);
    }
    x.col(j) /= length(j);
  }
  if (columns == 0) { // a profile holds the only coefficient
    design.q = x;
    return std::nullopt;
  }
  const Eigen::HouseholderQR<Eigen::MatrixXd> qr(x);
  const Eigen::MatrixXd r = qr.matrixQR().topRows(columns).triangularView<Eigen::Upper>();
  for (Eigen::Index j = 0; j < columns; ++j) {
    if (!(std::fabs(r(j, j)) > kDependent)) {
      return singular(j);
    }
  }
  design.q = qr.householderQ() * Eigen::MatrixXd::Identity(rows, columns);
  design.back = length.cwiseInverse().asDiagonal() *
                r.triangularView<Eigen::Upper>().solve(Eigen::MatrixXd::Identity(columns, columns));
  design.log_det_back = design.back.diagonal().cwiseAbs().array().log().sum();
  return std::nullopt;
}

std::optional<Summary> make_response(const MixedModel& model, MixedDesign& design) {
  const auto rows = static_cast<Eigen::Index>(model.y.size());
  const Eigen::Map<const Eigen::VectorXd> y(model.y.data(), rows);
  design.from_fixed = design.q.transpose() * y;
  design.y = y - design.q * design.from_fixed;
  const Eigen::VectorXd left = design.q.transpose() * design.y; // a second pass takes the rounding
  design.from_fixed += left;
  design.y -= design.q * left;
  design.unit = design.y.norm() / std::sqrt(static_cast<double>(rows));
  if (!std::isfinite(design.unit) ||
      design.unit <= rounding_of(largest_of(model.y)) * static_cast<double>(design.q.cols())) {
    return degenerate({"no_residual", "y", "explained wholly by the fixed columns",
                       "finite values that differ from them", ""});
  }
  design.y /= design.unit;
  return std::nullopt;
}

} // namespace

int MixedDesign::thetas() const {
  int count = 0;
  for (const Grouping& term : terms) {
    count += term.thetas();
  }
  return count;
}

std::optional<Summary> make_design(const MixedModel& model, MixedDesign& design) {
  std::vector<Grouping> terms(model.random.size());
  for (std::size_t t = 0; t < terms.size(); ++t) {
    if (auto problem = make_term(model.random[t], terms[t])) {
      return problem;
    }
    for (std::size_t s = 0; s < t; ++s) {
      if (same(terms[s], terms[t])) {
        return degenerate({"same_term", model.random[t].name, "the same as " + model.random[s].name,
                           "a grouping of its own", ""});
      }
    }
  }
  design.place.resize(terms.size());
  std::iota(design.place.begin(), design.place.end(), 0);
  std::stable_sort(design.place.begin(), design.place.end(), [&](int a, int b) {
    return terms[static_cast<std::size_t>(a)].size() > terms[static_cast<std::size_t>(b)].size();
  });
  for (const int t : design.place) {
    design.terms.push_back(std::move(terms[static_cast<std::size_t>(t)]));
  }
  auto problem = make_fixed(model, design);
  return problem ? problem : make_response(model, design);
}

} // namespace baize::stats::detail
