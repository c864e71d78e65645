#include "table.h"

#include <algorithm>

namespace baize::sheets {

std::string_view without_spaces(std::string_view text) {
  constexpr std::string_view kSpaces = " \t";
  const auto first = text.find_first_not_of(kSpaces);
  return first == std::string_view::npos
             ? std::string_view()
             : text.substr(first, text.find_last_not_of(kSpaces) + 1 - first);
}

bool blank(const CsvRow& row) {
  return std::all_of(row.cells.begin(), row.cells.end(),
                     [](const CsvCell& cell) { return without_spaces(cell.text).empty(); });
}

std::optional<Layout> open_table(const services::ReceivedFile& file, CsvRow& header,
                                 const std::vector<Heading>& headings, Findings& findings) {
  if (auto problem = text_problem(file.content)) {
    findings.problem(std::move(*problem), {file.name, 0, {}});
    return std::nullopt;
  }
  const auto delimiter = find_delimiter(file.content);
  if (!delimiter) {
    findings.problem(delimiter.error(), {file.name, 1, {}});
    return std::nullopt;
  }
  CsvReader reader(file.content, *delimiter);
  const CsvReader::Step step = reader.next(header);
  if (step == CsvReader::Step::problem) {
    findings.problem(reader.problem(), {file.name, reader.problem_line(), {}});
    return std::nullopt;
  }
  if (step == CsvReader::Step::end || blank(header)) {
    findings.problem(
        {"no_header_line", "header line", {}, "the first line, with a name for each column", {}},
        {file.name, 1, {}});
    return std::nullopt;
  }
  return read_header(header, file.content, *delimiter, file.name, headings, findings);
}

bool next_row(CsvReader& reader, CsvRow& row, const Layout& layout, const std::string& file,
              std::size_t size, Findings& findings) {
  while (true) {
    switch (reader.next(row)) {
    case CsvReader::Step::end:
      return false;
    case CsvReader::Step::problem:
      findings.problem(reader.problem(), {file, reader.problem_line(), {}});
      continue;
    case CsvReader::Step::row:
      break;
    }
    if (blank(row)) {
      continue;
    }
    if (row.cells.size() == layout.columns.size()) {
      return true;
    }
    const bool cut_off =
        row.next == size && row.end == size && row.cells.size() < layout.columns.size();
    findings.problem({"wrong_number_of_cells",
                      "number of cells",
                      std::to_string(row.cells.size()),
                      std::to_string(layout.columns.size()) + ", as in the header line" +
                          (cut_off ? "; the file seems to be cut off here" : ""),
                      {}},
                     {file, row.line, {}});
  }
}

} // namespace baize::sheets
