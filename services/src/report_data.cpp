#include "baize/services/report_data.h"

#include "baize/green/roll_score.h"
#include "greens_of.h"
#include "report_words.h"
#include "season_of.h"
#include "slices.h"
#include "works_of.h"

#include <algorithm>
#include <set>
#include <string_view>
#include <tuple>
#include <utility>

namespace baize::services {
namespace {

LedgerTotals totals(const std::vector<SeasonReview>& seasons) {
  LedgerTotals sum;
  for (const SeasonReview& season : seasons) {
    ++sum.greens;
    sum.measured_true += season.ledger.measured_true;
    sum.measured_not += season.ledger.measured_not;
    sum.between_true += season.ledger.between_true;
    sum.unmeasured += season.ledger.unmeasured;
    sum.closed += season.ledger.closed;
  }
  return sum;
}

void count_rolls(ReportBasis& basis, const green::Visit& visit) {
  for (const green::Run& run : visit.runs) {
    const auto sum = green::score_sum(run);
    basis.scored_rolls += sum ? sum->rolls : 0;
    basis.measured_rolls += static_cast<int>(
        std::count_if(run.rolls.begin(), run.rolls.end(),
                      [](const green::Roll& roll) { return roll.distance.has_value(); }));
  }
}

ReportBasis basis(const std::vector<green::Records>& shares, const climate::Weather& weather,
                  units::Period period) {
  ReportBasis out;
  std::set<std::string_view> observers;
  for (const green::Records& share : shares) {
    for (const green::Visit& visit : share.visits) {
      if (period.holds(visit.day)) {
        ++out.visits;
        observers.insert(visit.observer);
        count_rolls(out, visit);
      }
    }
  }
  out.observers = static_cast<int>(observers.size());
  const auto last = weather.upper_bound(period.last);
  for (auto day = weather.lower_bound(period.first); day != last; ++day) {
    out.weather_days += climate::mean_temperature_c(day->second) ? 1 : 0;
  }
  out.weather_days_missing = period.days() - out.weather_days;
  return out;
}

std::vector<WorkReview> works_of_year(const green::Records& records, const LossBook& book,
                                      units::Period period, units::Day today) {
  std::vector<const green::Work*> works;
  for (const green::Work& work : records.works) {
    if (period.holds(work.day) && green::class_of(work) == green::WorkClass::disruptive) {
      works.push_back(&work);
    }
  }
  std::sort(works.begin(), works.end(), [](const green::Work* a, const green::Work* b) {
    return std::tie(a->day, a->id) < std::tie(b->day, b->id);
  });
  std::vector<WorkReview> reviews;
  reviews.reserve(works.size());
  for (const green::Work* work : works) {
    reviews.push_back(review_of(*work, records.club.id, book.of(work->id), today));
  }
  return reviews;
}

} // namespace

units::Result<ReportData> report_data(const green::Records& records,
                                      const climate::Weather& weather, int year, units::Day today) {
  const auto period = period_of(year, today);
  if (!period) {
    return units::Refusal(period.error());
  }
  ReportData report;
  report.club = records.club.id;
  report.club_name = records.club.name;
  report.year = year;
  report.period = *period;
  report.year_ended = period->last == units::calendar_year(year).last;
  report.today = today;
  const auto shares = slices(records, today);
  for (const green::Records& share : shares) {
    report.seasons.push_back(season_of(share, weather, *period, today));
  }
  report.works = works_of_year(records, LossBook(shares, weather, today), *period, today);
  report.totals = totals(report.seasons);
  report.basis = basis(shares, weather, *period);
  report.greens = period->last == today
                      ? greens_of(records, shares, today)
                      : greens_of(records, slices(records, period->last), period->last);
  report.sentences = committee_sentences(report);
  report.methods = method_sentences(report);
  return report;
}

} // namespace baize::services
