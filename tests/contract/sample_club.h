#pragma once

#include "baize/climate/weather.h"
#include "baize/green/club.h"
#include "baize/services/store_port.h"

#include <string>
#include <vector>

namespace contract {

using namespace baize;

inline units::Day day(int year, int month, int number) {
  return *units::make_day(year, month, number);
}

/// An invented club in which every field of every record is used somewhere and
/// absent somewhere else. Its visits and the rest stand in the order in which a
/// store gives them back: by day, time and id.
green::Records sample_club(const std::string& id = "heath");
climate::Weather sample_weather();
std::vector<services::ReceivedFile> sample_files();

/// A club with many visits of two runs of three rolls each.
green::Records large_club(const std::string& id, int visits);

inline services::Author author() {
  return {"Tess", "2026-05-04T07:30:00Z"};
}

} // namespace contract
