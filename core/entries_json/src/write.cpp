#include "baize/entries_json/entries.h"
#include "base64.h"

#include <cmath>
#include <cstdint>

namespace baize::entries_json {

Json to_json(const journal::Value& value) {
  if (const bool* flag = value.flag()) {
    return *flag;
  }
  if (const double* number = value.number()) {
    constexpr double kExact = 9007199254740992.0; // 2^53: whole numbers below are exact
    if (std::trunc(*number) == *number && std::abs(*number) < kExact) {
      return static_cast<std::int64_t>(*number);
    }
    return *number;
  }
  if (const std::string* text = value.text()) {
    return *text;
  }
  if (const auto* list = value.list()) {
    Json all = Json::array();
    for (const journal::Value& one : *list) {
      all.push_back(to_json(one));
    }
    return all;
  }
  if (const auto* members = value.members()) {
    Json all = Json::object();
    for (const journal::Member& member : *members) {
      all[member.name] = to_json(member.value);
    }
    return all;
  }
  return nullptr;
}

Json to_json(const journal::Entry& entry) {
  Json json = Json::object();
  json["id"] = entry.id;
  json["phone"] = entry.phone;
  json["at"] = entry.at;
  json["by"] = entry.by;
  json["kind"] = std::string(name(entry.kind));
  json["thing"] = entry.thing;
  json["set"] = to_json(journal::Value{entry.set});
  json["over"] = entry.over;
  return json;
}

Json to_json(const journal::Conflict& conflict) {
  Json json = Json::object();
  json["thing"] = conflict.thing;
  json["kind"] = std::string(name(conflict.kind));
  json["field"] = conflict.field;
  json["values"] = Json::array();
  for (const journal::Standing& one : conflict.values) {
    Json value = Json::object();
    value["entry"] = one.entry;
    value["value"] = to_json(one.value);
    value["by"] = one.by;
    value["at"] = one.at;
    json["values"].push_back(std::move(value));
  }
  return json;
}

Json to_json(const journal::Folded& folded) {
  Json json = Json::object();
  json["things"] = Json::array();
  for (const journal::Thing& thing : folded.things) {
    Json one = Json::object();
    one["kind"] = std::string(name(thing.kind));
    one["thing"] = thing.id;
    one["values"] = Json::object();
    for (const journal::Field& field : thing.fields) {
      one["values"][field.name] = to_json(field.value());
    }
    one["heads"] = thing.heads;
    json["things"].push_back(std::move(one));
  }
  json["conflicts"] = Json::array();
  for (const journal::Conflict& conflict : conflicts(folded)) {
    json["conflicts"].push_back(to_json(conflict));
  }
  return json;
}

std::string write_package(const Package& package) {
  Json json = Json::object();
  json["form"] = "baize-entries";
  json["version"] = kVersion;
  json["phone"] = package.phone;
  json["sent_at"] = package.sent_at;
  json["entries"] = Json::array();
  for (const journal::Entry& entry : package.entries) {
    json["entries"].push_back(to_json(entry));
  }
  for (const Picture& picture : package.pictures) {
    Json one = Json::object();
    one["photo"] = picture.photo;
    one["jpeg"] = to_base64(picture.bytes);
    json["photos"].push_back(std::move(one));
  }
  return text(json);
}

std::string text(const Json& json) {
  return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace baize::entries_json
