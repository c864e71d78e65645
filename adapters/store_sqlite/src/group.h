#pragma once

#include "queue.h"

namespace baize::store_sqlite {

/// Writes a group in one transaction, each of it behind a savepoint of its own:
/// one that fails takes back what it did itself and nothing else. When this
/// returns every write is on disk or has its error. Where the whole transaction
/// is lost (the disk is full, say) each is tried again alone, in the same order,
/// so that one that is too large does not take the others with it. Gives the
/// number of commits. Throws nothing.
int write_group(Connection& db, const std::vector<Write*>& group) noexcept;

} // namespace baize::store_sqlite
