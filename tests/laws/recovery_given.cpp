#include "laws/recovery_given.h"

#include <cstdio>

namespace baize::laws {
namespace {

template <class T> T one_of(std::vector<T> values) {
  return *rc::gen::elementOf(std::move(values));
}

int in_range(int low, int high) {
  return *rc::gen::inRange(low, high + 1);
}

std::optional<units::Minute> any_time() {
  if (in_range(0, 2) == 0) {
    return std::nullopt;
  }
  return units::Minute{static_cast<std::int16_t>(60 * in_range(6, 18))};
}

green::Run any_run(const std::string& spot, green::Direction direction) {
  green::Run run;
  run.spot = spot;
  run.direction = direction;
  const int balls = in_range(1, 3);
  if (in_range(0, 4) == 0) {
    run.total_of = balls;
    run.total = balls * in_range(6, 9);
    return run;
  }
  for (int order = 1; order <= balls; ++order) {
    green::Roll roll;
    roll.order = order;
    roll.score = in_range(6, 9); // close to the standard, so that both sides of it are met
    run.rolls.push_back(roll);
  }
  return run;
}

green::Visit some_visit(int number) {
  green::Visit visit;
  visit.id = "v" + std::to_string(number);
  visit.green = in_range(0, 3) == 0 ? "8" : "7";
  visit.observer = one_of<std::string>({"ann", "bea"});
  visit.half = visit.green == "7" ? one_of<std::string>({"", "", "north", "south"}) : "";
  visit.day = kFirst + in_range(0, kDays - 1);
  visit.from = any_time();
  visit.runs.push_back(any_run("main", green::Direction::out));
  if (in_range(0, 1) == 0) {
    visit.runs.push_back(any_run("n1", green::Direction::back));
  }
  return visit;
}

green::Work some_work(int number) {
  green::Work work;
  work.id = "w" + std::to_string(number);
  work.kind = one_of<std::string>({"coring", "verticutting", "topdressing", "closed", "rolling"});
  work.day = kFirst + in_range(0, kDays - 1);
  if (in_range(0, 3) == 0) {
    work.until = work.day + in_range(0, 6);
  }
  work.at = any_time();
  work.greens = one_of<std::vector<std::string>>({{}, {"7"}, {"7", "8"}, {"8"}});
  work.half = one_of<std::string>({"", "", "north", "south"});
  return work;
}

green::Standard some_standard() {
  green::Standard standard;
  standard.green = one_of<std::string>({"", "7"});
  if (in_range(0, 1) == 0) {
    standard.from = units::MonthDay{in_range(1, 12), 1};
    standard.to = units::MonthDay{in_range(1, 12), 28};
  }
  standard.score = one_of<double>({7, 7.5, 8, 8.25});
  return standard;
}

std::string exact(double value) {
  char text[40];
  std::snprintf(text, sizeof text, "%a", value);
  return text;
}

std::string exact(std::optional<double> value) {
  return value ? exact(*value) : "-";
}
std::string exact(std::optional<int> value) {
  return value ? std::to_string(*value) : "-";
}
std::string exact(std::optional<units::Day> day) {
  return day ? units::iso(*day) : "-";
}

std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names) {
    text += name + ";";
  }
  return text;
}

std::string print_interval(const recovery::RecoveryInterval& i) {
  return std::to_string(static_cast<int>(i.definition)) + ' ' +
         std::to_string(static_cast<int>(i.censoring)) + ' ' + units::iso(i.last_below) + ' ' +
         exact(i.first_back) + ' ' + std::to_string(i.after_days) + ' ' + exact(i.by_days) + ' ' +
         exact(i.after_growth_days) + ' ' + exact(i.by_growth_days) + ' ' + listed(i.visits) + '\n';
}

} // namespace

rc::Gen<green::Visit> any_visit(const std::string& id, const std::string& green, units::Day day) {
  return rc::gen::exec([=] {
    green::Visit visit;
    visit.id = id;
    visit.green = green;
    visit.observer = "ann";
    visit.day = day;
    visit.from = any_time();
    visit.runs.push_back(any_run("main", green::Direction::out));
    return visit;
  });
}

rc::Gen<green::Records> any_records() {
  return rc::gen::exec([] {
    green::Records records;
    for (const char* id : {"7", "8"}) {
      green::Green green;
      green.id = id;
      records.greens.push_back(green);
    }
    records.greens[0].halves = {"north", "south"};
    records.greens[0].spots = {{"n1", {}, "north"}, {"main", {}, ""}};
    const int visits = in_range(0, 40);
    for (int i = 0; i < visits; ++i) {
      records.visits.push_back(some_visit(i));
    }
    const int works = in_range(1, 4);
    for (int i = 0; i < works; ++i) {
      records.works.push_back(some_work(i));
    }
    const int standards = in_range(0, 3);
    for (int i = 0; i < standards; ++i) {
      records.standards.push_back(some_standard());
    }
    return records;
  });
}

rc::Gen<climate::Weather> any_weather() {
  return rc::gen::exec([] {
    climate::Weather weather;
    const int missing = in_range(0, kDays);
    for (units::Day day = kFirst; day <= kLast; ++day) {
      weather[day].day = day;
      if (day != kFirst + missing) {
        weather[day].tmin_c = in_range(0, 15);
        weather[day].tmax_c = in_range(15, 35);
      }
    }
    return weather;
  });
}

std::string print(const std::vector<recovery::WorkLoss>& losses) {
  std::string text;
  for (const recovery::WorkLoss& loss : losses) {
    text += loss.work + ' ' + loss.kind + ' ' + loss.green + ' ' + loss.half + ' ' +
            units::iso(loss.day) + ' ' + units::iso(loss.horizon) + ' ' +
            std::to_string(static_cast<int>(loss.horizon_reason)) + ' ' + exact(loss.standard) +
            ' ' + exact(loss.before) + ' ' + listed(loss.before_visits) + ' ' + exact(loss.trough) +
            ' ' + exact(loss.trough_day) + ' ' + exact(loss.depth) + ' ' +
            std::to_string(loss.visits_after) + ' ' + listed(loss.notes) + '\n';
    for (const auto& interval : loss.recovery) {
      text += print_interval(interval);
    }
    if (loss.area) {
      text += exact(loss.area->score_days) + ' ' + exact(loss.area->low) + ' ' +
              exact(loss.area->high) + ' ' + exact(loss.area->growth_score_days) + ' ' +
              (loss.area->ended ? "ended\n" : "open\n");
    }
  }
  return text;
}

std::string print(const recovery::Ledger& ledger) {
  std::string text = units::iso(ledger.period.first) + ' ' + units::iso(ledger.period.last) + ' ';
  for (const recovery::DayKind kind : ledger.days) {
    text += std::to_string(static_cast<int>(kind));
  }
  return text;
}

std::vector<recovery::WorkLoss> losses_of(const green::Records& records,
                                          const climate::Weather& weather) {
  return recovery::work_losses(records, weather, "7", kLast, {});
}

} // namespace baize::laws
