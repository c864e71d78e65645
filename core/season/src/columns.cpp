#include "columns.h"

#include <cmath>
#include <vector>

namespace baize::season {
namespace {

double left_of(double growth, double rate) {
  const double exponent = rate * growth;
  return growth < 0 || exponent > kOver ? 0 : std::exp(-exponent);
}

/// Without parameters, and with no losses counted, lines and values alone.
Rows apart(const GreenModel& green, Eigen::Index losses, const Parameters* parameters) {
  const auto lines = static_cast<Eigen::Index>(green.lines.size());
  Rows columns = Rows::Zero(static_cast<Eigen::Index>(green.runs.size()), losses + lines + 1);
  for (Eigen::Index r = 0; r < columns.rows(); ++r) {
    const RunMean& run = green.runs[static_cast<std::size_t>(r)];
    const auto look = static_cast<Eigen::Index>(run.look);
    for (Eigen::Index k = 0; k < losses; ++k) {
      const double apart = green.run_share(r, k) - green.share(look, k);
      if (apart != 0) {
        const double rate = parameters->rate[green.losses[static_cast<std::size_t>(k)].method];
        columns(r, k) = -apart * left_of(green.growth(look, k), rate);
      }
    }
    columns.row(r).segment(losses, lines) = -green.line_share.row(look);
    columns(r, losses + static_cast<Eigen::Index>(run.line)) += 1;
    columns(r, losses + lines) = run.mean - green.looks[run.look].mean;
    columns.row(r) *= std::sqrt(run.rolls);
  }
  return columns;
}

Eigen::MatrixXd products_of(const Rows& columns) {
  Eigen::MatrixXd products = Eigen::MatrixXd::Zero(columns.cols(), columns.cols());
  products.selfadjointView<Eigen::Lower>().rankUpdate(columns.transpose());
  return products;
}

/// Change of share x depth x exp(-rate growth), taken off, with the log of the rate.
double change(double share, double depth, double growth, double rate) {
  return share == 0 ? 0 : share * depth * rate * growth * left_of(growth, rate);
}

} // namespace

Layout layout_of(const Model& model, const GreenModel& green) {
  Layout layout;
  layout.losses = static_cast<Eigen::Index>(green.losses.size());
  layout.lines = static_cast<Eigen::Index>(green.lines.size());
  layout.observers = static_cast<Eigen::Index>(model.observers.size()) - 1;
  return layout;
}

Rows fixed_columns(const GreenModel& green, std::size_t observers) {
  const Eigen::MatrixXd contrasts = observer_contrasts(observers);
  const auto lines = static_cast<Eigen::Index>(green.lines.size());
  Rows columns(static_cast<Eigen::Index>(green.looks.size()), lines + contrasts.cols() + 3);
  for (Eigen::Index i = 0; i < columns.rows(); ++i) {
    const Look& look = green.looks[static_cast<std::size_t>(i)];
    columns.row(i) << green.line_share.row(i), 1,
        contrasts.row(static_cast<Eigen::Index>(look.observer)), look.played, look.mean;
  }
  return columns;
}

std::vector<double> rates_of(const GreenModel& green, const Parameters& parameters) {
  std::vector<double> rates;
  rates.reserve(green.losses.size());
  for (const Loss& loss : green.losses) {
    rates.push_back(parameters.rate[loss.method]);
  }
  return rates;
}

Rows look_columns(const Model& model, const GreenModel& green, const std::vector<double>& rates) {
  const Layout layout = layout_of(model, green);
  Rows columns(green.fixed.rows(), layout.all());
  columns.rightCols(green.fixed.cols()) = green.fixed;
  for (Eigen::Index k = 0; k < layout.losses; ++k) {
    const double rate = rates[static_cast<std::size_t>(k)];
    for (Eigen::Index i = 0; i < columns.rows(); ++i) {
      const double share = green.share(i, k);
      columns(i, k) = share == 0 ? 0 : -share * left_of(green.growth(i, k), rate);
    }
  }
  return columns;
}

Eigen::MatrixXd within_products(const GreenModel& green, const Parameters& parameters) {
  const auto losses = static_cast<Eigen::Index>(green.losses.size());
  const auto lines = static_cast<Eigen::Index>(green.lines.size());
  if (!green.split) {
    Eigen::MatrixXd products = Eigen::MatrixXd::Zero(losses + lines + 1, losses + lines + 1);
    products.bottomRightCorner(lines + 1, lines + 1) = green.within;
    return products;
  }
  return products_of(columns_within(green, parameters));
}

Rows columns_within(const GreenModel& green, const Parameters& parameters) {
  return apart(green, static_cast<Eigen::Index>(green.losses.size()), &parameters);
}

Rows rate_columns(const GreenModel& green, const std::vector<double>& rates,
                  const Eigen::VectorXd& depths) {
  Rows columns(green.share.rows(), green.share.cols());
  for (Eigen::Index i = 0; i < columns.rows(); ++i) {
    for (Eigen::Index k = 0; k < columns.cols(); ++k) {
      columns(i, k) = change(green.share(i, k), depths(k), green.growth(i, k),
                             rates[static_cast<std::size_t>(k)]);
    }
  }
  return columns;
}

Rows rate_columns_within(const GreenModel& green, const std::vector<double>& rates,
                         const Eigen::VectorXd& depths) {
  Rows columns(green.run_share.rows(), green.run_share.cols());
  for (Eigen::Index r = 0; r < columns.rows(); ++r) {
    const RunMean& run = green.runs[static_cast<std::size_t>(r)];
    const auto look = static_cast<Eigen::Index>(run.look);
    for (Eigen::Index k = 0; k < columns.cols(); ++k) {
      columns(r, k) =
          std::sqrt(run.rolls) * change(green.run_share(r, k) - green.share(look, k), depths(k),
                                        green.growth(look, k), rates[static_cast<std::size_t>(k)]);
    }
  }
  return columns;
}

Eigen::MatrixXd within_lines(const GreenModel& green) {
  return products_of(apart(green, 0, nullptr));
}

double whiten(const Model& model, const GreenModel& green, const Parameters& parameters,
              Rows& columns) {
  const double walk = parameters.level_walk * parameters.level_walk;
  const double visit = parameters.visit_sd * parameters.visit_sd;
  const double roll = model.roll_sd * model.roll_sd;
  std::vector<double> level(static_cast<std::size_t>(columns.cols()), 0.0);
  double variance = 0;
  double log_determinant = 0;
  for (Eigen::Index i = 0; i < columns.rows(); ++i) {
    const Look& look = green.looks[static_cast<std::size_t>(i)];
    if (i > 0) {
      variance += walk * (look.day - green.looks[static_cast<std::size_t>(i - 1)].day);
    }
    const double total = variance + visit + roll / look.rolls;
    const double gain = variance / total;
    const double scale = 1 / std::sqrt(total);
    double* row = columns.row(i).data();
    for (double& mean : level) {
      const double error = *row - mean;
      mean += gain * error;
      *row++ = scale * error;
    }
    variance *= 1 - gain;
    log_determinant += std::log(total);
  }
  return log_determinant;
}

} // namespace baize::season
