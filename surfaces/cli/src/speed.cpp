// The green speed at one spot, from distances on the command line.
#include "baize/answers/speed.h"

#include "baize/answers/words.h"
#include "baize/speed/green_speed.h"
#include "baize/units/number.h"
#include "commands.h"
#include "distances.h"
#include "table.h"

namespace baize::cli {

namespace {

struct SpeedOptions {
  DistanceOptions out;
  DistanceOptions back;
};

green::Run run_of(green::Direction direction, const std::vector<units::Length>& distances) {
  green::Run run;
  run.spot = "line";
  run.direction = direction;
  for (const units::Length distance : distances) {
    green::Roll roll;
    roll.order = static_cast<int>(run.rolls.size()) + 1;
    roll.distance = distance;
    run.rolls.push_back(roll);
  }
  return run;
}

void print_direction(const Session& session, const char* name,
                     const std::optional<speed::RunSpeed>& run) {
  if (run) {
    session.out << name << ": mean of " << run->rolls << ' ' << shown_length(session, run->mean_m)
                << ", longest less shortest " << shown_small(session, run->spread_m)
                << (run->within_tolerance ? "" : ", too far apart") << '\n';
  }
}

void print_speed(const Session& session, const speed::SpotSpeed& spot) {
  print_direction(session, "Out", spot.out);
  print_direction(session, "Back", spot.back);
  session.out << "Plain mean: " << shown_length(session, spot.plain_mean_m) << '\n';
  if (spot.slope_corrected_m) {
    session.out << "With the slope taken out, 2UD/(U+D): "
                << shown_length(session, *spot.slope_corrected_m) << '\n';
  }
  if (spot.ratio && spot.slope_class) {
    session.out << "Downhill over uphill: " << units::show_number(*spot.ratio, 2, session.decimal())
                << ", " << answers::word(*spot.slope_class) << " slope\n";
  }
  session.out << "Green speed: " << shown_length(session, spot.speed_m) << ", standard error "
              << shown_small(session, spot.standard_error_m) << '\n';
  for (const std::string_view warning : spot.warnings) {
    session.out << "Note: " << warning << '\n';
  }
}

void print_csv(const Session& session, const speed::SpotSpeed& spot) {
  Table table({length(session, "out mean"), length(session, "back mean"),
               length(session, "plain mean"), length(session, "slope corrected"),
               length(session, "speed"), small_length(session, "standard error"),
               number("downhill over uphill")});
  const auto mean = [](const std::optional<speed::RunSpeed>& run) {
    return run ? std::optional<double>(run->mean_m) : std::nullopt;
  };
  table.add({length_cell(session, mean(spot.out)), length_cell(session, mean(spot.back)),
             length_cell(session, spot.plain_mean_m), length_cell(session, spot.slope_corrected_m),
             length_cell(session, spot.speed_m), small_length_cell(session, spot.standard_error_m),
             cell(session, spot.ratio, 2)});
  table.print(session);
}

void tell_speed(Session& session, const SpeedOptions& options) {
  const auto out = read_distances(session, options.out);
  const auto back = read_distances(session, options.back);
  for (const auto* side : {&out, &back}) {
    if (!*side) {
      session.refuse(side->error());
      return;
    }
  }
  std::vector<green::Run> runs;
  for (const auto& [direction, distances] :
       {std::pair{green::Direction::out, *out}, std::pair{green::Direction::back, *back}}) {
    if (!distances.empty()) {
      runs.push_back(run_of(direction, distances));
    }
  }
  const auto spot = speed::spot_speed(runs);
  if (!spot) {
    session.refuse({"wrong_use_distances", "--out", "", "one distance or more", {}});
    return;
  }
  if (session.shape() == Shape::json) {
    session.print(answers::to_json(*spot));
  } else if (session.shape() == Shape::csv) {
    print_csv(session, *spot);
  } else {
    print_speed(session, *spot);
  }
}

} // namespace

void add_speed(CLI::App& app, Session& session) {
  auto options = std::make_shared<SpeedOptions>();
  CLI::App* command =
      app.add_subcommand("speed", "Green speed at one spot from three rolls out and three back");
  add_distances(*command, "out", "Distances one way", options->out);
  add_distances(*command, "back", "Distances back on the same line", options->back);
  command->footer("Examples:\n"
                  "  baize speed --out 9'6\\\" 9'8\\\" 9'5\\\" --back 8'10\\\" 9'0\\\" 8'11\\\"\n"
                  "  baize speed --out-cm 305,310,298 --back-cm 280,284,279 --units cm");
  on_call(*command, session, options, tell_speed);
}

} // namespace baize::cli
