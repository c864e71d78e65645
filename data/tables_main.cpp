// baize_tables IN OUT: reads the three tables in folder IN, writes one C++
// source for each into folder OUT.
#include "tables.h"

#include <exception>
#include <fstream>
#include <iostream>
#include <sstream>

namespace {

std::string text_of(const std::string& file) {
  std::ifstream in(file, std::ios::binary);
  std::ostringstream out;
  out << in.rdbuf();
  if (!in || !out) {
    throw baize::data::TableError(file + " cannot be read");
  }
  return out.str();
}

void write(const std::string& file, const std::string& text) {
  std::ofstream out(file, std::ios::binary);
  out << text;
  out.close();
  if (!out) {
    throw baize::data::TableError(file + " cannot be written");
  }
}

} // namespace

int main(int count, char** arguments) {
  if (count != 3) {
    std::cerr << "usage: baize_tables IN OUT\n";
    return 2;
  }
  const std::string in = std::string(arguments[1]) + "/";
  const std::string out = std::string(arguments[2]) + "/";
  try {
    // All are read and checked before any is written.
    const auto kinds = baize::data::work_kinds_source(text_of(in + "work_kinds.tsv"));
    const auto fields = baize::data::measured_fields_source(text_of(in + "measured_fields.tsv"));
    const auto score = baize::data::roll_score_source(text_of(in + "roll_score.tsv"));
    write(out + "work_kinds.cpp", kinds);
    write(out + "measured_fields.cpp", fields);
    write(out + "roll_score_rules.cpp", score);
  } catch (const std::exception& error) {
    std::cerr << error.what() << '\n';
    return 1;
  }
  return 0;
}
