#include "answers.h"
#include "baize/green/validate.h"
#include "baize/journal/records.h"
#include "entries.h"

namespace baize::wasm {

namespace {

struct Findings {
  Json problems = Json::array();
  Json remarks = Json::array();

  void note(const std::vector<units::Problem>& found) {
    for (const units::Problem& one : found) {
      problems.push_back(problem_json(one));
    }
  }
  /// What no record can hold, else what no record may be.
  template <class Record> void check(const journal::Made<Record>& made, units::Day today) {
    if (made.removed) {
      return;
    }
    note(made.problems.empty() ? green::validate(made.record, today) : made.problems);
    if (made.conflicts > 0) {
      remarks.push_back("Phones say different things here (" + std::to_string(made.conflicts) +
                        "): choose which is right.");
    }
  }
};

} // namespace

Answer check_visit(const Read& takes) {
  Reader reader(takes);
  std::vector<journal::Entry> entries = read_entries(reader, "entries");
  const auto today = reader.need_day("today");
  if (reader.problem()) {
    return reader.refusal();
  }
  const journal::MadeRecords made = journal::records(journal::fold(std::move(entries)));
  Findings found;
  for (const journal::MadeVisit& visit : made.visits) {
    found.check(visit, today);
    if (!visit.removed) {
      for (const units::Problem& remark : green::remarks(visit.record)) {
        found.remarks.push_back(units::remark_sentence(remark));
      }
    }
  }
  for (const auto& reading : made.readings) {
    found.check(reading, today);
  }
  for (const auto& work : made.works) {
    found.check(work, today);
  }
  found.note(made.astray);
  Json gives = Json::object();
  gives["problems"] = std::move(found.problems);
  gives["remarks"] = std::move(found.remarks);
  return gives;
}

} // namespace baize::wasm
