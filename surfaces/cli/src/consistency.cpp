// Are the greens alike, and alike within?
#include "baize/answers/consistency_review.h"
#include "commands.h"
#include "table.h"

namespace baize::cli {

namespace {

struct ConsistencyOptions {
  std::string club;
  std::string list = "greens";
  int year = 0;
};

std::optional<double> low(const observers::Estimate& estimate) {
  return estimate.interval ? std::optional(estimate.interval->low) : std::nullopt;
}
std::optional<double> high(const observers::Estimate& estimate) {
  return estimate.interval ? std::optional(estimate.interval->high) : std::nullopt;
}

Table greens_table(const Session& session, const services::ConsistencyReview& review) {
  Table table({words("green"), words("name"), number("score"), number("from the club", "points"),
               number("from"), number("to"), number("robust z"), words("out of line"),
               length(session, "speed"), words("fast but not true")});
  for (const services::GreenConsistency& green : review.greens) {
    std::vector<Cell> row{cell(green.green), cell(green.name)};
    if (green.score) {
      row.push_back(cell(session, green.score->mean, 2));
      row.push_back(cell(session, green.score->difference.value, 2));
      row.push_back(cell(session, low(green.score->difference), 2));
      row.push_back(cell(session, high(green.score->difference), 2));
      row.push_back(cell(session, green.score->robust_z, 1));
      row.push_back(yes_no(green.score->out_of_line));
    } else {
      row.resize(8);
    }
    row.push_back(
        length_cell(session, green.speed ? std::optional(green.speed->mean) : std::nullopt));
    row.push_back(yes_no(green.fast_but_not_true));
    table.add(std::move(row));
  }
  return table;
}

Table parts_table(const Session& session, const services::ConsistencyReview& review) {
  Table table(
      {words("of"), words("between"), number("groups"), number("variance"), number("share", "%")});
  const auto add = [&](const char* name, const consistency::Nested& nested) {
    for (const consistency::NestedLevel& level : nested.levels) {
      table.add({cell(name), cell(level.name), cell(level.groups), cell(session, level.variance, 4),
                 cell(session, 100 * level.share, 0)});
    }
  };
  add("score", review.score_parts);
  add("speed", review.speed_parts);
  return table;
}

Table spots_table(const Session& session, const services::ConsistencyReview& review) {
  Table table({words("green"), words("spot"), number("visits"), number("out less back", "points"),
               number("from"), number("to"), number("p"), number("slope", "%"),
               number("p changing"), words("finding")});
  for (const services::SpotConsistency& spot : review.spots) {
    const consistency::SpotDirections& of = spot.directions;
    table.add({cell(spot.green), cell(of.spot), cell(of.visits),
               of.visits > 0 ? cell(session, of.score.value, 2) : Cell{},
               cell(session, low(of.score), 2), cell(session, high(of.score), 2),
               cell(session, of.p_all, 3), of.speeds > 0 ? cell(session, of.rise.value, 2) : Cell{},
               cell(session, of.p_changing, 3), cell(std::string(answers::word(spot.finding)))});
  }
  return table;
}

std::optional<units::Period> period_of(int year) {
  return year == 0 ? std::nullopt : std::optional(units::calendar_year(year));
}

void show_consistency(Session& session, const ConsistencyOptions& options) {
  const auto open = open_club(session, options.club);
  if (!open) {
    return;
  }
  const services::ConsistencyReview review =
      services::consistency_review(open->records, period_of(options.year), session.ports.today);
  if (session.shape() == Shape::json) {
    session.print(answers::to_json(review));
    return;
  }
  if (session.shape() == Shape::table) {
    session.out << review.sentence << '\n';
  }
  const Table table = options.list == "parts"   ? parts_table(session, review)
                      : options.list == "spots" ? spots_table(session, review)
                                                : greens_table(session, review);
  table.print(session);
}

} // namespace

void add_consistency(CLI::App& app, Session& session) {
  auto options = std::make_shared<ConsistencyOptions>();
  CLI::App* command = app.add_subcommand(
      "consistency",
      "Greens out of line, what differs between and within greens, out against back");
  command->add_option("--club", options->club, "The club; not needed where there is one only")
      ->type_name("CLUB");
  command->add_option("--year", options->year, "A calendar year; otherwise the last 365 days")
      ->check(CLI::Range(1600, 2600))
      ->type_name("YEAR");
  command->add_option("--list", options->list, "What to list: greens, parts or spots")
      ->check(CLI::IsMember({"greens", "parts", "spots"}))
      ->capture_default_str()
      ->type_name("LIST");
  on_call(*command, session, options, show_consistency);
}

} // namespace baize::cli
