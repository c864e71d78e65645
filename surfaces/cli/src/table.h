#pragma once

#include "session.h"

#include <string>
#include <vector>

namespace baize::cli {

/// A column. The unit stands in the header: "depth (points)", and in CSV
/// "depth_points". Lengths take the unit that the user chose.
struct Column {
  std::string name;
  std::string unit;
  bool left = false; ///< words stand left, numbers right
};
Column words(std::string name);
Column number(std::string name, std::string unit = {});
Column length(const Session& session, std::string name);
/// For an error or a difference: inches where lengths are in feet.
Column small_length(const Session& session, std::string name);

/// What a person reads and what a program reads; both empty where not measured.
struct Cell {
  std::string shown;
  std::string exact;
};
Cell cell(std::string text);
Cell cell(const char* text);
Cell cell(int value);
Cell cell(units::Day day);
Cell cell(const std::optional<units::Day>& day);
Cell cell(const Session& session, const std::optional<double>& value, int places);
Cell length_cell(const Session& session, const std::optional<double>& metres);
Cell small_length_cell(const Session& session, const std::optional<double>& metres);
Cell yes_no(bool value);

class Table {
 public:
  explicit Table(std::vector<Column> columns) : columns_(std::move(columns)) {}
  void add(std::vector<Cell> row) { rows_.push_back(std::move(row)); }
  bool empty() const { return rows_.empty(); }
  /// Aligned, two blanks between columns. Nothing measured is a dash.
  void print(std::ostream& out) const;
  /// RFC 4180; semicolons where the decimal mark is a comma.
  void print_csv(std::ostream& out, char delimiter) const;
  /// As the session asks: table or CSV.
  void print(const Session& session) const;

 private:
  std::vector<Column> columns_;
  std::vector<std::vector<Cell>> rows_;
};

/// "10'2\"", "3.10 m" ... in the unit that the user chose.
std::string shown_length(const Session& session, double metres);
/// "1.6 in", "4.1 cm", "0.041 m".
std::string shown_small(const Session& session, double metres);
/// The number of characters a text takes on the screen (one for each UTF-8 code point).
std::size_t width(std::string_view text);

} // namespace baize::cli
