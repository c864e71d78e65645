#pragma once

#include "baize/services/entries_port.h"
#include "kind.h"

#include <set>
#include <string>
#include <vector>

namespace baize::store_sqlite {

/// An entry from what was kept; refuses as entries_json::parse and read_entry.
units::Result<journal::Entry> parse_contents(const std::string& contents);
/// The same of a row that must be whole; fails with "database_damaged".
journal::Entry read_contents(Connection& db, const std::string& contents);
/// Adds every entry of a thing to `all`, in the order of arrival.
void entries_of(Connection& db, std::int64_t club, const std::string& thing,
                std::vector<journal::Entry>& all);

/// What the entries of a thing (second parameter) of a club (first) say it belongs to. The
/// plus keeps SQLite from walking through every entry of the club that belongs to something.
inline constexpr const char* kOwnersSql =
    "SELECT visit FROM entry WHERE club = ? AND thing = ? AND +visit IS NOT NULL";

/// By what a visit lies beside another one.
enum class Beside { day, shared_rolls };
/// The standing visits of a club (first parameter) beside one of that value (second).
std::string visits_beside_sql(Beside beside);

/// What stands around some things, read once; visits beside them when asked for.
class EntriesAround : public services::Around {
 public:
  EntriesAround(Connection& db, std::int64_t club, const std::set<std::string>& things);

  const std::vector<journal::Entry>& entries() const override { return entries_; }
  const green::Records& ground() const override { return ground_; }
  std::vector<green::Visit> visits_beside(units::Day day,
                                          const std::string& shared_rolls) const override;

 private:
  Connection& db_;
  std::int64_t club_;
  std::vector<journal::Entry> entries_;
  green::Records ground_;
};

} // namespace baize::store_sqlite
