#include "reader.h"

#include <limits>

namespace baize::wasm {

namespace {

constexpr std::size_t kLongestShown = 60;

/// Cut at a letter, so that the text stays UTF-8.
std::string cut(std::string text) {
  if (text.size() <= kLongestShown) {
    return text;
  }
  std::size_t end = kLongestShown;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) {
    --end;
  }
  return text.substr(0, end) + " ...";
}

} // namespace

std::string shown(const Read& json) {
  if (json.is_array()) {
    return "a list";
  }
  if (json.is_object()) {
    return "an object";
  }
  if (const auto* text = json.get_ptr<const std::string*>()) {
    return cut(*text);
  }
  return json.dump();
}

Reader::Reader(const Read& json, std::string place) : json_(json), place_(std::move(place)) {
  if (!json.is_object()) {
    refuse({"wrong_type", "", shown(json), "an object with named fields", place_});
  }
}

void Reader::refuse(units::Problem problem) {
  if (!problem_) {
    problem_ = std::move(problem);
  }
}

void Reader::join(const Reader& other) {
  if (other.problem_) {
    refuse(*other.problem_);
  }
}

const Read* Reader::find(const char* field) {
  if (!json_.is_object()) {
    return nullptr;
  }
  const auto found = json_.find(field);
  return found == json_.end() || found->is_null() ? nullptr : &*found;
}

void Reader::wrong_type(const char* field, const Read& found, const char* rule) {
  refuse({"wrong_type", field, shown(found), rule, place_});
}

void Reader::missing(const char* field, const char* rule) {
  refuse({"missing_value", field, "", rule, place_});
}

std::optional<double> Reader::number(const char* field) {
  const Read* found = find(field);
  if (found == nullptr) {
    return std::nullopt;
  }
  if (!found->is_number()) {
    wrong_type(field, *found, "a number");
    return std::nullopt;
  }
  return found->get<double>();
}

std::optional<int> Reader::whole(const char* field) {
  const auto found = number(field);
  if (!found) {
    return std::nullopt;
  }
  const bool fits = *found >= std::numeric_limits<int>::min() &&
                    *found <= std::numeric_limits<int>::max() && *found == std::floor(*found);
  if (!fits) {
    refuse({"not_a_whole_number", field, shown(*find(field)), "a whole number", place_});
    return std::nullopt;
  }
  return static_cast<int>(*found);
}

std::optional<std::string> Reader::text(const char* field) {
  const Read* found = find(field);
  if (found == nullptr) {
    return std::nullopt;
  }
  const auto* text = found->get_ptr<const std::string*>();
  if (text == nullptr) {
    wrong_type(field, *found, "a text");
    return std::nullopt;
  }
  return *text;
}

std::optional<std::string> Reader::word(const char* field,
                                        std::initializer_list<const char*> words) {
  auto found = text(field);
  if (!found) {
    return std::nullopt;
  }
  std::string known = "one of";
  for (const char* one : words) {
    if (*found == one) {
      return found;
    }
    known += (one == *words.begin() ? " " : ", ") + std::string(one);
  }
  refuse({"not_a_known_word", field, shown(Read(*found)), known, place_});
  return std::nullopt;
}

const Read* Reader::list(const char* field) {
  const Read* found = find(field);
  if (found != nullptr && !found->is_array()) {
    wrong_type(field, *found, "a list");
    return nullptr;
  }
  return found;
}

const Read* Reader::object(const char* field) {
  const Read* found = find(field);
  if (found != nullptr && !found->is_object()) {
    wrong_type(field, *found, "an object with named fields");
    return nullptr;
  }
  return found;
}

double Reader::need_number(const char* field) {
  const auto found = number(field);
  if (!found) {
    missing(field, "a number");
  }
  return found.value_or(0);
}

std::string Reader::need_text(const char* field) {
  auto found = text(field);
  if (!found) {
    missing(field, "a text");
  }
  return std::move(found).value_or(std::string());
}

std::string Reader::need_word(const char* field, std::initializer_list<const char*> words) {
  auto found = word(field, words);
  if (!found) {
    missing(field, "given");
  }
  return std::move(found).value_or(std::string());
}

const Read* Reader::need_list(const char* field) {
  const Read* found = list(field);
  if (found == nullptr) {
    missing(field, "a list");
  }
  return found;
}

units::Day Reader::need_day(const char* field) {
  const auto day = units::parse_iso_day(need_text(field));
  if (!day) {
    units::Problem problem = day.error();
    problem.field = field;
    problem.place = place_;
    refuse(std::move(problem));
    return {};
  }
  return *day;
}

} // namespace baize::wasm
