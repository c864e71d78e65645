#pragma once

#include "scenarios/scenario.h"

namespace baize::scenarios {

/// Turns one table after another into records. Greens, spots and observers that
/// rows name without declaring them are declared on the way.
class Builder {
 public:
  explicit Builder(const std::string& file) : file_(file) { scenario_.name = file; }

  std::optional<units::Problem> add(const Table& table);
  /// The finished scenario. Refuses one without a record end or with nothing to expect.
  units::Result<Scenario> finish();

 private:
  using Maker = std::optional<units::Problem> (Builder::*)(const Row&);
  struct Kind {
    std::string section;
    std::vector<std::string> columns;
    Maker make;
  };
  static const std::vector<Kind>& kinds();

  std::optional<units::Problem> club(const Row& row);
  std::optional<units::Problem> green(const Row& row);
  std::optional<units::Problem> standard(const Row& row);
  std::optional<units::Problem> visit(const Row& row);
  std::optional<units::Problem> work(const Row& row);
  std::optional<units::Problem> weather(const Row& row);
  std::optional<units::Problem> loss(const Row& row);
  std::optional<units::Problem> recovery(const Row& row);
  std::optional<units::Problem> ledger(const Row& row);
  std::optional<units::Problem> note(const Row& row);

  green::Green& green_named(const std::string& id);
  void declare_spot(const std::string& green, const std::string& spot, const std::string& half);
  void declare_observer(const std::string& id);
  std::optional<units::Problem> runs(const Row& row, green::Visit& visit);
  green::Source source(const Row& row) const { return {file_ + ".txt", row.line}; }

  std::string file_;
  Scenario scenario_;
  bool ends_ = false;
};

} // namespace baize::scenarios
