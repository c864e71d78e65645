#pragma once

#include "baize/units/problem.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace baize::weather_files {

/// What makes the bytes no text of ours: "not_text" or "file_too_large".
std::optional<units::Problem> bytes_problem(std::string_view content);

/// Goes through the lines without copying them. A UTF-8 byte order mark at the
/// start and a carriage return at a line's end are no part of the line.
class Lines {
 public:
  explicit Lines(std::string_view content);
  /// False at the end.
  bool next();
  std::string_view line() const { return line_; }
  int number() const { return number_; }     ///< 1-based
  bool ended() const { return line_ended_; } ///< by a line end, not by the end of the file

 private:
  std::string_view rest_;
  std::string_view line_;
  int number_ = 0;
  bool line_ended_ = true;
};

bool blank(std::string_view text);
std::string_view trim(std::string_view text);
/// ASCII letters only; other bytes stay.
std::string lower(std::string_view text);
/// For showing a foreign text in a message: at most 60 bytes, control bytes as '?'.
std::string clipped(std::string_view text);

/// Cells of a line, trimmed. Double quotes hold a delimiter inside a cell; with
/// a space as delimiter, cells stand apart by any run of blanks.
void split(std::string_view line, char delimiter, std::vector<std::string>& cells);
std::vector<std::string> split(std::string_view line, char delimiter);

} // namespace baize::weather_files
