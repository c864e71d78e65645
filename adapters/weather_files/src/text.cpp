#include "text.h"

#include <algorithm>
#include <cctype>

namespace baize::weather_files {

namespace {

constexpr std::size_t kLargestFile = std::size_t{64} * 1024 * 1024;
constexpr std::string_view kBlanks = " \t\r\v\f";

/// One quoted cell from just behind its opening quote; `at` ends behind the closing one.
std::string quoted(std::string_view line, std::size_t& at) {
  std::string cell;
  while (at < line.size()) {
    if (line[at] != '"') {
      cell += line[at++];
    } else if (at + 1 < line.size() && line[at + 1] == '"') {
      cell += '"';
      at += 2;
    } else {
      ++at;
      break;
    }
  }
  return cell;
}

void split_blanks(std::string_view line, std::vector<std::string>& cells) {
  std::size_t at = line.find_first_not_of(kBlanks);
  while (at != std::string_view::npos) {
    const std::size_t end = std::min(line.find_first_of(kBlanks, at), line.size());
    cells.emplace_back(line.substr(at, end - at));
    at = line.find_first_not_of(kBlanks, end);
  }
}

} // namespace

std::optional<units::Problem> bytes_problem(std::string_view content) {
  if (content.size() > kLargestFile) {
    return units::Problem{"file_too_large", "file", std::to_string(content.size()) + " bytes",
                          "at most 64 MB", ""};
  }
  if (content.starts_with("\xFF\xFE") || content.starts_with("\xFE\xFF")) {
    return units::Problem{"not_text", "file", "UTF-16",
                          "text in UTF-8; save it again with that encoding", ""};
  }
  if (content.find('\0') != std::string_view::npos) {
    return units::Problem{"not_text", "file", "bytes of value zero",
                          "text in UTF-8, not UTF-16 and not a workbook or archive", ""};
  }
  return std::nullopt;
}

Lines::Lines(std::string_view content) : rest_(content) {
  if (rest_.starts_with("\xEF\xBB\xBF")) {
    rest_.remove_prefix(3);
  }
}

bool Lines::next() {
  if (rest_.empty()) {
    return false;
  }
  const std::size_t end = rest_.find('\n');
  line_ended_ = end != std::string_view::npos;
  line_ = rest_.substr(0, end);
  rest_.remove_prefix(line_ended_ ? end + 1 : rest_.size());
  if (line_.ends_with('\r')) {
    line_.remove_suffix(1);
  }
  ++number_;
  return true;
}

bool blank(std::string_view text) {
  return text.find_first_not_of(kBlanks) == std::string_view::npos;
}

std::string_view trim(std::string_view text) {
  const std::size_t from = text.find_first_not_of(kBlanks);
  if (from == std::string_view::npos) {
    return {};
  }
  return text.substr(from, text.find_last_not_of(kBlanks) - from + 1);
}

std::string lower(std::string_view text) {
  std::string result(text);
  for (char& c : result) {
    if (c >= 'A' && c <= 'Z') {
      c = static_cast<char>(c - 'A' + 'a');
    }
  }
  return result;
}

std::string clipped(std::string_view text) {
  constexpr std::size_t kMost = 60;
  std::size_t most = std::min(text.size(), kMost);
  // Not through the middle of a UTF-8 letter.
  while (most < text.size() && most > 0 &&
         (static_cast<unsigned char>(text[most]) & 0xC0U) == 0x80U) {
    --most;
  }
  std::string result(text.substr(0, most));
  std::replace_if(
      result.begin(), result.end(),
      [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; }, '?');
  return most < text.size() ? result + "..." : result;
}

void split(std::string_view line, char delimiter, std::vector<std::string>& cells) {
  cells.clear();
  if (delimiter == ' ') {
    split_blanks(line, cells);
    return;
  }
  std::size_t at = 0;
  while (true) {
    const std::size_t text = std::min(line.find_first_not_of(' ', at), line.size());
    if (text < line.size() && line[text] == '"') {
      at = text + 1;
      std::string cell = quoted(line, at);
      const std::size_t end = std::min(line.find(delimiter, at), line.size());
      cell += line.substr(at, end - at); // anything behind the closing quote stays seen
      cells.emplace_back(trim(cell));
      at = end;
    } else {
      const std::size_t end = std::min(line.find(delimiter, at), line.size());
      cells.emplace_back(trim(line.substr(at, end - at)));
      at = end;
    }
    if (at >= line.size()) {
      return;
    }
    ++at;
  }
}

std::vector<std::string> split(std::string_view line, char delimiter) {
  std::vector<std::string> cells;
  split(line, delimiter, cells);
  return cells;
}

} // namespace baize::weather_files
