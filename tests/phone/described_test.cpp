// The library is what surfaces/wasm/functions.json says it is.
#include "baize/wasm/functions.h"
#include "phone/cases.h"
#include "phone/described.h"

#include <gtest/gtest.h>

#include <map>
#include <set>

namespace {

using nlohmann::json;

json answer(const std::string& name, const json& takes) {
  return json::parse(baize::wasm::call(name, takes.dump()));
}

TEST(PhoneFunctions, AreThoseDescribed) {
  std::set<std::string> known;
  for (const std::string_view name : baize::wasm::names()) {
    known.emplace(name);
  }
  std::set<std::string> described;
  for (const auto& [name, function] : phone::functions().items()) {
    described.insert(name);
  }
  EXPECT_EQ(known, described);
}

/// A field that is left out is null.
json filled(json takes, const json& schema) {
  for (const json& field : schema.value("required", json::array())) {
    takes.emplace(field.get<std::string>(), nullptr);
  }
  return takes;
}

TEST(PhoneFunctions, GiveWhatIsDescribedForEveryCase) {
  static const json problem_schema = [] {
    json schema = {{"type", "object"}, {"additionalProperties", false}};
    for (const char* part : {"code", "field", "value", "rule", "sentence"}) {
      schema["properties"][part] = {{"type", "string"}};
      schema["required"].push_back(part);
    }
    return schema;
  }();
  std::map<std::string, int> answered;
  std::map<std::string, int> refused;
  for (const phone::Case& one : phone::all_cases()) {
    const json answer = json::parse(baize::wasm::call(one.name, one.takes));
    ASSERT_EQ(answer.size(), 1U) << one.takes;
    if (answer.contains("ok")) {
      const json& described = phone::functions()[one.name];
      const json takes = filled(json::parse(one.takes), described["takes"]);
      ASSERT_EQ(phone::faults(takes, described["takes"]), "") << one.name << one.takes;
      ASSERT_EQ(phone::faults(answer["ok"], described["gives"]), "") << one.name << one.takes;
      ++answered[one.name];
    } else {
      ASSERT_EQ(phone::faults(answer["problem"], problem_schema), "") << answer;
      ASSERT_NE(answer["problem"]["code"], "") << answer;
      ++refused[one.name];
    }
  }
  for (const std::string_view name : baize::wasm::names()) {
    EXPECT_GT(answered[std::string(name)], 0) << name;
  }
  EXPECT_GT(refused["run_summary"], 50);
  EXPECT_GT(answered["run_summary"], 500);
}

/// A value of no type that the schema takes; null where there is none.
json wrong_value(const json& schema) {
  for (const json& wrong : {json(true), json("no such word"), json(7.25), json::array({7})}) {
    if (!phone::faults(wrong, schema).empty()) {
      return wrong;
    }
  }
  return nullptr;
}

TEST(PhoneFunctions, NameTheFieldThatIsWrong) {
  int checked = 0;
  for (const auto& [name, function] : phone::functions().items()) {
    for (const auto& [field, schema] : function["takes"]["properties"].items()) {
      const json wrong = wrong_value(schema);
      ASSERT_FALSE(wrong.is_null()) << name << " " << field;
      const json given = {{field, wrong}};
      const json found = answer(name, given);
      ASSERT_TRUE(found.contains("problem")) << name << given;
      // Another field may be asked for first.
      if (found["problem"]["code"] != "missing_value") {
        EXPECT_EQ(found["problem"]["field"], field) << name << given << found;
        ++checked;
      }
    }
  }
  EXPECT_GE(checked, 12);
}

TEST(PhoneFunctions, RefuseWhatIsNoObject) {
  for (const std::string_view name : baize::wasm::names()) {
    for (const char* text : {"[]", "null", "7", "\"a\"", "true"}) {
      const json found = json::parse(baize::wasm::call(name, text));
      ASSERT_TRUE(found.contains("problem")) << name << text;
      EXPECT_EQ(found["problem"]["code"], "wrong_type") << name << text;
    }
    for (const std::string& text : {std::string(), std::string("{"), std::string("{\"a\":1e999}"),
                                    std::string("{\"\xff\":1}"), std::string(10000, '[')}) {
      const json found = json::parse(baize::wasm::call(name, text));
      EXPECT_EQ(found["problem"]["code"], "not_json") << name;
    }
  }
  const std::string deep =
      "{\"marks\":" + std::string(1000000, '[') + std::string(1000000, ']') + "}";
  EXPECT_EQ(json::parse(baize::wasm::call("offer", deep))["problem"]["code"], "wrong_type");
  EXPECT_EQ(answer("no_such", {})["problem"]["code"], "no_such_function");
  const std::string long_text = "{\"a\":\"" + std::string(9000000, 'a') + "\"}";
  EXPECT_EQ(json::parse(baize::wasm::call("offer", long_text))["problem"]["code"],
            "input_too_long");
}

} // namespace
