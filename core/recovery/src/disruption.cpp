#include "disruption.h"

#include <algorithm>
#include <tuple>

namespace baize::recovery {
namespace {

units::Day last_day(const green::Work& work) {
  return std::max(work.day, work.until.value_or(work.day));
}

void add(Disruption& disruption, const green::Work& work) {
  const bool timed = work.at && (disruption.works.empty() || disruption.begins);
  if (!timed) {
    disruption.begins.reset();
    disruption.ends.reset();
  } else {
    disruption.begins = std::min(disruption.begins.value_or(*work.at), *work.at);
    disruption.ends = std::max(disruption.ends.value_or(*work.at), *work.at);
  }
  disruption.last = std::max(disruption.last, last_day(work));
  disruption.works.push_back(&work);
}

} // namespace

std::vector<Disruption> disruptions(const green::Records& records, const std::string& green,
                                    const std::string& half, units::Day record_end) {
  std::vector<const green::Work*> works;
  for (const green::Work& work : records.works) {
    if (work.day <= record_end && green::touches(work, green, half) &&
        green::class_of(work) == green::WorkClass::disruptive) {
      works.push_back(&work);
    }
  }
  std::sort(works.begin(), works.end(), [](const green::Work* a, const green::Work* b) {
    return std::tie(a->day, a->id, a->kind, a->half) < std::tie(b->day, b->id, b->kind, b->half);
  });
  std::vector<Disruption> found;
  for (const green::Work* work : works) {
    if (found.empty() || found.back().day != work->day) {
      found.push_back({work->day, work->day, {}, {}, {}});
    }
    add(found.back(), *work);
  }
  return found;
}

} // namespace baize::recovery
