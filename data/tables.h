#pragma once

#include <map>
#include <stdexcept>
#include <string>
#include <vector>

// Turns the tables of this folder into C++ source, and refuses a table that is
// not as it should be, so that the program never meets one.
namespace baize::data {

/// What is wrong, with file and line.
struct TableError : std::runtime_error {
  using std::runtime_error::runtime_error;
};

/// A line of a table: its cells by column, and where it stands.
struct Row {
  std::string place; ///< "work_kinds.tsv line 7"
  std::map<std::string, std::string> cells;
  const std::string& operator[](const std::string& column) const { return cells.at(column); }
};

/// Lines are parted by newlines, cells by tabs; a line that starts with # is a
/// comment; the first other line names the columns, which must be `columns`. No
/// cell is empty ("-" says nothing) and none starts or ends with a space.
std::vector<Row> read_table(const std::string& name, const std::string& text,
                            const std::vector<std::string>& columns);

/// C++ source that defines work_kinds(), measured_fields(), score_rules() and
/// reading_kinds() of baize/green/kinds.h. The argument is each file's text.
std::string work_kinds_source(const std::string& text);
std::string measured_fields_source(const std::string& text);
std::string roll_score_source(const std::string& text);

} // namespace baize::data
