#include "answers.h"
#include "baize/green/kinds.h"
#include "baize/green/roll_score.h"
#include "rolls.h"

namespace baize::wasm {

Answer offer(const Read& takes) {
  Reader reader(takes);
  green::Run run;
  run.rolls.emplace_back();
  run.rolls.front().marks = read_marks(reader, "marks");
  if (reader.problem()) {
    return reader.refusal();
  }
  const auto& marks = run.rolls.front().marks;
  Json gives = Json::object();
  if (!marks) {
    // Not watched: nothing is suggested, and every score may stand.
    const green::MeasuredField* score = green::find_field("roll", "score");
    gives["score"] = nullptr;
    gives["lowest"] = static_cast<int>(score->rule.lowest);
    gives["highest"] = static_cast<int>(score->rule.highest);
    return gives;
  }
  if (const auto problem = run_problem(run)) {
    return units::Refusal(*problem);
  }
  const green::Offer offered = green::offer(green::count(*marks));
  gives["score"] = offered.score;
  gives["lowest"] = offered.lowest;
  gives["highest"] = offered.highest;
  return gives;
}

} // namespace baize::wasm
