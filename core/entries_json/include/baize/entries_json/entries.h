#pragma once

#include "baize/journal/fold.h"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace baize::entries_json {

/// What is read: members are found by search, however many a stranger sends.
using Read = nlohmann::json;
/// What is written: members in the order they were put in.
using Json = nlohmann::ordered_json;

/// What was sent or handed over at once.
inline constexpr std::size_t kMostEntries = 5000;
inline constexpr int kVersion = 1;

/// An entry of the set that could not be read; the others are not stopped by it.
struct Unread {
  std::string id; ///< as far as it could be read; may be empty
  units::Problem problem;
};

/// A picture that goes along with its entry where there is no server to send it to.
struct Picture {
  std::string photo; ///< UUID
  std::string bytes; ///< a JPEG, as far as the phone says
  friend bool operator==(const Picture&, const Picture&) = default;
};

/// {"form": "baize-entries", "version": 1, "phone", "sent_at", "entries": [...]}, and
/// in a file that is handed over "photos": [{"photo", "jpeg": base64}].
struct Package {
  std::string phone;
  std::string sent_at;
  std::vector<journal::Entry> entries;
  std::vector<Unread> unread; ///< entries and pictures
  std::vector<Picture> pictures{};
};

/// Text to JSON without an exception. Refuses "not_json".
units::Result<Read> parse(std::string_view text);

/// Reads a package. Refused as a whole: not_json, not_entries (another form),
/// version_not_known, member_missing, unknown_member, wrong_type, not_a_uuid,
/// not_an_instant, too_many_entries.
units::Result<Package> read_package(std::string_view text);
std::string write_package(const Package& package);

/// One entry: its members and their types, then journal::check; the first
/// problem is told.
units::Result<journal::Entry> read_entry(const Read& json);
/// The entries of a list, the rest in `unread`.
void read_entries(const Read& list, Package& into);

journal::Value value_of(const Read& json);
Json to_json(const journal::Value& value);
Json to_json(const journal::Entry& entry);
/// {"thing", "kind", "field", "values": [{"entry", "value", "by", "at"}]}; the
/// value used stands last.
Json to_json(const journal::Conflict& conflict);
/// {"things": [{"kind", "thing", "values", "heads"}], "conflicts": [...]}
Json to_json(const journal::Folded& folded);

/// The bytes of JSON; letters that are not UTF-8 are replaced.
std::string text(const Json& json);

} // namespace baize::entries_json
