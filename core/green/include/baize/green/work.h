#pragma once

#include "baize/green/visit.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace baize::green {

/// One named quantity of a work, e.g. tine_diameter 8 mm. Numbers are in the
/// unit that the table of kinds states; words ("outside") stand in `word`.
struct Parameter {
  std::string name;
  std::optional<double> number;
  std::string word;
  friend bool operator==(const Parameter&, const Parameter&) = default;
};

/// Something done to the surface, on one day, to one or more greens or halves.
struct Work {
  std::string id;
  std::string kind; ///< from the table of kinds: coring, scarifying ...
  units::Day day;
  std::optional<units::Day> until; ///< last day, for closures and works of several days
  std::optional<units::Minute> at; ///< start, so that a visit the same day has its order
  std::vector<std::string> greens; ///< empty: every green
  std::string half;                ///< empty: the whole green
  std::optional<bool> disruptive;  ///< empty: as the table of kinds says
  std::vector<Parameter> parameters;
  std::string note;
  Source source;
  friend bool operator==(const Work&, const Work&) = default;
};

/// Disruptive works lower the score and are followed; routine ones do not.
/// Closing shuts a green to play.
enum class WorkClass { disruptive, routine, closing };
/// "disruptive", "routine" or "closing".
std::string_view word(WorkClass work_class);

/// The class of a work: its own say, else its kind's. Closing kinds stay closing
/// whatever the work says; unknown kinds are routine (validation has refused them
/// before they get here).
WorkClass class_of(const Work& work);
/// Does the work touch this green, and this half (empty: any part of it)?
bool touches(const Work& work, const std::string& green, const std::string& half = {});

} // namespace baize::green
