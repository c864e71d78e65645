#include "baize/entries_json/entries.h"
#include "baize/journal/photo.h"
#include "base64.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace baize::entries_json {
namespace {

using journal::Value;

/// Deeper than any entry may be: what lies below is not built, and
/// journal::check refuses the entry.
constexpr std::size_t kStop = journal::kDeepest + 2;
/// Likewise what is longer: one more than allowed is enough to be refused.
constexpr std::size_t kListStop = journal::kLongestList + 1;
constexpr std::size_t kMembersStop = journal::kMostMembers + 1;

Value value_at(const Read& json, std::size_t depth) {
  if (json.is_boolean()) {
    return Value{json.get<bool>()};
  }
  if (json.is_number()) {
    return Value{json.get<double>()};
  }
  if (json.is_string()) {
    return Value{json.get_ref<const std::string&>()};
  }
  if (json.is_array() && depth < kStop) {
    Value::List list;
    for (std::size_t i = 0; i < std::min(json.size(), kListStop); ++i) {
      list.push_back(value_at(json[i], depth + 1));
    }
    return Value{std::move(list)};
  }
  if (json.is_object() && depth < kStop) {
    Value::Members members;
    for (const auto& [name, one] : json.items()) {
      if (members.size() < kMembersStop) {
        members.push_back({name, value_at(one, depth + 1)});
      }
    }
    return Value{journal::sorted(std::move(members))};
  }
  return {};
}

/// Reads the members of an object as texts, and keeps the first problem.
class Reader {
 public:
  Reader(const Read& json, std::string place) : json_(json), place_(std::move(place)) {}

  std::string text(const char* name) {
    const Read* found = member(name);
    if (found != nullptr && !found->is_string()) {
      problem("wrong_type", name, *found, "a text");
      return {};
    }
    return found == nullptr ? std::string() : found->get<std::string>();
  }
  /// Null where it is not there or of another type.
  const Read* list(const char* name) {
    const Read* found = member(name);
    if (found != nullptr && !found->is_array()) {
      problem("wrong_type", name, *found, "a list");
      return nullptr;
    }
    return found;
  }
  const Read* member(const char* name) {
    const auto at = json_.find(name);
    if (at == json_.end()) {
      note({"member_missing", name, "", "given", place_});
      return nullptr;
    }
    return &*at;
  }
  template <std::size_t N> void only(const std::array<const char*, N>& names) {
    for (const auto& [name, value] : json_.items()) {
      bool known = false;
      for (const char* one : names) {
        known = known || name == one;
      }
      if (!known) {
        problem("unknown_member", shown(Value{name}), value, "left out: it has no meaning here");
      }
    }
  }
  void problem(const char* code, std::string field, const Read& value, const char* rule) {
    note({code, std::move(field), shown(value_of(value)), rule, place_});
  }
  void note(units::Problem problem) {
    if (!first_) {
      first_ = std::move(problem);
    }
  }
  const std::optional<units::Problem>& first() const { return first_; }

 private:
  const Read& json_;
  std::string place_;
  std::optional<units::Problem> first_;
};

std::string id_of(const Read& json) {
  const auto at = json.is_object() ? json.find("id") : json.end();
  const bool there = json.is_object() && at != json.end() && at->is_string();
  return there && journal::is_uuid(at->get_ref<const std::string&>()) ? at->get<std::string>()
                                                                      : std::string();
}

} // namespace

Value value_of(const Read& json) {
  return value_at(json, 0);
}

units::Result<Read> parse(std::string_view text) {
  if (!Read::accept(text.begin(), text.end())) {
    return units::refuse("not_json", "body", "", "JSON in UTF-8, whole to its end");
  }
  return Read::parse(text.begin(), text.end(), nullptr, false);
}

