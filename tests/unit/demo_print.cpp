#include "unit/demo_print.h"

#include "baize/units/number.h"

#include <sstream>

namespace baize::testing {
namespace {

using units::write_number;

std::string shown(const std::optional<double>& value) {
  return value ? write_number(*value) : "-";
}
std::string shown(const std::optional<int>& value) {
  return value ? std::to_string(*value) : "-";
}
std::string shown(const std::optional<std::string>& value) {
  return value.value_or("-");
}
std::string shown(const std::optional<units::Day>& value) {
  return value ? iso(*value) : "-";
}
std::string shown(const std::optional<units::Minute>& value) {
  return value ? iso(*value) : "-";
}
std::string shown(const std::optional<units::MonthDay>& value) {
  return value ? iso(*value) : "-";
}
std::string shown(const std::optional<units::Length>& value) {
  return value ? write_number(value->metres) : "-";
}

void print(std::ostream& out, const green::Run& run) {
  out << " | " << run.spot << (run.direction == green::Direction::out ? " out" : " back") << ' '
      << shown(run.total) << '/' << shown(run.total_of);
  for (const green::Roll& roll : run.rolls) {
    out << ' ' << roll.order << ':' << shown(roll.distance) << ',' << shown(roll.score) << ',';
    if (!roll.marks) {
      out << '-';
      continue;
    }
    for (const green::Mark& mark : *roll.marks) {
      out << static_cast<int>(mark.kind) << '@' << shown(mark.seconds) << ';';
    }
  }
}

void print(std::ostream& out, const green::Visit& visit) {
  out << visit.id << ' ' << visit.green << ' ' << visit.half << ' ' << visit.observer << ' '
      << iso(visit.day) << ' ' << shown(visit.from) << ' ' << shown(visit.to) << ' '
      << shown(visit.conditions.hours_since_mowing) << ' '
      << shown(visit.conditions.hours_since_rolling) << ' ' << shown(visit.conditions.dew) << ' '
      << shown(visit.conditions.wind) << ' ' << shown(visit.conditions.surface) << ' '
      << visit.shared_rolls << ' ' << visit.note;
  for (const green::Run& run : visit.runs) {
    print(out, run);
  }
  out << '\n';
}

void print(std::ostream& out, const green::Work& work) {
  out << work.id << ' ' << work.kind << ' ' << iso(work.day) << ' ' << shown(work.until) << ' '
      << shown(work.at) << ' ' << work.half << ' ' << (work.disruptive ? *work.disruptive : -1);
  for (const std::string& green : work.greens) {
    out << ' ' << green;
  }
  for (const green::Parameter& one : work.parameters) {
    out << ' ' << one.name << '=' << shown(one.number) << one.word;
  }
  out << ' ' << work.note << '\n';
}

void print(std::ostream& out, const green::Green& green) {
  out << green.id << ' ' << green.name << ' ' << static_cast<int>(green.grass) << ' '
      << green.grass_mix << ' ' << shown(green.area_m2);
  for (const std::string& half : green.halves) {
    out << ' ' << half;
  }
  for (const green::Spot& spot : green.spots) {
    out << ' ' << spot.id << ',' << shown(spot.bearing_deg) << ',' << spot.half;
  }
  out << '\n';
}

} // namespace

const demo::DemoClub& demo_club() {
  static const demo::DemoClub club = demo::make();
  return club;
}

std::string print(const green::Records& records) {
  std::ostringstream out;
  out << records.club.id << ' ' << records.club.name << ' ' << shown(records.club.latitude_deg)
      << ' ' << shown(records.club.longitude_deg) << ' ' << shown(records.club.elevation_m) << '\n';
  for (const green::Green& green : records.greens) {
    print(out, green);
  }
  for (const green::Observer& observer : records.observers) {
    out << observer.id << ' ' << observer.name << ' ' << shown(observer.since) << '\n';
  }
  for (const green::Visit& visit : records.visits) {
    print(out, visit);
  }
  for (const green::Reading& reading : records.readings) {
    out << reading.id << ' ' << reading.green << ' ' << reading.spot << ' ' << reading.observer
        << ' ' << iso(reading.day) << ' ' << shown(reading.at) << ' ' << reading.kind << ' '
        << write_number(reading.value) << ' ' << reading.device << ' '
        << shown(reading.rod_length_mm) << ' ' << reading.note << '\n';
  }
  for (const green::Work& work : records.works) {
    print(out, work);
  }
  for (const green::Fixture& fixture : records.fixtures) {
    out << fixture.id << ' ' << fixture.name << ' ' << iso(fixture.days.first) << ' '
        << iso(fixture.days.last) << ' ' << fixture.importance << ' ' << shown(fixture.score_wanted)
        << ' ' << shown(fixture.speed_wanted) << '\n';
  }
  for (const green::Standard& standard : records.standards) {
    out << standard.green << ' ' << shown(standard.from) << ' ' << shown(standard.to) << ' '
        << write_number(standard.score) << '\n';
  }
  return out.str();
}

std::uint64_t fingerprint(const std::string& bytes) {
  std::uint64_t hash = 14695981039346656037ULL;
  for (const char byte : bytes) {
    hash = (hash ^ static_cast<unsigned char>(byte)) * 1099511628211ULL;
  }
  return hash;
}

} // namespace baize::testing
