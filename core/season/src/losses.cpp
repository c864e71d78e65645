#include "losses.h"

#include <algorithm>
#include <tuple>

namespace baize::season {
namespace {

constexpr int kYearBefore = 365; ///< older works than that before the first visit are over

std::string method_of(const green::Work& work, const Options& options) {
  const auto found = options.methods.find(work.id);
  return found == options.methods.end() ? work.kind : found->second;
}

} // namespace

std::size_t Names::place(const std::string& name) {
  const auto found = std::find(all.begin(), all.end(), name);
  if (found != all.end()) {
    return static_cast<std::size_t>(found - all.begin());
  }
  all.push_back(name);
  return all.size() - 1;
}

std::vector<TimedLoss> losses_of(const green::Records& records, const green::Green& green,
                                 units::Period days, const Options& options, Names& methods) {
  std::vector<const green::Work*> works;
  for (const green::Work& work : records.works) {
    if (work.day <= days.last && work.day >= days.first - kYearBefore &&
        green::touches(work, green.id) && green::class_of(work) == green::WorkClass::disruptive) {
      works.push_back(&work);
    }
  }
  std::sort(works.begin(), works.end(), [](const green::Work* a, const green::Work* b) {
    return std::tie(a->day, a->half, a->kind, a->id) < std::tie(b->day, b->half, b->kind, b->id);
  });
  std::vector<TimedLoss> found;
  for (const green::Work* work : works) {
    const std::string method = method_of(*work, options);
    const units::Day last = std::max(work->day, work->until.value_or(work->day));
    if (!found.empty() && found.back().loss.day == work->day &&
        found.back().loss.half == work->half) {
      TimedLoss& same = found.back();
      same.loss.works.push_back(work->id);
      same.loss.label += " + " + method;
      same.loss.last = std::max(same.loss.last, last);
      same.timed = same.timed && work->at;
      same.begins = work->at ? std::min(same.begins, *work->at) : same.begins;
      same.ends = work->at ? std::max(same.ends, *work->at) : same.ends;
    } else {
      const units::Minute at = work->at.value_or(units::Minute{});
      found.push_back(
          {{{work->id}, method, 0, work->day, last, work->half}, work->at.has_value(), at, at});
    }
  }
  for (TimedLoss& one : found) {
    one.loss.method = methods.place(one.loss.label);
  }
  return found;
}

} // namespace baize::season
