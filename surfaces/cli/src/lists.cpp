// Clubs, greens at a glance, and visits.
#include "baize/answers/greens_review.h"
#include "baize/answers/records_view.h"
#include "baize/answers/store.h"
#include "baize/answers/words.h"
#include "commands.h"
#include "table.h"

namespace baize::cli {

namespace {

struct ClubOption {
  std::string club;
};
struct VisitsOptions {
  std::string club;
  std::string green;
  services::VisitQuery query;
};

void list_clubs(Session& session, const ClubOption& /*options*/) {
  const auto store = open_store(session);
  if (!store) {
    return;
  }
  const auto clubs = store->clubs();
  if (!clubs) {
    session.refuse(clubs.error());
    return;
  }
  if (session.shape() == Shape::json) {
    session.print(answers::to_json(*clubs));
    return;
  }
  Table table({words("club"), words("name")});
  for (const services::ClubName& club : *clubs) {
    table.add({cell(club.id), cell(club.name)});
  }
  table.print(session);
}

std::optional<double> metres(const std::optional<speed::VisitSpeed>& speed) {
  return speed ? std::optional<double>(speed->speed_m) : std::nullopt;
}
std::optional<double> error(const std::optional<speed::VisitSpeed>& speed) {
  return speed ? std::optional<double>(speed->standard_error_m) : std::nullopt;
}

std::vector<Cell> green_row(const Session& session, const services::GreenCard& green) {
  return {cell(green.green),
          cell(green.name),
          cell(green.last_visit),
          cell(session, green.score, 2),
          cell(session, green.standard, 1),
          green.at_standard ? yes_no(*green.at_standard) : Cell{},
          cell(std::string(answers::word(green.trend))),
          length_cell(session, metres(green.speed)),
          cell(green.last_work_label),
          green.days_since_work ? cell(*green.days_since_work) : Cell{},
          cell(green.fewest_true),
          cell(green.most_true),
          cell(green.open_days)};
}

void list_greens(Session& session, const ClubOption& options) {
  const auto open = open_club(session, options.club);
  if (!open) {
    return;
  }
  const services::GreensReview review =
      services::greens_review(open->records, open->weather, session.ports.today);
  if (session.shape() == Shape::json) {
    session.print(answers::to_json(review));
    return;
  }
  Table table({words("green"), words("name"), words("last visit"), number("score"),
               number("standard"), words("at standard"), words("trend"), length(session, "speed"),
               words("last work"), number("since", "days"), number("true at least", "days"),
               number("true at most", "days"), number("open", "days")});
  for (const services::GreenCard& green : review.greens) {
    table.add(green_row(session, green));
  }
  if (session.shape() == Shape::table) {
    session.out << review.headline << '\n';
  }
  table.print(session);
}

void list_visits(Session& session, const VisitsOptions& options) {
  const auto open = open_club(session, options.club);
  if (!open) {
    return;
  }
  services::VisitQuery query = options.query;
  if (!options.green.empty()) {
    const auto green = green_id(open->records, options.green);
    if (!green) {
      session.refuse(green.error());
      return;
    }
    query.green = *green;
  }
  const auto page = services::visit_page(open->records, query);
  if (!page) {
    session.refuse(page.error());
    return;
  }
  if (session.shape() == Shape::json) {
    session.print(answers::to_json(*page));
    return;
  }
  Table table({words("visit"), words("green"), words("half"), words("day"), words("from"),
               words("observer"), number("rolls"), number("score"), length(session, "speed"),
               small_length(session, "error"), number("remarks"), words("file"), number("line")});
  for (const services::VisitLine& visit : page->visits) {
    table.add({cell(visit.visit), cell(visit.green), cell(visit.half), cell(visit.day),
               visit.at ? cell(units::iso(*visit.at)) : Cell{}, cell(visit.observer),
               cell(visit.rolls), cell(session, visit.score, 2),
               length_cell(session, metres(visit.speed)),
               small_length_cell(session, error(visit.speed)), cell(visit.remarks),
               cell(visit.source.file), visit.source.line > 0 ? cell(visit.source.line) : Cell{}});
  }
  table.print(session);
  if (session.shape() == Shape::table) {
    session.out << page->visits.size() << " of " << page->total << " visits, newest first.\n";
  }
}

} // namespace

void add_clubs(CLI::App& app, Session& session) {
  auto options = std::make_shared<ClubOption>();
  on_call(*app.add_subcommand("clubs", "The clubs in the database"), session, options, list_clubs);
}

void add_greens(CLI::App& app, Session& session) {
  auto options = std::make_shared<ClubOption>();
  CLI::App* command =
      app.add_subcommand("greens", "A club's greens at a glance, with the year's true days so far");
  command->add_option("--club", options->club, "The club; not needed where there is one only")
      ->type_name("CLUB");
  on_call(*command, session, options, list_greens);
}

void add_visits(CLI::App& app, Session& session) {
  auto options = std::make_shared<VisitsOptions>();
  CLI::App* command = app.add_subcommand("visits", "The visits, newest first");
  command->add_option("--club", options->club, "The club; not needed where there is one only")
      ->type_name("CLUB");
  command->add_option("--green", options->green, "One green only")->type_name("GREEN");
  command->add_option("--limit", options->query.limit, "How many, 1 to 1000")
      ->capture_default_str()
      ->type_name("COUNT");
  command->add_option("--offset", options->query.offset, "How many to pass over first")
      ->capture_default_str()
      ->type_name("COUNT");
  on_call(*command, session, options, list_visits);
}

} // namespace baize::cli
