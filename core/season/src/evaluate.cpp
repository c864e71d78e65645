#include "baize/season/evaluate.h"

#include "columns.h"

#include <Eigen/Cholesky>

#include <cmath>
#include <numbers>

namespace baize::season {
namespace {

double log_determinant(const Eigen::LLT<Eigen::MatrixXd>& root) {
  return 2 * root.matrixLLT().diagonal().array().log().sum();
}

/// Cross-products of a green's whitened columns, over looks and within them.
struct Products {
  Eigen::MatrixXd all; ///< in the order of Layout
  double log_determinant = 0;
  double values = 0; ///< runs
};

Products products_of(const Model& model, const GreenModel& green, const Parameters& parameters) {
  const Layout layout = layout_of(model, green);
  Products products;
  const std::vector<double> rates = rates_of(green, parameters);
  products.all = look_products(model, green, parameters, rates, products.log_determinant);
  const Eigen::Index inner = layout.losses + layout.lines;
  const double roll = model.roll_sd * model.roll_sd;
  const Eigen::MatrixXd within = within_products(green, rates) / roll;
  products.all.topLeftCorner(inner, inner) += within.topLeftCorner(inner, inner);
  products.all.row(layout.all() - 1).head(inner) += within.row(inner).head(inner);
  products.all(layout.all() - 1, layout.all() - 1) += within(inner, inner);
  products.all = Eigen::MatrixXd(products.all.selfadjointView<Eigen::Lower>());
  const auto apart = static_cast<double>(green.runs.size() - green.looks.size());
  products.log_determinant += green.log_rolls + apart * std::log(roll);
  products.values = static_cast<double>(green.runs.size());
  return products;
}

/// Normal equations over what greens share, and minus twice the log-likelihood
/// without them.
struct Sums {
  Eigen::MatrixXd precision;
  Eigen::VectorXd right;
  double minus_two_log = 0;
};

void put_prior(Sums& sums, Eigen::Index at, const Prior& prior) {
  const double precision = 1 / (prior.sd * prior.sd);
  sums.precision(at, at) += precision;
  sums.right(at) += precision * prior.mean;
  sums.minus_two_log += precision * prior.mean * prior.mean - std::log(precision);
}

Sums priors_of(const Model& model, const Priors& priors) {
  const auto observers = static_cast<Eigen::Index>(model.observers.size()) - 1;
  const auto methods = static_cast<Eigen::Index>(model.methods.size());
  const Eigen::Index size = observers + 1 + methods;
  Sums sums{Eigen::MatrixXd::Zero(size, size), Eigen::VectorXd::Zero(size), 0};
  for (Eigen::Index i = 0; i < observers; ++i) {
    put_prior(sums, i, {0, priors.observer.sd});
  }
  put_prior(sums, observers, priors.play);
  for (Eigen::Index m = 0; m < methods; ++m) {
    put_prior(sums, observers + 1 + m, priors.depth);
  }
  return sums;
}

bool add_green(const Model& model, const GreenModel& green, const Parameters& parameters,
               bool with_posterior, Sums& sums, GreenPosterior& posterior) {
  const Layout layout = layout_of(model, green);
  Products products = products_of(model, green, parameters);
  const Eigen::Index own = layout.own();
  const Eigen::Index shared = layout.shared();
  const Eigen::Index wide = sums.right.size();
  Eigen::MatrixXd precision = products.all.topLeftCorner(own, own);
  Eigen::MatrixXd rest = Eigen::MatrixXd::Zero(own, wide + 1); // what is shared, then the values
  rest.leftCols(shared) = products.all.block(0, own, own, shared);
  rest.col(wide) = products.all.block(0, layout.all() - 1, own, 1);
  for (Eigen::Index k = 0; k < layout.losses; ++k) {
    const std::size_t method = green.losses[static_cast<std::size_t>(k)].method;
    const double sd = parameters.depth_spread * parameters.typical_depth[method];
    const Eigen::Index at = shared + static_cast<Eigen::Index>(method);
    const double weight = 1 / (sd * sd);
    precision(k, k) += weight;
    rest(k, at) -= weight;
    sums.precision(at, at) += weight;
    sums.minus_two_log -= std::log(weight);
  }
  const double line = 1 / (parameters.line_sd * parameters.line_sd);
  precision.diagonal().segment(layout.losses, layout.lines).array() += line;
  sums.minus_two_log -= static_cast<double>(layout.lines) * std::log(line);
  const Eigen::LLT<Eigen::MatrixXd> root(precision);
  if (root.info() != Eigen::Success) {
    return false;
  }
  const Eigen::MatrixXd half = root.matrixL().solve(rest);
  sums.precision.topLeftCorner(shared, shared) += products.all.block(own, own, shared, shared);
  sums.precision.noalias() -= half.leftCols(wide).transpose() * half.leftCols(wide);
  sums.right.head(shared) += products.all.block(own, layout.all() - 1, shared, 1);
  sums.right.noalias() -= half.leftCols(wide).transpose() * half.col(wide);
  sums.minus_two_log += products.log_determinant + log_determinant(root) +
                        products.all(layout.all() - 1, layout.all() - 1) -
                        half.col(wide).squaredNorm() +
                        (products.values - 1) * std::log(2 * std::numbers::pi);
  if (with_posterior) {
    posterior.precision_root = root.matrixL();
    posterior.base = root.matrixU().solve(half.col(wide));
    posterior.slope = -root.matrixU().solve(half.leftCols(wide));
  }
  return true;
}

} // namespace

Eigen::MatrixXd observer_contrasts(std::size_t observers) {
  // Helmert's: each observer against the mean of those before.
  const auto size = static_cast<Eigen::Index>(observers);
  Eigen::MatrixXd contrasts = Eigen::MatrixXd::Zero(size, size - 1);
  for (Eigen::Index j = 0; j + 1 < size; ++j) {
    const auto before = static_cast<double>(j + 1);
    const double scale = 1 / std::sqrt(before * (before + 1));
    contrasts.col(j).head(j + 1).setConstant(-scale);
    contrasts(j + 1, j) = before * scale;
  }
  return contrasts;
}

Posterior evaluate(const Model& model, const Priors& priors, const Parameters& parameters,
                   bool with_posterior) {
  Posterior posterior;
  Sums sums = priors_of(model, priors);
  for (const GreenModel& green : model.greens) {
    GreenPosterior one;
    if (!add_green(model, green, parameters, with_posterior, sums, one)) {
      return posterior;
    }
    if (with_posterior) {
      posterior.greens.push_back(std::move(one));
    }
  }
  const Eigen::LLT<Eigen::MatrixXd> root(sums.precision);
  if (root.info() != Eigen::Success) {
    return posterior;
  }
  const Eigen::VectorXd half = root.matrixL().solve(sums.right);
  posterior.log_likelihood = -(sums.minus_two_log + log_determinant(root) - half.squaredNorm()) / 2;
  posterior.usable = std::isfinite(posterior.log_likelihood);
  if (with_posterior) {
    posterior.shared = root.matrixU().solve(half);
    posterior.shared_covariance =
        root.solve(Eigen::MatrixXd::Identity(sums.right.size(), sums.right.size()));
  }
  return posterior;
}

std::vector<double> innovations(const Model& model, std::size_t green, const Parameters& parameters,
                                const Posterior& posterior) {
  const GreenModel& one = model.greens[green];
  const Layout layout = layout_of(model, one);
  Rows columns = look_columns(model, one, rates_of(one, parameters));
  whiten(model, one, parameters, columns);
  const GreenPosterior& own = posterior.greens[green];
  Eigen::VectorXd effects(layout.all() - 1);
  effects << own.base + own.slope * posterior.shared, posterior.shared.head(layout.shared());
  const Eigen::VectorXd errors =
      columns.col(layout.all() - 1) - columns.leftCols(layout.all() - 1) * effects;
  return {errors.data() + 1, errors.data() + errors.size()};
}

} // namespace baize::season
