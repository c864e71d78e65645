// Entries drawn from a seed.
#include "phone/draw.h"

#include <map>
#include <vector>

namespace phone {

namespace {

std::string uuid(int number) {
  const std::string digits = std::to_string(number);
  return "0190a0b0-0000-7000-8000-" + std::string(12 - digits.size(), '0') + digits;
}

constexpr int kFirstVisit = 100;
constexpr std::array kKinds{"visit", "visit", "roll",    "roll", "roll",
                            "roll",  "total", "reading", "work", "photo"};

void set_place(json& set, Draw& draw) {
  set["club"] = "oakley";
  set["green"] = draw.of(std::array{"7", "8"});
  set["day"] = draw.of(std::array{"2026-05-01", "2026-05-02", "2026-05-04"});
}

void set_visit(json& set, Draw& draw) {
  set_place(set, draw);
  if (draw.one_in(2)) {
    set["from"] = draw.of(std::array{"07:10", "07:25", "7.10"});
    set["observer"] = "ann";
  }
  if (draw.one_in(3)) {
    set["dew"] = draw.of(std::array{"none", "light", "wet"});
    set["hours_since_mowing"] = draw.from_to(0, 30);
    set["note"] = "Läuft ruhig";
  }
  if (draw.one_in(3)) {
    set["done"] = true;
  }
}

void set_roll(json& set, Draw& draw) {
  set = draw.roll();
  set["visit"] = uuid(kFirstVisit + draw.from_to(0, 2));
  set["spot"] = draw.of(std::array{"A", "B"});
  set["direction"] = draw.of(std::array{"out", "back"});
  set["order"] = draw.from_to(1, 3);
}

json drawn_set(const std::string& kind, Draw& draw) {
  json set = json::object();
  if (kind == "visit") {
    set_visit(set, draw);
  } else if (kind == "roll") {
    set_roll(set, draw);
  } else if (kind == "total") {
    set = {{"visit", uuid(kFirstVisit)},
           {"spot", "A"},
           {"direction", "out"},
           {"total", draw.from_to(2, 31)},
           {"total_of", 3}};
  } else if (kind == "reading") {
    set_place(set, draw);
    set["measured"] = draw.of(std::array{"firmness", "soil_moisture", "height_of_cut"});
    set["value"] = draw.length();
  } else if (kind == "photo") {
    set = {{draw.of(std::array{"visit", "visit", "work"}), uuid(kFirstVisit + draw.from_to(0, 8))},
           {"taken", "2026-05-02T07:09:00.000Z"},
           {"sha256", std::string(64, draw.of(std::array{'0', 'a', 'G'}))},
           {"bytes", draw.from_to(0, 2'000'000)}};
  } else {
    set_place(set, draw);
    set.erase("green");
    set["done_as"] = draw.of(std::array{"coring", "mowing", "dancing"});
    set["parameters"] = {{"tine_diameter", draw.from_to(2, 12)}};
  }
  if (draw.one_in(8)) {
    set[draw.of(std::array{"note", "removed", "spot", "score", "unheard_of"})] =
        draw.one_in(2) ? json() : json(true);
  }
  return set;
}

} // namespace

json drawn_entries(Draw& draw) {
  json all = json::array();
  std::map<int, std::vector<std::string>> of_thing;
  const int count = draw.from_to(0, 14);
  for (int number = 0; number < count; ++number) {
    const int thing = draw.from_to(0, static_cast<int>(kKinds.size()) - 1);
    const std::string id = uuid(1000 + (number * 7) % 31);
    json over = json::array();
    for (const std::string& earlier : of_thing[thing]) {
      if (draw.one_in(2)) {
        over.push_back(earlier);
      }
    }
    of_thing[thing].push_back(id);
    const std::string kind = kKinds[static_cast<std::size_t>(thing)];
    all.push_back({{"id", id},
                   {"phone", uuid(1 + draw.from_to(0, 1))},
                   {"at", "2026-05-02T07:10:31.250Z"},
                   {"by", draw.of(std::array{"ann", "bea"})},
                   {"kind", kind},
                   {"thing", uuid(kFirstVisit + thing)},
                   {"set", drawn_set(kind, draw)},
                   {"over", over}});
  }
  return all;
}

} // namespace phone
