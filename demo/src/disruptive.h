#pragma once

#include "baize/green/work.h"

#include <array>
#include <string_view>

namespace baize::demo {

/// A disruptive work of the demo: when, what, where, and its true mean depth
/// (score points) and rate (per growth-day).
struct DisruptiveLine {
  int year;
  int month;
  int date;
  std::string_view kind;
  std::string_view parameters; ///< "tine_diameter=13 diameter_measured=outside"
  std::string_view greens;     ///< "all", or places as ids parted by spaces
  std::string_view half;
  double depth;
  double rate;
  bool say_disruptive; ///< its kind is routine; the record says otherwise
};

inline constexpr std::array<DisruptiveLine, 17> kDisruptive{{
    {2023, 3, 27, "coring",
     "tine_diameter=13 diameter_measured=outside spacing_along=50 spacing_across=50 depth=75 "
     "cores=removed sand=4 sand_order=after",
     "all", "", 2.4, 0.14, false},
    {2023, 6, 12, "verticutting", "depth=3 blade_width=1 blade_spacing=12 passes=1", "all", "", 0.9,
     0.24, false},
    {2023, 8, 21, "solid_tining",
     "tine_diameter=10 spacing_along=50 spacing_across=60 depth=200 sand=2 sand_order=after", "all",
     "", 1.0, 0.17, false},
    {2023, 10, 9, "scarifying", "depth=15 blade_width=2 blade_spacing=30 sand=5 sand_order=after",
     "3 7 12 16", "", 2.1, 0.15, false},
    {2024, 4, 8, "solid_tining", "tine_diameter=12 spacing_along=65 spacing_across=65 depth=250",
     "all", "", 1.2, 0.17, false},
    {2024, 6, 10, "verticutting", "depth=4 blade_width=1 blade_spacing=12 passes=2", "all", "", 1.1,
     0.24, false},
    {2024, 8, 5, "coring",
     "tine_diameter=8 diameter_measured=outside spacing_along=40 spacing_across=40 depth=60 "
     "cores=removed sand=3 sand_order=before",
     "1 2 3 4 5 6 7 8 9 practice", "", 1.6, 0.16, false},
    {2024, 8, 5, "injection",
     "medium=sand hole_diameter=18 spacing_along=75 spacing_across=75 depth=250 sand=4",
     "10 11 12 13 14 15 16 17 18", "", 1.3, 0.15, false},
    {2024, 10, 14, "topdressing", "sand=5 moisture=moist worked_in=brushed",
     "1 3 4 6 7 9 10 12 13 15 16 18", "", 0.8, 0.3, true},
    {2024, 11, 4, "drainage", "trench_width=20 trench_spacing=500 depth=400", "15", "", 2.8, 0.08,
     false},
    {2025, 4, 7, "coring",
     "tine_diameter=13 diameter_measured=outside spacing_along=50 spacing_across=50 depth=75 "
     "cores=removed sand=4 sand_order=after",
     "4 11", "front", 2.5, 0.14, false},
    {2025, 4, 28, "coring",
     "tine_diameter=13 diameter_measured=outside spacing_along=50 spacing_across=50 depth=75 "
     "cores=removed sand=4 sand_order=after",
     "4 11", "back", 2.5, 0.14, false},
    {2025, 5, 19, "scarifying", "depth=10 blade_width=2 blade_spacing=30 sand=3 sand_order=after",
     "1 2 3 5 6", "", 1.7, 0.17, false},
    {2025, 6, 23, "injection",
     "medium=water hole_diameter=3 spacing_along=75 spacing_across=75 depth=150", "2 5 9 14", "",
     0.6, 0.3, false},
    {2025, 8, 18, "coring",
     "tine_diameter=13 diameter_measured=outside spacing_along=50 spacing_across=50 depth=75 "
     "cores=removed sand=4 sand_order=after",
     "1 2 3 5 6 7 8 9 10 12 13 14 15 16 17 18 practice", "", 2.4, 0.14, false},
    {2025, 9, 22, "overseeding", "seed=8 method=slit seed_kind=bentgrass", "8 13 17", "", 1.3, 0.15,
     false},
    {2025, 10, 20, "solid_tining", "tine_diameter=12 spacing_along=65 spacing_across=65 depth=250",
     "all", "", 1.2, 0.17, false},
}};

} // namespace baize::demo
