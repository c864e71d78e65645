#pragma once

#include "kind.h"

namespace baize::store_sqlite {

/// Everything current of a club: greens in walking order, the rest by day, time
/// and id, so that the same rows always give the same vector.
green::Records load_records(Connection& db, std::int64_t club);
void keep_records(Writing& to, const green::Records& records);
/// Every revision of one record, oldest first. Refuses "no_such_kind" and "no_such_record".
std::vector<services::Revision> load_history(Connection& db, std::int64_t club,
                                             const std::string& kind, const std::string& id);

} // namespace baize::store_sqlite
