#include "losses.h"

#include "baize/answers/words.h"

namespace baize::cli {

namespace {

std::vector<Column> columns(const Session& session) {
  std::vector<Column> all{words("work"),
                          words("kind"),
                          words("day"),
                          words("green"),
                          words("half"),
                          number("before", "points"),
                          number("trough", "points"),
                          number("depth", "points")};
  for (const recovery::Definition definition : recovery::kDefinitions) {
    const std::string name(answers::word(definition));
    if (session.shape() == Shape::csv) {
      all.push_back(number(name + " after", "days"));
      all.push_back(number(name + " by", "days"));
      all.push_back(words(name + " censoring"));
    } else {
      all.push_back(number(name, "days"));
    }
  }
  all.push_back(number("loss", "score-days"));
  all.push_back(number("at least", "score-days"));
  all.push_back(number("at most", "score-days"));
  return all;
}

std::optional<double> part(const std::optional<recovery::LossArea>& area,
                           double recovery::LossArea::* member) {
  return area ? std::optional<double>((*area).*member) : std::nullopt;
}

} // namespace

std::string shown(const recovery::RecoveryInterval& interval) {
  if (interval.censoring == recovery::Censoring::not_asked) {
    return {};
  }
  if (interval.by_days) {
    return std::to_string(interval.after_days) + "-" + std::to_string(*interval.by_days);
  }
  return "over " + std::to_string(interval.after_days);
}

LossTable::LossTable(const Session& session) : session_(session), table_(columns(session)) {}

void LossTable::add(const recovery::WorkLoss& loss, const std::string& green_name) {
  std::vector<Cell> row{cell(loss.work),
                        cell(loss.kind),
                        cell(loss.day),
                        cell(green_name),
                        cell(loss.half),
                        cell(session_, loss.before, 2),
                        cell(session_, loss.trough, 2),
                        cell(session_, loss.depth, 2)};
  for (const recovery::RecoveryInterval& interval : loss.recovery) {
    if (session_.shape() == Shape::csv) {
      const bool asked = interval.censoring != recovery::Censoring::not_asked;
      row.push_back(asked ? cell(interval.after_days) : Cell{});
      row.push_back(interval.by_days ? cell(*interval.by_days) : Cell{});
      row.push_back(cell(std::string(answers::word(interval.censoring))));
    } else {
      row.push_back(cell(shown(interval)));
    }
  }
  row.push_back(cell(session_, part(loss.area, &recovery::LossArea::score_days), 1));
  row.push_back(cell(session_, part(loss.area, &recovery::LossArea::low), 1));
  row.push_back(cell(session_, part(loss.area, &recovery::LossArea::high), 1));
  table_.add(std::move(row));
}

void LossTable::print() const {
  table_.print(session_);
}

void print_definitions(std::ostream& out) {
  out << "Days until the green was back: \"3-7\" is after day 3 and by day 7; \"over 12\" is not "
         "yet back on day 12,\nwhen the record ended or the next work began. at_standard: first "
         "day "
         "at the standard; two_running: first of\ntwo visited days running at it; lasting: first "
         "day from which every visited day stays at it; own_level: first\nday back at the green's "
         "own score before the work.\n";
}

} // namespace baize::cli
