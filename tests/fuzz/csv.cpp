// Any bytes as comma-separated values: the rows cover the file without gap or
// overlap, and cells that are written again read as they did.
#include "baize/sheets/csv.h"

#include <cstdint>
#include <cstdlib>

namespace {

using namespace baize::sheets;

void want(bool good) {
  if (!good) {
    std::abort();
  }
}

void cells_read_as_written(const CsvRow& row, char delimiter) {
  std::string line;
  for (std::size_t i = 0; i < row.cells.size(); ++i) {
    line += (i == 0 ? "" : std::string(1, delimiter)) + csv_cell(row.cells[i].text, delimiter);
  }
  // Text that looks like a byte order mark would be passed over at the start.
  const std::string text = "first\n" + line + "\n";
  CsvReader reader(text, delimiter);
  CsvRow again;
  want(reader.next(again) == CsvReader::Step::row && reader.next(again) == CsvReader::Step::row);
  want(again.cells.size() == row.cells.size());
  for (std::size_t i = 0; i < row.cells.size(); ++i) {
    want(again.cells[i].text == row.cells[i].text);
  }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view content(reinterpret_cast<const char*>(data), size);
  const auto delimiter = find_delimiter(content);
  if (text_problem(content) || !delimiter) {
    return 0;
  }
  CsvReader reader(content, *delimiter);
  CsvRow row;
  std::size_t at = byte_order_mark(content);
  int line = 1;
  for (auto step = reader.next(row); step != CsvReader::Step::end; step = reader.next(row)) {
    want(row.begin == at && row.line == line && row.next >= row.end && row.end >= row.begin);
    for (; at < row.next; ++at) {
      line += content[at] == '\n' ? 1 : 0;
    }
    if (step == CsvReader::Step::row) {
      cells_read_as_written(row, *delimiter);
    } else {
      want(!reader.problem().code.empty() && reader.problem_line() >= row.line);
    }
  }
  want(at == content.size());
  return 0;
}
