#pragma once

#include "baize/green/club.h"
#include "baize/journal/fold.h"
#include "baize/journal/photo.h"

#include <string>
#include <vector>

namespace baize::journal {

/// A record made from what the entries of a thing say, and what keeps it from
/// being one. Where `problems` is not empty, the record lacks what they name.
template <class Record> struct Made {
  Record record; ///< its id is the thing's
  std::string club;
  bool removed = false;
  int conflicts = 0; ///< of the thing; a visit's count those of its rolls and totals
  std::vector<units::Problem> problems;
};

struct MadeVisit : Made<green::Visit> {
  bool done = false; ///< the observer has closed the visit
};

/// Everything folded entries give, by id.
struct MadeRecords {
  std::vector<MadeVisit> visits;
  std::vector<Made<green::Reading>> readings;
  std::vector<Made<green::Work>> works;
  /// Each with "no_such_visit" or "no_such_work" where what it belongs to is not here.
  std::vector<Made<Photo>> photos;
  /// Rolls and totals that belong to no visit that is here: "no_such_visit".
  std::vector<units::Problem> astray;
};

/// Makes records. Runs are put together from rolls and totals by spot and
/// direction, out first, rolls by their order. Removed rolls are left out;
/// `released` and `stopped` are looked at and go no further.
///
/// Here is found what has no form of a record: unknown_field, wrong_type,
/// not_a_day, not_a_time, not_an_instant, not_a_whole_number, not_a_known_word,
/// missing_day, missing_club, missing_direction, missing_order, missing_value,
/// total_twice. What the values may be is for green::validate to say. A photo is
/// looked at whole: missing_taken, missing_sha256, missing_bytes, not_a_sha256,
/// bytes_out_of_range, photo_of_what.
MadeRecords records(const Folded& folded);

} // namespace baize::journal
