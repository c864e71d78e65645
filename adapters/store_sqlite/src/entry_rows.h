#pragma once

#include "baize/services/entries_port.h"
#include "kind.h"

namespace baize::store_sqlite {

/// Adds entries and what `decide` makes of all that belongs to them.
services::KeptEntries keep_entries(Writing& to, const std::vector<journal::Entry>& entries,
                                   const services::Decide& decide);
/// Arrival and contents of a club's entries (first parameter) that came after one (second),
/// so many (third) at most. The plus keeps SQLite from sorting all entries of the club.
inline constexpr const char* kNewEntriesSql =
    "SELECT arrival, contents FROM entry WHERE +club = ? AND arrival > ? ORDER BY arrival LIMIT ?";
services::EntriesPage entries_since(Connection& db, std::int64_t club, std::int64_t since,
                                    int limit);
std::vector<journal::Entry> branched(Connection& db, std::int64_t club);
/// How many entries cannot be read, or say another id, kind or thing than their row.
std::int64_t unreadable_entries(Connection& db);

} // namespace baize::store_sqlite
