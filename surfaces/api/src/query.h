#pragma once

#include "call.h"

#include <memory>
#include <optional>

namespace baize::api {

// What handlers read from a request's path and query. Each refuses in the words of
// the parameter.

/// The club of the path, as it was when the request began. Refuses "no_such_club".
units::Result<std::shared_ptr<const Snapshot>> club_of(const Call& call);
/// The year that stands as number `place` of the path's ids. Refuses "bad_target".
units::Result<int> year_of(const Call& call, std::size_t place);
/// A whole number from `least` to `most`; `absent` where it is not asked for.
/// Refuses "bad_query".
units::Result<int> whole_of(const Call& call, const std::string& name, int absent, int least,
                            int most);
/// The query's dry_run; false where it is absent. Refuses "bad_query".
units::Result<bool> dry_run_of(const Call& call);
/// A day of the query; nothing where it is absent. Refuses "not_a_day".
units::Result<std::optional<units::Day>> day_in(const Target& target, const std::string& name);
inline auto day_of(const Call& call, const std::string& name) {
  return day_in(call.target, name);
}

} // namespace baize::api
