#include "line_notes.h"

#include "text.h"

#include <utility>

namespace baize::weather_files {

namespace {
constexpr std::size_t kMostRuns = 1000;
}

void LineNotes::add(int line, const char* code, std::string_view field, std::string_view value,
                    std::string_view rule) {
  if (!runs_.empty()) {
    Run& last = runs_.back();
    const units::Problem& problem = last.problem;
    if (line <= last.last + 1 && problem.code == code && problem.field == field &&
        problem.rule == rule) {
      last.last = line;
      return;
    }
  }
  if (runs_.size() == kMostRuns) {
    ++more_;
    return;
  }
  runs_.push_back({line, line, {code, std::string(field), clipped(value), std::string(rule), ""}});
}

std::vector<units::Problem> LineNotes::take() {
  std::vector<units::Problem> result;
  result.reserve(runs_.size() + 1);
  for (Run& run : runs_) {
    run.problem.place = "line " + std::to_string(run.first);
    if (run.last != run.first) {
      run.problem.place += " to " + std::to_string(run.last);
      if (!run.problem.value.empty()) {
        run.problem.value += " (the first of them)";
      }
    }
    result.push_back(std::move(run.problem));
  }
  if (more_ > 0) {
    result.push_back({"more_lines", "file", std::to_string(more_) + " more lines like these",
                      "readable in every line", ""});
  }
  runs_.clear();
  more_ = 0;
  return result;
}

} // namespace baize::weather_files
