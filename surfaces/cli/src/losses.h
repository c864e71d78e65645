#pragma once

#include "baize/recovery/work_loss.h"
#include "table.h"

namespace baize::cli {

/// Works' losses, one row for each work and green. The table for people has the
/// recovery under all four definitions as intervals; CSV has after and by apart.
class LossTable {
 public:
  explicit LossTable(const Session& session);
  void add(const recovery::WorkLoss& loss, const std::string& green_name);
  void print() const;

 private:
  const Session& session_;
  Table table_;
};

/// "after 3, by 7", "not by 12 (record ends)", "not asked".
std::string shown(const recovery::RecoveryInterval& interval);
/// What the four definitions mean, a line each.
void print_definitions(std::ostream& out);

} // namespace baize::cli
