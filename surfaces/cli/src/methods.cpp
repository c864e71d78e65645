// Does it take fewer days when ...? Methods beside one another.
#include "baize/answers/methods_review.h"
#include "baize/answers/words.h"
#include "commands.h"
#include "table.h"

namespace baize::cli {

namespace {

struct MethodsOptions {
  std::vector<std::string> clubs;
  services::MethodsQuery query;
  std::string definition{answers::word(recovery::kHeadline)};
  std::string distribution = "log_logistic";
  std::string list = "methods";
};

std::optional<double> value(const std::optional<compare::Figure>& figure) {
  return figure ? std::optional(figure->value) : std::nullopt;
}
std::optional<double> low(const std::optional<compare::Figure>& figure) {
  return figure ? figure->low : std::nullopt;
}
std::optional<double> high(const std::optional<compare::Figure>& figure) {
  return figure ? figure->high : std::nullopt;
}

void add_figure(std::vector<Cell>& row, const Session& session,
                const std::optional<compare::Figure>& figure, int places) {
  row.push_back(cell(session, value(figure), places));
  row.push_back(cell(session, low(figure), places));
  row.push_back(cell(session, high(figure), places));
}

Table methods_table(const Session& session, const services::MethodsReview& review) {
  Table table({words("method"), number("works"), number("greens"), number("not yet back"),
               number("median", "days"), number("days from"), number("days to"),
               number("median", "growth-days"), number("growth-days from"),
               number("growth-days to"), number("depth", "points"), number("depth from"),
               number("depth to"), number("loss", "score-days"), number("loss from"),
               number("loss to")});
  for (const services::MethodLine& line : review.methods) {
    const compare::MethodFigures& of = line.figures;
    std::vector<Cell> row{cell(of.method), cell(of.works), cell(of.looks), cell(of.censored)};
    add_figure(row, session, of.days, 1);
    add_figure(row, session, of.growth_days, 1);
    add_figure(row, session, of.depth, 2);
    add_figure(row, session, of.score_days, 1);
    table.add(std::move(row));
  }
  return table;
}

Table pairs_table(const Session& session, const services::MethodsReview& review) {
  Table table({words("first"), words("second"), number("second less first", "days"), number("from"),
               number("to"), number("p"), number("depth", "points"), number("depth from"),
               number("depth to"), number("loss", "score-days"), number("loss from"),
               number("loss to"), number("works needed", "of each"), words("evidence")});
  for (const services::PairOfMethods& line : review.pairs) {
    const compare::PairFigures& of = line.figures;
    std::vector<Cell> row{cell(of.first), cell(of.second)};
    add_figure(row, session, of.days, 1);
    row.push_back(of.days ? cell(session, of.p, 3) : Cell{});
    add_figure(row, session, of.depth, 2);
    add_figure(row, session, of.score_days, 1);
    row.push_back(of.works_needed ? cell(*of.works_needed) : Cell{});
    row.push_back(cell(std::string(answers::word(of.evidence))));
    table.add(std::move(row));
  }
  return table;
}

void show(Session& session, const MethodsOptions& options, const services::MethodsReview& review) {
  if (session.shape() == Shape::json) {
    session.print(answers::to_json(review));
    return;
  }
  if (session.shape() == Shape::table) {
    session.out << review.sentence << '\n';
  }
  const Table table =
      options.list == "pairs" ? pairs_table(session, review) : methods_table(session, review);
  table.print(session);
  if (session.shape() == Shape::table) {
    for (const std::string& note : review.notes) {
      session.out << note << '\n';
    }
  }
}

void show_methods(Session& session, const MethodsOptions& options) {
  std::vector<OpenClub> open;
  const std::vector<std::string> asked =
      options.clubs.empty() ? std::vector<std::string>{""} : options.clubs;
  for (const std::string& club : asked) {
    auto one = open_club(session, club);
    if (!one) {
      return;
    }
    open.push_back(std::move(*one));
  }
  std::vector<services::ClubShare> shares;
  shares.reserve(open.size());
  for (const OpenClub& one : open) {
    shares.push_back({one.records, one.weather});
  }
  services::MethodsQuery query = options.query;
  for (const auto definition : recovery::kDefinitions) {
    if (answers::word(definition) == options.definition) {
      query.gather.definition = definition;
    }
  }
  for (const auto distribution :
       {stats::AftDistribution::log_logistic, stats::AftDistribution::log_normal,
        stats::AftDistribution::weibull}) {
    if (answers::word(distribution) == options.distribution) {
      query.compare.distribution = distribution;
    }
  }
  const auto review = services::compare_methods(shares, query, session.ports.today);
  if (!review) {
    session.refuse(review.error());
    session.code = Exit::wrong_use; // only what was asked for can be refused
    return;
  }
  show(session, options, *review);
}

} // namespace

void add_methods(CLI::App& app, Session& session) {
  auto options = std::make_shared<MethodsOptions>();
  CLI::App* command = app.add_subcommand(
      "methods", "Which kind of work takes fewer days: all works of a club, or of several");
  command
      ->add_option("--club", options->clubs, "The club, or several; not needed where there is one")
      ->type_name("CLUB");
  command->add_option("--kind", options->query.gather.grouping.kind, "Only works of this kind")
      ->type_name("KIND");
  command
      ->add_option("--by", options->query.gather.grouping.by,
                   "A parameter that parts the works of a kind: tine_diameter, sand_order ...")
      ->type_name("PARAMETER");
  command
      ->add_option("--cut", options->query.gather.grouping.cuts,
                   "Where the bands of --by begin, rising; without it each value by itself")
      ->type_name("NUMBER");
  command
      ->add_option("--alongside", options->query.gather.grouping.alongside,
                   "Part the works by whether this kind was done with them: brushing ...")
      ->type_name("KIND");
  command->add_option("--definition", options->definition, "What back means")
      ->check(CLI::IsMember({"at_standard", "two_running", "lasting", "own_level"}));
  command->add_option("--distribution", options->distribution, "How days scatter")
      ->check(CLI::IsMember({"log_logistic", "log_normal", "weibull"}));
  command
      ->add_option("--days", options->query.compare.days_wanted,
                   "The difference worth seeing, for the works that are needed")
      ->type_name("DAYS");
  command
      ->add_option("--list", options->list, "What to list: methods, or pairs (their differences)")
      ->check(CLI::IsMember({"methods", "pairs"}));
  on_call(*command, session, options, show_methods);
}

} // namespace baize::cli
