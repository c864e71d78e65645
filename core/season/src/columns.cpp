#include "columns.h"

#include <cmath>

namespace baize::season {
namespace {

/// A loss smaller than exp(-30) of its depth is none.
constexpr double kOver = 30;

double left_of(double growth, double rate) {
  const double exponent = rate * growth;
  return growth < 0 || exponent > kOver ? 0 : std::exp(-exponent);
}

/// Without parameters, and with no losses counted, lines and values alone.
Eigen::MatrixXd products_within(const GreenModel& green, Eigen::Index losses,
                                const Parameters* parameters) {
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
  Eigen::MatrixXd products = Eigen::MatrixXd::Zero(columns.cols(), columns.cols());
  products.selfadjointView<Eigen::Lower>().rankUpdate(columns.transpose());
  return products;
}

} // namespace

Layout layout_of(const Model& model, const GreenModel& green) {
  Layout layout;
  layout.losses = static_cast<Eigen::Index>(green.losses.size());
  layout.lines = static_cast<Eigen::Index>(green.lines.size());
  layout.observers = static_cast<Eigen::Index>(model.observers.size()) - 1;
  return layout;
}

Rows look_columns(const Model& model, const GreenModel& green, const Parameters& parameters) {
  const Layout layout = layout_of(model, green);
  const Eigen::MatrixXd contrasts = observer_contrasts(model.observers.size());
  Rows columns(static_cast<Eigen::Index>(green.looks.size()), layout.all());
  std::vector<double> rate;
  for (const Loss& loss : green.losses) {
    rate.push_back(parameters.rate[loss.method]);
  }
  for (Eigen::Index i = 0; i < columns.rows(); ++i) {
    const Look& look = green.looks[static_cast<std::size_t>(i)];
    for (Eigen::Index k = 0; k < layout.losses; ++k) {
      const double share = green.share(i, k);
      columns(i, k) =
          share == 0 ? 0 : -share * left_of(green.growth(i, k), rate[static_cast<std::size_t>(k)]);
    }
    columns.row(i).segment(layout.losses, layout.lines) = green.line_share.row(i);
    columns(i, layout.own() - 1) = 1;
    columns.row(i).segment(layout.own(), layout.observers) =
        contrasts.row(static_cast<Eigen::Index>(look.observer));
    columns(i, layout.own() + layout.observers) = look.played;
    columns(i, layout.all() - 1) = look.mean;
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
  return products_within(green, losses, &parameters);
}

Eigen::MatrixXd within_lines(const GreenModel& green) {
  return products_within(green, 0, nullptr);
}

double whiten(const Model& model, const GreenModel& green, const Parameters& parameters,
              Rows& columns) {
  const double walk = parameters.level_walk * parameters.level_walk;
  const double visit = parameters.visit_sd * parameters.visit_sd;
  const double roll = model.roll_sd * model.roll_sd;
  Eigen::RowVectorXd level = Eigen::RowVectorXd::Zero(columns.cols());
  double variance = 0;
  double log_determinant = 0;
  for (Eigen::Index i = 0; i < columns.rows(); ++i) {
    const Look& look = green.looks[static_cast<std::size_t>(i)];
    if (i > 0) {
      variance += walk * (look.day - green.looks[static_cast<std::size_t>(i - 1)].day);
    }
    const double total = variance + visit + roll / look.rolls;
    columns.row(i) -= level;
    level += variance / total * columns.row(i);
    columns.row(i) /= std::sqrt(total);
    variance *= 1 - variance / total;
    log_determinant += std::log(total);
  }
  return log_determinant;
}

} // namespace baize::season
