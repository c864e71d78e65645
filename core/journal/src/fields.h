#pragma once

#include "baize/green/roll.h"
#include "baize/green/work.h"
#include "baize/journal/fold.h"

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace baize::journal {

/// Reads a thing's fields as types, and notes what is of another type. What was
/// never asked for is unknown: see `finish`.
class Fields {
 public:
  Fields(const Thing& thing, std::vector<units::Problem>& problems);

  /// Empty, or nothing, where the field is not there or cannot be read.
  std::string text(std::string_view field);
  std::optional<std::string> maybe_text(std::string_view field);
  std::optional<double> number(std::string_view field);
  std::optional<int> whole(std::string_view field);
  std::optional<bool> flag(std::string_view field);
  std::optional<units::Day> day(std::string_view field);
  std::optional<units::Minute> minute(std::string_view field);
  std::optional<green::Direction> direction(std::string_view field);
  std::optional<std::vector<green::Mark>> marks(std::string_view field);
  std::vector<std::string> texts(std::string_view field);
  std::vector<green::Parameter> parameters(std::string_view field);
  /// Looked at only.
  void instant(std::string_view field);

  /// "missing_<field>" where nothing stands there.
  void present(std::string_view field);
  /// Notes every field that no reader above has asked for.
  void finish();

  void note(std::string code, std::string field, std::string value, std::string rule);

 private:
  /// The value, or null; the field is known from now on.
  const Value* look(std::string_view field);
  void wrong(std::string_view field, const Value& value, const char* rule);
  std::optional<green::Mark> mark(std::string_view field, const Value& value);
  /// A text in the form that `parse` reads.
  template <class T>
  std::optional<T> parsed(std::string_view field, units::Result<T> (*parse)(std::string_view text));

  const Thing& thing_;
  std::vector<units::Problem>& problems_;
  std::set<std::string, std::less<>> known_{"removed"};
};

} // namespace baize::journal
