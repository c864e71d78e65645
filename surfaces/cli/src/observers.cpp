// Do the observers score alike?
#include "baize/answers/observers_review.h"
#include "commands.h"
#include "table.h"

namespace baize::cli {

namespace {

struct ObserversOptions {
  std::string club;
  std::string list = "observers";
};

std::optional<double> low(const observers::Estimate& estimate) {
  return estimate.interval ? std::optional(estimate.interval->low) : std::nullopt;
}
std::optional<double> high(const observers::Estimate& estimate) {
  return estimate.interval ? std::optional(estimate.interval->high) : std::nullopt;
}
std::optional<double> value(const std::optional<observers::Estimate>& estimate) {
  return estimate ? std::optional(estimate->value) : std::nullopt;
}

Table observers_table(const Session& session, const services::ObserversReview& review) {
  Table table({words("observer"), words("name"), number("visits"), number("shared rolls"),
               number("difference", "points"), number("from"), number("to"),
               number("change", "points a year"), number("p")});
  for (const services::ObserverLine& line : review.observers) {
    const auto& lean = line.lean;
    const bool known = lean.summary.usable;
    table.add({cell(line.observer), cell(line.name), cell(line.visits), cell(lean.balls),
               known ? cell(session, lean.bias.value, 2) : Cell{}, cell(session, low(lean.bias), 2),
               cell(session, high(lean.bias), 2),
               lean.trend ? cell(session, lean.trend->per_year, 2) : Cell{},
               lean.trend ? cell(session, lean.trend->p, 3) : Cell{}});
  }
  return table;
}

Table pairs_table(const Session& session, const services::ObserversReview& review) {
  Table table({words("first"), words("second"), words("of"), number("shared rolls"),
               number("difference", "points"), number("from"), number("to"),
               number("lower limit", "points"), number("upper limit", "points"),
               number("within one", "%"), number("weighted kappa"), number("icc"),
               number("concordance")});
  for (const services::PairLine& line : review.pairs) {
    const observers::PairAgreement& of = line.agreement;
    const bool known = of.items > 0;
    const bool limits = of.summary.usable;
    table.add({cell(of.first), cell(of.second), cell(of.of_runs ? "runs" : "rolls"), cell(of.balls),
               known ? cell(session, of.bias.value, 2) : Cell{}, cell(session, low(of.bias), 2),
               cell(session, high(of.bias), 2),
               limits ? cell(session, of.lower_limit.value, 2) : Cell{},
               limits ? cell(session, of.upper_limit.value, 2) : Cell{},
               known ? cell(session, 100 * of.within_one, 0) : Cell{},
               cell(session, value(of.kappa_quadratic), 2), cell(session, value(of.icc), 2),
               cell(session, value(of.concordance), 2)});
  }
  return table;
}

Table quarters_table(const Session& session, const services::ObserversReview& review) {
  Table table({words("observer"), number("year"), number("quarter"), number("shared rolls"),
               number("difference", "points"), number("from"), number("to")});
  for (const services::ObserverLine& line : review.observers) {
    for (const observers::QuarterLean& quarter : line.lean.quarters) {
      table.add({cell(line.observer), cell(quarter.year), cell(quarter.quarter),
                 cell(quarter.balls), cell(session, quarter.bias.value, 2),
                 cell(session, low(quarter.bias), 2), cell(session, high(quarter.bias), 2)});
    }
  }
  return table;
}

Table nearby_table(const Session& session, const services::ObserversReview& review) {
  Table table({words("first"), words("second"), number("pairs of visits"), number("greens"),
               number("difference", "points"), number("from"), number("to")});
  for (const services::NearbyLine& line : review.nearby) {
    table.add({cell(line.pair.first), cell(line.pair.second), cell(line.pair.pairs),
               cell(line.pair.greens), cell(session, line.pair.bias.value, 2),
               cell(session, low(line.pair.bias), 2), cell(session, high(line.pair.bias), 2)});
  }
  return table;
}

void show_observers(Session& session, const ObserversOptions& options) {
  const auto open = open_club(session, options.club);
  if (!open) {
    return;
  }
  const services::ObserversReview review =
      services::observers_review(open->records, session.ports.today);
  if (session.shape() == Shape::json) {
    session.print(answers::to_json(review));
    return;
  }
  if (session.shape() == Shape::table) {
    session.out << review.sentence << '\n';
  }
  const Table table = options.list == "pairs"      ? pairs_table(session, review)
                      : options.list == "quarters" ? quarters_table(session, review)
                      : options.list == "nearby"   ? nearby_table(session, review)
                                                   : observers_table(session, review);
  table.print(session);
}

} // namespace

void add_observers(CLI::App& app, Session& session) {
  auto options = std::make_shared<ObserversOptions>();
  CLI::App* command =
      app.add_subcommand("observers", "How the observers score the same balls, and how they drift");
  command->add_option("--club", options->club, "The club; not needed where there is one only")
      ->type_name("CLUB");
  command
      ->add_option("--list", options->list,
                   "What to list: observers (each against the others), pairs, quarters, or nearby "
                   "(the same green within days: weaker evidence)")
      ->check(CLI::IsMember({"observers", "pairs", "quarters", "nearby"}))
      ->capture_default_str()
      ->type_name("LIST");
  on_call(*command, session, options, show_observers);
}

} // namespace baize::cli
