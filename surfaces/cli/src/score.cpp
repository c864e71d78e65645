// Roll scores: what marks offer, and what a list of scores adds up to.
#include "baize/green/roll_score.h"
#include "baize/units/number.h"
#include "commands.h"
#include "table.h"

namespace baize::cli {

namespace {

struct ScoreOptions {
  int bobbles = 0;
  int chatters = 0;
  int snakes = 0;
  bool watched = false; ///< any of the three was given
  std::vector<std::string> scores;
};

void tell_offer(Session& session, const ScoreOptions& options) {
  const green::Offer offer = green::offer({options.bobbles, options.chatters, options.snakes});
  if (session.shape() == Shape::json) {
    session.print(answers::Object()
                      .put("score", offer.score)
                      .put("lowest", offer.lowest)
                      .put("highest", offer.highest)
                      .done());
    return;
  }
  if (session.shape() == Shape::csv) {
    Table table({number("score"), number("lowest"), number("highest")});
    table.add({cell(offer.score), cell(offer.lowest), cell(offer.highest)});
    table.print(session);
    return;
  }
  session.out << "Offered score: " << offer.score << " (" << offer.lowest << " to " << offer.highest
              << " agree with what was seen)\n"
              << "The observer's own score always stands.\n";
}

units::Result<green::Run> run_of(const std::vector<std::string>& scores) {
  green::Run run;
  for (const std::string& text : scores) {
    const auto score = units::parse_whole(text);
    if (!score || *score < 1 || *score > 10) {
      return units::refuse("score_out_of_range", "score", text, "a whole number from 1 to 10");
    }
    green::Roll roll;
    roll.order = static_cast<int>(run.rolls.size()) + 1;
    roll.score = *score;
    run.rolls.push_back(roll);
  }
  return run;
}

void tell_sum(Session& session, const ScoreOptions& options) {
  const auto run = run_of(options.scores);
  if (!run) {
    session.refuse(run.error());
    return;
  }
  const auto sum = green::score_sum(*run);
  if (session.shape() == Shape::json) {
    session.print(answers::Object()
                      .put("rolls", sum->rolls)
                      .put("total", sum->total)
                      .put("mean", sum->mean())
                      .done());
    return;
  }
  Table table({number("rolls"), number("total"), number("mean")});
  table.add({cell(sum->rolls), cell(session, sum->total, 0), cell(session, sum->mean(), 2)});
  table.print(session);
}

void tell_score(Session& session, const ScoreOptions& options) {
  if (options.scores.empty()) {
    tell_offer(session, options);
  } else if (options.watched) {
    session.refuse({"wrong_use_score",
                    "score",
                    options.scores.front(),
                    "given either as scores or as marks, not as both",
                    {}});
  } else {
    tell_sum(session, options);
  }
}

} // namespace

void add_score(CLI::App& app, Session& session) {
  auto options = std::make_shared<ScoreOptions>();
  CLI::App* command =
      app.add_subcommand("score", "The score that marks offer, or the total and mean of scores");
  const auto mark = [&](const char* name, int& count, const char* about) {
    command->add_option(name, count, about)
        ->check(CLI::Range(0, 99))
        ->each([options](const std::string&) { options->watched = true; })
        ->type_name("COUNT");
  };
  mark("--bobbles", options->bobbles, "How often the ball left the ground");
  mark("--chatters", options->chatters, "How often it vibrated but stayed down");
  mark("--snakes", options->snakes, "How often it moved sideways unexpectedly; break is no snake");
  command->add_option("scores", options->scores, "Scores of single rolls, 1 to 10")
      ->type_name("SCORE");
  command->footer("Examples:\n  baize score --bobbles 1\n  baize score 9 8 8 7 9 8");
  on_call(*command, session, options, tell_score);
}

} // namespace baize::cli
