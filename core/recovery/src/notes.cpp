#include "notes.h"

#include "baize/units/number.h"

#include <algorithm>

namespace baize::recovery {
namespace {

using units::iso;

std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names) {
    text += (text.empty() ? "" : ", ") + name;
  }
  return text;
}

std::string others(const Disruption& disruption, const green::Work* self) {
  std::vector<std::string> ids;
  for (const green::Work* work : disruption.works) {
    if (work != self) {
      ids.push_back(work->id);
    }
  }
  return listed(ids);
}

std::string no_before(const Circumstances& around, units::Day work) {
  if (around.before_from >= work) {
    return "No score before: the disruptive work before this one leaves no day between.";
  }
  return "No score before: no scored visit from " + iso(around.before_from) + " to " +
         iso(work - 1) + ".";
}

void about_figures(std::vector<std::string>& notes, const WorkLoss& loss, const Aftermath& after) {
  if (loss.before && !reaches(*loss.before, loss.standard)) {
    notes.push_back("The score before, " + units::show_number(*loss.before, 2) +
                    ", was already below the standard of " + units::write_number(loss.standard) +
                    ".");
  }
  if (after.days.empty()) {
    notes.push_back("No visit after: no scored visit from the work to " + iso(loss.horizon) + ".");
    return;
  }
  if (after.own_level && reaches(after.days.front().score, *after.own_level)) {
    notes.push_back("Never seen below its own level: the first scored day after the work, " +
                    iso(after.days.front().day) + ", was already back.");
  }
  if (loss.back_at_lower_standard) {
    const DayScore& back = after.days[first_back(after, kHeadline)];
    notes.push_back("Back only since the standard fell: " + units::show_number(back.score, 2) +
                    " on " + iso(back.day) +
                    " would not have met the standard of the work's day, " +
                    units::write_number(loss.standard) + ".");
  }
  if (std::all_of(after.true_day.begin(), after.true_day.end(), [](bool b) { return b; })) {
    notes.push_back("No scored day after the work was below the standard.");
  }
}

} // namespace

std::vector<std::string> loss_notes(const WorkLoss& loss, const Aftermath& after,
                                    const Circumstances& around) {
  std::vector<std::string> notes;
  if (!loss.before) {
    notes.push_back(no_before(around, loss.day));
  }
  about_figures(notes, loss, after);
  if (!around.unordered.empty()) {
    notes.push_back("On the work's day it cannot be told whether " + listed(around.unordered) +
                    " came before or after it; left out of both.");
  }
  if (around.work->until && *around.work->until > loss.day) {
    notes.push_back("The work went on until " + iso(*around.work->until) +
                    "; days are counted from its first.");
  }
  if (around.same_day->works.size() > 1) {
    notes.push_back("Done the same day as " + others(*around.same_day, around.work) +
                    ": what was lost was lost to all of them together.");
  }
  if (around.next != nullptr) {
    notes.push_back("The next disruptive work, " + others(*around.next, nullptr) + " on " +
                    iso(around.next->day) + ", ends the time this one is followed.");
  }
  return notes;
}

std::optional<std::string> missed_note(const WorkLoss& loss) {
  const RecoveryInterval& interval = loss.under(kHeadline);
  if (!interval.by_days_if_good) {
    return std::nullopt;
  }
  const int usual = *interval.by_days_if_good - interval.after_days;
  return "No scored visit between " + iso(interval.last_below) + " and " +
         iso(*interval.first_back) + ", though while it was below they were seldom more than " +
         std::to_string(usual) + (usual == 1 ? " day" : " days") +
         " apart. If they were missed because the ball rolled well again, it was back by " +
         iso(loss.day + *interval.by_days_if_good) + ".";
}

} // namespace baize::recovery
