#include "laws/generators.h"

#include "baize/green/kinds.h"

#include <algorithm>
#include <tuple>

namespace laws {
namespace {

using namespace baize;

template <class T> rc::Gen<std::optional<T>> perhaps(rc::Gen<T> gen) {
  return rc::gen::mapcat(rc::gen::inRange(0, 3), [gen](int chance) {
    return chance == 0 ? rc::gen::just(std::optional<T>())
                       : rc::gen::map(gen, [](T value) { return std::optional<T>(value); });
  });
}

int from_to(int low, int high) {
  return *rc::gen::inRange(low, high + 1);
}

/// Any double between, not only round ones: written text must give it back.
double between(double low, double high) {
  const int steps = from_to(0, 1000000);
  return from_to(0, 2) == 0 ? low + (high - low) * steps / 1000000
                            : std::clamp(low + (steps % 100) / 10.0, low, high);
}

rc::Gen<double> in_range(double low, double high) {
  return rc::gen::exec([=] { return between(low, high); });
}

units::Day day() {
  return *units::make_day(2023, 1, 1) + from_to(0, 1094);
}

units::Minute minute(int low = 0, int high = 1439) {
  return {static_cast<std::int16_t>(from_to(low, high))};
}

std::optional<std::string> word_of(const char* record, const char* field) {
  const auto words = green::find_field(record, field)->rule.words;
  const int chosen = from_to(0, static_cast<int>(words.size()));
  return chosen == 0 ? std::nullopt
                     : std::optional(std::string(words[static_cast<std::size_t>(chosen - 1)]));
}

green::Green green_numbered(int number) {
  static const std::vector<std::string> kIds{"1", "2 upper", "3.5", "Übung"};
  green::Green one;
  one.id = kIds[static_cast<std::size_t>(number)];
  one.name = *words();
  one.name = one.name.empty() ? one.id : one.name;
  one.grass = from_to(0, 1) == 0 ? green::Grass::cool : green::Grass::warm;
  one.grass_mix = *words();
  one.area_m2 = *perhaps(in_range(1, 10000));
  if (from_to(0, 1) == 0) {
    one.halves = {"west", "east"};
  }
  for (const char* spot : {"A", "B;", "c"}) {
    if (from_to(0, 1) == 0) {
      const bool split = !one.halves.empty() && from_to(0, 1) == 0;
      const auto half = split ? one.halves[static_cast<std::size_t>(from_to(0, 1))] : "";
      one.spots.push_back({spot, *perhaps(in_range(0, 360)), half});
    }
  }
  return one;
}

std::vector<green::Mark> marks() {
  std::vector<green::Mark> all;
  for (const auto kind :
       {green::MarkKind::bobble, green::MarkKind::chatter, green::MarkKind::snake}) {
    const int timed = std::max(0, from_to(-2, 2));
    const int untimed = std::max(0, from_to(-2, 2));
    for (int i = 0; i < timed + untimed; ++i) {
      all.push_back({kind, i < timed ? std::optional(between(0, 60)) : std::nullopt});
    }
  }
  return all;
}

green::Run run(const std::string& spot, green::Direction direction) {
  green::Run one{spot, direction, {}, {}, {}};
  const int rolls = from_to(0, 3);
  const bool total = rolls == 0 || from_to(0, 2) == 0;
  int order = 0;
  for (int i = 0; i < rolls; ++i) {
    green::Roll roll;
    roll.order = order += from_to(1, 2);
    roll.distance = units::from_metres(between(0.001, 30));
    if (from_to(0, 1) == 0) {
      roll.marks = marks();
    }
    if (!total && from_to(0, 2) > 0) {
      roll.score = from_to(1, 10);
    }
    one.rolls.push_back(std::move(roll));
  }
  if (total) {
    one.total_of = std::max(rolls, 3);
    one.total = from_to(*one.total_of, 10 * *one.total_of);
  }
  return one;
}

std::string some_spot(const green::Green& green) {
  return green.spots.empty() ? "anywhere"
                             : green
                                   .spots[static_cast<std::size_t>(
                                       from_to(0, static_cast<int>(green.spots.size()) - 1))]
                                   .id;
}

const green::Green& some_green(const green::Records& records) {
  return records
      .greens[static_cast<std::size_t>(from_to(0, static_cast<int>(records.greens.size()) - 1))];
}

std::string some_half(const green::Green& green) {
  return green.halves.empty() || from_to(0, 1) == 0
             ? std::string()
             : green.halves[static_cast<std::size_t>(from_to(0, 1))];
}

/// A visit that no other visit of its observer meets: one hour of its own.
green::Visit visit(const green::Records& records, int number) {
  const green::Green& green = some_green(records);
  green::Visit one;
  one.id = "v" + std::to_string(number);
  one.green = green.id;
  one.half = some_half(green);
  one.observer = from_to(0, 1) == 0 ? "ab" : "c\"d";
  one.day = day();
  if (from_to(0, 3) > 0) {
    one.from = minute(number * 60, number * 60 + 30);
    if (from_to(0, 1) == 0) {
      one.to = minute(number * 60 + 31, number * 60 + 59);
    }
  }
  one.conditions = {*perhaps(in_range(0, 1000)), *perhaps(in_range(0, 1000)),
                    word_of("visit", "dew"), word_of("visit", "wind"), word_of("visit", "surface")};
  if (from_to(0, 3) == 0) {
    one.shared_rolls = "s" + std::to_string(number); // waits for its partner
  }
  one.note = *words();
  const std::string spot = some_spot(green);
  one.runs.push_back(run(spot, green::Direction::out));
  if (from_to(0, 2) > 0) {
    one.runs.push_back(run(spot, green::Direction::back));
  }
  return one;
}

green::Work work(const green::Records& records, int number) {
  const auto kinds = green::work_kinds();
  const auto& kind =
      kinds[static_cast<std::size_t>(from_to(0, static_cast<int>(kinds.size()) - 1))];
  green::Work one;
  one.id = "w" + std::to_string(number);
  one.kind = kind.name;
  one.day = day();
  if (from_to(0, 3) == 0) {
    one.until = one.day + from_to(0, 9);
  }
  one.at = *perhaps(rc::gen::exec([] { return minute(); }));
  if (from_to(0, 2) > 0) {
    const green::Green& green = some_green(records);
    one.greens = {green.id};
    one.half = some_half(green);
    for (const green::Green& other : records.greens) {
      if (one.half.empty() && other.id != green.id && from_to(0, 2) == 0) {
        one.greens.push_back(other.id);
      }
    }
  }
  if (kind.work_class != green::WorkClass::closing) {
    one.disruptive = *perhaps(rc::gen::arbitrary<bool>());
  }
  for (const green::ParameterKind& parameter : kind.parameters) {
    if (from_to(0, 1) == 0) {
      continue;
    }
    const auto& rule = parameter.rule;
    if (rule.type != green::ValueType::word) {
      const double low = rule.above_lowest ? rule.lowest + 0.001 : rule.lowest;
      one.parameters.push_back({std::string(parameter.name), between(low, rule.highest), ""});
    } else if (!rule.words.empty()) {
      one.parameters.push_back(
          {std::string(parameter.name), std::nullopt, std::string(rule.words.front())});
    } else {
      one.parameters.push_back({std::string(parameter.name), std::nullopt, "a word; or \"two\""});
    }
  }
  one.note = *words();
  return one;
}

green::Reading reading(const green::Records& records, int number) {
  const auto kinds = green::reading_kinds();
  const auto& kind =
      kinds[static_cast<std::size_t>(from_to(0, static_cast<int>(kinds.size()) - 1))];
  const green::Green& green = some_green(records);
  green::Reading one;
  one.id = "r" + std::to_string(number);
  one.green = green.id;
  one.spot = from_to(0, 1) == 0 ? "" : some_spot(green);
  one.observer = from_to(0, 1) == 0 ? "" : "ab";
  one.day = day();
  one.at = *perhaps(rc::gen::exec([] { return minute(); }));
  one.kind = kind.name;
  one.value = between(kind.rule.above_lowest ? kind.rule.lowest + 0.001 : kind.rule.lowest,
                      kind.rule.highest);
  one.device = *words();
  if (kind.name == "soil_moisture") {
    one.rod_length_mm = *perhaps(in_range(20, 300));
  }
  one.note = *words();
  return one;
}

void put_calendar(green::Records& records) {
  for (int i = from_to(0, 3); i > 0; --i) {
    green::Fixture one;
    one.id = "f" + std::to_string(i);
    one.name = "Cup, \"the\" " + std::to_string(i);
    one.days = {day(), {}};
    one.days.last = one.days.first + from_to(0, 2);
    one.importance = from_to(1, 3);
    one.score_wanted = *perhaps(in_range(1, 10));
    if (from_to(0, 1) == 0) {
      one.speed_wanted = units::from_metres(between(0.5, 5));
    }
    records.fixtures.push_back(std::move(one));
  }
  if (from_to(0, 1) == 0) {
    records.standards.push_back({"", std::nullopt, std::nullopt, between(1, 10), {}});
  }
  if (from_to(0, 1) == 0) {
    records.standards.push_back({some_green(records).id,
                                 units::MonthDay{11, 1},
                                 units::MonthDay{2, from_to(1, 29)},
                                 between(1, 10),
                                 {}});
  }
}

green::Records some_records() {
  green::Records records;
  records.club = {"a club",
                  "Name; \"quoted\"",
                  *perhaps(in_range(-90, 90)),
                  *perhaps(in_range(-180, 180)),
                  *perhaps(in_range(-450, 6000)),
                  {}};
  const int greens = from_to(2, 4);
  for (int i = 0; i < greens; ++i) {
    records.greens.push_back(green_numbered(i));
  }
  records.observers = {{"ab", *words(), std::nullopt, {}}, {"c\"d", "", day(), {}}};
  for (int i = from_to(0, 12); i > 0; --i) {
    records.visits.push_back(visit(records, i));
  }
  for (int i = from_to(0, 8); i > 0; --i) {
    records.works.push_back(work(records, i));
    records.readings.push_back(reading(records, i));
  }
  put_calendar(records);
  const auto key = [](const green::Visit& v) { return std::tie(v.day, v.from, v.id); };
  std::sort(records.visits.begin(), records.visits.end(),
            [&](const auto& a, const auto& b) { return key(a) < key(b); });
  return records;
}

} // namespace

units::Day today() {
  return *units::make_day(2026, 1, 1);
}

rc::Gen<std::string> words() {
  return rc::gen::map(rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
                          "a", "7", " ", "\"", ",", ";", "\t", "\n", "\r\n", "ü", "漢", "🌱", "'")),
                      [](const std::vector<std::string>& parts) {
                        std::string text;
                        for (const std::string& part : parts) {
                          text += part;
                        }
                        // A cell of nothing but spaces is an empty cell.
                        return text.find_first_not_of(" \t") == std::string::npos ? std::string()
                                                                                  : text;
                      });
}

rc::Gen<green::Records> records() {
  return rc::gen::exec(some_records);
}

green::Records without_sources(green::Records records) {
  records.club.source = {};
  const auto clear = [](auto& all) {
    for (auto& one : all) {
      one.source = {};
    }
  };
  clear(records.greens);
  clear(records.observers);
  clear(records.visits);
  clear(records.readings);
  clear(records.works);
  clear(records.fixtures);
  clear(records.standards);
  return records;
}

} // namespace laws
