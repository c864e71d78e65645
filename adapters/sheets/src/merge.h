#pragma once

#include "manner.h"
#include "table.h"

#include <algorithm>
#include <limits>
#include <map>
#include <unordered_map>
#include <unordered_set>

namespace baize::sheets {

enum class Fate { keep, change, drop };

/// What is to become of a received file's rows.
template <class Row> struct Changes {
  std::vector<Fate> fates; ///< of each record that the file holds rows of
  std::unordered_map<std::size_t, std::vector<Row>> changed; ///< its rows as they should be
  std::vector<Row> added;
  /// Where each record and each added row belongs, when their order has changed; else empty.
  std::vector<std::size_t> positions;
  std::vector<std::size_t> added_positions;

  bool none() const {
    return added.empty() && positions.empty() &&
           std::all_of(fates.begin(), fates.end(), [](Fate f) { return f == Fate::keep; });
  }
};

/// Writes rows in a layout, with more columns behind it where they need them.
template <class Row> class RowWriter {
 public:
  explicit RowWriter(const Layout& layout) : layout_(layout), columns_(columns<Row>()) {
    for (const LayoutColumn& column : layout.columns) {
      if (column.heading >= 0) {
        there_.insert(static_cast<std::size_t>(column.heading));
      }
    }
  }

  /// Adds the columns that this row needs and the layout lacks.
  void make_room(const Row& row) {
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      const bool needed = !there_.contains(i) && !cell_text(row, columns_[i], {}).empty() &&
                          !goes_without_saying(row, columns_[i].name, has_marks());
      if (needed) {
        there_.insert(i);
        added_.push_back(i);
      }
    }
  }

  std::string header_end() const {
    std::string text;
    for (const std::size_t i : added_) {
      text += layout_.delimiter + header_name(headings(columns_)[i]);
    }
    return text;
  }

  /// The cells of the added columns, for a row that says nothing there.
  std::string empty_end() const { return std::string(added_.size(), layout_.delimiter); }

  /// The row's cells; those that `old` says already keep their very bytes.
  std::string line(const Row& row, const Row* old, const CsvRow* bytes) const {
    std::string text;
    for (std::size_t i = 0; i < layout_.columns.size(); ++i) {
      const LayoutColumn& column = layout_.columns[i];
      text += i == 0 ? "" : std::string(1, layout_.delimiter);
      if (column.heading < 0) {
        continue;
      }
      const Column<Row>& meant = columns_[static_cast<std::size_t>(column.heading)];
      const bool kept = old != nullptr && same_cell(row, *old, meant);
      text += kept ? std::string(bytes->cells[i].raw) : cell(row, meant, column.style);
    }
    for (const std::size_t i : added_) {
      text += layout_.delimiter + cell(row, columns_[i], {});
    }
    return text;
  }

 private:
  bool has_marks() const {
    return std::any_of(there_.begin(), there_.end(), [&](std::size_t i) {
      const std::string& name = columns_[i].name;
      return name == "bobbles" || name == "chatters" || name == "snakes";
    });
  }

  std::string cell(const Row& row, const Column<Row>& column, CellStyle style) const {
    style.decimal = layout_.decimal_to_write();
    return csv_cell(cell_text(row, column, style), layout_.delimiter);
  }

  const Layout& layout_;
  const std::vector<Column<Row>>& columns_;
  std::unordered_set<std::size_t> there_;
  std::vector<std::size_t> added_;
};

/// A file that did not exist before: every column that some row needs.
template <class Row> std::string fresh_file(const std::vector<Row>& rows) {
  const std::vector<Column<Row>>& all = columns<Row>();
  std::vector<bool> used(all.size(), false);
  for (std::size_t i = 0; i < all.size(); ++i) {
    used[i] = all[i].need != Need::free ||
              std::any_of(rows.begin(), rows.end(),
                          [&](const Row& row) { return !cell_text(row, all[i], {}).empty(); });
  }
  Layout layout = canonical_layout(headings(all));
  std::erase_if(layout.columns, [&](const LayoutColumn& column) {
    return !used[static_cast<std::size_t>(column.heading)];
  });
  std::string text;
  for (const LayoutColumn& column : layout.columns) {
    text += (text.empty() ? "" : ",") + column.name;
  }
  text += '\n';
  const RowWriter<Row> writer(layout);
  for (const Row& row : rows) {
    text += writer.line(row, nullptr, nullptr) + '\n';
  }
  return text;
}

