#include "baize/stats/log_product.h"
#include "columns.h"

#include <cmath>
#include <vector>

namespace baize::season {
namespace {

/// Looks one after the other, stretch by stretch; see whiten.
class Whitening {
 public:
  Whitening(const Model& model, const GreenModel& green, const Parameters& parameters,
            Eigen::Index columns)
      : green_(green), walk_(parameters.level_walk * parameters.level_walk),
        visit_(parameters.visit_sd * parameters.visit_sd), roll_(model.roll_sd * model.roll_sd),
        level_(static_cast<std::size_t>(columns), 0.0) {}

  /// The rows up to `past`; columns from `width` on are 0 up to there.
  void rows(Rows& columns, Eigen::Index past, Eigen::Index width) {
    for (; next_ < past; ++next_) {
      const Look& look = green_.looks[static_cast<std::size_t>(next_)];
      if (next_ > 0) {
        variance_ += walk_ * (look.day - green_.looks[static_cast<std::size_t>(next_ - 1)].day);
      }
      const double total = variance_ + visit_ + roll_ / look.rolls;
      const double gain = variance_ / total;
      const double scale = 1 / std::sqrt(total);
      double* row = columns.row(next_).data();
      for (Eigen::Index c = 0; c < width; ++c) {
        double& mean = level_[static_cast<std::size_t>(c)];
        const double error = row[c] - mean;
        mean += gain * error;
        row[c] = scale * error;
      }
      variance_ *= 1 - gain;
      determinant_.times(total);
    }
  }
  double log_determinant() const { return determinant_.log(); }

 private:
  const GreenModel& green_;
  double walk_;
  double visit_;
  double roll_;
  double variance_ = 0;
  Eigen::Index next_ = 0;
  std::vector<double> level_;
  stats::LogProduct determinant_;
};

} // namespace

double whiten(const Model& model, const GreenModel& green, const Parameters& parameters,
              Rows& columns) {
  Whitening whitening(model, green, parameters, columns.cols());
  whitening.rows(columns, columns.rows(), columns.cols());
  return whitening.log_determinant();
}

Eigen::MatrixXd look_products(const Model& model, const GreenModel& green,
                              const Parameters& parameters, const std::vector<double>& rates,
                              double& log_determinant) {
  // The losses stand last and in their order in time: the columns of those to come are 0,
  // and the rows of a stretch are taken together without them.
  constexpr Eigen::Index kStretches = 4;
  const Eigen::Index fixed = green.fixed.cols();
  const auto losses = static_cast<Eigen::Index>(green.losses.size());
  const Eigen::Index all = fixed + losses;
  Rows columns(green.fixed.rows(), all);
  columns.leftCols(fixed) = green.fixed;
  put_losses(green, rates, columns, fixed);
  Whitening whitening(model, green, parameters, all);
  Eigen::MatrixXd products = Eigen::MatrixXd::Zero(all, all);
  for (Eigen::Index s = 0; s < kStretches; ++s) {
    const Eigen::Index first = columns.rows() * s / kStretches;
    const Eigen::Index past = columns.rows() * (s + 1) / kStretches;
    Eigen::Index seen = losses;
    while (past > first && seen > 0 && green.growth(past - 1, seen - 1) < 0) {
      --seen;
    }
    whitening.rows(columns, past, fixed + seen);
    const auto part = columns.block(first, 0, past - first, fixed + seen);
    products.topLeftCorner(fixed + seen, fixed + seen)
        .selfadjointView<Eigen::Lower>()
        .rankUpdate(part.transpose());
  }
  log_determinant += whitening.log_determinant();
  Eigen::MatrixXd in_order(all, all);
  in_order.topLeftCorner(losses, losses) = products.bottomRightCorner(losses, losses);
  in_order.bottomRightCorner(fixed, fixed) = products.topLeftCorner(fixed, fixed);
  in_order.bottomLeftCorner(fixed, losses) = products.bottomLeftCorner(losses, fixed).transpose();
  return in_order;
}

} // namespace baize::season
