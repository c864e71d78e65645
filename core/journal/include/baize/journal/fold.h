#pragma once

#include "baize/journal/entry.h"

#include <string>
#include <string_view>
#include <vector>

namespace baize::journal {

/// What one entry says of a field, where nothing that was written over it says
/// anything else of that field.
struct Standing {
  std::string entry;
  Value value;
  std::string by;
  std::string at;
  friend bool operator==(const Standing&, const Standing&) = default;
};

/// A field of a thing after all its entries.
struct Field {
  std::string name;
  /// By entry, the greatest id last; never empty. The last one's value is used.
  std::vector<Standing> standing;
  const Value& value() const { return standing.back().value; }
  /// Do they differ? Then a person must say which is right.
  bool conflict() const;
  friend bool operator==(const Field&, const Field&) = default;
};

struct Thing {
  Kind kind = Kind::visit;
  std::string id;
  std::vector<Field> fields;        ///< by name
  std::vector<std::string> heads;   ///< entries that none was written over, sorted
  std::vector<std::string> missing; ///< entries named in `over` that are not here, sorted
  /// The value used; null where nothing was said or it was taken back.
  const Value* find(std::string_view field) const;
  /// Taken out by "removed": true.
  bool removed() const;
  int conflicts() const;
  friend bool operator==(const Thing&, const Thing&) = default;
};

/// Everything the entries say, by kind and id.
struct Folded {
  std::vector<Thing> things;
  const Thing* find(Kind kind, std::string_view id) const;
  friend bool operator==(const Folded&, const Folded&) = default;
};

/// Entries of one thing make a graph: each was written over the newest that its
/// phone knew. B supersedes A where A is reached from B through `over` (and B is
/// not reached from A: a circle, which no phone writes, decides nothing). Of a
/// field those entries stand that set it and that no other entry setting it
/// supersedes.
///
/// The result depends on the set of entries only: order and doubles say
/// nothing, and folding the union of two sets is the same however they were
/// parted. Of two entries with one id, which a store refuses, the greater by
/// `before` is used. Linear in the entries of a thing for each field that more
/// than one entry sets. Source: common practice of version graphs, no source.
Folded fold(std::vector<Entry> entries);

/// A field for which a person must choose.
struct Conflict {
  Kind kind = Kind::visit;
  std::string thing;
  std::string field;
  std::vector<Standing> values; ///< as in Field::standing
  friend bool operator==(const Conflict&, const Conflict&) = default;
};
/// By kind, thing and field. It is solved by an entry over all of `values`.
std::vector<Conflict> conflicts(const Folded& folded);

} // namespace baize::journal
