#include "cells.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <sstream>

namespace baize::data {
namespace {

[[noreturn]] void refuse(const Row& row, const std::string& column, const std::string& rule) {
  throw TableError(row.place + ": " + column + " is '" + row[column] + "', but must be " + rule);
}

std::vector<std::string> words_of(const Row& row) {
  std::vector<std::string> words;
  if (row["words"] == kNothing) {
    return words;
  }
  std::istringstream in(row["words"]);
  for (std::string word; std::getline(in, word, '|');) {
    words.push_back(word);
  }
  const std::set<std::string> different(words.begin(), words.end());
  if (different.size() != words.size() || different.contains("") || words.size() < 2) {
    refuse(row, "words", "two or more different words parted by |");
  }
  return words;
}

void want_nothing(const Row& row, const std::string& column) {
  if (row[column] != kNothing) {
    refuse(row, column, "- for this type");
  }
}

} // namespace

std::string literal(const std::string& cell) {
  if (cell == kNothing) {
    return "\"\"";
  }
  std::string text = "\"";
  for (const char c : cell) {
    if (c == '"' || c == '\\') {
      text += '\\';
    }
    text += c;
  }
  return text + '"';
}

const std::string& plain_name(const Row& row, const std::string& column) {
  const std::string& name = row[column];
  const bool plain = name.front() >= 'a' && name.front() <= 'z' &&
                     std::all_of(name.begin(), name.end(), [](char c) {
                       return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
                     });
  if (!plain) {
    refuse(row, column, "lower-case letters, digits and underscores");
  }
  return name;
}

const std::string& one_of(const Row& row, const std::string& column,
                          const std::vector<std::string>& allowed) {
  if (std::find(allowed.begin(), allowed.end(), row[column]) == allowed.end()) {
    std::string rule = "one of";
    for (const std::string& word : allowed) {
      rule += " " + word;
    }
    refuse(row, column, rule);
  }
  return row[column];
}

double number(const Row& row, const std::string& column) {
  std::istringstream in(row[column]);
  in.imbue(std::locale::classic());
  double value = 0;
  if (!(in >> value) || !in.eof() || !std::isfinite(value)) {
    refuse(row, column, "a number");
  }
  return value;
}

int whole(const Row& row, const std::string& column) {
  const double value = number(row, column);
  if (value != std::floor(value) || std::fabs(value) > 1e6) {
    refuse(row, column, "a whole number");
  }
  return static_cast<int>(value);
}

std::string value_rule(const Row& row, const std::string& array, std::string& arrays) {
  const std::string& type = one_of(row, "type", {"number", "whole", "word"});
  if (type == "word") {
    for (const char* column : {"unit", "lowest", "highest"}) {
      want_nothing(row, column);
    }
    const auto words = words_of(row);
    if (words.empty()) {
      return "{ValueType::word, \"\", 0, 0, false, {}}";
    }
    arrays += "constexpr std::string_view " + array + "[] = {";
    for (const std::string& word : words) {
      arrays += literal(word) + ", ";
    }
    arrays += "};\n";
    return "{ValueType::word, \"\", 0, 0, false, " + array + "}";
  }
  want_nothing(row, "words");
  Row bounds = row;
  const bool above = row["lowest"].starts_with('>');
  if (above) {
    bounds.cells["lowest"].erase(0, 1);
  }
  const bool whole_numbers = type == "whole";
  const double lowest = whole_numbers ? whole(bounds, "lowest") : number(bounds, "lowest");
  const double highest = whole_numbers ? whole(bounds, "highest") : number(bounds, "highest");
  if (!(lowest < highest)) {
    refuse(row, "highest", "above the lowest");
  }
  return "{ValueType::" + type + ", " + literal(row["unit"]) + ", " + bounds["lowest"] + ", " +
         bounds["highest"] + ", " + (above ? "true" : "false") + ", {}}";
}

std::string opening(const std::string& table) {
  return "// Made from data/" + table +
         " by the build; change that file, not this one.\n"
         "#include \"baize/green/kinds.h\"\n\n"
         "namespace baize::green {\nnamespace {\n\n";
}

std::string closing() {
  return "\n} // namespace baize::green\n";
}

} // namespace baize::data
