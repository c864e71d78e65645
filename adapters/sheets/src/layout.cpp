#include "layout.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace baize::sheets {
namespace {

constexpr std::string_view kDayFirst = "_dmy";

std::string lower(std::string_view text) {
  std::string low(text);
  std::transform(low.begin(), low.end(), low.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return low;
}

/// Letters to change, add or leave out (Levenshtein).
std::size_t distance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 0; i < a.size(); ++i) {
    std::size_t corner = row[0];
    row[0] = i + 1;
    for (std::size_t j = 0; j < b.size(); ++j) {
      const std::size_t change = corner + (a[i] == b[j] ? 0 : 1);
      corner = row[j + 1];
      row[j + 1] = std::min({change, row[j] + 1, corner + 1});
    }
  }
  return row.back();
}

std::vector<std::string> all_names(const Heading& heading) {
  switch (heading.ending) {
  case Ending::length:
    return {heading.name + "_m", heading.name + "_cm", heading.name + "_ft",
            heading.name + "_ft_in"};
  case Ending::day:
    return {heading.name, heading.name + std::string(kDayFirst)};
  case Ending::none:
    break;
  }
  return {heading.name};
}

std::string nearest_heading(std::string_view name, const std::vector<Heading>& headings) {
  std::vector<std::string> known;
  for (const Heading& heading : headings) {
    const auto names = all_names(heading);
    known.insert(known.end(), names.begin(), names.end());
  }
  return nearest(lower(name), known);
}

std::optional<CellStyle> style_of(std::string_view name, const Heading& heading) {
  if (!name.starts_with(heading.name)) {
    return std::nullopt;
  }
  const std::string_view rest = name.substr(heading.name.size());
  CellStyle style;
  if (heading.ending == Ending::length) {
    const auto unit = rest.starts_with('_') ? units::parse_length_unit(rest.substr(1))
                                            : units::parse_length_unit({});
    if (!unit) {
      return std::nullopt;
    }
    style.unit = *unit;
    return style;
  }
  style.day_first = heading.ending == Ending::day && rest == kDayFirst;
  return rest.empty() || style.day_first ? std::optional(style) : std::nullopt;
}

LayoutColumn resolve(std::string_view written, const std::vector<Heading>& headings) {
  LayoutColumn column;
  column.name = written;
  const std::string name = lower(written);
  for (std::size_t i = 0; i < headings.size(); ++i) {
    if (const auto style = style_of(name, headings[i])) {
      column.heading = static_cast<int>(i);
      column.style = *style;
      return column;
    }
  }
  return column;
}

std::string_view trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t");
  return first == std::string_view::npos
             ? std::string_view()
             : text.substr(first, text.find_last_not_of(" \t") + 1 - first);
}

std::string line_end_after(const CsvRow& row, std::string_view content) {
  return row.next > row.end ? std::string(content.substr(row.end, row.next - row.end)) : "\n";
}

bool missing_columns(const std::vector<bool>& there, const std::vector<Heading>& headings,
                     const Where& where, Findings& findings) {
  bool missing = false;
  for (std::size_t i = 0; i < headings.size(); ++i) {
    if (headings[i].required && !there[i]) {
      findings.problem({"column_missing",
                        "column " + header_name(headings[i]),
                        {},
                        "in the header line of this file",
                        {}},
                       where);
      missing = true;
    }
  }
  return missing;
}

} // namespace

std::string header_name(const Heading& heading) {
  return heading.ending == Ending::length ? heading.name + "_m" : heading.name;
}

Layout canonical_layout(const std::vector<Heading>& headings) {
  Layout layout;
  layout.decimal = '.';
  for (std::size_t i = 0; i < headings.size(); ++i) {
    layout.columns.push_back({static_cast<int>(i), {}, header_name(headings[i])});
  }
  return layout;
}

std::string nearest(std::string_view word, const std::vector<std::string>& known) {
  std::string best;
  std::size_t least = std::string::npos;
  for (const std::string& candidate : known) {
    // "area" means area_m2, whatever shorter word has fewer other letters.
    const bool begins = candidate.size() > word.size() && candidate.starts_with(word) &&
                        candidate[word.size()] == '_';
    const std::size_t letters = begins ? 0 : distance(word.substr(0, 64), candidate);
    if (letters < least) {
      least = letters;
      best = candidate;
    }
  }
  return best;
}

std::optional<Layout> read_header(const CsvRow& row, std::string_view content, char delimiter,
                                  const std::string& file, const std::vector<Heading>& headings,
                                  Findings& findings) {
  Layout layout;
  layout.delimiter = delimiter;
  layout.decimal = delimiter == ',' ? '.' : '\0';
  layout.line_end = line_end_after(row, content);
  std::vector<bool> there(headings.size(), false);
  const Where where{file, row.line, {}};
  bool good = true;
  for (const CsvCell& cell : row.cells) {
    LayoutColumn column = resolve(trimmed(cell.text), headings);
    if (column.heading < 0 && !column.name.empty()) {
      const std::string known =
          findings.listing() ? nearest_heading(column.name, headings) : std::string();
      findings.problem({"unknown_column",
                        "column",
                        column.name,
                        "one that this file knows; the nearest is '" + known + "'",
                        {}},
                       where);
      good = false;
    } else if (column.heading >= 0 && there[static_cast<std::size_t>(column.heading)]) {
      findings.problem({"column_twice", "column", column.name, "there only once", {}}, where);
      good = false;
    } else if (column.heading >= 0) {
      there[static_cast<std::size_t>(column.heading)] = true;
    }
    layout.columns.push_back(std::move(column));
  }
  // A misspelt name explains a missing one: say the first only.
  if (!good || missing_columns(there, headings, where, findings)) {
    return std::nullopt;
  }
  return layout;
}

bool settle_decimal(std::string_view text, Layout& layout, const Where& where, Findings& findings) {
  if (layout.delimiter == ',') {
    return true;
  }
  const auto at = text.find_first_of(".,");
  if (at == std::string_view::npos) {
    return true;
  }
  if (layout.decimal == 0) {
    layout.decimal = text[at];
    layout.decimal_line = where.line;
  }
  const bool other =
      text[at] != layout.decimal && text.find(layout.decimal) == std::string_view::npos;
  if (!other || layout.decimal_mixed) {
    return true;
  }
  layout.decimal_mixed = true;
  findings.problem({"mixed_decimal_marks",
                    "number",
                    std::string(text),
                    std::string("written with the decimal mark '") + layout.decimal +
                        "' as on line " + std::to_string(layout.decimal_line),
                    {}},
                   where);
  return false;
}

} // namespace baize::sheets
