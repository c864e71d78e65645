#include "baize/answers/methods_review.h"

#include "baize/answers/words.h"

#include <array>

namespace baize::answers {

namespace {

// The order of each table is the order of its enumeration.
constexpr std::array<std::string_view, 4> kDistributions{"exponential", "weibull", "log_normal",
                                                         "log_logistic"};
constexpr std::array<std::string_view, 4> kEvidence{"one_work", "before_after", "repeated",
                                                    "randomised"};
constexpr std::array<std::string_view, 3> kNoMedian{"none", "never_back", "never_below"};

Json figure(const compare::Figure& figure) {
  return Object().put("value", figure.value).put("low", figure.low).put("high", figure.high).done();
}

Json work(const services::MethodWork& work) {
  return Object()
      .put("club", work.club)
      .put("work", work.work)
      .put("day", work.day)
      .put("looks", work.looks)
      .done();
}

/// An end after the last look is infinite and left out.
Json mass(const stats::SupportMass& mass) {
  return Object().put("left", mass.left).put("right", mass.right).put("mass", mass.mass).done();
}

Json method(const services::MethodLine& line) {
  const compare::MethodFigures& of = line.figures;
  return Object()
      .put("method", of.method)
      .put("sentence", line.sentence)
      .put("works", of.works)
      .put("looks", of.looks)
      .put("censored", of.censored)
      .put("no_median", word(of.no_median))
      .put("days", of.days, figure)
      .put("missed", of.missed)
      .put("days_if_good", of.days_if_good, figure)
      .put("growth_days", of.growth_days, figure)
      .put("depth", of.depth, figure)
      .put("score_days", of.score_days, figure)
      .put("losses_open", of.losses_open)
      .put("growth", of.growth)
      .nest("curve", list(of.curve.support, mass))
      .nest("work_list", list(line.works, work))
      .done();
}

Json pair(const services::PairOfMethods& line) {
  const compare::PairFigures& of = line.figures;
  Object object;
  object.put("first", of.first)
      .put("second", of.second)
      .put("sentence", line.sentence)
      .put("evidence", word(of.evidence))
      .put("caution", line.caution)
      .put("shared_days", of.shared_days);
  if (of.days) {
    object.put("told_apart", of.told_apart).put("p", of.p);
  }
  return object.put("days", of.days, figure)
      .put("ratio", of.ratio, figure)
      .put("growth_days", of.growth_days, figure)
      .put("depth", of.depth, figure)
      .put("score_days", of.score_days, figure)
      .put("works_needed", of.works_needed)
      .done();
}

Json adjustment(const compare::Adjustment& adjustment) {
  Object object;
  object.put("name", adjustment.name).put("used", adjustment.used);
  if (!adjustment.used) {
    return object.put("reason", adjustment.reason).done();
  }
  object.put("reference", adjustment.reference);
  if (adjustment.effect) {
    object.put("effect", adjustment.effect->value)
        .put("standard_error", adjustment.effect->standard_error);
  }
  return object.done();
}

Json tried(const compare::DistributionTried& tried) {
  return Object()
      .put("distribution", word(tried.distribution))
      .put("log_likelihood", tried.log_likelihood)
      .done();
}

} // namespace

std::string_view word(stats::AftDistribution value) {
  return kDistributions[static_cast<std::size_t>(value)];
}
std::string_view word(compare::Evidence value) {
  return kEvidence[static_cast<std::size_t>(value)];
}
std::string_view word(compare::NoMedian value) {
  return kNoMedian[static_cast<std::size_t>(value)];
}

Json to_json(const services::MethodsReview& review) {
  const compare::Comparison& of = review.comparison;
  const compare::GatherOptions& asked = review.query.gather;
  Object object;
  object.nest("clubs", list(review.clubs))
      .put("sentence", review.sentence)
      .nest("notes", list(review.notes))
      .put("definition", word(asked.definition))
      .put("kind", asked.grouping.kind)
      .put("by", asked.grouping.by)
      .nest("cuts", list(asked.grouping.cuts))
      .nest("alongside", list(asked.grouping.alongside))
      .put("growth_window_days", asked.growth_window_days)
      .put("days_wanted", review.query.compare.days_wanted)
      .put("level", review.query.compare.level)
      .put("distribution", word(of.distribution))
      .put("works", of.works)
      .put("looks", of.looks)
      .put("estimated", of.summary.usable);
  if (of.summary.usable) {
    object.put("work_sd", of.work_sd).put("look_scale", of.look_scale).put("df", of.df);
  } else {
    object.put("reason", of.summary.message);
  }
  return object.nest("tried", list(of.tried, tried))
      .nest("adjustments", list(of.adjustments, adjustment))
      .nest("methods", list(review.methods, method))
      .nest("pairs", list(review.pairs, pair))
      .done();
}

} // namespace baize::answers
