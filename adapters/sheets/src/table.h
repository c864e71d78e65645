#pragma once

#include "baize/services/store_port.h"
#include "columns.h"

#include <array>

namespace baize::sheets {

/// Opens a file as text and reads its header line. Absent, with the reason
/// among the problems, where that cannot be done.
std::optional<Layout> open_table(const services::ReceivedFile& file, CsvRow& header,
                                 const std::vector<Heading>& headings, Findings& findings);

/// Reads the next row that is not blank; rows that are no rows become problems.
/// False at the end.
bool next_row(CsvReader& reader, CsvRow& row, const Layout& layout, const std::string& file,
              std::size_t size, Findings& findings);

/// Nothing but empty cells, as spreadsheets leave them at the end.
bool blank(const CsvRow& row);

std::string_view without_spaces(std::string_view text);

/// Goes through the rows of one file.
template <class Row> class TableReader {
 public:
  TableReader(const services::ReceivedFile& file, Findings& findings)
      : file_(file), findings_(findings), columns_(columns<Row>()), reader_({}, ',') {
    if (auto layout = open_table(file, cells_, headings(columns_), findings)) {
      layout_ = std::move(*layout);
      open_ = true;
      reader_ = CsvReader(file.content, layout_.delimiter);
      reader_.next(cells_); // the header line, read once already
    }
  }

  bool open() const { return open_; }
  const Layout& layout() const { return layout_; }
  /// The row's cells; the header's before the first row.
  const CsvRow& cells() const { return cells_; }
  /// Did every cell of the last row hold what its column wants?
  bool good() const { return good_; }

  bool next(Row& row) {
    if (!open_ ||
        !next_row(reader_, cells_, layout_, file_.name, file_.content.size(), findings_)) {
      return false;
    }
    row = Row{};
    good_ = true;
    for (std::size_t i = 0; i < cells_.cells.size(); ++i) {
      take(cells_.cells[i], layout_.columns[i], row);
    }
    for (const LayoutColumn& column : layout_.columns) {
      want(column, row);
    }
    return true;
  }

  Where where(const std::string& column = {}) const { return {file_.name, cells_.line, column}; }

 private:
  void bad(units::Problem problem, const LayoutColumn& column) {
    good_ = false;
    findings_.problem(std::move(problem), where(column.name));
  }

  void take(const CsvCell& cell, const LayoutColumn& column, Row& row) {
    const std::string_view bare = without_spaces(cell.text);
    if (bare.empty()) {
      return;
    }
    if (column.heading < 0) {
      bad({"cell_without_column", "cell", std::string(bare), "under a column with a name", {}},
          column);
      return;
    }
    const Column<Row>& meant = columns_[static_cast<std::size_t>(column.heading)];
    with_member(row, meant.member, [&](auto& held) {
      using Held = std::decay_t<decltype(held)>;
      if constexpr (std::is_same_v<Held, std::string>) {
        held = cell.quoted ? cell.text : bare;
      } else if constexpr (std::is_same_v<Held, std::optional<std::string>>) {
        held = std::string(cell.quoted ? cell.text : bare);
      } else if constexpr (std::is_same_v<Held, ParameterColumn>) {
        take_parameter(bare, column, held, row);
      } else if constexpr (IsOptional<Held>::value) {
        take_value(bare, column, meant, static_cast<typename Held::value_type*>(nullptr), held);
      } else {
        take_value(bare, column, meant, static_cast<Held*>(nullptr), held);
      }
    });
  }

  template <class Tag, class Held>
  void take_value(std::string_view text, const LayoutColumn& column, const Column<Row>& meant,
                  const Tag* tag, Held& held) {
    constexpr bool kDecimal = std::is_same_v<Tag, double> || std::is_same_v<Tag, units::Length> ||
                              std::is_same_v<Tag, std::vector<double>>;
    CellStyle style = column.style;
    if constexpr (kDecimal) {
      if (!decimal(text, column, style)) {
        return;
      }
    }
    auto value = read_value(text, style, tag);
    if (value) {
      held = std::move(*value);
      return;
    }
    value.error().field = meant.name;
    bad(std::move(value.error()), column);
  }

  void take_parameter(std::string_view text, const LayoutColumn& column,
                      const ParameterColumn& named, Row& row) {
    if constexpr (requires { row.parameters; }) {
      green::Parameter parameter{named.name, std::nullopt, {}};
      if (named.word) {
        parameter.word = text;
      } else {
        const Column<Row>& meant = columns_[static_cast<std::size_t>(column.heading)];
        take_value(text, column, meant, static_cast<double*>(nullptr), parameter.number);
        if (!parameter.number) {
          return;
        }
      }
      row.parameters.push_back(std::move(parameter));
    }
  }

  bool decimal(std::string_view text, const LayoutColumn& column, CellStyle& style) {
    if (!settle_decimal(text, layout_, where(column.name), findings_)) {
      good_ = false;
      return false;
    }
    style.decimal = layout_.decimal == 0 ? '.' : layout_.decimal;
    if (layout_.decimal_mixed && text.find(style.decimal) == std::string_view::npos) {
      style.decimal = style.decimal == '.' ? ',' : '.'; // told once; the rest is read as meant
    }
    return true;
  }

  /// A cell that every row must have.
  void want(const LayoutColumn& column, const Row& row) {
    if (column.heading < 0 || !good_) {
      return;
    }
    const Column<Row>& meant = columns_[static_cast<std::size_t>(column.heading)];
    if (meant.need != Need::cell) {
      return;
    }
    const bool there = with_member(row, meant.member, [](const auto& held) {
      if constexpr (std::is_same_v<std::decay_t<decltype(held)>, ParameterColumn>) {
        return true;
      } else {
        return present(held);
      }
    });
    if (!there) {
      bad({"cell_missing", meant.name, {}, "given in every row", {}}, column);
    }
  }

  const services::ReceivedFile& file_;
  Findings& findings_;
  const std::vector<Column<Row>>& columns_;
  CsvReader reader_;
  CsvRow cells_;
  Layout layout_;
  bool open_ = false;
  bool good_ = true;
};

} // namespace baize::sheets
