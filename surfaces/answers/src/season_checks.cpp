#include "baize/answers/season_checks.h"

#include <cmath>

namespace baize::answers {
namespace {

double cut(double value) {
  return std::round(value * 1e4) / 1e4;
}

Json surprises(const services::SeasonChecks& checks) {
  const season::Surprises& of = checks.checks.surprises;
  Object object;
  object.put("sentence", checks.surprises)
      .put("like_chance", of.like_chance)
      .put("mean", cut(of.mean))
      .put("sd", cut(of.sd))
      .put("outside", cut(of.outside))
      .put("visits", of.in_line.values);
  if (of.in_line.summary.usable) {
    std::vector<double> lags;
    lags.reserve(of.in_line.autocorrelation.size());
    for (const double one : of.in_line.autocorrelation) {
      lags.push_back(cut(one));
    }
    object.nest("autocorrelation", list(lags))
        .put("statistic", cut(of.in_line.statistic))
        .put("df", of.in_line.df)
        .put("p", cut(of.in_line.p));
  }
  return object.done();
}

Json shift(const season::Shift& one) {
  return Object()
      .put("method", one.method)
      .put("depth", cut(one.depth))
      .put("rate", cut(one.rate))
      .done();
}

Json leaning(const season::Leaning& one) {
  return Object()
      .put("times", one.times)
      .put("most", cut(one.most))
      .nest("methods", list(one.methods, shift))
      .done();
}

} // namespace

Json to_json(const services::SeasonChecks& checks) {
  Object object;
  object.put("club", checks.club).nest("surprises", surprises(checks));
  if (const auto& clocks = checks.checks.clocks) {
    object.nest("clocks", Object()
                              .put("sentence", checks.clocks)
                              .put("growth_days", cut(clocks->growth_days))
                              .put("calendar_days", cut(clocks->calendar_days))
                              .put("difference", cut(clocks->difference()))
                              .put("told_apart", clocks->told_apart())
                              .done());
  }
  return object
      .nest("leaning", Object()
                           .put("sentence", checks.leaning)
                           .nest("fits", list(checks.checks.leaning, leaning))
                           .done())
      .done();
}

} // namespace baize::answers
