#include "parameter_scale.h"

#include <Eigen/LU>

#include <cmath>

namespace baize::season {
namespace {
constexpr Eigen::Index kOthers = 4; ///< parameters before the rates
}

ParameterScale::ParameterScale(const Model& model, const Priors& priors) {
  const auto methods = static_cast<Eigen::Index>(model.methods.size());
  mean_.resize(kOthers + methods);
  sd_.resize(kOthers + methods);
  Eigen::Index at = 0;
  for (const Prior& prior :
       {priors.log_level_walk, priors.log_visit_sd, priors.log_line_sd, priors.log_depth_spread}) {
    mean_(at) = prior.mean;
    sd_(at++) = prior.sd;
  }
  // The club's own mean rate is not known either, so that it makes the methods'
  // rates go together: variance of one, and what two share.
  const double shared = priors.log_rate.sd * priors.log_rate.sd;
  const double one = shared + priors.log_rate_between * priors.log_rate_between;
  mean_.tail(methods).setConstant(model.clock == Clock::calendar_days ? priors.log_rate_calendar
                                                                      : priors.log_rate.mean);
  sd_.tail(methods).setConstant(std::sqrt(one));
  Eigen::MatrixXd correlation = Eigen::MatrixXd::Identity(kOthers + methods, kOthers + methods);
  correlation.bottomRightCorner(methods, methods).setConstant(shared / one);
  correlation.diagonal().setOnes();
  precision_ = correlation.inverse();
}

Parameters ParameterScale::parameters(const Eigen::VectorXd& scaled,
                                      const std::vector<double>& typical_depth) const {
  const Eigen::VectorXd natural = (mean_ + sd_.cwiseProduct(scaled)).array().exp();
  Parameters parameters;
  parameters.level_walk = natural(0);
  parameters.visit_sd = natural(1);
  parameters.line_sd = natural(2);
  parameters.depth_spread = natural(3);
  parameters.rate.assign(natural.data() + kOthers, natural.data() + natural.size());
  parameters.typical_depth = typical_depth;
  return parameters;
}

double ParameterScale::log_prior(const Eigen::VectorXd& scaled) const {
  return -scaled.dot(precision_ * scaled) / 2;
}

} // namespace baize::season
