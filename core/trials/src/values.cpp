#include "baize/trials/values.h"

#include "baize/units/number.h"

#include <cmath>
#include <map>

namespace baize::trials {
namespace {

using units::Problem;

std::optional<Problem> bad_record(const Plan& plan, const std::map<int, std::size_t>& plots,
                                  const Record& record, const std::string& quantity) {
  const auto problem = [&](const char* code, const char* field, std::string value,
                           std::string rule) {
    return Problem{code, field, std::move(value), std::move(rule), record.place};
  };
  if (!record.trial.empty() && record.trial != plan.trial) {
    return problem("other_trial", "trial", record.trial, "'" + plan.trial + "', as the plan says");
  }
  if (!plots.contains(record.plot)) {
    return problem("unknown_plot", "plot", std::to_string(record.plot), "a plot of the plan");
  }
  if (record.quantity != quantity) {
    return problem("two_quantities", "quantity", record.quantity,
                   "'" + quantity + "' throughout: analyse one quantity at a time");
  }
  if (!std::isfinite(record.value)) {
    return problem("not_finite", "value", units::write_number(record.value), "a finite number");
  }
  if (quantity == "score" && (record.value < 1 || record.value > 10)) {
    return problem("score_out_of_range", "score", units::write_number(record.value), "1 to 10");
  }
  return std::nullopt;
}

} // namespace

units::Result<Values> gather(const Plan& plan, const std::vector<Record>& records) {
  if (records.empty()) {
    return units::refuse("no_records", "records", "", "at least one record of a plot");
  }
  std::map<int, std::size_t> plots;
  for (std::size_t i = 0; i < plan.plots.size(); ++i) {
    plots[plan.plots[i].number] = i;
  }
  struct Sum {
    double sum = 0;
    int count = 0;
  };
  Values values;
  values.quantity = records.front().quantity;
  std::map<units::Day, std::vector<Sum>> days;
  for (const Record& record : records) {
    if (auto problem = bad_record(plan, plots, record, values.quantity)) {
      return tl::unexpected(*problem);
    }
    auto& of_day = days[record.day];
    of_day.resize(plan.plots.size());
    Sum& sum = of_day[plots[record.plot]];
    sum.sum += record.value;
    ++sum.count;
    ++values.records;
  }
  for (const auto& [day, sums] : days) {
    values.days.push_back(day);
    auto& row = values.by_day.emplace_back();
    for (const Sum& sum : sums) {
      row.push_back(sum.count > 0 ? std::optional(sum.sum / sum.count) : std::nullopt);
    }
  }
  return values;
}

} // namespace baize::trials
