// One green's year.
#include "baize/answers/season_review.h"
#include "baize/answers/words.h"
#include "baize/units/number.h"
#include "commands.h"
#include "losses.h"
#include "season_model.h"
#include "table.h"

namespace baize::cli {

namespace {

struct SeasonOptions {
  std::string club;
  std::string green;
  int year = 0;
  std::string list = "visits";
  bool model = false;
  bool check = false;
};

void print_visits(const Session& session, const services::SeasonReview& season) {
  Table table({words("day"), words("at"), words("visit"), words("observer"), words("half"),
               number("score"), number("lowest"), number("highest"), number("rolls"),
               length(session, "speed"), small_length(session, "error"), number("remarks")});
  for (const services::VisitPoint& visit : season.visits) {
    std::optional<double> metres;
    std::optional<double> error;
    if (visit.speed) {
      metres = visit.speed->speed_m;
      error = visit.speed->standard_error_m;
    }
    table.add({cell(visit.day), visit.at ? cell(units::iso(*visit.at)) : Cell{}, cell(visit.visit),
               cell(visit.observer), cell(visit.half), cell(session, visit.score, 2),
               cell(session, visit.lowest, 1), cell(session, visit.highest, 1),
               cell(visit.scored_rolls), length_cell(session, metres),
               small_length_cell(session, error), cell(visit.remarks)});
  }
  table.print(session);
}

void print_works(const Session& session, const services::SeasonReview& season) {
  Table table(
      {words("day"), words("until"), words("work"), words("label"), words("class"), words("half")});
  for (const services::WorkTick& work : season.works) {
    table.add({cell(work.day), cell(work.until), cell(work.work), cell(work.label),
               cell(std::string(word(work.work_class))), cell(work.half)});
  }
  table.print(session);
}

void print_losses(const Session& session, const services::SeasonReview& season) {
  LossTable table(session);
  for (const recovery::WorkLoss& loss : season.losses) {
    table.add(loss, season.green_name);
  }
  table.print();
}

void print_days(const Session& session, const services::SeasonReview& season) {
  Table table({words("day"), words("what is known")});
  units::Day day = season.ledger.period.first;
  for (const recovery::DayKind kind : season.ledger.days) {
    table.add({cell(day), cell(std::string(answers::word(kind)))});
    ++day;
  }
  table.print(session);
}

void print_ledger(const Session& session, const services::SeasonReview& season) {
  const recovery::Ledger& ledger = season.ledger;
  session.out << season.green_name << ", " << units::iso(season.period.first) << " to "
              << units::iso(season.period.last) << ".\nTrue on at least " << ledger.fewest_true()
              << " and at most " << ledger.most_true() << " of " << ledger.open()
              << " open days: measured true " << ledger.measured_true << ", measured below "
              << ledger.measured_not << ", not measured between true days " << ledger.between_true
              << ", not measured otherwise " << ledger.unmeasured << "; closed " << ledger.closed
              << ".\n";
  for (const services::StandardPoint& standard : season.standards) {
    session.out << "Standard from " << units::iso(standard.from) << ": "
                << units::write_number(standard.score, session.decimal()) << '\n';
  }
}

void print_year(const Session& session, const services::SeasonReview& season) {
  print_ledger(session, season);
  session.out << "\nVisits\n";
  print_visits(session, season);
  if (!season.works.empty()) {
    session.out << "\nWorks\n";
    print_works(session, season);
  }
  if (!season.losses.empty()) {
    session.out << "\nWhat the works cost\n";
    print_losses(session, season);
    print_definitions(session.out);
  }
}

void tell_season(Session& session, const SeasonOptions& options) {
  const auto open = open_club(session, options.club);
  if (!open) {
    return;
  }
  const auto green = green_id(open->records, options.green);
  if (green && options.check) {
    tell_season_checks(session, *open);
    return;
  }
  if (green && options.model) {
    tell_season_model(session, *open, *green, options.year);
    return;
  }
  const auto season = green ? services::season_review(open->records, open->weather, *green,
                                                      options.year, session.ports.today)
                            : tl::unexpected(green.error());
  if (!season) {
    session.refuse(season.error());
  } else if (session.shape() == Shape::json) {
    session.print(answers::to_json(*season));
  } else if (session.shape() == Shape::table) {
    print_year(session, *season);
  } else if (options.list == "works") {
    print_works(session, *season);
  } else if (options.list == "losses") {
    print_losses(session, *season);
  } else if (options.list == "days") {
    print_days(session, *season);
  } else {
    print_visits(session, *season);
  }
}

} // namespace

void add_season(CLI::App& app, Session& session) {
  auto options = std::make_shared<SeasonOptions>();
  CLI::App* command =
      app.add_subcommand("season", "One green's year: true days, visits, works and what they cost");
  command->add_option("--club", options->club, "The club; not needed where there is one only")
      ->type_name("CLUB");
  command->add_option("--green", options->green, "The green, by id or name")
      ->required()
      ->type_name("GREEN");
  command->add_option("--year", options->year, "The year")->required()->type_name("YEAR");
  command
      ->add_option("--list", options->list, "Which list --csv writes: visits, works, losses, days")
      ->check(CLI::IsMember({"visits", "works", "losses", "days"}))
      ->capture_default_str()
      ->type_name("LIST");
  auto* model =
      command->add_flag("--model", options->model,
                        "The year as the season model estimates it, day by day, with a forecast");
  command
      ->add_flag("--check", options->check,
                 "How far the club's model may be trusted; takes four times as long")
      ->needs(model);
  on_call(*command, session, options, tell_season);
}

} // namespace baize::cli
