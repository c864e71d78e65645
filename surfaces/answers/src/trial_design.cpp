#include "baize/answers/trial.h"

namespace baize::answers {
namespace {

Json plot(const trials::Plot& plot) {
  Object object;
  object.put("plot", plot.number);
  const auto put = [&](const char* key, int number) {
    if (number > 0) {
      object.put(key, number);
    }
  };
  const auto name = [&](const char* key, const std::string& text) {
    if (!text.empty()) {
      object.put(key, text);
    }
  };
  put("block", plot.block);
  put("whole_plot", plot.whole_plot);
  put("strip", plot.strip);
  object.put("treatment", plot.treatment);
  name("second_treatment", plot.second);
  name("green", plot.green);
  name("half", plot.half);
  put("row", plot.row);
  put("column", plot.column);
  put("walk", plot.walk);
  return object.done();
}

Json error_df(const trials::ErrorDf& one) {
  return Object().put("of", one.of).put("df", one.df).done();
}

Json power_point(const trials::PowerPoint& point) {
  return Object()
      .put("difference", point.difference)
      .put("power", point.power)
      .put("low", point.interval.low)
      .put("high", point.interval.high)
      .done();
}

Json table_power(const trials::TablePower& table) {
  return Object()
      .put("of", table.of)
      .put("error_df", table.error_df)
      .put("detectable", table.detectable)
      .nest("curve", list(table.curve, power_point))
      .done();
}

Json other_blocks(const trials::TrialPower::Blocks& one) {
  return Object().put("blocks", one.blocks).put("detectable", one.detectable).done();
}

} // namespace

Json to_json(const services::TrialDesignReview& review) {
  return Object()
      .put("sentence", review.sentence)
      .put("trial", review.plan.trial)
      .put("layout", trials::word(review.plan.layout))
      .put("seed", static_cast<std::int64_t>(review.plan.seed))
      .put("control", review.plan.control)
      .nest("plots", list(review.plan.plots, plot))
      .nest("error_df", list(review.error_df, error_df))
      .nest("power", list(review.power.tables, table_power))
      .nest("other_blocks", list(review.power.other_blocks, other_blocks))
      .nest("notes", list(review.notes))
      .put("map_text", review.map_text)
      .put("map_svg", review.map_svg)
      .put("plan_csv", review.plan_csv)
      .put("sheet_csv", review.sheet_csv)
      .put("sheet_page", review.sheet_page)
      .done();
}

} // namespace baize::answers
