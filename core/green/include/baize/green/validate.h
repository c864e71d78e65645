#pragma once

#include "baize/green/club.h"
#include "baize/units/problem.h"

#include <vector>

namespace baize::green {

/// Every rule a record must meet on its own. Empty: it is valid. `today` keeps
/// future dates out; it is an argument so that the same input gives the same answer.
std::vector<units::Problem> validate(const Visit& visit, units::Day today);
std::vector<units::Problem> validate(const Work& work, units::Day today);
std::vector<units::Problem> validate(const Reading& reading, units::Day today);
std::vector<units::Problem> validate(const Green& green);
std::vector<units::Problem> validate(const Fixture& fixture);
std::vector<units::Problem> validate(const Standard& standard);
std::vector<units::Problem> validate(const Club& club);

/// All of the above for every record, and the rules between records: names that
/// nothing declares, ids used twice, two visits at once by one observer, shared rolls that
/// are not the same balls. A green
/// that lists no spots takes any spot, a club that lists no observers any
/// observer. Works in the future are plans and allowed, up to five years ahead.
/// The codes stand in docs/howto/problems.md.
std::vector<units::Problem> validate(const Records& records, units::Day today);

/// Things to look at that refuse nothing: a score its marks contradict, a run of
/// three spread over more than 20.32 cm, a total its rolls do not give. To be
/// shown with units::remark_sentence.
std::vector<units::Problem> remarks(const Visit& visit);

} // namespace baize::green
