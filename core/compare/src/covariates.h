#pragma once

#include "baize/compare/comparison.h"

#include <vector>

namespace baize::compare::detail {

/// The looks whose methods have medians, and how their works are numbered.
struct Table {
  std::vector<const Look*> looks;
  std::vector<std::string> methods; ///< those in the regression
  std::vector<int> method;          ///< place in `methods`, one for each look
  std::vector<int> work;            ///< equal within one work
  int works = 0;
};

/// A column of numbers about its reference.
struct Covariate {
  Adjustment told;
  std::vector<double> values; ///< less the reference; one for each look
  bool between_works = false; ///< the same for all looks of a work
};

struct Covariates {
  std::vector<Covariate> used;
  std::vector<Adjustment> all; ///< those not used as well
  int df = 0;                  ///< works less methods less covariates between works
};

/// The number of a look's work: club, day and method together.
std::vector<int> number_works(const std::vector<const Look*>& looks, int& works);
Covariates covariates(const Table& table);

} // namespace baize::compare::detail
