#include "evidence.h"

#include <algorithm>
#include <set>
#include <utility>

namespace baize::compare::detail {
namespace {

struct Done {
  std::set<std::pair<std::string, units::Day>> works; ///< club and day
  bool randomised = true;
  units::Day first() const { return std::min_element(works.begin(), works.end(), earlier)->second; }
  units::Day last() const { return std::max_element(works.begin(), works.end(), earlier)->second; }
  static bool earlier(const std::pair<std::string, units::Day>& a,
                      const std::pair<std::string, units::Day>& b) {
    return a.second < b.second;
  }
};

Done done(const std::vector<const Look*>& looks, const std::string& method) {
  Done out;
  for (const Look* look : looks) {
    if (look->method == method) {
      out.works.emplace(look->club, look->day);
      out.randomised = out.randomised && look->randomised;
    }
  }
  return out;
}

} // namespace

Design design_of(const std::vector<const Look*>& looks, const std::string& first,
                 const std::string& second) {
  const Done a = done(looks, first);
  const Done b = done(looks, second);
  Design out;
  for (const auto& work : a.works) {
    out.shared_days += b.works.contains(work) ? 1 : 0;
  }
  if (a.works.size() < 2 || b.works.size() < 2) {
    return out;
  }
  if (a.last() < b.first() || b.last() < a.first()) {
    out.evidence = Evidence::before_after;
  } else {
    out.evidence = a.randomised && b.randomised ? Evidence::randomised : Evidence::repeated;
  }
  return out;
}

} // namespace baize::compare::detail
