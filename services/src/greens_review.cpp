#include "baize/services/greens_review.h"

#include "greens_of.h"
#include "slices.h"
#include "wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <numeric>
#include <set>
#include <tuple>
#include <utility>

namespace baize::services {
namespace {

constexpr std::size_t kRecent = 12;
constexpr std::size_t kTrendDays = 3;

void put_speed(GreenCard& card, const green::Records& slice) {
  const green::Visit* last = nullptr;
  std::optional<speed::VisitSpeed> found;
  for (const green::Visit& visit : slice.visits) {
    if (!card.last_visit || *card.last_visit < visit.day) {
      card.last_visit = visit.day;
    }
    const bool later = last == nullptr || std::tie(last->day, last->from, last->id) <
                                              std::tie(visit.day, visit.from, visit.id);
    if (!later) {
      continue;
    }
    if (auto measured = speed::visit_speed(visit.runs)) {
      found = std::move(measured);
      last = &visit;
    }
  }
  if (last != nullptr) {
    card.speed = std::move(found);
    card.speed_day = last->day;
  }
}

double mean_score(std::vector<recovery::DayScore>::const_iterator first, std::size_t days) {
  return std::accumulate(first, first + static_cast<std::ptrdiff_t>(days), 0.0,
                         [](double sum, const auto& day) { return sum + day.score; }) /
         static_cast<double>(days);
}

void put_trend(GreenCard& card, const std::vector<recovery::DayScore>& days) {
  if (days.size() < 2 * kTrendDays) {
    return;
  }
  const auto newest = days.end() - static_cast<std::ptrdiff_t>(kTrendDays);
  card.trend_points = mean_score(newest, kTrendDays) -
                      mean_score(newest - static_cast<std::ptrdiff_t>(kTrendDays), kTrendDays);
  card.trend = *card.trend_points > kTrendPoints    ? Trend::better
               : *card.trend_points < -kTrendPoints ? Trend::worse
                                                    : Trend::steady;
}

void put_scores(GreenCard& card, const green::Records& slice, units::Day today) {
  const auto days = recovery::day_scores(recovery::visit_scores(slice, card.green));
  card.standard =
      green::standard_on(slice.standards, card.green, days.empty() ? today : days.back().day);
  if (!days.empty()) {
    card.score = days.back().score;
    card.at_standard = recovery::reaches(days.back().score, card.standard);
  }
  put_trend(card, days);
  const std::size_t skipped = days.size() - std::min(days.size(), kRecent);
  for (std::size_t i = skipped; i < days.size(); ++i) {
    card.recent_scores.push_back(days[i].score);
  }
}

void put_last_work(GreenCard& card, const green::Records& slice, units::Day today) {
  const green::Work* last = nullptr;
  for (const green::Work& work : slice.works) {
    if (work.day <= today && green::class_of(work) == green::WorkClass::disruptive &&
        (last == nullptr || std::tie(last->day, last->id) < std::tie(work.day, work.id))) {
      last = &work;
    }
  }
  if (last != nullptr) {
    card.last_work = last->id;
    card.last_work_label = work_label(*last);
    card.days_since_work = today - last->day;
  }
}

void put_ledger(GreenCard& card, const green::Records& slice, units::Day today) {
  units::Period year = units::calendar_year(units::year_month_day(today).year);
  year.last = today;
  const recovery::Ledger ledger = recovery::true_days(slice, card.green, year, today);
  card.measured_true = ledger.measured_true;
  card.fewest_true = ledger.fewest_true();
  card.most_true = ledger.most_true();
  card.open_days = ledger.open();
}

GreenCard card_of(const green::Records& slice, units::Day today) {
  const green::Green& green = slice.greens.front();
  GreenCard card;
  card.green = green.id;
  card.name = green.name;
  card.grass_mix = green.grass_mix;
  put_speed(card, slice);
  if (card.last_visit) {
    card.days_since_visit = today - *card.last_visit;
  }
  put_scores(card, slice, today);
  put_last_work(card, slice, today);
  put_ledger(card, slice, today);
  return card;
}

std::optional<double> median_speed(const std::vector<GreenCard>& cards) {
  std::vector<double> speeds;
  for (const GreenCard& card : cards) {
    if (card.speed) {
      speeds.push_back(card.speed->speed_m);
    }
  }
  if (speeds.empty()) {
    return std::nullopt;
  }
  std::sort(speeds.begin(), speeds.end());
  const std::size_t middle = speeds.size() / 2;
  return speeds.size() % 2 == 1 ? speeds[middle] : (speeds[middle - 1] + speeds[middle]) / 2;
}

std::vector<int> years_visited(const std::vector<green::Records>& shares) {
  std::set<int, std::greater<>> years;
  for (const green::Records& share : shares) {
    for (const green::Visit& visit : share.visits) {
      years.insert(units::year_month_day(visit.day).year);
    }
  }
  return {years.begin(), years.end()};
}

/// "14 of 19 greens were", "All 17 scored greens were", "The only green was".
std::string at_standard_clause(int at_standard, int scored, std::string_view kind) {
  if (scored == 1) {
    return fmt::format("The only {}green was {} the standard", kind,
                       at_standard == 1 ? "at" : "below");
  }
  if (at_standard == scored) {
    return fmt::format("All {} {}greens were at the standard", scored, kind);
  }
  if (at_standard == 0) {
    return fmt::format("None of the {} {}greens was at the standard", scored, kind);
  }
  return fmt::format("{} of {} {}greens {} at the standard", at_standard, scored, kind,
                     was(at_standard));
}

std::string headline(const std::vector<GreenCard>& cards) {
  if (cards.empty()) {
    return "No green has been entered yet.";
  }
  const auto number = [&](auto what) {
    return static_cast<int>(std::count_if(cards.begin(), cards.end(), what));
  };
  const int all = static_cast<int>(cards.size());
  const int scored = number([](const GreenCard& card) { return card.at_standard.has_value(); });
  const int true_now = number([](const GreenCard& card) { return card.at_standard == true; });
  const int fast_only = number([](const GreenCard& card) { return card.fast_but_not_true; });
  if (scored == 0) {
    return all == 1 ? "The only green has not been scored yet."
                    : fmt::format("None of the {} greens has been scored yet.", all);
  }
  std::string text =
      at_standard_clause(true_now, scored, scored < all ? "scored " : "") + " when last scored";
  if (fast_only > 0) {
    text += fmt::format("; {} {} fast but not true", fast_only, fast_only == 1 ? "is" : "are");
  }
  if (scored < all) {
    text += fmt::format("; {} {} no score yet", counted(all - scored, "green"),
                        all - scored == 1 ? "has" : "have");
  }
  return text + ".";
}

} // namespace

GreensReview greens_of(const green::Records& records, const std::vector<green::Records>& shares,
                       units::Day today) {
  GreensReview review;
  review.club = records.club.id;
  review.club_name = records.club.name;
  review.today = today;
  review.years = years_visited(shares);
  for (const green::Records& share : shares) {
    review.greens.push_back(card_of(share, today));
  }
  review.median_speed_m = median_speed(review.greens);
  for (GreenCard& card : review.greens) {
    card.fast_but_not_true = card.speed && card.at_standard && !*card.at_standard &&
                             card.speed->speed_m >= *review.median_speed_m;
  }
  review.headline = headline(review.greens);
  return review;
}

GreensReview greens_review(const green::Records& records, const climate::Weather& /*weather*/,
                           units::Day today) {
  return greens_of(records, slices(records, today), today);
}

} // namespace baize::services
