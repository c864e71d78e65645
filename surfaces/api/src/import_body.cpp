#include "baize/api/import_body.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <optional>
#include <string>

namespace baize::api {

namespace {

using nlohmann::json;

units::Problem bad(std::string field, std::string value, std::string rule) {
  return {"bad_import", std::move(field), std::move(value), std::move(rule), ""};
}

bool good_name(const std::string& name) {
  return !name.empty() && name.size() <= kLongestFileName &&
         std::none_of(name.begin(), name.end(), [](char c) {
           return c == '/' || c == '\\' || static_cast<unsigned char>(c) < 0x20 || c == 0x7F;
         });
}

/// Takes what the parser sees, and stops it at the first thing out of place.
class Reader : public nlohmann::json_sax<json> {
 public:
  std::vector<services::ReceivedFile> files;
  std::optional<units::Problem> problem;

  bool null() override { return stop(); }
  bool boolean(bool) override { return stop(); }
  bool number_integer(json::number_integer_t) override { return stop(); }
  bool number_unsigned(json::number_unsigned_t) override { return stop(); }
  bool number_float(json::number_float_t, const json::string_t&) override { return stop(); }
  bool binary(json::binary_t&) override { return stop(); }

  bool start_object(std::size_t) override {
    if (place_ == Place::start) {
      place_ = Place::request;
      return true;
    }
    if (place_ != Place::files) {
      return stop();
    }
    if (files.size() == kMostFiles) {
      return stop_with("files", std::to_string(kMostFiles + 1) + " or more",
                       "a list of at most " + std::to_string(kMostFiles) + " files");
    }
    files.emplace_back();
    has_name_ = has_content_ = false;
    place_ = Place::file;
    return true;
  }

  bool key(json::string_t& key) override {
    if (place_ == Place::request && key == "files" && !has_files_) {
      has_files_ = true;
      place_ = Place::before_list;
      return true;
    }
    bool& has = key == "name" ? has_name_ : has_content_;
    if (place_ != Place::file || (key != "name" && key != "content") || has) {
      return stop_with("key", key.substr(0, 100), kShape);
    }
    has = true;
    place_ = key == "name" ? Place::name : Place::content;
    return true;
  }

  bool string(json::string_t& value) override {
    if (place_ == Place::name && !good_name(value)) {
      return stop_with("name", value.substr(0, 100),
                       "a file name of 1 to 255 bytes without slashes and control characters");
    }
    if (place_ != Place::name && place_ != Place::content) {
      return stop();
    }
    (place_ == Place::name ? files.back().name : files.back().content) = std::move(value);
    place_ = Place::file;
    return true;
  }

  bool end_object() override {
    if (place_ == Place::request) {
      place_ = Place::end;
      return has_files_ && !files.empty() ? true : stop();
    }
    if (place_ != Place::file || !has_name_ || !has_content_) {
      return stop();
    }
    place_ = Place::files;
    return true;
  }

  bool start_array(std::size_t) override {
    if (place_ != Place::before_list) {
      return stop();
    }
    place_ = Place::files;
    return true;
  }

  bool end_array() override {
    if (place_ != Place::files) {
      return stop();
    }
    place_ = Place::request;
    return true;
  }

  bool parse_error(std::size_t at, const std::string&, const json::exception&) override {
    problem = units::Problem{"bad_json", "body", "byte " + std::to_string(at), "JSON", ""};
    return false;
  }

 private:
  enum class Place { start, request, before_list, files, file, name, content, end };
  static constexpr const char* kShape =
      R"(an object {"files": [{"name": text, "content": text}]} with at least one file)";

  bool stop() { return stop_with("body", "JSON of another shape", kShape); }
  bool stop_with(std::string field, std::string value, std::string rule) {
    problem = bad(std::move(field), std::move(value), std::move(rule));
    return false;
  }

  Place place_ = Place::start;
  bool has_files_ = false;
  bool has_name_ = false;
  bool has_content_ = false;
};

} // namespace

units::Result<std::vector<services::ReceivedFile>> read_import_body(std::string_view body) {
  Reader reader;
  const bool read = json::sax_parse(body.begin(), body.end(), &reader);
  if (!read || reader.problem) {
    return tl::unexpected(reader.problem.value_or(bad("body", "", "JSON")));
  }
  for (std::size_t i = 0; i < reader.files.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      if (reader.files[i].name == reader.files[j].name) {
        return tl::unexpected(bad("name", reader.files[i].name, "a name that no other file has"));
      }
    }
  }
  return std::move(reader.files);
}

} // namespace baize::api
