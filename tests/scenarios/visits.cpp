#include "scenarios/cells.h"
#include "scenarios/records.h"

#include <algorithm>

namespace baize::scenarios {
namespace {

/// "8,8,9" as rolls, "25of3" as a total. False where it is neither.
bool read_scores(const std::string& text, green::Run& run) {
  if (const auto of = text.find("of"); of != std::string::npos) {
    const auto total = units::parse_whole(text.substr(0, of));
    const auto balls = units::parse_whole(text.substr(of + 2));
    if (!total || !balls) {
      return false;
    }
    run.total = *total;
    run.total_of = *balls;
    return true;
  }
  for (const std::string& part : split(text, ',')) {
    const auto score = units::parse_whole(part);
    if (!score) {
      return false;
    }
    green::Roll roll;
    roll.order = static_cast<int>(run.rolls.size()) + 1;
    roll.score = *score;
    run.rolls.push_back(roll);
  }
  return !run.rolls.empty();
}

} // namespace

std::optional<units::Problem> Builder::runs(const Row& row, green::Visit& visit) {
  Cells cells(row, file_);
  std::string spot = visit.half.empty() ? "main" : visit.half;
  for (const std::string& part : split(row.text("scores"), '/')) {
    const auto named = split(part, ':');
    spot = named.size() > 1 ? named.front() : spot;
    green::Run run;
    run.spot = spot;
    const auto made = std::count_if(visit.runs.begin(), visit.runs.end(),
                                    [&](const green::Run& r) { return r.spot == spot; });
    run.direction = made == 0 ? green::Direction::out : green::Direction::back;
    if (named.empty() || made > 1 || !read_scores(named.back(), run)) {
      cells.refuse("scores", "runs out/back as 8,8,9/8,8,8 or totals as 25of3/24of3");
      break;
    }
    declare_spot(visit.green, spot, visit.half);
    visit.runs.push_back(std::move(run));
  }
  return cells.problem();
}

std::optional<units::Problem> Builder::visit(const Row& row) {
  Cells cells(row, file_);
  green::Visit visit;
  visit.id = "v" + std::to_string(scenario_.records.visits.size() + 1);
  cells.text("id", visit.id);
  visit.green = row.text("green");
  cells.text("half", visit.half);
  visit.observer = "ann";
  cells.text("observer", visit.observer);
  cells.day("day", visit.day);
  cells.minute("time", visit.from);
  cells.minute("until", visit.to);
  visit.source = source(row);
  green_named(visit.green);
  declare_observer(visit.observer);
  auto problem = runs(row, visit);
  scenario_.records.visits.push_back(std::move(visit));
  return cells.problem() ? cells.problem() : problem;
}

} // namespace baize::scenarios
