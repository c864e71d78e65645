#pragma once

#include "database.h"

#include <string>
#include <vector>

namespace baize::store_sqlite {

/// "Baiz", in every database of ours (PRAGMA application_id).
inline constexpr std::int64_t kApplicationId = 0x4261697a;

/// Step n brings a database from version n to n + 1; a step is never edited
/// once it is released, a new one follows it.
std::vector<std::string> migrations();

/// Makes sure that the open file is a Baize database of a known version, and
/// brings it to the newest. With `change` off it only looks.
void prepare(Connection& db, const std::vector<std::string>& steps, bool change);

/// Every table of raw rows, in the order a child follows its parent.
const std::vector<std::string>& raw_tables();
/// Every table of people and what lets them in; likewise in their order.
const std::vector<std::string>& people_tables();

} // namespace baize::store_sqlite
