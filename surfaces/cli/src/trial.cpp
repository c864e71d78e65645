// A trial: its layout before, its comparison after.
#include "baize/answers/trial.h"

#include "baize/answers/problem.h"
#include "baize/services/trial_rolls.h"
#include "commands.h"
#include "files.h"
#include "table.h"
#include "trial_tables.h"

#include <filesystem>

namespace baize::cli {

namespace {

struct DesignOptions {
  services::TrialRequest request;
  std::string layout{"randomised_blocks"};
  std::string first_visit;
  int visits = 6;
  int every = 3;
  std::string folder;
  bool force = false;
};

struct AnalyseOptions {
  std::string plan;
  std::string records;
  std::string club;
  std::string treated;
  std::string until;
  double standard = 8;
  double confidence = 0.95;
};

units::Result<void> write_all(const DesignOptions& options,
                              const services::TrialDesignReview& review) {
  const std::vector<std::pair<std::string, const std::string*>> files{
      {"trial.csv", &review.plan_csv},
      {"trial_records.csv", &review.sheet_csv},
      {"trial_sheet.html", &review.sheet_page},
      {"trial_map.svg", &review.map_svg}};
  std::error_code error;
  std::filesystem::create_directories(options.folder, error);
  for (const auto& [name, content] : files) {
    const std::string path = options.folder + "/" + name;
    // A plan is the record of a draw: it must not be lost to a second one.
    if (!options.force && std::filesystem::exists(path, error)) {
      return units::refuse("file_exists", "file", path,
                           "a file that is not there yet, or replaced with --force");
    }
  }
  for (const auto& [name, content] : files) {
    if (!content->empty()) {
      if (auto written = write_file(options.folder + "/" + name, *content); !written) {
        return written;
      }
    }
  }
  return {};
}

void design(Session& session, const DesignOptions& options) {
  services::TrialRequest request = options.request;
  const auto layout = trials::layout_of(options.layout);
  request.design.layout = layout.value_or(trials::Layout::randomised_blocks);
  if (!options.first_visit.empty()) {
    const auto first = units::parse_iso_day(options.first_visit);
    auto days = first ? services::visit_days(*first, options.visits, options.every)
                      : units::Result<std::vector<units::Day>>(tl::unexpected(first.error()));
    if (!days) {
      session.refuse(days.error());
      return;
    }
    request.days = std::move(*days);
  } else {
    request.power.visits = options.visits;
  }
  const auto review = services::design_trial(request, *session.ports.trial_files);
  if (!review) {
    session.refuse(review.error());
    return;
  }
  if (!options.folder.empty()) {
    if (const auto written = write_all(options, *review); !written) {
      session.refuse(written.error());
      return;
    }
  }
  if (session.shape() == Shape::json) {
    session.print(answers::to_json(*review));
  } else if (session.shape() == Shape::csv) {
    session.out << review->plan_csv;
  } else {
    print_design(session, *review);
  }
}

units::Result<std::optional<units::Day>> day_of(const std::string& text) {
  if (text.empty()) {
    return std::optional<units::Day>();
  }
  return units::parse_iso_day(text).map([](units::Day day) { return std::optional(day); });
}

/// From the records file, or where there is none from a club's own rolls. Absent: refused.
std::optional<services::TrialAnswer> answer_of(Session& session, const AnalyseOptions& options,
                                               const services::TrialRollsOptions& how) {
  const auto plan = read_file(options.plan);
  if (!plan) {
    session.refuse(plan.error());
    return std::nullopt;
  }
  const services::ReceivedFile file{bare_name(options.plan), *plan};
  if (options.records.empty()) {
    const auto open = open_club(session, options.club);
    if (!open) {
      return std::nullopt;
    }
    return services::analyse_trial_rolls(file, open->records, session.ports.today, how,
                                         *session.ports.trial_files);
  }
  const auto records = read_file(options.records);
  if (!records) {
    session.refuse(records.error());
    return std::nullopt;
  }
  return services::analyse_trial(file, {bare_name(options.records), *records}, how.analysis,
                                 *session.ports.trial_files);
}

void analyse(Session& session, const AnalyseOptions& options) {
  const auto treated = day_of(options.treated);
  const auto until = day_of(options.until);
  if (!treated || !until) {
    session.refuse(treated ? until.error() : treated.error());
    return;
  }
  services::TrialRollsOptions how;
  how.analysis.treated = *treated;
  how.analysis.standard = options.standard;
  how.analysis.confidence = options.confidence;
  how.until = *until;
  const auto found = answer_of(session, options, how);
  if (!found) {
    return;
  }
  const services::TrialAnswer& answer = *found;
  for (const units::Problem& problem : answer.problems) {
    session.refuse(problem);
  }
  if (!answer.review) {
    return;
  }
  if (session.shape() == Shape::json) {
    session.print(answers::to_json(*answer.review));
  } else {
    print_analysis(session, *answer.review);
  }
}

void add_design(CLI::App& trial, Session& session) {
  auto options = std::make_shared<DesignOptions>();
  CLI::App* command =
      trial.add_subcommand("design", "Draw a random layout, with map, walk, sheet and power");
  trials::Design& design_of = options->request.design;
  trials::Spread& spread = options->request.power.spread;
  command->add_option("--trial", design_of.trial, "Name of the trial")->required();
  command->add_option("--layout", options->layout, "How treatments are given to plots")
      ->check(
          CLI::IsMember({"completely_randomised", "randomised_blocks", "split_plot", "strip_plot"}))
      ->capture_default_str();
  command->add_option("--treatments", design_of.treatments, "Names, parted by commas")
      ->delimiter(',')
      ->required();
  command->add_option("--second", design_of.seconds, "Second treatments of a split or strip plot")
      ->delimiter(',');
  command->add_option("--control", design_of.control, "The treatment to compare others with");
  command->add_option("--blocks", design_of.blocks, "Blocks, or plots of each without blocks")
      ->capture_default_str();
  command->add_option("--greens", design_of.greens, "Greens the blocks lie on")->delimiter(',');
  command
      ->add_option("--halves", design_of.halves, "Names of a green's halves: these are the plots")
      ->delimiter(',');
  command->add_option("--across", design_of.across, "Plots in a row of a block");
  command->add_option("--seed", design_of.seed, "Of the draw")
      ->check(CLI::Range(std::uint64_t{0}, std::uint64_t{9007199254740991}))
      ->capture_default_str();
  command->add_option("--first-visit", options->first_visit, "Day of the first visit, YYYY-MM-DD");
  command->add_option("--visits", options->visits, "How many")->capture_default_str();
  command->add_option("--every", options->every, "Days between visits")->capture_default_str();
  command->add_option("--plot-sd", spread.plot, "Standard deviation between plots")
      ->capture_default_str();
  command->add_option("--visit-sd", spread.visit, "Of one plot from visit to visit")
      ->capture_default_str();
  command->add_option("--whole-plot-sd", spread.whole_plot, "Between whole plots or strips")
      ->capture_default_str();
  command->add_option("--out", options->folder, "Where to write plan, sheet and map")
      ->type_name("FOLDER");
  command->add_flag("--force", options->force, "Replace files that are there");
  on_call(*command, session, options, design);
}

} // namespace

void add_trial(CLI::App& app, Session& session) {
  CLI::App* trial = app.add_subcommand("trial", "Lay out a trial on greens, or analyse one");
  trial->require_subcommand(1);
  add_design(*trial, session);
  auto options = std::make_shared<AnalyseOptions>();
  CLI::App* command = trial->add_subcommand("analyse", "Compare the treatments of a trial");
  command->add_option("plan", options->plan, "The plan, trial.csv")->required();
  command->add_option("records", options->records,
                      "The records, trial_records.csv; left out: the club's own rolls");
  command->add_option("--club", options->club, "Whose rolls, where the plots are greens or halves")
      ->type_name("CLUB");
  command->add_option("--treated", options->treated, "Day of the treatment, for days back");
  command->add_option("--until", options->until, "Last day of the club's rolls that counts");
  command->add_option("--standard", options->standard, "A plot is back at this value or above")
      ->capture_default_str();
  command->add_option("--confidence", options->confidence, "Of intervals and letters")
      ->capture_default_str();
  on_call(*command, session, options, analyse);
}

} // namespace baize::cli
