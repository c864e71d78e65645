#pragma once

#include "baize/climate/weather.h"
#include "baize/compare/comparison.h"
#include "baize/compare/gather.h"

#include <string>
#include <vector>

namespace baize::services {

/// One club's share of the question.
struct ClubShare {
  const green::Records& records;
  const climate::Weather& weather;
};

struct MethodsQuery {
  compare::GatherOptions gather;
  compare::CompareOptions compare;
};

/// A work that counts towards a method.
struct MethodWork {
  std::string club;
  std::string work;
  units::Day day;
  int looks = 0;
};

struct MethodLine {
  compare::MethodFigures figures;
  std::vector<MethodWork> works; ///< oldest first
  std::string sentence;
};

struct PairOfMethods {
  compare::PairFigures figures;
  std::string sentence;
  std::string caution; ///< how far the design carries
};

/// Does it take fewer days when ...? Methods beside one another, over all works.
struct MethodsReview {
  std::vector<std::string> clubs;
  MethodsQuery query;
  std::string sentence;           ///< the answer, or why there is none yet
  std::vector<std::string> notes; ///< what was left out, and why
  std::vector<MethodLine> methods;
  std::vector<PairOfMethods> pairs;
  compare::Comparison comparison; ///< its own methods and pairs are moved out
};

/// Refuses what the query's options refuse. Too few works, one method or no day back
/// are answers, with their sentence.
units::Result<MethodsReview> compare_methods(const std::vector<ClubShare>& clubs,
                                             const MethodsQuery& query, units::Day today);

} // namespace baize::services
