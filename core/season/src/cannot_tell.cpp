#include "cannot_tell.h"

#include "baize/units/number.h"

#include <algorithm>
#include <cmath>

namespace baize::season {
namespace {

constexpr int kWindowBefore = 60; ///< days in which a visit counts as before a work
constexpr double kTiedLosses = -0.9;

std::string name(const Loss& loss) {
  return loss.label + " of " + units::iso(loss.day);
}

/// Correlation of two of a green's depths over the draws.
double correlation(const SeasonFit& fit, std::size_t green, Eigen::Index a, Eigen::Index b) {
  double sa = 0;
  double sb = 0;
  double saa = 0;
  double sbb = 0;
  double sab = 0;
  const auto n = static_cast<double>(fit.draws.size());
  for (const Draw& draw : fit.draws) {
    const double x = draw.own[green](a);
    const double y = draw.own[green](b);
    sa += x / n;
    sb += y / n;
    saa += x * x / n;
    sbb += y * y / n;
    sab += x * y / n;
  }
  const double spread = (saa - sa * sa) * (sbb - sb * sb);
  return spread > 0 ? (sab - sa * sb) / std::sqrt(spread) : 0;
}

void tell_green(SeasonFit& fit, std::size_t place) {
  const GreenModel& green = fit.model.greens[place];
  std::string unseen;
  for (std::size_t k = 0; k < green.losses.size(); ++k) {
    const Loss& loss = green.losses[k];
    bool before = false;
    for (std::size_t i = 0; i < green.looks.size(); ++i) {
      before =
          before || (green.growth(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(k)) < 0 &&
                     loss.day - green.looks[i].day <= kWindowBefore);
    }
    if (!before) {
      unseen += (unseen.empty() ? "" : ", ") + name(loss);
    }
    for (std::size_t j = 0; j < k; ++j) {
      if (correlation(fit, place, static_cast<Eigen::Index>(j), static_cast<Eigen::Index>(k)) <
          kTiedLosses) {
        fit.notes.push_back("Green " + green.green + ": the losses by " + name(green.losses[j]) +
                            " and " + name(loss) +
                            " overlap so that they cannot be told apart; their sum can.");
      }
    }
  }
  if (!unseen.empty()) {
    fit.notes.push_back("Green " + green.green + ": no score in the 60 days before " + unseen +
                        "; its depth leans on the same work elsewhere.");
  }
}

} // namespace

void put_notes(SeasonFit& fit) {
  if (fit.model.observers.size() == 1) {
    fit.notes.push_back("One observer only: their level cannot be compared with others'.");
  }
  for (const MethodEstimate& method : fit.methods) {
    if (!method.rate_determined) {
      fit.notes.push_back("How fast a loss by " + method.method +
                          " falls the records hardly tell; the rate leans on other works.");
    }
  }
  for (std::size_t g = 0; g < fit.model.greens.size(); ++g) {
    tell_green(fit, g);
  }
}

} // namespace baize::season
