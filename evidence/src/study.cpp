#include "study.h"

#include "baize/stats/binomial.h"

#include <fmt/format.h>

namespace baize::evidence {
namespace {

std::string percent(double share) {
  return fmt::format("{:.1f} %", 100 * share);
}

std::string share_of(int successes, int trials) {
  const auto found = stats::wilson(successes, trials);
  return found.summary.usable
             ? fmt::format("{} ({} to {})", percent(found.share), percent(found.interval.low),
                           percent(found.interval.high))
             : "-";
}

std::string line(const std::vector<std::string>& cells) {
  std::string text = "|";
  for (const std::string& cell : cells) {
    text += ' ' + cell + " |";
  }
  return text + '\n';
}

} // namespace

std::string markdown(const Study& study, int worlds) {
  std::string text = "# " + study.title + "\n\n" + study.question + "\n\n" +
                     fmt::format("Written by `tools/evidence.sh {} {}`.\n", worlds, study.name);
  for (const Table& table : study.tables) {
    text += "\n## " + table.title + "\n\n" + line(table.header) + "|";
    for (std::size_t i = 0; i < table.header.size(); ++i) {
      text += i == 0 ? "---|" : "---:|";
    }
    text += '\n';
    for (const auto& row : table.rows) {
      text += line(row);
    }
  }
  if (!study.findings.empty()) {
    text += "\n## What follows\n";
    for (const std::string& finding : study.findings) {
      text += "\n- " + finding;
    }
    text += '\n';
  }
  return text;
}

void Coverage::add(double truth, double estimate, stats::Interval interval) {
  ++worlds_;
  covered_ += interval.low <= truth && truth <= interval.high ? 1 : 0;
  truth_below_ += truth < interval.low ? 1 : 0;
  truth_above_ += truth > interval.high ? 1 : 0;
  error_ += estimate - truth;
  width_ += interval.high - interval.low;
}

std::vector<std::string> Coverage::header(const std::string& first, const std::string& counted) {
  return {
      first,   counted,      "interval holds the truth", "truth below it", "truth above it", "bias",
      "width", "cannot tell"};
}

std::vector<std::string> Coverage::row(const std::string& name) const {
  const double n = worlds_ > 0 ? worlds_ : 1;
  return {name,
          fmt::format("{}", worlds_),
          share_of(covered_, worlds_),
          percent(truth_below_ / n),
          percent(truth_above_ / n),
          fmt::format("{:+.4f}", error_ / n),
          fmt::format("{:.4f}", width_ / n),
          fmt::format("{}", refused_)};
}

std::vector<std::string> Rate::header(const std::string& first, const std::string& what) {
  return {first, "worlds", what};
}

std::vector<std::string> Rate::row(const std::string& name) const {
  return {name, fmt::format("{}", worlds_), share_of(said_, worlds_)};
}

} // namespace baize::evidence
