#include "baize/services/field_kit.h"

#include "baize/green/roll_score.h"
#include "baize/speed/green_speed.h"

#include <map>
#include <tuple>

namespace baize::services {
namespace {

bool later(const green::Visit& a, const green::Visit& b) {
  return std::tie(a.day, a.from, a.id) > std::tie(b.day, b.from, b.id);
}

LastSeen seen(const green::Visit& visit) {
  LastSeen last;
  last.day = visit.day;
  if (const auto sum = green::score_sum(visit.runs)) {
    last.score_mean = sum->mean();
  }
  if (const auto speed = speed::visit_speed(visit.runs)) {
    last.speed_m = speed->speed_m;
  }
  last.spot = visit.runs.front().spot;
  return last;
}

bool on(const green::Work& work, units::Day today) {
  return work.day <= today && today <= work.until.value_or(work.day);
}

} // namespace

FieldKit field_kit(const green::Records& records, units::Day today) {
  std::map<std::string, const green::Visit*> last;
  for (const green::Visit& visit : records.visits) {
    if (visit.day > today || visit.runs.empty()) {
      continue;
    }
    const green::Visit*& best = last[visit.green];
    if (best == nullptr || later(visit, *best)) {
      best = &visit;
    }
  }
  FieldKit kit;
  kit.club = records.club;
  for (const green::Green& green : records.greens) {
    FieldGreen one{green, std::nullopt};
    if (const auto found = last.find(green.id); found != last.end()) {
      one.last = seen(*found->second);
    }
    kit.greens.push_back(std::move(one));
  }
  kit.observers = records.observers;
  kit.standards = records.standards;
  for (const green::Work& work : records.works) {
    if (on(work, today)) {
      kit.works_today.push_back(work);
    }
  }
  return kit;
}

} // namespace baize::services
