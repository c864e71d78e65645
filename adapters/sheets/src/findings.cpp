#include "findings.h"

#include <utility>

namespace baize::sheets {
namespace {

std::vector<units::Problem> counted(std::vector<units::Problem> kept, std::size_t found,
                                    const char* field) {
  if (found > kept.size()) {
    kept.push_back({"too_many_to_list",
                    field,
                    std::to_string(found),
                    std::to_string(Findings::kMost) +
                        " at most to be listed one by one; the first " +
                        std::to_string(Findings::kMost) + " are",
                    {}});
  }
  return kept;
}

} // namespace

std::string shown(const Where& where) {
  std::string text = where.file;
  if (where.line > 0) {
    text += (text.empty() ? "line " : " line ") + std::to_string(where.line);
  }
  if (!where.column.empty()) {
    text += " column " + where.column;
  }
  return text;
}

void Findings::problem(units::Problem problem, const Where& where) {
  ++found_;
  ++by_file_[where.file];
  if (problems_.size() < kMost) {
    problem.place = shown(where) + (problem.place.empty() ? "" : " " + problem.place);
    problems_.push_back(std::move(problem));
  }
}

void Findings::remark(units::Problem remark, const Where& where) {
  ++remarked_;
  if (remarks_.size() < kMost) {
    remark.place = shown(where);
    remarks_.push_back(std::move(remark));
  }
}

int Findings::problems_of(std::string_view file) const {
  const auto found = by_file_.find(file);
  return found == by_file_.end() ? 0 : found->second;
}

std::vector<units::Problem> Findings::problems() const {
  return counted(problems_, found_, "number of problems");
}

std::vector<units::Problem> Findings::remarks() const {
  return counted(remarks_, remarked_, "number of remarks");
}

} // namespace baize::sheets
