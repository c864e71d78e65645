#include "rolls.h"

#include "baize/green/validate.h"

namespace baize::wasm {

namespace {

std::string numbered(const std::string& what, std::size_t place) {
  return what + " " + std::to_string(place + 1);
}

green::Mark read_mark(Reader& reader) {
  green::Mark mark;
  const std::string kind = reader.need_word("kind", {"bobble", "chatter", "snake"});
  mark.kind = green::find_mark_kind(kind).value_or(green::MarkKind::bobble);
  mark.seconds = reader.number("seconds");
  return mark;
}

green::Roll read_roll(Reader& reader, int place) {
  green::Roll roll;
  roll.order = reader.whole("order").value_or(place);
  if (const auto metres = reader.number("distance")) {
    roll.distance = units::from_metres(*metres);
  }
  roll.marks = read_marks(reader, "marks");
  roll.score = reader.whole("score");
  return roll;
}

/// A visit of this run alone: enough for the rules of runs, rolls and marks.
green::Visit visit_of(const green::Run& run) {
  green::Visit visit;
  visit.id = "run";
  visit.green = "green";
  visit.runs = {run};
  return visit;
}

} // namespace

std::optional<std::vector<green::Mark>> read_marks(Reader& reader, const char* field) {
  const Read* list = reader.list(field);
  if (list == nullptr) {
    return std::nullopt;
  }
  std::vector<green::Mark> marks;
  for (std::size_t i = 0; i < list->size() && !reader.problem(); ++i) {
    Reader one((*list)[i], numbered(field, i));
    marks.push_back(read_mark(one));
    reader.join(one);
  }
  return marks;
}

std::vector<green::Roll> read_rolls(Reader& reader, const char* field) {
  std::vector<green::Roll> rolls;
  const Read* list = reader.list(field);
  for (std::size_t i = 0; list != nullptr && i < list->size() && !reader.problem(); ++i) {
    Reader one((*list)[i], numbered(field, i));
    green::Roll roll = read_roll(one, static_cast<int>(i) + 1);
    reader.join(one);
    if (roll.distance || roll.marks || roll.score) {
      rolls.push_back(std::move(roll));
    }
  }
  return rolls;
}

std::optional<units::Problem> run_problem(const green::Run& run) {
  if (run.rolls.empty() && !run.total && !run.total_of) {
    return std::nullopt;
  }
  auto problems = green::validate(visit_of(run), units::Day{});
  return problems.empty() ? std::nullopt : std::optional(std::move(problems.front()));
}

std::vector<std::string> run_remarks(const green::Run& run) {
  std::vector<std::string> sentences;
  for (const units::Problem& remark : green::remarks(visit_of(run))) {
    sentences.push_back(units::remark_sentence(remark));
  }
  return sentences;
}

} // namespace baize::wasm
