#pragma once

#include <cstdint>
#include <initializer_list>

namespace baize::demo {

/// What a stream of chance is for. Each purpose, green and day has a stream of
/// its own, so that a change in one place leaves the rest of the club as it was.
enum class Purpose : std::uint64_t {
  level = 1,
  speed,
  ground,
  work,
  round,
  visit,
  look, ///< what one observer makes of a visit's rolls
  reading,
  notes
};

/// Next number of the splitmix64 generator; moves the state on. Whole-number
/// arithmetic only, so the same state gives the same numbers everywhere.
std::uint64_t splitmix(std::uint64_t& state);

/// A stream of chance of its own for each purpose and place.
class Chance {
 public:
  Chance(std::uint64_t seed, Purpose purpose, std::initializer_list<std::int64_t> where);
  std::uint64_t next();
  /// 0 to below 1.
  double uniform();
  double between(double low, double high);
  /// Sum of twelve uniforms less six: no library function, hence the same bytes
  /// everywhere. Mean 0, standard deviation 1, never beyond 6.
  double normal();
  bool happens(double probability);
  /// 0 to below `count`.
  int below(int count);

 private:
  std::uint64_t state_;
};

/// exp(x) by halving and Taylor's series: only sums, products and divisions,
/// which every machine rounds alike, where a library's exp may differ in its last digit.
double steady_exp(double x);

} // namespace baize::demo
