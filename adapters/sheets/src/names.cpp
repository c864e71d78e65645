#include "names.h"

#include "baize/green/kinds.h"
#include "table.h"

#include <algorithm>

namespace baize::sheets {
namespace {

std::string moment(units::Day day, const std::optional<units::Minute>& minute) {
  std::string text = units::iso(day);
  if (minute) {
    const std::string time = units::iso(*minute);
    text += "T" + time.substr(0, 2) + time.substr(3);
  }
  return text;
}

std::string reading_key(const green::Reading& reading) {
  std::string text = moment(reading.day, reading.at) + "/" + reading.observer + "/" + reading.green;
  text += reading.spot.empty() ? "/" : "/" + reading.spot + "/";
  return text + reading.kind;
}

constexpr std::string_view kAll = "all";

} // namespace

std::string natural_id(const VisitKey& key) {
  std::string text = key.day ? moment(*key.day, key.from) : std::string();
  text += "/" + key.observer + "/" + key.green;
  return key.half.empty() ? text : text + "/" + key.half;
}

std::string natural_id(const green::Work& work) {
  std::string greens;
  for (const std::string& green : work.greens) {
    greens += (greens.empty() ? "" : "+") + green;
  }
  std::string text = moment(work.day, work.at) + "/" + work.kind + "/";
  text += work.greens.empty() ? kAll : std::string_view(greens);
  return work.half.empty() ? text : text + "/" + work.half;
}

std::string natural_id(const green::Fixture& fixture) {
  return units::iso(fixture.days.first) + "/" + fixture.name;
}

std::string ReadingIds::peek(const green::Reading& reading) const {
  const std::string key = reading_key(reading);
  const auto found = taken_.find(key);
  return found == taken_.end() ? key : key + "#" + std::to_string(found->second + 1);
}

void ReadingIds::take(const green::Reading& reading) {
  ++taken_[reading_key(reading)];
}

std::vector<green::Parameter> in_table_order(const std::string& kind,
                                             std::vector<green::Parameter> parameters) {
  const green::WorkKind* known = green::find_work_kind(kind);
  if (known == nullptr) {
    return parameters;
  }
  std::vector<green::Parameter> ordered;
  ordered.reserve(parameters.size());
  for (const green::ParameterKind& one : known->parameters) {
    for (const green::Parameter& parameter : parameters) {
      if (parameter.name == one.name) {
        ordered.push_back(parameter);
      }
    }
  }
  for (const green::Parameter& parameter : parameters) {
    if (green::find_parameter(*known, parameter.name) == nullptr) {
      ordered.push_back(parameter);
    }
  }
  return ordered;
}

VisitKey key_of(const green::Visit& visit) {
  VisitKey key{{}, visit.day, visit.from, visit.to, visit.observer, visit.green, visit.half};
  if (visit.id != natural_id(key)) {
    key.visit = visit.id;
  }
  return key;
}

std::vector<std::string> green_list(std::string_view text,
                                    const std::vector<green::Green>& greens) {
  const auto known = [&](std::string_view name) {
    return std::any_of(greens.begin(), greens.end(),
                       [&](const green::Green& green) { return green.id == name; });
  };
  text = without_spaces(text);
  if (text == kAll) {
    return {};
  }
  if (known(text)) {
    return {std::string(text)};
  }
  const char mark = text.find(',') != std::string_view::npos ? ',' : ' ';
  std::vector<std::string> ids;
  while (!text.empty()) {
    const auto end = std::min(text.find(mark), text.size());
    const std::string_view id = without_spaces(text.substr(0, end));
    if (!id.empty()) {
      ids.emplace_back(id);
    }
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return ids;
}

std::string green_list(const std::vector<std::string>& ids) {
  if (ids.empty()) {
    return std::string(kAll);
  }
  const bool spaced = std::any_of(ids.begin(), ids.end(), [](const std::string& id) {
    return id.find(' ') != std::string::npos;
  });
  std::string text;
  for (const std::string& id : ids) {
    text += text.empty() ? "" : spaced ? ", " : " ";
    text += id;
  }
  return text;
}

} // namespace baize::sheets
