#pragma once

#include "rows.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace baize::sheets {

/// Ids from what makes a record that record, for people to read and for the
/// same file to give the same id each time.

/// "2025-04-03T0810/ab/7", with "/half" where there is one.
std::string natural_id(const VisitKey& key);
/// "2025-03-17/coring/all", "2025-03-17T0700/coring/1+2+5/north".
std::string natural_id(const green::Work& work);
/// "2025-06-14/Summer cup".
std::string natural_id(const green::Fixture& fixture);

/// Readings are often repeated on one spot: the second of the same gets "#2".
class ReadingIds {
 public:
  /// The id that the next reading without one of its own gets.
  std::string peek(const green::Reading& reading) const;
  void take(const green::Reading& reading);

 private:
  std::map<std::string, int> taken_;
};

/// A work's parameters as its kind's table orders them, those it does not know
/// last, so that the order of columns makes no other record.
std::vector<green::Parameter> in_table_order(const std::string& kind,
                                             std::vector<green::Parameter> parameters);

VisitKey key_of(const green::Visit& visit);

/// "all" or "1 2 5" to ids and back. Parted by commas where one stands in it,
/// else by spaces; a name that is itself a green stays whole.
std::vector<std::string> green_list(std::string_view text, const std::vector<green::Green>& greens);
std::string green_list(const std::vector<std::string>& ids);

} // namespace baize::sheets
