#include "slices.h"

#include <string_view>
#include <unordered_map>

namespace baize::services {
namespace {

green::Records without_visits(const green::Records& records, const green::Green& green) {
  green::Records share;
  share.club = records.club;
  share.greens = {green};
  share.fixtures = records.fixtures;
  share.standards = records.standards;
  for (const green::Work& work : records.works) {
    if (green::touches(work, green.id)) {
      share.works.push_back(work);
    }
  }
  return share;
}

} // namespace

green::Records slice(const green::Records& records, const green::Green& green, units::Day until) {
  green::Records share = without_visits(records, green);
  for (const green::Visit& visit : records.visits) {
    if (visit.day <= until && visit.green == green.id) {
      share.visits.push_back(visit);
    }
  }
  return share;
}

std::vector<green::Records> slices(const green::Records& records, units::Day until) {
  std::vector<green::Records> all;
  all.reserve(records.greens.size());
  std::unordered_map<std::string_view, std::size_t> place;
  for (const green::Green& green : records.greens) {
    place.emplace(green.id, all.size());
    all.push_back(without_visits(records, green));
  }
  for (const green::Visit& visit : records.visits) {
    const auto found = place.find(visit.green);
    if (visit.day <= until && found != place.end()) {
      all[found->second].visits.push_back(visit);
    }
  }
  return all;
}

} // namespace baize::services
