#include "householder.h"

#include <cmath>
#include <utility>

namespace baize::stats::detail {
namespace {

/// Below this a scaled column's own part is what rounding of the data leaves.
constexpr long double kDependent = 1e-13L;

long double length_from(const Column& column, std::size_t first) {
  long double sum = 0;
  for (std::size_t i = first; i < column.size(); ++i) {
    sum += column[i] * column[i];
  }
  return std::sqrt(sum);
}

/// Reflects `column` in the plane across `normal`, rows `first` on.
void reflect(const Column& normal, long double squared, std::size_t first, Column& column) {
  long double along = 0;
  for (std::size_t i = first; i < column.size(); ++i) {
    along += normal[i] * column[i];
  }
  for (std::size_t i = first; i < column.size(); ++i) {
    column[i] -= 2 * along / squared * normal[i];
  }
}

} // namespace

Triangle triangle(std::vector<Column> columns, Column y) {
  Triangle result;
  for (std::size_t k = 0; k < columns.size(); ++k) {
    const long double length = length_from(columns[k], 0);
    result.length.push_back(length);
    if (!(length > 0)) {
      result.dependent = static_cast<int>(k);
      return result;
    }
    for (long double& value : columns[k]) {
      value /= length;
    }
  }
  for (std::size_t k = 0; k < columns.size(); ++k) {
    const long double left = length_from(columns[k], k);
    if (!(left > kDependent)) {
      result.dependent = static_cast<int>(k);
      return result;
    }
    Column normal = columns[k];
    normal[k] += normal[k] < 0 ? -left : left;
    const long double normal_length = length_from(normal, k);
    for (std::size_t j = k; j < columns.size(); ++j) {
      reflect(normal, normal_length * normal_length, k, columns[j]);
    }
    reflect(normal, normal_length * normal_length, k, y);
    columns[k].resize(k + 1);
  }
  result.r = std::move(columns);
  result.rotated = std::move(y);
  return result;
}

Column coefficients(const Triangle& t) {
  const std::size_t size = t.r.size();
  Column b(size, 0);
  for (std::size_t k = size; k-- > 0;) {
    long double sum = t.rotated[k];
    for (std::size_t j = k + 1; j < size; ++j) {
      sum -= t.r[j][k] * b[j];
    }
    b[k] = sum / t.r[k][k];
  }
  for (std::size_t k = 0; k < size; ++k) {
    b[k] /= t.length[k];
  }
  return b;
}

std::vector<Column> inverse_cross_product(const Triangle& t) {
  const std::size_t size = t.r.size();
  std::vector<Column> inverse(size, Column(size, 0)); // of R, as rows
  for (std::size_t k = 0; k < size; ++k) {
    inverse[k][k] = 1 / t.r[k][k];
    for (std::size_t i = k; i-- > 0;) {
      long double sum = 0;
      for (std::size_t j = i + 1; j <= k; ++j) {
        sum -= t.r[j][i] * inverse[j][k];
      }
      inverse[i][k] = sum / t.r[i][i];
    }
  }
  std::vector<Column> product(size, Column(size, 0));
  for (std::size_t i = 0; i < size; ++i) {
    for (std::size_t k = 0; k < size; ++k) {
      for (std::size_t j = i > k ? i : k; j < size; ++j) {
        product[i][k] += inverse[i][j] * inverse[k][j];
      }
      product[i][k] /= t.length[i] * t.length[k];
    }
  }
  return product;
}

} // namespace baize::stats::detail
