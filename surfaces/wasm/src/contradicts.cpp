#include "answers.h"
#include "baize/green/roll_score.h"
#include "baize/green/validate.h"
#include "rolls.h"

namespace baize::wasm {

Answer contradicts(const Read& takes) {
  Reader reader(takes);
  green::Run run;
  green::Roll& roll = run.rolls.emplace_back();
  roll.marks = read_marks(reader, "marks");
  roll.score = reader.whole("score");
  if (reader.problem()) {
    return reader.refusal();
  }
  Json gives = Json::object();
  gives["contradicts"] = false;
  gives["remark"] = nullptr;
  if (!roll.marks && !roll.score) {
    return gives;
  }
  if (const auto problem = run_problem(run)) {
    return units::Refusal(*problem);
  }
  gives["contradicts"] = green::contradicts(roll);
  green::Visit visit;
  visit.runs = {run};
  for (units::Problem& remark : green::remarks(visit)) {
    remark.place.clear(); // one roll alone: the reader is looking at it
    gives["remark"] = units::remark_sentence(remark);
  }
  return gives;
}

} // namespace baize::wasm