units::Result<journal::Entry> read_entry(const Read& json) {
  static constexpr std::array kNames{"id", "phone", "at", "by", "kind", "thing", "set", "over"};
  if (!json.is_object()) {
    return units::refuse("wrong_type", "entry", shown(value_of(json)), "an object");
  }
  const std::string id = id_of(json);
  Reader in(json, id.empty() ? "an entry" : "entry " + id);
  journal::Entry entry;
  entry.id = in.text("id");
  entry.phone = in.text("phone");
  entry.at = in.text("at");
  entry.by = in.text("by");
  entry.thing = in.text("thing");
  const std::string kind = in.text("kind");
  if (const auto known = journal::kind_of(kind)) {
    entry.kind = *known;
  } else {
    in.problem("not_a_known_word", "kind", kind, "visit, roll, total, reading, work or photo");
  }
  const Read* set = in.member("set");
  if (set != nullptr && set->is_object()) {
    entry.set = *value_of(*set).members();
  } else if (set != nullptr) {
    in.problem("wrong_type", "set", *set, "an object of fields and their values");
  }
  if (const Read* over = in.list("over")) {
    for (const Read& one : *over) {
      if (one.is_string()) {
        entry.over.push_back(one.get<std::string>());
      } else {
        in.problem("wrong_type", "over", one, "the id of an entry");
      }
    }
  }
  in.only(kNames);
  if (in.first()) {
    return units::Refusal(*in.first());
  }
  const auto problems = journal::check(entry);
  if (!problems.empty()) {
    return units::Refusal(problems.front());
  }
  return journal::canonical(std::move(entry));
}

void read_entries(const Read& list, Package& into) {
  for (const Read& one : list) {
    auto read = read_entry(one);
    if (read) {
      into.entries.push_back(std::move(*read));
    } else {
      into.unread.push_back({id_of(one), read.error()});
    }
  }
}

namespace {

units::Result<Picture> read_picture(const Read& json) {
  static constexpr std::array kNames{"photo", "jpeg"};
  if (!json.is_object()) {
    return units::refuse("wrong_type", "photos", shown(value_of(json)), "a list of objects");
  }
  Picture picture;
  Reader in(json, "a photo");
  picture.photo = in.text("photo");
  if (!journal::is_uuid(picture.photo)) {
    in.problem("not_a_uuid", "photo", picture.photo, "a UUID of version 7 in lower case");
  }
  auto bytes = from_base64(in.text("jpeg"));
  if (!bytes) {
    in.note({"not_base64", "jpeg", "", "base64 (RFC 4648), padded and in one line",
             "photo " + picture.photo});
  }
  in.only(kNames);
  if (in.first()) {
    return units::Refusal(*in.first());
  }
  picture.bytes = std::move(*bytes);
  return picture;
}

/// A picture that cannot be read stops no other, nor any entry.
void read_pictures(const Read& list, Package& into) {
  for (const Read& one : list) {
    auto read = read_picture(one);
    if (read) {
      into.pictures.push_back(std::move(*read));
    } else {
      into.unread.push_back({"", read.error()});
    }
  }
}

} // namespace

units::Result<Package> read_package(std::string_view text) {
  static constexpr std::array kNames{"form", "version", "phone", "sent_at", "entries", "photos"};
  const auto json = parse(text);
  if (!json) {
    return units::Refusal(json.error());
  }
  if (!json->is_object() || !json->contains("form") || (*json)["form"] != "baize-entries") {
    return units::refuse("not_entries", "form", json->is_object() ? "" : shown(value_of(*json)),
                         "an object whose form is baize-entries");
  }
  Reader in(*json, "the entries");
  if (const Read* version = in.member("version"); version != nullptr && *version != kVersion) {
    in.problem("version_not_known", "version", *version, "1: a newer Baize reads newer ones");
  }
  Package package;
  package.phone = in.text("phone");
  if (!journal::is_uuid(package.phone)) {
    in.problem("not_a_uuid", "phone", package.phone, "a UUID of version 7 in lower case");
  }
  package.sent_at = in.text("sent_at");
  if (!journal::parse_instant(package.sent_at)) {
    in.problem("not_an_instant", "sent_at", package.sent_at,
               "a time in UTC written YYYY-MM-DDTHH:MM:SS.mmmZ");
  }
  const Read* entries = in.list("entries");
  if (entries != nullptr && entries->size() > kMostEntries) {
    in.problem("too_many_entries", "entries", entries->size(), "at most 5000 at once");
  }
  const Read* pictures = json->contains("photos") ? in.list("photos") : nullptr;
  in.only(kNames);
  if (in.first()) {
    return units::Refusal(*in.first());
  }
  read_entries(*entries, package);
  if (pictures != nullptr) {
    read_pictures(*pictures, package);
  }
  return package;
}

} // namespace baize::entries_json
