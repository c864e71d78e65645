#pragma once

#include "rows.h"

#include <string>

/// A record can be said in several ways: a name left out that is the id, a
/// count beside times or without. A row that is written again stays with the
/// way in which it was written before.
namespace baize::sheets {

/// Are these two rows of one record about the same thing in it?
bool same_place(const GreenRow& a, const GreenRow& b);
bool same_place(const RollRow& a, const RollRow& b);
template <class Row> bool same_place(const Row& /*a*/, const Row& /*b*/) {
  return true; // one row a record
}

/// Makes `row` leave out or repeat what `old` did, where that changes nothing.
/// `first`: no other row of the record stands before it.
void in_manner_of(const ClubRow& old, ClubRow& row, bool first);
void in_manner_of(const GreenRow& old, GreenRow& row, bool first);
void in_manner_of(const ObserverRow& old, ObserverRow& row, bool first);
void in_manner_of(const RollRow& old, RollRow& row, bool first);
void in_manner_of(const VisitRow& old, VisitRow& row, bool first);
void in_manner_of(const ReadingRow& old, ReadingRow& row, bool first);
void in_manner_of(const WorkRow& old, WorkRow& row, bool first);
void in_manner_of(const FixtureRow& old, FixtureRow& row, bool first);
void in_manner_of(const StandardRow& old, StandardRow& row, bool first);

/// Is a missing column read as what the row would say in it? A count of no
/// marks is, when another count has a column or will need one.
bool goes_without_saying(const ClubRow& row, const std::string& column, bool has_marks);
bool goes_without_saying(const GreenRow& row, const std::string& column, bool has_marks);
bool goes_without_saying(const RollRow& row, const std::string& column, bool has_marks);
bool goes_without_saying(const FixtureRow& row, const std::string& column, bool has_marks);
template <class Row>
bool goes_without_saying(const Row& /*row*/, const std::string& /*column*/, bool /*has_marks*/) {
  return false;
}

} // namespace baize::sheets
