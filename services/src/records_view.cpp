#include "baize/services/records_view.h"

#include "baize/green/roll_score.h"
#include "baize/green/validate.h"
#include "baize/units/number.h"

#include <algorithm>
#include <map>
#include <string_view>
#include <tuple>
#include <utility>

namespace baize::services {
namespace {

std::optional<units::Problem> refusal(const green::Records& records, const VisitQuery& query) {
  if (!query.green.empty() && green::find_green(records, query.green) == nullptr) {
    return units::Problem{"no_such_green", "green", query.green, "a green of this club", {}};
  }
  if (query.limit < 1 || query.limit > 1000) {
    return units::Problem{"limit_out_of_range",
                          "limit",
                          units::write_number(query.limit),
                          "a whole number from 1 to 1000",
                          {}};
  }
  if (query.offset < 0) {
    return units::Problem{"offset_out_of_range",
                          "offset",
                          units::write_number(query.offset),
                          "a whole number, 0 or more",
                          {}};
  }
  return std::nullopt;
}

std::vector<const green::Visit*> newest_first(const green::Records& records,
                                              const VisitQuery& query) {
  std::vector<const green::Visit*> all;
  for (const green::Visit& visit : records.visits) {
    if ((query.green.empty() || visit.green == query.green) &&
        (!query.days || query.days->holds(visit.day))) {
      all.push_back(&visit);
    }
  }
  std::sort(all.begin(), all.end(), [](const green::Visit* a, const green::Visit* b) {
    return std::tie(b->day, b->from, b->id) < std::tie(a->day, a->from, a->id);
  });
  return all;
}

int roll_count(const green::Visit& visit) {
  int rolls = 0;
  for (const green::Run& run : visit.runs) {
    rolls += std::max(static_cast<int>(run.rolls.size()), run.total_of.value_or(0));
  }
  return rolls;
}

std::optional<double> mean_score(const green::Visit& visit) {
  const auto sum = green::score_sum(visit.runs);
  return sum ? std::optional(sum->mean()) : std::nullopt;
}

VisitLine line(const green::Visit& visit, const std::string& green_name) {
  VisitLine out;
  out.visit = visit.id;
  out.green = visit.green;
  out.green_name = green_name;
  out.half = visit.half;
  out.observer = visit.observer;
  out.day = visit.day;
  out.at = visit.from;
  out.rolls = roll_count(visit);
  out.score = mean_score(visit);
  out.speed = speed::visit_speed(visit.runs);
  out.remarks = static_cast<int>(green::remarks(visit).size());
  out.source = visit.source;
  return out;
}

/// In the order in which the spots were visited.
std::vector<SpotDetail> spots(const green::Visit& visit) {
  std::vector<std::pair<std::string, std::vector<green::Run>>> by_spot;
  for (const green::Run& run : visit.runs) {
    const auto found = std::find_if(by_spot.begin(), by_spot.end(),
                                    [&](const auto& entry) { return entry.first == run.spot; });
    if (found == by_spot.end()) {
      by_spot.push_back({run.spot, {run}});
    } else {
      found->second.push_back(run);
    }
  }
  std::vector<SpotDetail> all;
  all.reserve(by_spot.size());
  for (const auto& [spot, runs] : by_spot) {
    all.push_back({spot, speed::spot_speed(runs)});
  }
  return all;
}

std::string name_of(const green::Records& records, const std::string& id) {
  const green::Green* green = green::find_green(records, id);
  return green == nullptr ? id : green->name;
}

} // namespace

units::Result<VisitPage> visit_page(const green::Records& records, const VisitQuery& query) {
  if (auto problem = refusal(records, query)) {
    return units::Refusal(*std::move(problem));
  }
  const auto found = newest_first(records, query);
  std::map<std::string_view, const std::string*> names;
  for (const green::Green& green : records.greens) {
    names.emplace(green.id, &green.name);
  }
  VisitPage page{static_cast<int>(found.size()), query.offset, {}};
  const int last =
      page.total - query.offset > query.limit ? query.offset + query.limit : page.total;
  for (int i = query.offset; i < last; ++i) {
    const green::Visit& visit = *found[static_cast<std::size_t>(i)];
    const auto name = names.find(visit.green);
    page.visits.push_back(line(visit, name == names.end() ? visit.green : *name->second));
  }
  return page;
}

units::Result<VisitDetail> visit_detail(const green::Records& records, const std::string& visit) {
  const auto found =
      std::find_if(records.visits.begin(), records.visits.end(),
                   [&](const green::Visit& candidate) { return candidate.id == visit; });
  if (found == records.visits.end()) {
    return units::refuse("no_such_visit", "visit", visit, "a visit of this club");
  }
  VisitDetail detail;
  detail.visit = *found;
  detail.green_name = name_of(records, found->green);
  if (const auto sum = green::score_sum(found->runs)) {
    detail.score = sum->mean();
    detail.scored_rolls = sum->rolls;
  }
  detail.speed = speed::visit_speed(found->runs);
  detail.spots = spots(*found);
  detail.remarks = green::remarks(*found);
  return detail;
}

} // namespace baize::services
