#include "season_of.h"

#include "baize/green/validate.h"
#include "baize/units/number.h"

#include <algorithm>
#include <map>
#include <string_view>
#include <tuple>
#include <utility>

namespace baize::services {
namespace {

std::vector<VisitPoint> points(const green::Records& slice, units::Period period) {
  const auto scores = recovery::visit_scores(slice, slice.greens.front().id);
  std::map<std::string_view, const recovery::VisitScore*> by_visit;
  for (const recovery::VisitScore& score : scores) {
    by_visit.emplace(score.visit, &score);
  }
  std::vector<VisitPoint> all;
  for (const green::Visit& visit : slice.visits) {
    if (!period.holds(visit.day)) {
      continue;
    }
    VisitPoint point;
    point.visit = visit.id;
    point.day = visit.day;
    point.at = visit.from;
    point.observer = visit.observer;
    point.half = visit.half;
    if (const auto found = by_visit.find(visit.id); found != by_visit.end()) {
      point.score = found->second->score;
      point.lowest = found->second->lowest;
      point.highest = found->second->highest;
      point.scored_rolls = found->second->rolls;
    }
    point.speed = speed::visit_speed(visit.runs);
    point.remarks = static_cast<int>(green::remarks(visit).size());
    all.push_back(std::move(point));
  }
  std::sort(all.begin(), all.end(), [](const VisitPoint& a, const VisitPoint& b) {
    return std::tie(a.day, a.at, a.visit) < std::tie(b.day, b.at, b.visit);
  });
  return all;
}

std::vector<WorkTick> ticks(const green::Records& slice, units::Period period) {
  std::vector<WorkTick> all;
  for (const green::Work& work : slice.works) {
    if (work.day <= period.last && work.until.value_or(work.day) >= period.first) {
      all.push_back({work.id, work.kind, work_label(work), work.day, work.until, work.half,
                     green::class_of(work)});
    }
  }
  std::sort(all.begin(), all.end(), [](const WorkTick& a, const WorkTick& b) {
    return std::tie(a.day, a.work) < std::tie(b.day, b.work);
  });
  return all;
}

void put_weather(SeasonReview& season, const climate::Weather& weather) {
  const auto last = weather.upper_bound(season.period.last);
  for (auto it = weather.lower_bound(season.period.first); it != last; ++it) {
    const climate::WeatherDay& day = it->second;
    season.weather.push_back({it->first, climate::growth_potential(day, season.growth_options),
                              day.rain_mm, day.tmin_c, day.tmax_c});
  }
  const auto with_growth =
      std::count_if(season.weather.begin(), season.weather.end(),
                    [](const WeatherPoint& point) { return point.growth.has_value(); });
  season.weather_days_missing = season.period.days() - static_cast<int>(with_growth);
}

std::vector<StandardPoint> standards(const green::Records& slice, units::Period period) {
  std::vector<StandardPoint> all;
  for (units::Day day = period.first; day <= period.last; ++day) {
    const double score = green::standard_on(slice.standards, slice.greens.front().id, day);
    if (all.empty() || all.back().score != score) {
      all.push_back({day, score});
    }
  }
  return all;
}

std::vector<green::Fixture> fixtures_in(const green::Records& slice, units::Period year) {
  std::vector<green::Fixture> all;
  for (const green::Fixture& fixture : slice.fixtures) {
    if (fixture.days.first <= year.last && fixture.days.last >= year.first) {
      all.push_back(fixture);
    }
  }
  std::sort(all.begin(), all.end(), [](const green::Fixture& a, const green::Fixture& b) {
    return std::tie(a.days.first, a.id) < std::tie(b.days.first, b.id);
  });
  return all;
}

} // namespace

units::Result<units::Period> period_of(int year, units::Day today) {
  if (year < 1600 || year > 2600) {
    return units::refuse("no_such_year", "year", units::write_number(year),
                         "a year from 1600 to 2600");
  }
  units::Period period = units::calendar_year(year);
  if (period.first > today) {
    return units::refuse("no_such_year", "year", units::write_number(year),
                         "a year that has begun by " + units::iso(today));
  }
  period.last = std::min(period.last, today);
  return period;
}

std::vector<recovery::WorkLoss> losses_of(const green::Records& slice,
                                          const climate::Weather& weather, units::Day today) {
  const green::Green& green = slice.greens.front();
  recovery::Options options;
  options.growth = growth_options_for(green.grass);
  return recovery::work_losses(slice, weather, green.id, today, options);
}

SeasonReview season_of(const green::Records& slice, const climate::Weather& weather,
                       units::Period period, units::Day today) {
  const green::Green& green = slice.greens.front();
  SeasonReview season;
  season.club = slice.club.id;
  season.green = green.id;
  season.green_name = green.name;
  season.year = units::year_month_day(period.first).year;
  season.period = period;
  season.growth_options = growth_options_for(green.grass);
  season.visits = points(slice, period);
  season.works = ticks(slice, period);
  put_weather(season, weather);
  season.standards = standards(slice, period);
  season.fixtures = fixtures_in(slice, units::calendar_year(season.year));
  season.ledger = recovery::true_days(slice, green.id, period, today);
  for (recovery::WorkLoss& loss : losses_of(slice, weather, today)) {
    if (period.holds(loss.day)) {
      season.losses.push_back(std::move(loss));
    }
  }
  return season;
}

} // namespace baize::services
