#include "baize/sheets/csv.h"

#include <algorithm>
#include <array>

namespace baize::sheets {

CsvReader::CsvReader(std::string_view content, char delimiter)
    : content_(content), delimiter_(delimiter), at_(byte_order_mark(content)) {}

bool CsvReader::at_line_end() const {
  return content_[at_] == '\n' ||
         (content_[at_] == '\r' && at_ + 1 < content_.size() && content_[at_ + 1] == '\n');
}

void CsvReader::take_line_end(CsvRow& row) {
  row.end = at_;
  if (at_ < content_.size()) {
    at_ += content_[at_] == '\r' ? 2 : 1;
    ++line_;
  }
  row.next = at_;
}

void CsvReader::fail(const char* code, std::size_t from, const char* rule, int line) {
  constexpr std::size_t kShown = 24;
  std::size_t length = 0;
  while (
      from + length < content_.size() && content_[from + length] != '\n' &&
      content_[from + length] != '\r' &&
      (length < kShown || (static_cast<unsigned char>(content_[from + length]) & 0xC0U) == 0x80U)) {
    ++length;
  }
  problem_ = {code, "cell", std::string(content_.substr(from, length)), rule, {}};
  problem_line_ = line;
}

bool CsvReader::quoted_cell(CsvRow& row) {
  const std::size_t open = at_;
  const int open_line = line_;
  std::string* text = nullptr; // needed only once a doubled quote is met
  std::size_t from = open + 1;
  std::size_t look = from;
  while (true) {
    const std::size_t quote = content_.find('"', look);
    if (quote == std::string_view::npos) {
      fail("quote_not_closed", open, "closed by a quote of its own before the file ends",
           open_line);
      at_ = content_.size();
      return false;
    }
    for (std::size_t i = look; i < quote; ++i) {
      line_ += content_[i] == '\n' ? 1 : 0;
    }
    if (quote + 1 < content_.size() && content_[quote + 1] == '"') {
      if (text == nullptr) {
        text = &row.unquoted.emplace_back();
      }
      text->append(content_.substr(from, quote + 1 - from));
      from = look = quote + 2;
      continue;
    }
    at_ = quote + 1;
    std::string_view meant = content_.substr(from, quote - from);
    if (text != nullptr) {
      text->append(meant);
      meant = *text;
    }
    row.cells.push_back({content_.substr(open, at_ - open), meant, true});
    break;
  }
  if (at_ < content_.size() && content_[at_] != delimiter_ && !at_line_end()) {
    fail("text_after_quote", open, "followed by the delimiter or the line's end after its quote",
         open_line);
    return false;
  }
  return true;
}

bool CsvReader::plain_cell(CsvRow& row) {
  const std::size_t open = at_;
  while (at_ < content_.size() && content_[at_] != delimiter_ && content_[at_] != '\n') {
    if (content_[at_] == '\r') {
      if (at_line_end()) {
        break;
      }
      fail("stray_carriage_return", open, "free of a carriage return that ends no line", line_);
      return false;
    }
    ++at_;
  }
  const std::string_view text = content_.substr(open, at_ - open);
  row.cells.push_back({text, text, false});
  return true;
}

CsvReader::Step CsvReader::next(CsvRow& row) {
  row.cells.clear();
  row.unquoted.clear();
  if (at_ >= content_.size()) {
    return Step::end;
  }
  row.begin = at_;
  row.line = line_;
  while (true) {
    const bool quoted = at_ < content_.size() && content_[at_] == '"';
    if (!(quoted ? quoted_cell(row) : plain_cell(row))) {
      // Go on with the next line, so that one slip hides no other.
      at_ = std::min(content_.find('\n', at_), content_.size());
      take_line_end(row);
      return Step::problem;
    }
    if (at_ >= content_.size() || content_[at_] != delimiter_) {
      take_line_end(row);
      return Step::row;
    }
    ++at_;
  }
}

units::Result<char> find_delimiter(std::string_view content) {
  constexpr std::array<char, 3> kKnown{',', ';', '\t'};
  std::array<bool, 3> seen{};
  bool quoted = false;
  for (const char c : content.substr(byte_order_mark(content))) {
    quoted = quoted != (c == '"');
    if (quoted) {
      continue;
    }
    if (c == '\n') {
      break;
    }
    for (std::size_t i = 0; i < kKnown.size(); ++i) {
      seen[i] = seen[i] || c == kKnown[i];
    }
  }
  char found = ',';
  int kinds = 0;
  for (std::size_t i = 0; i < kKnown.size(); ++i) {
    found = seen[i] ? kKnown[i] : found;
    kinds += seen[i] ? 1 : 0;
  }
  if (kinds > 1) {
    return units::refuse("mixed_delimiters", "header line", "several delimiters",
                         "divided by commas, by semicolons or by tabs only");
  }
  return found;
}

std::string csv_cell(std::string_view text, char delimiter) {
  const bool spaced = !text.empty() && (text.front() == ' ' || text.front() == '\t' ||
                                        text.back() == ' ' || text.back() == '\t');
  const std::array<char, 4> special{delimiter, '"', '\n', '\r'};
  if (!spaced && text.find_first_of(std::string_view(special.data(), special.size())) ==
                     std::string_view::npos) {
    return std::string(text);
  }
  std::string quoted = "\"";
  for (const char c : text) {
    quoted += c;
    if (c == '"') {
      quoted += c;
    }
  }
  return quoted + '"';
}

} // namespace baize::sheets
