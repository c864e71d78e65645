#pragma once

#include "baize/compare/comparison.h"

namespace baize::compare::detail {

/// Days of one method's works at one club, and whether all went by lot.
struct Design {
  Evidence evidence = Evidence::one_work;
  int shared_days = 0;
};
Design design_of(const std::vector<const Look*>& looks, const std::string& first,
                 const std::string& second);

} // namespace baize::compare::detail
