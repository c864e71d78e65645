#pragma once

#include "baize/green/kinds.h"
#include "baize/green/visit.h"
#include "baize/units/problem.h"

#include <set>
#include <string>
#include <vector>

namespace baize::green {

/// "rolls.csv line 12"; empty where there is no file.
std::string place_of(const Source& source);

/// Gathers a record's problems, all with the record's place.
class Checks {
 public:
  explicit Checks(const Source& source) : place_(place_of(source)) {}

  /// Notes a problem; the place goes on with `within`, e.g. "spot A out roll 2".
  void note(std::string code, std::string field, std::string value, std::string rule,
            const std::string& within = {});
  /// Notes a problem unless `good`.
  void want(bool good, const char* code, const char* field, const std::string& value,
            const char* rule, const std::string& within = {});
  /// "missing_<field>" where the text is empty.
  void present(const std::string& text, const char* field);
  /// Numbers by the data dictionary; "<code>" where refused. Not finite is refused.
  void number(const MeasuredField* field, std::optional<double> value, const char* code,
              const std::string& within = {});
  void word(const MeasuredField* field, const std::optional<std::string>& value);
  void minute(const std::optional<units::Minute>& minute, const char* field);
  void not_after(units::Day day, units::Day today, const char* code, const char* field);
  /// Each once and none empty: "missing_<field>", "<code>".
  void different(const std::vector<std::string>& names, const char* field, const char* code);

  std::vector<units::Problem> take() { return std::move(problems_); }

 private:
  std::string place_;
  std::vector<units::Problem> problems_;
};

/// As people write it; "nan" and "inf" where it is not finite.
std::string shown(double value);

} // namespace baize::green
