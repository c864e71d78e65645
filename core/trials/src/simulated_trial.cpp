#include "simulated_trial.h"

#include <cmath>

namespace baize::trials {
namespace {

/// blocks x treatments x seconds, in this order.
struct Field {
  int r;
  int t;
  int s;
  std::vector<double> y;
  double& at(int i, int j, int k) {
    return y[(static_cast<std::size_t>(i) * static_cast<std::size_t>(t) +
              static_cast<std::size_t>(j)) *
                 static_cast<std::size_t>(s) +
             static_cast<std::size_t>(k)];
  }
};

/// A table of blocks by treatments, and what is left when both are taken out.
struct Table {
  int rows = 0;
  int columns = 0;
  std::vector<double> y;
  double at(int i, int j) const {
    return y[static_cast<std::size_t>(i) * static_cast<std::size_t>(columns) +
             static_cast<std::size_t>(j)];
  }
  double row(int i) const {
    double sum = 0;
    for (int j = 0; j < columns; ++j) {
      sum += at(i, j);
    }
    return sum / columns;
  }
  double column(int j) const {
    double sum = 0;
    for (int i = 0; i < rows; ++i) {
      sum += at(i, j);
    }
    return sum / rows;
  }
  /// Sum of squares without columns, and without rows where these are blocks.
  double residual(bool blocks) const {
    double all = 0;
    for (int j = 0; j < columns; ++j) {
      all += column(j) / columns;
    }
    double sum = 0;
    for (int j = 0; j < columns; ++j) {
      const double mean = column(j);
      for (int i = 0; i < rows; ++i) {
        const double off = at(i, j) - mean - (blocks ? row(i) - all : 0);
        sum += off * off;
      }
    }
    return sum;
  }
};

/// Means over second treatments, or over treatments.
Table averaged(Field& field, bool second) {
  Table table{field.r, second ? field.s : field.t, {}};
  const int over = second ? field.t : field.s;
  for (int i = 0; i < table.rows; ++i) {
    for (int j = 0; j < table.columns; ++j) {
      double sum = 0;
      for (int k = 0; k < over; ++k) {
        sum += second ? field.at(i, k, j) : field.at(i, j, k);
      }
      table.y.push_back(sum / over);
    }
  }
  return table;
}

Field draw_field(const TrialShape& shape, double whole, double plot, stats::Random& random) {
  Field field{shape.blocks, shape.treatments, shape.seconds, {}};
  field.y.resize(static_cast<std::size_t>(field.r) * field.t * field.s);
  const bool strips = shape.layout == Layout::strip_plot;
  const bool units = strips || shape.layout == Layout::split_plot;
  std::vector<double> across(static_cast<std::size_t>(field.s), 0);
  for (int i = 0; i < field.r; ++i) {
    for (double& strip : across) {
      strip = strips ? whole * random.normal() : 0;
    }
    for (int j = 0; j < field.t; ++j) {
      const double unit = units ? whole * random.normal() : 0;
      for (int k = 0; k < field.s; ++k) {
        field.at(i, j, k) = unit + across[static_cast<std::size_t>(k)] + plot * random.normal();
      }
    }
  }
  return field;
}

/// Plots within whole plots: blocks by second treatments, within each treatment.
double residual_within(Field& field) {
  double sum = 0;
  for (int j = 0; j < field.t; ++j) {
    Table table{field.r, field.s, {}};
    for (int i = 0; i < field.r; ++i) {
      for (int k = 0; k < field.s; ++k) {
        table.y.push_back(field.at(i, j, k));
      }
    }
    sum += table.residual(true);
  }
  return sum;
}

} // namespace

int error_df(const TrialShape& shape, bool second) {
  const int r = shape.blocks;
  const int t = shape.treatments;
  const int s = shape.seconds;
  if (shape.layout == Layout::completely_randomised) {
    return t * (r - 1);
  }
  if (!second) {
    return (r - 1) * (t - 1);
  }
  return shape.layout == Layout::split_plot ? t * (r - 1) * (s - 1) : (r - 1) * (s - 1);
}

Chance simulated(const TrialShape& shape, double whole, double plot, bool second,
                 stats::Random& random) {
  Field field = draw_field(shape, whole, plot, random);
  const Table table = averaged(field, second);
  const bool within = second && shape.layout == Layout::split_plot;
  const double squares = within ? residual_within(field) / shape.treatments // as of means
                                : table.residual(shape.layout != Layout::completely_randomised);
  const double variance = squares / error_df(shape, second);
  return {table.column(0) - table.column(1), std::sqrt(2 * variance / table.rows)};
}

} // namespace baize::trials
