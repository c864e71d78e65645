#pragma once

#include "baize/journal/value.h"
#include "baize/units/problem.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace baize::journal {

/// What an entry speaks of.
enum class Kind { visit, roll, total, reading, work, photo };
std::string_view name(Kind kind);
/// Nothing for a word that is no kind.
std::optional<Kind> kind_of(std::string_view word);

/// Something that a phone wrote down. Entries are never changed and never
/// removed: a correction is another entry, written over the earlier one.
struct Entry {
  std::string id;    ///< UUID version 7, made on the phone
  std::string phone; ///< UUID version 7 of the installation
  std::string at;    ///< RFC 3339 in UTC by the phone's clock: 2026-05-03T07:10:31.250Z
  std::string by;    ///< the observer's id; empty where nobody is named
  Kind kind = Kind::visit;
  std::string thing;             ///< UUID version 7 of what it speaks of
  Value::Members set;            ///< by name
  std::vector<std::string> over; ///< the entries of this thing it was written on top of
  friend bool operator==(const Entry&, const Entry&) = default;
};

/// The same entry with its members and `over` in order, each once: two entries
/// say the same where these are equal.
Entry canonical(Entry entry);
/// An order that is the same everywhere: by id, then by contents.
bool before(const Entry& a, const Entry& b);

/// What a single entry may hold; beyond it nobody wrote by hand.
inline constexpr std::size_t kMostMembers = 40;   ///< of `set`
inline constexpr std::size_t kMostOver = 32;      ///< of `over`
inline constexpr std::size_t kLongestText = 4000; ///< bytes, a note
inline constexpr std::size_t kLongestName = 100;  ///< bytes, a field or an observer
inline constexpr std::size_t kLongestList = 400;  ///< marks of a roll, greens of a work
inline constexpr std::size_t kDeepest = 4;        ///< a mark's seconds lie at 3

/// The rules an entry must meet on its own, whatever else is there. Codes:
/// not_a_uuid, not_an_instant, nothing_set, too_many_members, name_too_long,
/// text_too_long, list_too_long, too_deep, not_finite, over_itself. Whether the
/// fields have a meaning is not asked here: an entry of a newer phone is kept.
std::vector<units::Problem> check(const Entry& entry);

/// Lower-case, 8-4-4-4-12, version 7.
bool is_uuid(std::string_view text);

/// Milliseconds since 1970-01-01T00:00Z. Only YYYY-MM-DDTHH:MM:SS[.mmm]Z;
/// refuses "not_an_instant".
units::Result<std::int64_t> parse_instant(std::string_view text);

} // namespace baize::journal
