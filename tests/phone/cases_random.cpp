// Calls drawn from a fixed seed.
#include "phone/cases.h"
#include "phone/draw.h"

namespace phone {

namespace {

json last_json(Draw& draw) {
  if (draw.one_in(3)) {
    return nullptr;
  }
  if (draw.one_in(2)) {
    return {{"out", draw.rolls()}, {"back", draw.rolls()}};
  }
  json last = {{"metres", std::fabs(draw.length())}};
  if (draw.one_in(2)) {
    last["error"] = 0.2;
  }
  return last;
}

Case drawn(Draw& draw) {
  switch (draw.from_to(0, 8)) {
  case 7:
    return {"fold", json{{"entries", drawn_entries(draw)}}.dump()};
  case 8:
    return {"check_visit", json{{"entries", drawn_entries(draw)}, {"today", "2026-05-03"}}.dump()};
  case 0:
    return {"offer", json{{"marks", draw.marks()}}.dump()};
  case 1:
    return {"contradicts", json{{"marks", draw.marks()}, {"score", draw.score()}}.dump()};
  case 2:
    return {"place_of_mark",
            json{{"seconds", draw.length() / 3}, {"distance", draw.length()}}.dump()};
  case 3: {
    json takes = {{"rolls", draw.rolls()}};
    if (draw.one_in(5)) {
      takes["total"] = draw.from_to(0, 30);
      takes["total_of"] = draw.from_to(1, 4);
    }
    return {"run_summary", takes.dump()};
  }
  case 4:
    return {"parse_length",
            json{{"text", draw.length_text()}, {"unit", draw.unit()}, {"decimal", draw.decimal()}}
                .dump()};
  case 5:
    return {
        "show_length",
        json{{"metres", draw.length()}, {"unit", draw.unit()}, {"decimal", draw.decimal()}}.dump()};
  default:
    return {"spot_summary", json{{"out", draw.rolls()},
                                 {"back", draw.rolls()},
                                 {"last", last_json(draw)},
                                 {"unit", draw.unit()}}
                                .dump()};
  }
}

} // namespace

std::vector<Case> random_cases(int count, std::uint64_t seed) {
  std::vector<Case> cases;
  for (int i = 0; i < count; ++i) {
    Draw draw(seed, static_cast<std::uint64_t>(i));
    Case one = drawn(draw);
    if (draw.one_in(20)) {
      one.takes = draw.broken(one.takes);
    }
    cases.push_back(std::move(one));
  }
  return cases;
}

} // namespace phone
