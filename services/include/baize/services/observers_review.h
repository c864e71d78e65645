#pragma once

#include "baize/green/club.h"
#include "baize/observers/lean.h"
#include "baize/observers/nearby.h"
#include "baize/observers/needed.h"
#include "baize/observers/pair.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::services {

/// One observer against those who stood beside.
struct ObserverLine {
  std::string observer;
  std::string name; ///< the id where none was given
  int visits = 0;   ///< with a score, shared or not
  observers::Lean lean;
  std::vector<std::string> beside; ///< ids of those who scored the same balls
  std::string sentence;
  std::optional<observers::Estimate> correction; ///< offered, never applied unasked
};

/// Points of the picture that fall together.
struct AgreementPoint {
  double mean = 0;
  double difference = 0;
  int items = 0;
};

struct PairLine {
  observers::PairAgreement agreement; ///< its own points are left out
  std::vector<AgreementPoint> points;
  std::optional<observers::Needed> needed; ///< for a quarter of a point to either side
  std::string sentence;
};

struct NearbyLine {
  observers::NearbyPair pair;
  std::string sentence;
};

struct ObserversReview {
  std::string club;
  std::string sentence; ///< the finding that matters most, or what to do where there is none
  int sessions = 0;
  int balls = 0;
  int waiting = 0; ///< visits whose shared rolls nobody else has scored
  double half_width = 0.25;
  int nearby_days = 2;
  std::vector<ObserverLine> observers;
  std::vector<PairLine> pairs;
  std::vector<NearbyLine> nearby;       ///< weaker evidence: the same green within days
  observers::GroupAlpha alpha_ordinal;  ///< single balls, all observers
  observers::GroupAlpha alpha_interval; ///< runs, all observers
};

/// Never refuses: without shared rolls the sentence says what to do.
ObserversReview observers_review(const green::Records& records, units::Day today);

} // namespace baize::services