/// Carries changes into a received file. Rows that say the same, and cells that
/// do, keep their bytes; so does everything between the rows.
template <class Row> class Merge {
 public:
  Merge(const services::ReceivedFile& file, const std::vector<std::size_t>& owners,
        Changes<Row> changes)
      : file_(file), owners_(owners), changes_(std::move(changes)), table_(file, findings_),
        writer_(table_.layout()) {}

  std::string text() {
    if (changes_.none()) {
      return file_.content;
    }
    for (const auto& [owner, rows] : changes_.changed) {
      make_room(rows);
    }
    make_room(changes_.added);
    const CsvRow& cells = table_.cells();
    std::string head = file_.content.substr(0, cells.end) + writer_.header_end();
    head += line_end(cells);
    old_rows();
    return head + joined();
  }

 private:
  void make_room(const std::vector<Row>& rows) {
    for (const Row& row : rows) {
      writer_.make_room(row);
    }
  }

  std::string line_end(const CsvRow& cells) const {
    return cells.next > cells.end ? file_.content.substr(cells.end, cells.next - cells.end)
                                  : table_.layout().line_end;
  }

  /// `open`: the text ends in the middle of a line, which only matters when
  /// more follows.
  void put(std::size_t position, const std::string& text, bool open = false) {
    if (!changes_.positions.empty()) {
      pieces_.emplace_back(position, open ? text + table_.layout().line_end : text);
    } else if (!text.empty()) {
      body_ += open_ ? table_.layout().line_end : "";
      body_ += text;
      open_ = open;
    }
  }

  std::size_t position(std::size_t owner) const {
    return changes_.positions.empty() ? 0 : changes_.positions[owner];
  }

  void old_rows() {
    const CsvRow& cells = table_.cells();
    const auto last = last_rows();
    std::size_t before = cells.next;
    std::size_t at = 0;
    for (Row row; table_.next(row); ++at) {
      const std::size_t owner = owners_[at];
      put(position(owner), file_.content.substr(before, cells.begin - before)); // blank lines
      before = cells.next;
      if (const auto line = new_line(row, owner)) {
        const std::string end = file_.content.substr(cells.end, cells.next - cells.end);
        put(position(owner), *line + end, end.empty());
      }
      const auto end = last.find(owner);
      if (end != last.end() && end->second == at) {
        put_rest(owner); // beside the record's other rows
      }
    }
    const std::string tail = file_.content.substr(before);
    put(std::numeric_limits<std::size_t>::max(), tail, !tail.empty() && tail.back() != '\n');
    for (const std::size_t owner : changed_owners()) {
      put_rest(owner);
    }
    for (std::size_t i = 0; i < changes_.added.size(); ++i) {
      put(changes_.positions.empty() ? 0 : changes_.added_positions[i], new_row(changes_.added[i]));
    }
  }

  /// The last row that the file has of each changed record.
  std::unordered_map<std::size_t, std::size_t> last_rows() const {
    std::unordered_map<std::size_t, std::size_t> last;
    for (std::size_t at = 0; at < owners_.size(); ++at) {
      if (changes_.fates[owners_[at]] == Fate::change) {
        last[owners_[at]] = at;
      }
    }
    return last;
  }

  /// Rows of a changed record that the file did not have.
  void put_rest(std::size_t owner) {
    std::vector<Row>& rows = changes_.changed[owner];
    for (const Row& row : rows) {
      put(position(owner), new_row(row));
    }
    rows.clear();
  }

  std::vector<std::size_t> changed_owners() const {
    std::vector<std::size_t> all;
    all.reserve(changes_.changed.size());
    for (const auto& [owner, rows] : changes_.changed) {
      all.push_back(owner);
    }
    std::sort(all.begin(), all.end());
    return all;
  }

  std::string new_row(const Row& row) const {
    return writer_.line(row, nullptr, nullptr) + table_.layout().line_end;
  }

  std::optional<std::string> new_line(const Row& old, std::size_t owner) {
    const CsvRow& cells = table_.cells();
    const Fate fate = changes_.fates[owner];
    std::string kept =
        file_.content.substr(cells.begin, cells.end - cells.begin) + writer_.empty_end();
    if (fate == Fate::keep) {
      return kept;
    }
    if (fate == Fate::drop) {
      return std::nullopt;
    }
    std::vector<Row>& rows = changes_.changed[owner];
    const auto found = std::find_if(rows.begin(), rows.end(),
                                    [&](const Row& row) { return same_place(row, old); });
    if (found == rows.end()) {
      return std::nullopt;
    }
    Row row = std::move(*found);
    rows.erase(found);
    in_manner_of(old, row, begun_.insert(owner).second);
    return same_cells(row, old, columns<Row>()) ? kept : writer_.line(row, &old, &cells);
  }

  std::string joined() {
    std::map<std::size_t, std::string> by_position;
    for (const auto& [position, text] : pieces_) {
      by_position[position] += text;
    }
    for (const auto& [position, text] : by_position) {
      body_ += text;
    }
    return std::move(body_);
  }

  const services::ReceivedFile& file_;
  const std::vector<std::size_t>& owners_;
  Changes<Row> changes_;
  Findings findings_;
  TableReader<Row> table_;
  RowWriter<Row> writer_;
  std::unordered_set<std::size_t> begun_;
  std::string body_;
  bool open_ = false;
  std::vector<std::pair<std::size_t, std::string>> pieces_;
};

} // namespace baize::sheets
