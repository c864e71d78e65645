#include "baize/api/form.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace baize::api {

namespace {

using Fields = std::map<std::string, std::string>;

/// Takes one member after the other; whatever does not belong ends the reading.
class Reader : public nlohmann::json_sax<nlohmann::json> {
 public:
  explicit Reader(const std::vector<std::string_view>& names) : names_(names) {}
  Fields fields;
  units::Problem problem{"bad_json", "body", "", "JSON in UTF-8, whole to its end", ""};

  bool null() override { return wrong("null", "a text or a whole number"); }
  bool boolean(bool value) override {
    return wrong(value ? "true" : "false", "a text or a whole number");
  }
  bool number_integer(number_integer_t value) override { return take(std::to_string(value)); }
  bool number_unsigned(number_unsigned_t value) override { return take(std::to_string(value)); }
  bool number_float(number_float_t /*value*/, const string_t& text) override {
    return wrong(text.substr(0, 40), "a text or a whole number");
  }
  bool string(string_t& value) override {
    return value.size() <= kLongestFormText
               ? take(std::move(value))
               : wrong(std::to_string(value.size()) + " bytes", "at most 2048 bytes long");
  }
  bool binary(binary_t& /*value*/) override { return wrong("bytes", "a text or a whole number"); }
  bool start_object(std::size_t /*size*/) override {
    return !std::exchange(begun_, true) || wrong("an object", "a text or a whole number");
  }
  bool key(string_t& name) override {
    name_ = name.substr(0, 40);
    if (std::find(names_.begin(), names_.end(), name) == names_.end()) {
      return wrong("a member", "left out: only " + known() + " may be there");
    }
    return !fields.contains(name) || wrong("given again", "given once");
  }
  bool end_object() override { return true; }
  bool start_array(std::size_t /*size*/) override {
    return wrong("a list", begun_ ? "a text or a whole number" : "an object");
  }
  bool end_array() override { return true; }
  bool parse_error(std::size_t /*at*/, const std::string& /*token*/,
                   const nlohmann::detail::exception& /*error*/) override {
    return false;
  }

 private:
  bool take(std::string value) {
    if (!begun_) {
      return wrong(value.substr(0, 40), "an object");
    }
    fields[name_] = std::move(value);
    return true;
  }
  bool wrong(std::string value, std::string rule) {
    problem = {"bad_form", name_.empty() ? "body" : name_, std::move(value), std::move(rule), ""};
    return false;
  }
  std::string known() const {
    std::string all;
    for (const std::string_view name : names_) {
      all += (all.empty() ? "" : ", ") + std::string(name);
    }
    return all;
  }

  const std::vector<std::string_view>& names_;
  std::string name_;
  bool begun_ = false;
};

} // namespace

units::Result<Fields> read_form(std::string_view body, const std::vector<std::string_view>& names) {
  Reader reader(names);
  if (!nlohmann::json::sax_parse(body.begin(), body.end(), &reader)) {
    return tl::unexpected(reader.problem);
  }
  return std::move(reader.fields);
}

} // namespace baize::api
