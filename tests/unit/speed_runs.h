#pragma once

#include "baize/speed/green_speed.h"

#include <initializer_list>

namespace samples {

using namespace baize;

inline green::Run run(green::Direction direction, std::initializer_list<double> metres,
                      const char* spot = "A") {
  green::Run made;
  made.spot = spot;
  made.direction = direction;
  for (const double m : metres) {
    green::Roll roll;
    roll.order = static_cast<int>(made.rolls.size()) + 1;
    roll.distance = units::from_metres(m);
    made.rolls.push_back(roll);
  }
  return made;
}

inline green::Run out(std::initializer_list<double> metres, const char* spot = "A") {
  return run(green::Direction::out, metres, spot);
}
inline green::Run back(std::initializer_list<double> metres, const char* spot = "A") {
  return run(green::Direction::back, metres, spot);
}

} // namespace samples
