#pragma once

#include "baize/season/evaluate.h"

#include <string>
#include <vector>

namespace baize::testing {

/// One run, as written down.
struct HandRun {
  std::string green;
  int day = 0;
  int minute = 0; ///< of the visit; runs of one green, day and minute are one visit
  std::string observer;
  std::string spot; ///< "n1" lies in north, "s1" in south, "main" in neither
  green::Direction direction = green::Direction::out;
  std::vector<int> scores;
};

inline const units::Day kHandFirst{20000};

/// Records of greens "7" (halves north and south) and "8" (whole) from runs.
inline green::Records hand_records(const std::vector<HandRun>& runs) {
  green::Records records;
  for (const std::string id : {"7", "8"}) {
    green::Green green;
    green.id = id;
    green.spots = {{"n1", {}, "north"}, {"s1", {}, "south"}, {"main", {}, ""}};
    if (id == "7") {
      green.halves = {"north", "south"};
    }
    records.greens.push_back(green);
  }
  for (const HandRun& hand : runs) {
    const std::string id =
        hand.green + "/" + std::to_string(hand.day) + "/" + std::to_string(hand.minute);
    if (records.visits.empty() || records.visits.back().id != id) {
      green::Visit visit;
      visit.id = id;
      visit.green = hand.green;
      visit.observer = hand.observer;
      visit.day = kHandFirst + hand.day;
      visit.from = units::Minute{static_cast<std::int16_t>(hand.minute)};
      records.visits.push_back(visit);
    }
    green::Run run;
    run.spot = hand.spot;
    run.direction = hand.direction;
    for (const int score : hand.scores) {
      green::Roll roll;
      roll.order = static_cast<int>(run.rolls.size()) + 1;
      roll.score = score;
      run.rolls.push_back(roll);
    }
    records.visits.back().runs.push_back(run);
  }
  return records;
}

inline green::Work hand_work(const std::string& kind, int day, const std::string& green,
                             const std::string& half) {
  green::Work work;
  work.id = kind + std::to_string(day) + half;
  work.kind = kind;
  work.day = kHandFirst + day;
  work.at = units::Minute{480};
  work.half = half;
  if (!green.empty()) {
    work.greens = {green};
  }
  return work;
}

/// A model of one green, one observer and one line, with values as they are: for
/// cases that whole scores cannot hold.
inline season::Model hand_model(const std::vector<double>& values, double roll_sd) {
  season::GreenModel green;
  green.green = "7";
  green.lines = {"main out"};
  for (std::size_t i = 0; i < values.size(); ++i) {
    season::Look look;
    look.day = kHandFirst + static_cast<int>(i);
    look.rolls = 1;
    look.mean = values[i];
    green.looks.push_back(look);
    green.runs.push_back({i, 0, values[i], 1});
  }
  const auto looks = static_cast<Eigen::Index>(values.size());
  green.growth = Eigen::MatrixXd(looks, 0);
  green.share = Eigen::MatrixXd(looks, 0);
  green.run_share = Eigen::MatrixXd(looks, 0);
  green.line_share = Eigen::MatrixXd::Ones(looks, 1);
  green.within = Eigen::MatrixXd::Zero(2, 2);
  green.fixed = season::fixed_columns(green, 1);
  season::Model model;
  model.summary = stats::done();
  model.greens.push_back(green);
  model.observers = {"ann"};
  model.roll_sd = roll_sd;
  model.record_end = kHandFirst + static_cast<int>(values.size()) - 1;
  model.curves.emplace_back(climate::Weather{}, climate::kCoolSeason,
                            units::Period{kHandFirst - 400, model.record_end + 400},
                            season::Clock::calendar_days);
  return model;
}

/// Adds one loss of a new method from `day` on; calendar days.
inline void add_loss(season::Model& model, int day) {
  season::GreenModel& green = model.greens.front();
  const auto at = green.growth.cols();
  const auto looks = green.growth.rows();
  green.growth.conservativeResize(looks, at + 1);
  green.share.conservativeResize(looks, at + 1);
  green.run_share.conservativeResize(looks, at + 1);
  for (Eigen::Index i = 0; i < looks; ++i) {
    green.growth(i, at) = i < day ? -1 : static_cast<double>(i - day);
    green.share(i, at) = i < day ? 0 : 1;
  }
  green.run_share.col(at) = green.share.col(at);
  model.methods.push_back("work" + std::to_string(at));
  green.losses.push_back({{"w"},
                          model.methods.back(),
                          model.methods.size() - 1,
                          kHandFirst + day,
                          kHandFirst + day,
                          ""});
}

} // namespace baize::testing
