// Trials: a layout drawn, or plan and records compared. Nothing is kept.
#include "baize/answers/imported.h"
#include "baize/answers/problem.h"
#include "baize/answers/trial.h"
#include "baize/api/import_body.h"
#include "baize/services/trial_rolls.h"
#include "baize/units/number.h"
#include "query.h"
#include "reply.h"

namespace baize::api {

namespace {

Answer no_trials() {
  return units::refuse("no_such_service", "trials", "", "a server that was given its file formats");
}

units::Result<double> number_of(const Call& call, const char* name, double otherwise) {
  const std::string* text = call.query(name);
  if (text == nullptr) {
    return otherwise;
  }
  auto number = units::parse_number(*text);
  if (!number) {
    number.error().field = name;
  }
  return number;
}

units::Result<trials::AnalysisOptions> options_of(const Call& call) {
  trials::AnalysisOptions options;
  const auto treated = day_of(call, "treated");
  if (!treated) {
    return tl::unexpected(treated.error());
  }
  options.treated = *treated;
  const auto standard = number_of(call, "standard", options.standard);
  const auto confidence = number_of(call, "confidence", options.confidence);
  if (!standard || !confidence) {
    return tl::unexpected(standard ? confidence.error() : standard.error());
  }
  options.standard = *standard;
  options.confidence = *confidence;
  if (auto problem = options.problem()) {
    return tl::unexpected(*problem);
  }
  return options;
}

Answer said(const services::TrialAnswer& answer) {
  if (!answer.review) {
    answers::Json problems = answers::Json::array();
    for (const units::Problem& problem : answer.problems) {
      problems.push_back(answers::with_sentence(problem));
    }
    return reply(answers::Object().nest("problems", std::move(problems)).done(), 422);
  }
  return reply(answers::to_json(*answer.review));
}

} // namespace

Answer design_trial(const Call& call) {
  if (call.context.trial_files == nullptr) {
    return no_trials();
  }
  const auto request = answers::read_trial_request(call.request.body);
  if (!request) {
    return tl::unexpected(request.error());
  }
  const auto review = services::design_trial(*request, *call.context.trial_files);
  if (!review) {
    return tl::unexpected(review.error());
  }
  return reply(answers::to_json(*review));
}

Answer analyse_trial(const Call& call) {
  if (call.context.trial_files == nullptr) {
    return no_trials();
  }
  const auto options = options_of(call);
  if (!options) {
    return tl::unexpected(options.error());
  }
  const auto files = read_import_body(call.request.body);
  if (!files) {
    return tl::unexpected(files.error());
  }
  if (files->size() != 2) {
    return units::refuse("bad_import", "files", std::to_string(files->size()),
                         "two files: the plan and the records, in this order");
  }
  return said(
      services::analyse_trial(files->front(), files->back(), *options, *call.context.trial_files));
}

Answer analyse_trial_rolls(const Call& call) {
  if (call.context.trial_files == nullptr) {
    return no_trials();
  }
  const auto options = options_of(call);
  const auto files = read_import_body(call.request.body);
  const auto club = club_of(call);
  if (!options || !files || !club) {
    return tl::unexpected(!options ? options.error() : !files ? files.error() : club.error());
  }
  if (files->size() != 1) {
    return units::refuse("bad_import", "files", std::to_string(files->size()),
                         "one file: the plan");
  }
  const auto until = day_of(call, "until");
  if (!until) {
    return tl::unexpected(until.error());
  }
  return said(services::analyse_trial_rolls(files->front(), (*club)->records, call.today,
                                            {*options, *until}, *call.context.trial_files));
}

} // namespace baize::api
