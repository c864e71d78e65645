#pragma once

#include "baize/units/problem.h"

#include <cstddef>
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace baize::sheets {

/// A larger file is refused unread: some four million rolls.
inline constexpr std::size_t kLargestFile = std::size_t{128} << 20U;

/// Why a file cannot be read as text at all, with the place of the first bad
/// byte: "too_large", "not_utf8". A UTF-8 byte order mark is no fault.
std::optional<units::Problem> text_problem(std::string_view content);

/// One cell of a row.
struct CsvCell {
  std::string_view raw;  ///< as it stands in the file, quotes and all
  std::string_view text; ///< as it is meant: no quotes around, doubled ones single
  bool quoted = false;
};

/// One row. Its views hold as long as the row and the file do.
struct CsvRow {
  CsvRow() = default;
  CsvRow(const CsvRow&) = delete; // a copy's views would look into the original
  CsvRow& operator=(const CsvRow&) = delete;

  std::vector<CsvCell> cells;
  std::size_t begin = 0;            ///< first byte in the file
  std::size_t end = 0;              ///< one past the last byte, line end left out
  std::size_t next = 0;             ///< one past the line end
  int line = 1;                     ///< line where the row begins, from 1
  std::deque<std::string> unquoted; ///< keeps the texts that differ from their bytes
};

/// Reads comma-separated values as RFC 4180 describes them, with the delimiter
/// that is given, line ends CRLF or LF, and quotes around a cell only. A quote
/// inside an unquoted cell stands for itself, because 9'6" is a way to write a
/// length. A byte order mark at the start is passed over.
class CsvReader {
 public:
  CsvReader(std::string_view content, char delimiter);

  enum class Step { row, problem, end };
  /// The next row; or why it cannot be read ("quote_not_closed",
  /// "text_after_quote", "stray_carriage_return"), after which reading goes on
  /// with the next line, or ends where a quote was never closed.
  Step next(CsvRow& row);
  /// Of the last step that was a problem; its place holds the line only.
  const units::Problem& problem() const { return problem_; }
  /// Line of the problem.
  int problem_line() const { return problem_line_; }

 private:
  bool quoted_cell(CsvRow& row);
  bool plain_cell(CsvRow& row);
  bool at_line_end() const;
  void take_line_end(CsvRow& row);
  void fail(const char* code, std::size_t from, const char* rule, int line);

  std::string_view content_;
  char delimiter_;
  std::size_t at_ = 0;
  int line_ = 1;
  units::Problem problem_;
  int problem_line_ = 0;
};

/// The delimiter of a header line: the one of comma, semicolon and tab that
/// stands in it outside quotes; a comma where none does. Refuses
/// "mixed_delimiters" when there is more than one.
units::Result<char> find_delimiter(std::string_view content);

/// `text` as one cell, in quotes only where it needs them: when it holds the
/// delimiter, a quote or a line end, or begins or ends with a space.
std::string csv_cell(std::string_view text, char delimiter);

/// The length of a byte order mark at the start: 3 or 0.
std::size_t byte_order_mark(std::string_view content);

} // namespace baize::sheets
