#include "tables.h"

#include "cells.h"

#include <algorithm>
#include <optional>
#include <set>

namespace baize::data {
namespace {

/// Refuses a name that stands twice; returns it otherwise.
const std::string& once(std::set<std::string>& names, const Row& row, const std::string& name) {
  if (!names.insert(name).second) {
    throw TableError(row.place + ": " + name + " stands twice");
  }
  return row["name"];
}

/// The kind that is being read: its entry is written when its parameters are.
struct OpenKind {
  Row row;
  std::string parameters;
  std::set<std::string> names;
  bool leading = false;
};

std::string parameter_entry(OpenKind& kind, const Row& row, std::string& arrays) {
  const std::string name = once(kind.names, row, plain_name(row, "name"));
  const bool leading = one_of(row, "leading", {"leading", kNothing}) == "leading";
  if (leading && kind.leading) {
    throw TableError(row.place + ": " + kind.row["name"] + " has a leading parameter already");
  }
  kind.leading = kind.leading || leading;
  const std::string rule = value_rule(row, "k_" + kind.row["name"] + "_" + name + "_words", arrays);
  return "    {" + literal(name) + ", " + literal(row["title"]) + ", " + rule + ", " +
         (leading ? "true" : "false") + ", " + literal(row["meaning"]) + "},\n";
}

void close_kind(const OpenKind& kind, std::string& arrays, std::string& entries) {
  const std::string array = "k_" + kind.row["name"];
  if (!kind.parameters.empty()) {
    arrays += "constexpr ParameterKind " + array + "[] = {\n" + kind.parameters + "};\n\n";
  }
  entries += "    {" + literal(kind.row["name"]) + ", " + literal(kind.row["title"]) +
             ", WorkClass::" + kind.row["class"] + ", " + (kind.parameters.empty() ? "{}" : array) +
             ", " + literal(kind.row["meaning"]) + "},\n";
}

struct Line {
  int bobbles_from;
  std::optional<int> bobbles_to;
  int others_from;
  std::optional<int> others_to;
  bool holds(int bobbles, int others) const {
    return bobbles >= bobbles_from && bobbles <= bobbles_to.value_or(bobbles) &&
           others >= others_from && others <= others_to.value_or(others);
  }
};

std::optional<int> upper(const Row& row, const std::string& column) {
  return row[column] == "*" ? std::nullopt : std::optional(whole(row, column));
}

std::string bound(std::optional<int> value) {
  return value ? std::to_string(*value) : "std::nullopt";
}

/// Every pair of counts is met by exactly one line. Counts beyond the greatest
/// that any line names behave as the one just above it.
void check_complete(const std::vector<Line>& lines) {
  int most = 0;
  for (const Line& line : lines) {
    most = std::max({most, line.bobbles_from, line.bobbles_to.value_or(0), line.others_from,
                     line.others_to.value_or(0)});
  }
  for (int bobbles = 0; bobbles <= most + 1; ++bobbles) {
    for (int others = 0; others <= most + 1; ++others) {
      const auto met = std::count_if(lines.begin(), lines.end(),
                                     [&](const Line& line) { return line.holds(bobbles, others); });
      if (met != 1) {
        throw TableError("roll_score.tsv: " + std::to_string(bobbles) + " bobbles and " +
                         std::to_string(others) + " others are met by " + std::to_string(met) +
                         " lines instead of one");
      }
    }
  }
}

} // namespace

std::string work_kinds_source(const std::string& text) {
  const auto rows = read_table("work_kinds.tsv", text,
                               {"row", "name", "title", "class", "type", "unit", "lowest",
                                "highest", "words", "leading", "meaning"});
  std::string arrays;
  std::string entries;
  std::set<std::string> names;
  std::optional<OpenKind> kind;
  for (const Row& row : rows) {
    if (one_of(row, "row", {"kind", "parameter"}) == "parameter") {
      if (!kind) {
        throw TableError(row.place + ": a parameter stands above every kind");
      }
      kind->parameters += parameter_entry(*kind, row, arrays);
      continue;
    }
    if (kind) {
      close_kind(*kind, arrays, entries);
    }
    once(names, row, plain_name(row, "name"));
    one_of(row, "class", {"disruptive", "routine", "closing"});
    kind = OpenKind{row, {}, {}, false};
  }
  close_kind(*kind, arrays, entries);
  return opening("work_kinds.tsv") + arrays + "constexpr WorkKind kKinds[] = {\n" + entries +
         "};\n\n} // namespace\n\n"
         "std::span<const WorkKind> work_kinds() { return kKinds; }\n" +
         closing();
}

std::string measured_fields_source(const std::string& text) {
  const auto rows = read_table("measured_fields.tsv", text,
                               {"record", "name", "title", "type", "unit", "lowest", "highest",
                                "words", "kind", "source", "trust"});
  std::string arrays;
  std::string entries;
  std::set<std::string> names;
  std::size_t others = 0; // fields before the first kind of reading
  bool kinds_begun = false;
  for (const Row& row : rows) {
    const std::string& record =
        one_of(row, "record", {"roll", "run", "visit", "reading", "reading_kind"});
    if (kinds_begun && record != "reading_kind") {
      throw TableError(row.place + ": kinds of reading stand last");
    }
    kinds_begun = record == "reading_kind";
    others += kinds_begun ? 0 : 1;
    once(names, row, record + " " + plain_name(row, "name"));
    one_of(row, "kind", {"measured", "counted", "judged", "stated"});
    const std::string rule = value_rule(row, "k_" + record + "_" + row["name"] + "_words", arrays);
    entries += "    {" + literal(record) + ", " + literal(row["name"]) + ", " +
               literal(row["title"]) + ", " + rule + ", " + literal(row["kind"]) + ", " +
               literal(row["source"]) + ", " + literal(row["trust"]) + "},\n";
  }
  return opening("measured_fields.tsv") + arrays + "constexpr MeasuredField kFields[] = {\n" +
         entries +
         "};\n\n} // namespace\n\n"
         "std::span<const MeasuredField> measured_fields() { return kFields; }\n"
         "std::span<const MeasuredField> reading_kinds() {\n  return measured_fields().subspan(" +
         std::to_string(others) + ");\n}\n" + closing();
}

std::string roll_score_source(const std::string& text) {
  const auto rows = read_table(
      "roll_score.tsv", text,
      {"bobbles_from", "bobbles_to", "others_from", "others_to", "offered", "lowest", "highest"});
  std::vector<Line> lines;
  std::string entries;
  for (const Row& row : rows) {
    lines.push_back({whole(row, "bobbles_from"), upper(row, "bobbles_to"),
                     whole(row, "others_from"), upper(row, "others_to")});
    const int offered = whole(row, "offered");
    const int lowest = whole(row, "lowest");
    const int highest = whole(row, "highest");
    if (lowest < 1 || lowest > offered || offered > highest || highest > 10) {
      throw TableError(row.place + ": the score offered must lie in a band from 1 to 10");
    }
    const Line& line = lines.back();
    entries += "    {" + std::to_string(line.bobbles_from) + ", " + bound(line.bobbles_to) + ", " +
               std::to_string(line.others_from) + ", " + bound(line.others_to) + ", " +
               std::to_string(offered) + ", " + std::to_string(lowest) + ", " +
               std::to_string(highest) + "},\n";
  }
  check_complete(lines);
  return opening("roll_score.tsv") + "constexpr ScoreRule kRules[] = {\n" + entries +
         "};\n\n} // namespace\n\n"
         "std::span<const ScoreRule> score_rules() { return kRules; }\n" +
         closing();
}

} // namespace baize::data
