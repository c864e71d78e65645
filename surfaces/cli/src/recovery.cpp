// What works cost, and when the greens were back.
#include "baize/answers/words.h"
#include "baize/answers/work_loss.h"
#include "baize/answers/work_review.h"
#include "commands.h"
#include "losses.h"

namespace baize::cli {

namespace {

struct RecoveryOptions {
  std::string club;
  std::string work;
  std::string green;
};

std::string interval(const services::WorkLine& line) {
  if (!line.back_after_days) {
    return {};
  }
  return line.back_by_days
             ? std::to_string(*line.back_after_days) + "-" + std::to_string(*line.back_by_days)
             : "over " + std::to_string(*line.back_after_days);
}

void print_lines(const Session& session, const std::vector<services::WorkLine>& lines) {
  Table table({words("work"), words("day"), words("label"), words("class"), number("greens"),
               number("mean depth", "points"), number("back", "days"),
               number("greens not yet back"), number("mean loss", "score-days"),
               number("losses not ended", "greens")});
  for (const services::WorkLine& line : lines) {
    table.add({cell(line.work.id), cell(line.work.day), cell(line.label),
               cell(std::string(word(line.work_class))), cell(line.greens),
               cell(session, line.mean_depth, 2), cell(interval(line)),
               line.work_class == green::WorkClass::disruptive ? cell(line.censored) : Cell{},
               cell(session, line.mean_score_days, 1),
               line.mean_score_days ? cell(line.losses_open) : Cell{}});
  }
  table.print(session);
}

void tell_works(Session& session, const OpenClub& open) {
  const auto lines = services::work_lines(open.records, open.weather, session.ports.today);
  if (session.shape() == Shape::json) {
    session.print(answers::to_json(lines));
  } else {
    print_lines(session, lines);
  }
}

void print_losses(const Session& session, const std::vector<services::WorkAtGreen>& at) {
  LossTable table(session);
  for (const services::WorkAtGreen& one : at) {
    table.add(one.loss, one.green_name);
  }
  table.print();
  if (session.shape() != Shape::table) {
    return;
  }
  print_definitions(session.out);
  for (const services::WorkAtGreen& one : at) {
    for (const std::string& note : one.loss.notes) {
      session.out << one.loss.work << ", " << one.green_name << ": " << note << '\n';
    }
  }
}

void tell_work(Session& session, const OpenClub& open, const RecoveryOptions& options,
               const std::string& green) {
  auto review =
      services::work_review(open.records, open.weather, options.work, session.ports.today);
  if (!review) {
    session.refuse(review.error());
    return;
  }
  if (!green.empty()) {
    std::erase_if(review->greens, [&](const auto& at) { return at.loss.green != green; });
  }
  if (session.shape() == Shape::json) {
    session.print(answers::to_json(*review));
    return;
  }
  if (session.shape() == Shape::table) {
    session.out << review->label << ", " << units::iso(review->work.day) << '\n'
                << review->sentence << '\n';
  }
  print_losses(session, review->greens);
}

void tell_green(Session& session, const OpenClub& open, const std::string& green) {
  recovery::Options settings;
  const green::Green* found = green::find_green(open.records, green);
  settings.growth = services::growth_options_for(found->grass);
  std::vector<services::WorkAtGreen> all;
  for (const recovery::WorkLoss& loss :
       recovery::work_losses(open.records, open.weather, green, session.ports.today, settings)) {
    all.push_back({found->name, loss, {}});
  }
  if (session.shape() == Shape::json) {
    answers::Json losses = answers::Json::array();
    for (const services::WorkAtGreen& one : all) {
      losses.push_back(answers::to_json(one.loss));
    }
    session.print(answers::Object().put("green", green).nest("losses", losses).done());
    return;
  }
  print_losses(session, all);
}

void tell_recovery(Session& session, const RecoveryOptions& options) {
  const auto open = open_club(session, options.club);
  if (!open) {
    return;
  }
  std::string green;
  if (!options.green.empty()) {
    const auto found = green_id(open->records, options.green);
    if (!found) {
      session.refuse(found.error());
      return;
    }
    green = *found;
  }
  if (!options.work.empty()) {
    tell_work(session, *open, options, green);
  } else if (!green.empty()) {
    tell_green(session, *open, green);
  } else {
    tell_works(session, *open);
  }
}

} // namespace

void add_recovery(CLI::App& app, Session& session) {
  auto options = std::make_shared<RecoveryOptions>();
  CLI::App* command = app.add_subcommand(
      "recovery", "What works cost and when the greens were back: all works, one work, one green");
  command->add_option("--club", options->club, "The club; not needed where there is one only")
      ->type_name("CLUB");
  command->add_option("--work", options->work, "One work at each of its greens")->type_name("WORK");
  command->add_option("--green", options->green, "One green only")->type_name("GREEN");
  on_call(*command, session, options, tell_recovery);
}

} // namespace baize::cli
