#pragma once

#include "baize/green/club.h"

#include <optional>
#include <string>
#include <vector>

/// The rows of the files as their columns name them: one struct a file. An
/// empty word or an absent value is an empty cell.
namespace baize::sheets {

struct ClubRow {
  std::string club;
  std::string name;
  std::optional<double> latitude_deg;
  std::optional<double> longitude_deg;
  std::optional<double> elevation_m;
  friend bool operator==(const ClubRow&, const ClubRow&) = default;
};

/// A spot of a green, a half without a spot of its own, or a green with neither.
struct GreenRow {
  std::string green;
  std::string name;
  std::optional<green::Grass> grass;
  std::string grass_mix;
  std::optional<double> area_m2;
  std::string half;
  std::string spot;
  std::optional<double> bearing_deg;
  friend bool operator==(const GreenRow&, const GreenRow&) = default;
};

struct ObserverRow {
  std::string observer;
  std::string name;
  std::optional<units::Day> since;
  friend bool operator==(const ObserverRow&, const ObserverRow&) = default;
};

/// What makes a visit that visit; rolls.csv and visits.csv both say it.
struct VisitKey {
  std::string visit; ///< an id of its own, or empty
  std::optional<units::Day> day;
  std::optional<units::Minute> from;
  std::optional<units::Minute> to;
  std::string observer;
  std::string green;
  std::string half;
  friend bool operator==(const VisitKey&, const VisitKey&) = default;
};

/// A roll, or (without a roll number) the total of a run.
struct RollRow : VisitKey {
  std::string spot;
  std::optional<green::Direction> direction;
  std::optional<int> roll;
  std::optional<units::Length> distance;
  std::optional<int> bobbles;
  std::optional<int> chatters;
  std::optional<int> snakes;
  std::vector<double> bobble_s;
  std::vector<double> chatter_s;
  std::vector<double> snake_s;
  std::optional<int> score;
  std::optional<int> run_total;
  std::optional<int> run_balls;
  friend bool operator==(const RollRow&, const RollRow&) = default;
};

struct VisitRow : VisitKey {
  std::optional<double> hours_since_mowing;
  std::optional<double> hours_since_rolling;
  std::optional<std::string> dew;
  std::optional<std::string> wind;
  std::optional<std::string> surface;
  std::string shared_rolls;
  std::string note;
  friend bool operator==(const VisitRow&, const VisitRow&) = default;
};

struct ReadingRow {
  std::string reading;
  std::optional<units::Day> day;
  std::optional<units::Minute> at;
  std::string observer;
  std::string green;
  std::string spot;
  std::string kind;
  std::optional<double> value;
  std::string unit; ///< optional in the file; must be the kind's own
  std::string device;
  std::optional<double> rod_length_mm;
  std::string note;
  friend bool operator==(const ReadingRow&, const ReadingRow&) = default;
};

struct WorkRow {
  std::string work;
  std::string kind;
  std::optional<units::Day> day;
  std::optional<units::Day> until;
  std::optional<units::Minute> at;
  std::string greens; ///< "all", or ids parted by spaces (by commas where an id holds a space)
  std::string half;
  std::optional<bool> disruptive;
  std::vector<green::Parameter> parameters;
  std::string note;
  friend bool operator==(const WorkRow&, const WorkRow&) = default;
};

struct FixtureRow {
  std::string fixture;
  std::string name;
  std::optional<units::Day> day;
  std::optional<units::Day> until;
  std::optional<int> importance;
  std::optional<double> score_wanted;
  std::optional<units::Length> speed_wanted;
  friend bool operator==(const FixtureRow&, const FixtureRow&) = default;
};

struct StandardRow {
  std::string green;
  std::optional<units::MonthDay> season_from;
  std::optional<units::MonthDay> season_to;
  std::optional<double> score;
  friend bool operator==(const StandardRow&, const StandardRow&) = default;
};

} // namespace baize::sheets
