#include "checks.h"

#include "baize/units/number.h"

namespace baize::green {

std::string place_of(const Source& source) {
  if (source.file.empty()) {
    return {};
  }
  return source.line > 0 ? source.file + " line " + std::to_string(source.line) : source.file;
}

std::string shown(double value) {
  return units::write_number(value);
}

void Checks::note(std::string code, std::string field, std::string value, std::string rule,
                  const std::string& within) {
  std::string place = place_;
  if (!within.empty()) {
    place += (place.empty() ? "" : " ") + within;
  }
  problems_.push_back(
      {std::move(code), std::move(field), std::move(value), std::move(rule), std::move(place)});
}

void Checks::want(bool good, const char* code, const char* field, const std::string& value,
                  const char* rule, const std::string& within) {
  if (!good) {
    note(code, field, value, rule, within);
  }
}

void Checks::present(const std::string& text, const char* field) {
  if (text.empty()) {
    note(std::string("missing_") + field, field, "", "given");
  }
}

void Checks::number(const MeasuredField* field, std::optional<double> value, const char* code,
                    const std::string& within) {
  if (field != nullptr && value && !field->rule.takes(*value)) {
    note(code, std::string(field->name), shown(*value), field->rule.clause(), within);
  }
}

void Checks::word(const MeasuredField* field, const std::optional<std::string>& value) {
  if (field != nullptr && value && !field->rule.takes(*value)) {
    note("unknown_word", std::string(field->name), *value, field->rule.clause());
  }
}

void Checks::minute(const std::optional<units::Minute>& minute, const char* field) {
  constexpr int kLastMinute = 24 * 60 - 1;
  if (minute && (minute->of_day < 0 || minute->of_day > kLastMinute)) {
    note("not_a_time", field, std::to_string(minute->of_day) + " minutes",
         "a time of the day, 00:00 to 23:59");
  }
}

void Checks::not_after(units::Day day, units::Day today, const char* code, const char* field) {
  if (day > today) {
    note(code, field, units::iso(day), "today (" + units::iso(today) + ") or before");
  }
}

void Checks::different(const std::vector<std::string>& names, const char* field, const char* code) {
  std::set<std::string> seen;
  for (const std::string& name : names) {
    present(name, field);
    want(name.empty() || seen.insert(name).second, code, field, name, "named once only");
  }
}

} // namespace baize::green
