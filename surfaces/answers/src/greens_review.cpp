#include "baize/answers/greens_review.h"

#include "baize/answers/speed.h"
#include "baize/answers/words.h"

namespace baize::answers {

namespace {

Json card(const services::GreenCard& card) {
  return Object()
      .put("green", card.green)
      .put("name", card.name)
      .put("grass_mix", card.grass_mix)
      .put("last_visit", card.last_visit)
      .put("days_since_visit", card.days_since_visit)
      .put("score", card.score)
      .put("speed", card.speed, to_json)
      .put("speed_day", card.speed_day)
      .put("standard", card.standard)
      .put("at_standard", card.at_standard)
      .put("trend", word(card.trend))
      .put("trend_points", card.trend_points)
      .put("last_work", card.last_work)
      .put("last_work_label", card.last_work_label)
      .put("days_since_work", card.days_since_work)
      .put("fast_but_not_true", card.fast_but_not_true)
      .put("measured_true", card.measured_true)
      .put("fewest_true", card.fewest_true)
      .put("most_true", card.most_true)
      .put("open_days", card.open_days)
      .nest("recent_scores", list(card.recent_scores))
      .done();
}

} // namespace

Json to_json(const services::GreensReview& review) {
  return Object()
      .put("club", review.club)
      .put("club_name", review.club_name)
      .put("today", review.today)
      .nest("years", list(review.years))
      .nest("greens", list(review.greens, card))
      .put("median_speed_m", review.median_speed_m)
      .put("headline", review.headline)
      .done();
}

} // namespace baize::answers
