#pragma once

#include "column.h"
#include "rows.h"

namespace baize::sheets {

/// Name of the file that holds rows of this kind.
template <class Row> inline constexpr std::string_view kFile = {};
template <> inline constexpr std::string_view kFile<ClubRow> = "club.csv";
template <> inline constexpr std::string_view kFile<GreenRow> = "greens.csv";
template <> inline constexpr std::string_view kFile<ObserverRow> = "observers.csv";
template <> inline constexpr std::string_view kFile<RollRow> = "rolls.csv";
template <> inline constexpr std::string_view kFile<VisitRow> = "visits.csv";
template <> inline constexpr std::string_view kFile<ReadingRow> = "readings.csv";
template <> inline constexpr std::string_view kFile<WorkRow> = "works.csv";
template <> inline constexpr std::string_view kFile<FixtureRow> = "fixtures.csv";
template <> inline constexpr std::string_view kFile<StandardRow> = "standards.csv";

/// The columns of a file, in the order in which a fresh one has them.
template <class Row> const std::vector<Column<Row>>& columns();
template <> const std::vector<Column<ClubRow>>& columns();
template <> const std::vector<Column<GreenRow>>& columns();
template <> const std::vector<Column<ObserverRow>>& columns();
template <> const std::vector<Column<RollRow>>& columns();
template <> const std::vector<Column<VisitRow>>& columns();
template <> const std::vector<Column<ReadingRow>>& columns();
template <> const std::vector<Column<WorkRow>>& columns();
template <> const std::vector<Column<FixtureRow>>& columns();
template <> const std::vector<Column<StandardRow>>& columns();

} // namespace baize::sheets
