#include "baize/answers/trial.h"

#include <cmath>

namespace baize::answers {
namespace {

Json interval(const stats::Interval& interval) {
  return Object().put("low", interval.low).put("high", interval.high).done();
}

Object ended(const stats::Summary& summary) {
  Object object;
  object.put("usable", summary.usable).put("message", summary.message);
  return object;
}

Json mean(const trials::Mean& mean) {
  return Object()
      .put("name", mean.name)
      .put("mean", mean.mean)
      .put("plots", mean.plots)
      .put("letters", mean.letters)
      .done();
}

Json pair(const trials::Pair& pair) {
  return Object()
      .put("first", pair.first)
      .put("second", pair.second)
      .put("difference", pair.difference)
      .put("standard_error", pair.standard_error)
      .put("df", pair.df)
      .nest("alone", interval(pair.alone))
      .put("p_alone", pair.p_alone)
      .nest("among_all", interval(pair.among_all))
      .put("p_among_all", pair.p_among_all)
      .done();
}

Json against_control(const trials::AgainstControl& one) {
  return Object()
      .put("name", one.name)
      .put("difference", one.difference)
      .nest("interval", interval(one.interval))
      .put("p", one.p)
      .done();
}

Json comparison(const trials::Comparison& one) {
  return Object()
      .put("of", one.of)
      .put("f", one.f)
      .put("df", one.df)
      .put("error_df", one.error_df)
      .put("p", one.p)
      .put("lsd", one.lsd)
      .nest("means", list(one.means, mean))
      .nest("pairs", list(one.pairs, pair))
      .nest("against_control", list(one.against_control, against_control))
      .done();
}

Json values(const trials::ValueAnalysis& analysis) {
  Object object = ended(analysis.summary);
  if (analysis.summary.usable) {
    object.put("mean", analysis.mean).put("cv", analysis.cv).put("lost", analysis.lost);
  }
  return object.nest("comparisons", list(analysis.comparisons, comparison)).done();
}

Json day(const trials::DayAnalysis& one) {
  return Object().put("day", one.day).nest("analysis", values(one.analysis)).done();
}

Json test(const trials::RepeatedTest& one) {
  return Object()
      .put("of", one.of)
      .put("f", one.f)
      .put("df", one.df)
      .put("error_df", one.error_df)
      .put("p", one.p)
      .put("p_corrected", one.p_corrected)
      .done();
}

Json repeated(const trials::Repeated& one) {
  Object object = ended(one.summary);
  if (one.summary.usable) {
    object.put("epsilon", one.epsilon).put("lower_bound", one.lower_bound).put("lost", one.lost);
  }
  return object.nest("tests", list(one.tests, test)).done();
}

Json plot_back(const trials::PlotBack& one) {
  Object object;
  object.put("plot", one.plot).put("treatment", one.treatment).put("after_days", one.days.left);
  if (!one.days.right_censored()) {
    object.put("by_days", one.days.right);
  }
  return object.put("never_below", one.never_below).done();
}

Json treatment_back(const trials::TreatmentBack& one) {
  return Object()
      .put("treatment", one.treatment)
      .put("median_days", one.median)
      .nest("interval", interval(one.interval))
      .put("plots", one.plots)
      .put("not_back", one.not_back)
      .done();
}

Json back_difference(const trials::BackDifference& one) {
  return Object()
      .put("first", one.first)
      .put("second", one.second)
      .put("days", one.days)
      .nest("interval", interval(one.interval))
      .put("p", one.p)
      .done();
}

Json back(const trials::TimeBack& one) {
  Object object = ended(one.summary);
  if (one.summary.usable) {
    object.put("df", one.df).put("blocks_differ", one.blocks);
  }
  return object.nest("plots", list(one.plots, plot_back))
      .nest("treatments", list(one.treatments, treatment_back))
      .nest("differences", list(one.differences, back_difference))
      .done();
}

Json odds(const trials::OddsRatio& one) {
  return Object()
      .put("first", one.first)
      .put("second", one.second)
      .put("odds", one.odds)
      .nest("interval", interval(one.interval))
      .put("p", one.p)
      .done();
}

Json ordinal(const trials::Ordinal& one) {
  Object object = ended(one.summary);
  if (one.summary.usable) {
    object.put("plots", one.plots).put("df", one.df);
  }
  return object.nest("pairs", list(one.pairs, odds)).done();
}

Json checks(const trials::Checks& one) {
  Object object;
  object.put("spread_p", one.spread_p)
      .put("normality", one.normality)
      .put("normal_enough", one.normal_enough);
  if (one.outlier > 0) {
    object.put("outlier", one.outlier).put("outlier_p", one.outlier_p);
  }
  return object.done();
}

} // namespace

Json to_json(const services::TrialAnalysisReview& review) {
  const trials::Analysis& analysis = review.analysis;
  return Object()
      .put("sentence", review.sentence)
      .put("evidence", review.evidence)
      .put("trial", review.plan.trial)
      .put("layout", trials::word(review.plan.layout))
      .put("control", review.plan.control)
      .put("quantity", analysis.quantity)
      .put("plots", static_cast<int>(review.plan.plots.size()))
      .put("records", analysis.records)
      .nest("overall", values(analysis.overall))
      .nest("days", list(analysis.days, day))
      .nest("repeated", repeated(analysis.repeated))
      .put("back", analysis.back, back)
      .nest("ordinal", ordinal(analysis.ordinal))
      .nest("checks", checks(analysis.checks))
      .nest("notes", list(review.notes))
      .done();
}

} // namespace baize::answers
