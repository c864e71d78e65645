#pragma once

#include "tables.h"

// The checks and the C++ spellings that the three tables share.
namespace baize::data {

inline const std::string kNothing = "-";

/// A C++ string literal; nothing becomes "".
std::string literal(const std::string& cell);
/// The cell if it is lower-case letters, digits and underscores, starting with a letter.
const std::string& plain_name(const Row& row, const std::string& column);
const std::string& one_of(const Row& row, const std::string& column,
                          const std::vector<std::string>& allowed);
double number(const Row& row, const std::string& column);
int whole(const Row& row, const std::string& column);

/// The ValueRule of a row with the columns type, unit, lowest, highest and
/// words. Words need an array of their own, which is added to `arrays` under `array`.
std::string value_rule(const Row& row, const std::string& array, std::string& arrays);

/// Opening and closing lines of a generated file.
std::string opening(const std::string& table);
std::string closing();

} // namespace baize::data
