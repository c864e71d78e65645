#pragma once

#include "baize/sheets/csv.h"
#include "findings.h"
#include "values.h"

#include <optional>
#include <string>
#include <vector>

namespace baize::sheets {

/// How a column's name may end, so that its unit or its way of writing is part
/// of the name: distance_cm, day_dmy.
enum class Ending { none, length, day };

/// A column as a file's table knows it.
struct Heading {
  std::string name;
  Ending ending = Ending::none;
  bool required = false;
};

/// A column as a file has it.
struct LayoutColumn {
  int heading = -1; ///< place in the table; -1: a column without a name, which must stay empty
  CellStyle style;  ///< its decimal mark is the layout's, not its own
  std::string name; ///< as the file writes it
};

/// What must be kept when rows are written into a file that was received.
struct Layout {
  char delimiter = ',';
  /// '.' or ','; 0 while no number has shown it. A comma-delimited file has '.'.
  char decimal = 0;
  bool decimal_mixed = false; ///< told once
  int decimal_line = 0;       ///< where it was first seen
  std::string line_end = "\n";
  std::vector<LayoutColumn> columns;

  /// The mark to write with: a semicolon parts the cells where commas part decimals.
  char decimal_to_write() const { return decimal != 0 ? decimal : delimiter == ';' ? ',' : '.'; }
};

/// A fresh file: every heading, commas, metres, ISO days.
Layout canonical_layout(const std::vector<Heading>& headings);
/// The header cell of a heading: "distance_m" where it must have a unit.
std::string header_name(const Heading& heading);

/// Understands a header line. Absent, with problems found, where a name is
/// unknown (the nearest known one is named), stands twice, or is missing.
std::optional<Layout> read_header(const CsvRow& row, std::string_view content, char delimiter,
                                  const std::string& file, const std::vector<Heading>& headings,
                                  Findings& findings);

/// The known word with the fewest letters to change.
std::string nearest(std::string_view word, const std::vector<std::string>& known);

/// Settles the decimal mark by the first number that shows one; a file that
/// uses both is told once ("mixed_decimal_marks"). False: it was just told.
bool settle_decimal(std::string_view text, Layout& layout, const Where& where, Findings& findings);

} // namespace baize::sheets
