#include "load.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace baize::store_sqlite {

green::Records load_records(Connection& db, std::int64_t club) {
  green::Records records;
  records.club = load_club(db, club);
  records.greens = load_all<green::Green>(db, club);
  std::map<std::string, std::size_t> place;
  for (const std::string& id : load_walk(db, club)) {
    place.emplace(id, place.size());
  }
  std::stable_sort(records.greens.begin(), records.greens.end(),
                   [&](const auto& a, const auto& b) { return place[a.id] < place[b.id]; });
  records.observers = load_all<green::Observer>(db, club);
  records.visits = load_all<green::Visit>(db, club);
  std::stable_sort(records.visits.begin(), records.visits.end(), [](const auto& a, const auto& b) {
    return std::tie(a.day, a.from) < std::tie(b.day, b.from);
  });
  const auto by_time = [](const auto& a, const auto& b) {
    return std::tie(a.day, a.at) < std::tie(b.day, b.at);
  };
  records.readings = load_all<green::Reading>(db, club);
  std::stable_sort(records.readings.begin(), records.readings.end(), by_time);
  records.works = load_all<green::Work>(db, club);
  std::stable_sort(records.works.begin(), records.works.end(), by_time);
  records.fixtures = load_all<green::Fixture>(db, club);
  std::stable_sort(records.fixtures.begin(), records.fixtures.end(),
                   [](const auto& a, const auto& b) { return a.days.first < b.days.first; });
  records.standards = load_all<green::Standard>(db, club);
  return records;
}

void keep_records(Writing& to, const green::Records& records) {
  keep_club(to, records.club);
  const auto keep_all = [&](const auto& all) {
    for (const auto& one : all) {
      keep_one(to, one);
    }
  };
  keep_all(records.observers);
  keep_all(records.greens);
  keep_walk(to, records.greens);
  keep_all(records.visits);
  keep_all(records.readings);
  keep_all(records.works);
  keep_all(records.fixtures);
  keep_all(records.standards);
}

} // namespace baize::store_sqlite
