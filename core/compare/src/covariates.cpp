#include "covariates.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace baize::compare::detail {
namespace {

constexpr double kLeastGrowth = 0.02; ///< below that, logarithms say more than the grass does
constexpr double kKnownShare = 0.9;
constexpr int kLeastDf = 3;

using Value = std::optional<double> (*)(const Look&);

std::optional<double> log_growth(const Look& look) {
  if (!look.growth) {
    return std::nullopt;
  }
  return std::log(std::max(*look.growth, kLeastGrowth));
}

std::optional<double> score_before(const Look& look) {
  return look.before;
}

std::optional<double> warm_grass(const Look& look) {
  return look.warm_grass ? 1 : 0;
}

/// Where a value is missing the mean of its work stands, else the mean of all.
Covariate column(const Table& table, const std::string& name, Value value) {
  Covariate out;
  out.told.name = name;
  std::map<int, std::pair<double, int>> by_work;
  double sum = 0;
  int known = 0;
  for (std::size_t i = 0; i < table.looks.size(); ++i) {
    if (const auto here = value(*table.looks[i])) {
      auto& [total, count] = by_work[table.work[i]];
      total += *here;
      ++count;
      sum += *here;
      ++known;
    }
  }
  if (known < kKnownShare * static_cast<double>(table.looks.size())) {
    out.told.reason = "known at " + std::to_string(known) + " of " +
                      std::to_string(table.looks.size()) + " greens only";
    return out;
  }
  const double mean = sum / known;
  out.told.reference = mean;
  for (std::size_t i = 0; i < table.looks.size(); ++i) {
    const auto here = value(*table.looks[i]);
    const auto work = by_work.find(table.work[i]);
    const double filled = work == by_work.end() ? mean : work->second.first / work->second.second;
    out.values.push_back(here.value_or(filled) - mean);
  }
  return out;
}

bool varies(const std::vector<double>& values) {
  const auto [least, most] = std::minmax_element(values.begin(), values.end());
  return *most - *least > 1e-9;
}

bool the_same_within_works(const Table& table, const std::vector<double>& values) {
  std::map<int, double> first;
  for (std::size_t i = 0; i < values.size(); ++i) {
    const auto [it, fresh] = first.emplace(table.work[i], values[i]);
    if (!fresh && std::fabs(it->second - values[i]) > 1e-9) {
      return false;
    }
  }
  return true;
}

} // namespace

std::vector<int> number_works(const std::vector<const Look*>& looks, int& works) {
  std::map<std::tuple<std::string, units::Day, std::string>, int> numbers;
  std::vector<int> out;
  for (const Look* look : looks) {
    const auto [it, fresh] = numbers.emplace(std::make_tuple(look->club, look->day, look->method),
                                             static_cast<int>(numbers.size()));
    out.push_back(it->second);
  }
  works = static_cast<int>(numbers.size());
  return out;
}

Covariates covariates(const Table& table) {
  Covariates out;
  out.df = table.works - static_cast<int>(table.methods.size());
  for (auto& [name, value] : {std::pair<const char*, Value>{"growth", log_growth},
                              {"score_before", score_before},
                              {"grass", warm_grass}}) {
    Covariate one = column(table, name, value);
    if (!one.values.empty()) {
      one.between_works = the_same_within_works(table, one.values);
      if (!varies(one.values)) {
        one.told.reason = "the same everywhere";
      } else if (one.between_works && out.df - 1 < kLeastDf) {
        one.told.reason = "too few works to tell it from the method";
      } else {
        one.told.used = true;
        out.df -= one.between_works ? 1 : 0;
      }
    }
    out.all.push_back(one.told);
    if (one.told.used) {
      out.used.push_back(std::move(one));
    }
  }
  return out;
}

} // namespace baize::compare::detail
