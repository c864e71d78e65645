#include "baize/answers/work_review.h"

#include "baize/answers/words.h"
#include "baize/answers/work.h"
#include "baize/answers/work_loss.h"

namespace baize::answers {

namespace {

Json work_day(const services::WorkDay& day) {
  return Object()
      .put("day", day.day)
      .put("days_after", day.days_after)
      .put("score", day.score)
      .put("rolls", day.rolls)
      .nest("visits", list(day.visits))
      .put("standard", day.standard)
      .done();
}

Json work_at_green(const services::WorkAtGreen& at) {
  return Object()
      .put("green_name", at.green_name)
      .nest("loss", to_json(at.loss))
      .nest("days", list(at.days, work_day))
      .done();
}

Json work_line(const services::WorkLine& line) {
  return Object()
      .nest("work", to_json(line.work))
      .put("label", line.label)
      .put("work_class", word(line.work_class))
      .put("greens", line.greens)
      .put("mean_depth", line.mean_depth)
      .put("back_after_days", line.back_after_days)
      .put("back_by_days", line.back_by_days)
      .put("back", line.back)
      .put("back_at_lower_standard", line.back_at_lower_standard)
      .put("censored", line.censored)
      .put("mean_score_days", line.mean_score_days)
      .put("losses_open", line.losses_open)
      .done();
}

} // namespace

Json to_json(const services::WorkReview& review) {
  return Object()
      .put("club", review.club)
      .nest("work", to_json(review.work))
      .put("label", review.label)
      .put("work_class", word(review.work_class))
      .nest("greens", list(review.greens, work_at_green))
      .put("sentence", review.sentence)
      .done();
}

Json to_json(const std::vector<services::WorkLine>& lines) {
  return Object().nest("works", list(lines, work_line)).done();
}

} // namespace baize::answers
