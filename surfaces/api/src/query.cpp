#include "query.h"

#include "baize/units/number.h"

namespace baize::api {

units::Result<std::shared_ptr<const Snapshot>> club_of(const Call& call) {
  return call.context.clubs.club(call.ids.front(), call.change);
}

units::Result<int> year_of(const Call& call, std::size_t place) {
  const auto year = units::parse_whole(call.ids[place]);
  if (!year) {
    return units::refuse("bad_target", "year", call.ids[place], "a calendar year");
  }
  return *year;
}

units::Result<int> whole_of(const Call& call, const std::string& name, int absent, int least,
                            int most) {
  const std::string* text = call.query(name);
  if (text == nullptr) {
    return absent;
  }
  const auto value = units::parse_whole(*text);
  if (!value || *value < least || *value > most) {
    return units::refuse("bad_query", name, *text,
                         "a whole number from " + std::to_string(least) + " to " +
                             std::to_string(most));
  }
  return *value;
}

units::Result<bool> dry_run_of(const Call& call) {
  const std::string* text = call.query("dry_run");
  if (text == nullptr || *text == "false") {
    return false;
  }
  if (*text != "true") {
    return units::refuse("bad_query", "dry_run", *text, "true or false");
  }
  return true;
}

units::Result<std::optional<units::Day>> day_in(const Target& target, const std::string& name) {
  const auto found = target.query.find(name);
  if (found == target.query.end()) {
    return std::nullopt;
  }
  auto day = units::parse_iso_day(found->second);
  if (!day) {
    day.error().field = name;
    return tl::unexpected(day.error());
  }
  return *day;
}

} // namespace baize::api
