#pragma once

#include "baize/green/visit.h"
#include "baize/green/work.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::green {

/// Cool-season grasses (C3) grow best near 20 degrees C, warm-season ones (C4) near 31.
enum class Grass { cool, warm };

/// A fixed place and line on a green where rolls are made.
struct Spot {
  std::string id;
  std::optional<double> bearing_deg; ///< of the "out" direction, 0 to 360 from north
  std::string half;                  ///< which half it lies in, or empty
  friend bool operator==(const Spot&, const Spot&) = default;
};

struct Green {
  std::string id;   ///< e.g. "7", unique within the club
  std::string name; ///< e.g. "7th"; the id where none was given
  Grass grass = Grass::cool;
  std::string grass_mix; ///< free words: "creeping bentgrass"
  std::optional<double> area_m2;
  std::vector<std::string> halves; ///< ids, empty where the green is not split
  std::vector<Spot> spots;
  Source source;
  friend bool operator==(const Green&, const Green&) = default;
};

struct Observer {
  std::string id;
  std::string name;
  std::optional<units::Day> since;
  Source source;
  friend bool operator==(const Observer&, const Observer&) = default;
};

/// Any other measured quantity. Unit and kind of device are part of it.
struct Reading {
  std::string id;
  std::string green;
  std::string spot; ///< may be empty
  std::string observer;
  units::Day day;
  std::optional<units::Minute> at;
  std::string kind; ///< from the data dictionary: firmness, soil_moisture ...
  double value = 0; ///< in the dictionary's unit
  std::string device;
  std::optional<double> rod_length_mm; ///< soil moisture only
  std::string note;
  Source source;
  friend bool operator==(const Reading&, const Reading&) = default;
};

/// A day (or days) on the calendar with its importance and what is wanted.
struct Fixture {
  std::string id;
  std::string name;
  units::Period days;
  int importance = 1; ///< 1 ordinary, 2 important, 3 the club's greatest
  std::optional<double> score_wanted;
  std::optional<units::Length> speed_wanted;
  Source source;
  friend bool operator==(const Fixture&, const Fixture&) = default;
};

/// The club's limit: a true day is a day at or above it. Without a season it
/// holds all year; without a green it holds for all greens. The most particular
/// rule wins: green and season, green, season, neither. A season may run over
/// the turn of the year (11-01 to 02-28). Of two equally particular ones the
/// stricter holds.
struct Standard {
  std::string green; ///< empty: every green
  std::optional<units::MonthDay> from;
  std::optional<units::MonthDay> to;
  double score = 8;
  Source source;
  friend bool operator==(const Standard&, const Standard&) = default;
};
inline constexpr double kDefaultStandard = 8;

struct Club {
  std::string id;
  std::string name;
  std::optional<double> latitude_deg; ///< north positive
  std::optional<double> longitude_deg;
  std::optional<double> elevation_m;
  Source source;
  friend bool operator==(const Club&, const Club&) = default;
};

/// Everything one club has written down, in memory. Orders carry no meaning
/// except that greens stand in walking order.
struct Records {
  Club club;
  std::vector<Green> greens;
  std::vector<Observer> observers;
  std::vector<Visit> visits;
  std::vector<Reading> readings;
  std::vector<Work> works;
  std::vector<Fixture> fixtures;
  std::vector<Standard> standards;
  friend bool operator==(const Records&, const Records&) = default;
};

/// The score that makes a day true at this green on this day; the default where
/// the club set none.
double standard_on(const std::vector<Standard>& standards, const std::string& green,
                   units::Day day);
const Green* find_green(const Records& records, const std::string& id);
/// The half a run was made in; empty: none in particular. Where the spot lies is a
/// fact of the ground, so it goes before what the visit says. `green` may be null.
const std::string& half_of(const Green* green, const Visit& visit, const Run& run);
/// First to last day of each disruptive work that touches this green (and half).
std::vector<units::Period> disrupted_days(const Records& records, const std::string& green,
                                          const std::string& half = {});
/// Was it worked on a day from one of the two to the other?
bool disrupted_between(const std::vector<units::Period>& works, units::Day one, units::Day other);

} // namespace baize::green
