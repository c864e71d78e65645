#include "baize/services/work_review.h"

#include "slices.h"
#include "works_of.h"

#include <algorithm>
#include <utility>

namespace baize::services {
namespace {

WorkAtGreen at_green(const LossHere& here, units::Day work_day) {
  const green::Green& green = here.share->greens.front();
  WorkAtGreen out{green.name, *here.loss, {}};
  const units::Day first = work_day - recovery::Options{}.before_window_days;
  for (recovery::DayScore& day :
       recovery::day_scores(recovery::visit_scores(*here.share, green.id, here.loss->half))) {
    if (first <= day.day && day.day <= here.loss->horizon) {
      out.days.push_back({day.day, day.day - work_day, day.score, day.rolls, std::move(day.visits),
                          green::standard_on(here.share->standards, green.id, day.day)});
    }
  }
  return out;
}

/// Shares of the greens that the work touches, and of no other.
std::vector<green::Records> shares_of(const green::Records& records, const green::Work& work,
                                      units::Day today) {
  std::vector<green::Records> shares = slices(records, today);
  std::erase_if(shares, [&](const green::Records& share) {
    return !green::touches(work, share.greens.front().id);
  });
  return shares;
}

} // namespace

WorkReview review_of(const green::Work& work, const std::string& club,
                     const std::vector<LossHere>& losses, units::Day today) {
  WorkReview review;
  review.club = club;
  review.work = work;
  review.label = work_label(work);
  review.work_class = green::class_of(work);
  for (const LossHere& here : losses) {
    review.greens.push_back(at_green(here, work.day));
  }
  review.sentence = work_sentence(work, losses, today);
  return review;
}

units::Result<WorkReview> work_review(const green::Records& records,
                                      const climate::Weather& weather, const std::string& work,
                                      units::Day today) {
  const auto found =
      std::find_if(records.works.begin(), records.works.end(),
                   [&](const green::Work& candidate) { return candidate.id == work; });
  if (found == records.works.end()) {
    return units::refuse("no_such_work", "work", work, "a work of this club");
  }
  const auto shares = shares_of(records, *found, today);
  const LossBook book(shares, weather, today);
  return review_of(*found, records.club.id, book.of(work), today);
}

} // namespace baize::services
